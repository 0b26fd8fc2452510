import { describe, expect, it } from 'vitest';
import { fitFindings } from '../../core/fit/fit-findings';
import { lengthAt } from '../../core/fit/length-round';
import { girthsOf } from '../../core/fit/round-body';
import { waistNeeds } from '../../core/fit/waist-needs';
import type { Garment, Level, Ring } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { setHangsFrom, setTimes } from '../../core/garment/ring-edits';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from '../shaping/traced';
import { panel } from './panels';
import { figure, garmentOf } from './skirts';

const at = (depth: number, girth: Level['girth']): Level => ({
  id: `at-${depth}`,
  girth,
  depth: { kind: 'length', length: inches(depth) },
  ease: 0,
});

const totals = (garment: Garment, ring: Ring) =>
  girthsOf(garment, ring).map((girth) => (girth.kind === 'no-depth' ? Number.NaN : girth.total / MM_PER_INCH));

/** The garment with every piece of its ring hanging from an edge at a depth (in) below the waist. */
function hung(garment: Garment, ring: Ring, pieceId: string, edgeId: string, depth: number) {
  const changed = setHangsFrom(garment, ring.id, pieceId, { edgeId, depth: inches(depth) });
  const [next] = changed.rings;
  if (!next) throw new Error('no ring');
  return { garment: changed, ring: next };
}

/** A fold panel that widens evenly, 7 in at its upper edge and 1/2 in more for each inch down: its level n in down is 7 + n/2. */
const flared = (name: string, long: number): Piece => panel(name, [7, 7 + long / 2, long], ['fold', 'seam']);

describe('a piece measured from another edge than the waist', () => {
  it('has its levels so much nearer to that edge as the edge lies below the waist', () => {
    const made = garmentOf([flared('skirt', 30)], figure);
    const [skirt] = made.garment.pieces;
    const waistId = skirt?.edges[0]?.id ?? '';
    const ring = { ...made.ring, levels: [at(3, 'highHip'), at(8, 'hip')] };
    const garment = { ...made.garment, rings: [ring] };
    expect(totals(garment, ring)[1]).toBeCloseTo(2 * (7 + 8 / 2), 6);
    const below = hung(garment, ring, skirt?.id ?? '', waistId, 3);
    const [high, hip] = totals(below.garment, below.ring);
    expect(high).toBeCloseTo(2 * 7, 6);
    expect(hip).toBeCloseTo(2 * (7 + 5 / 2), 6);
    expect(waistNeeds(garment, ring)).not.toEqual([]);
    expect(waistNeeds(below.garment, below.ring)).toEqual([]);
    expect((lengthAt(below.garment, below.ring, 'front') ?? 0) / MM_PER_INCH).toBeCloseTo(33, 6);
  });

  it('may hang from an edge above the waist, as a slip does, and needs no waist edge', () => {
    const tube = traced('slip', [
      [[0, 0], 'finished'],
      [[inches(9), 0], 'seam'],
      [[inches(19), inches(40)], 'hem'],
      [[0, inches(40)], 'fold'],
    ]);
    const slip: Piece = { ...tube, cut: { how: 'fold', count: 2 } };
    const { garment, ring: proposed } = garmentOf([slip], { ...figure, bust: 34 });
    const ring = {
      ...proposed,
      members: [{ pieceId: slip.id }],
      levels: [at(-7, 'bust'), at(0, 'waist'), at(8, 'hip')],
    };
    const loose = { ...garment, rings: [ring] };
    expect(fitFindings(loose).map(({ kind }) => kind)).toContain('no-waist-edge');
    const top = hung(loose, ring, slip.id, slip.edges[0]?.id ?? '', -9);
    expect(fitFindings(top.garment).map(({ kind }) => kind)).not.toContain('no-waist-edge');
    // 2, 9 and 17 in below an edge of 9 in that widens by a quarter of an inch in each.
    for (const [i, down] of [2, 9, 17].entries()) {
      expect(totals(top.garment, top.ring)[i]).toBeCloseTo(4 * (9 + down / 4), 6);
    }
  });

  it('of a yoke and the skirt below it each level is measured on the one that lies there', () => {
    const yoke: Piece = panel('yoke', [7, 8.5, 3], ['fold', 'seam']);
    const made = garmentOf(
      [{ ...yoke, edges: yoke.edges.map((e) => (e.role === 'hem' ? { ...e, role: 'seam' } : e)) }, flared('skirt', 30)],
      figure,
    );
    const skirt = made.garment.pieces[1];
    const ring = { ...made.ring, levels: [at(0, 'waist'), at(2, 'highHip'), at(3, 'hip'), at(8, 'hip')] };
    const both = hung({ ...made.garment, rings: [ring] }, ring, skirt?.id ?? '', skirt?.edges[0]?.id ?? '', 3);
    const found = totals(both.garment, both.ring);
    expect(found[0]).toBeCloseTo(14, 6);
    expect(found[1]).toBeCloseTo(16, 6);
    // At the join the skirt alone: 7 in on the fold.
    expect(found[2]).toBeCloseTo(14, 6);
    expect(found[3]).toBeCloseTo(19, 6);
    expect(fitFindings(both.garment).map(({ kind }) => kind)).not.toContain('level-below-piece');
    expect((lengthAt(both.garment, both.ring, 'front') ?? 0) / MM_PER_INCH).toBeCloseTo(33, 6);
  });

  it('takes an edge cut in two as the one it was, and goes back to the waist when the edge is gone', () => {
    const slip = traced('slip', [
      [[0, 0], 'finished'],
      [[inches(4), 0], 'finished'],
      [[inches(9), 0], 'seam'],
      [[inches(9), inches(40)], 'hem'],
      [[0, inches(40)], 'fold'],
    ]);
    const named = { ...slip, edges: slip.edges.map((e) => (e.role === 'finished' ? { ...e, name: 'top' } : e)) };
    const { garment, ring: proposed } = garmentOf([named], figure);
    const ring = { ...proposed, members: [{ pieceId: named.id, times: 4 }], levels: [at(0, 'waist')] };
    const top = hung({ ...garment, rings: [ring] }, ring, named.id, named.edges[1]?.id ?? '', -2);
    expect(totals(top.garment, top.ring)[0]).toBeCloseTo(36, 6);
    const gone = hung({ ...garment, rings: [ring] }, ring, named.id, 'nowhere', -2);
    expect(totals(gone.garment, gone.ring)).toEqual([0]);
  });

  it('keeps its edge when its drawn widths are said, and is the same ring when nothing changes', () => {
    const { garment, ring } = garmentOf([flared('skirt', 30)], figure);
    const [skirt] = garment.pieces;
    const made = hung(garment, ring, skirt?.id ?? '', skirt?.edges[0]?.id ?? '', 3);
    const times = setTimes(made.garment, ring.id, skirt?.id ?? '', 3);
    expect(times.rings[0]?.members).toMatchObject([{ times: 3, from: { depth: inches(3) } }]);
    const from = { edgeId: skirt?.edges[0]?.id ?? '', depth: inches(3) };
    expect(setHangsFrom(made.garment, ring.id, skirt?.id ?? '', from)).toBe(made.garment);
    expect(setHangsFrom(made.garment, ring.id, skirt?.id ?? '', undefined).rings).toEqual(garment.rings);
  });
});

describe('a band that laps over', () => {
  it('is counted round the body without its lap', () => {
    const rounded = (...of: Parameters<typeof totals>) => totals(...of).map((inch) => Number(inch.toFixed(9)));
    const strip = traced('band', [
      [[0, 0], 'waist'],
      [[inches(30), 0], 'finished'],
      [[inches(30), inches(2)], 'seam'],
      [[0, inches(2)], 'finished'],
    ]);
    const band: Piece = { ...strip, cut: { how: 'single', count: 1 } };
    const { garment, ring } = garmentOf([band], figure);
    const skirt = { ...flared('skirt', 30), cut: { how: 'fold', count: 2 } as const };
    const seam = {
      id: 's',
      name: '',
      one: [{ pieceId: skirt.id, edgeId: skirt.edges[0]?.id ?? '', times: 4 }],
      other: [{ pieceId: band.id, edgeId: band.edges[2]?.id ?? '' }],
      ease: 0,
      way: 'opposite',
      lap: { side: 'other', length: inches(1.5), at: 'end' },
    } as const;
    const levels = [at(0, 'waist'), at(1, 'waist')];
    const with2 = { ...garment, pieces: [band, skirt] };
    expect(rounded(with2, { ...ring, levels })).toEqual([30, 30]);
    const lapped = { ...with2, seams: [seam] };
    expect(rounded(lapped, { ...ring, levels })).toEqual([28.5, 28.5]);
    expect(girthsOf(lapped, { ...ring, levels })[0]).toMatchObject({ lap: inches(1.5) });
    // A lap down a side, as of a placket, goes round nobody's waist.
    const beside = { ...seam, one: [{ pieceId: skirt.id, edgeId: skirt.edges[1]?.id ?? '' }] };
    expect(rounded({ ...with2, seams: [beside] }, { ...ring, levels })).toEqual([30, 30]);
  });
});
