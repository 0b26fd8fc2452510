import { describe, expect, it } from 'vitest';
import { girthsOf } from '../../core/fit/round-body';
import { casingGirth, type WearingFinding, wearingFindings } from '../../core/fit/wearing';
import type { Garment, Ring } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { fourGores, panel } from './panels';
import { figure, garmentOf } from './skirts';

const foundIn = (garment: Garment, ring: Ring) => wearingFindings(garment, ring, girthsOf(garment, ring));

function only<Kind extends WearingFinding['kind']>(found: readonly WearingFinding[], kind: Kind) {
  const [first, second] = found.filter((each): each is Extract<WearingFinding, { kind: Kind }> => each.kind === kind);
  if (!first || second) throw new Error(`not one ${kind} in ${found.map((each) => each.kind).join(', ')}`);
  return first;
}

const kinds = (garment: Garment, ring: Ring) => foundIn(garment, ring).map(({ kind }) => kind);

/** A straight tube on the fold, `girth` in all round and 30 in long. */
const tube = (girth: number): Piece => panel('tube', [girth / 2, girth / 2, 30], ['fold', 'seam']);

describe('wearingFindings', () => {
  it('holds the hem against the outer garment at front, side and back, the shorter by what she asks', () => {
    const { garment, ring } = fourGores();
    // An underskirt is an inch shorter than the skirt over it (Ingalls, Text-Book on Domestic Art, 1911).
    const outer = { front: inches(39.5), side: inches(39.5), back: inches(38.5), shorterBy: inches(1) };
    const shows = only(foundIn({ ...garment, outer }, ring), 'hem-shows');
    expect(shows).toMatchObject({ at: 'back', outer: inches(38.5), shorterBy: inches(1) });
    expect(shows.length / MM_PER_INCH).toBeCloseTo(38, 1);
    expect(kinds({ ...garment, outer: { shorterBy: inches(1) } }, ring)).not.toContain('hem-shows');
  });

  it('lets a waist drawn on a string pass the hips when it is cut as wide, and not when it is sewn to a band', () => {
    const gathered = (girth: number): Piece => {
      const piece = tube(girth);
      const edgeId = piece.edges[0]?.id ?? '';
      const to = inches(girth / 2);
      return { ...piece, fullness: [{ id: 'g', kind: 'gathers', edgeId, from: 0, to, into: inches(14) }] };
    };
    const wide = garmentOf([gathered(46)], { ...figure, hip: 44 });
    expect((casingGirth(wide.garment, wide.ring) ?? 0) / MM_PER_INCH).toBeCloseTo(46, 9);
    expect(kinds(wide.garment, wide.ring)).not.toContain('no-opening');
    const narrow = garmentOf([gathered(42)], { ...figure, hip: 44 });
    const casing = only(foundIn(narrow.garment, narrow.ring), 'casing-narrow');
    expect((casing.hip - casing.casing) / MM_PER_INCH).toBeCloseTo(2, 9);
    const [piece] = wide.garment.pieces;
    const edge = { pieceId: piece?.id ?? '', edgeId: piece?.edges[0]?.id ?? '' };
    const seam = { id: 's', name: '', one: [edge], other: [edge], ease: 0, way: 'same' } as const;
    expect(casingGirth({ ...wide.garment, seams: [seam] }, wide.ring)).toBeUndefined();
  });

  it('says that a closed bodice cannot pass the shoulders, and is content with an opening or a wide one', () => {
    const upper = (girth: number, role: 'seam' | 'opening') => {
      const piece = tube(girth);
      const edges = piece.edges.map((edge, i) => (i === 1 ? { ...edge, role } : edge));
      const { garment, ring } = garmentOf([{ ...piece, edges }], { bust: 36, hip: 40, waist: 27 });
      const bust = { id: 'b', girth: 'bust', depth: { kind: 'length', length: -inches(7) }, ease: 0 } as const;
      return { garment, ring: { ...ring, levels: [bust] } };
    };
    const closed = upper(37, 'seam');
    const found = only(foundIn(closed.garment, closed.ring), 'no-way-on');
    expect(found.narrowest / MM_PER_INCH).toBeCloseTo(37, 6);
    // ANSUR II (2012): the shoulders of 1,986 women are 1.086 of the bust round.
    expect(found.shoulders / MM_PER_INCH).toBeCloseTo(39.09, 2);
    expect(kinds(upper(37, 'opening').garment, upper(37, 'opening').ring)).not.toContain('no-way-on');
    expect(kinds(upper(39.5, 'seam').garment, upper(39.5, 'seam').ring)).not.toContain('no-way-on');
  });

  it('says when both thighs side by side do not pass: a string round two circles that touch', () => {
    // Two circles of 22 in round: 2 π r + 4 r with r = 22/(2 π), computed: 36.006 in.
    const measures = { ...figure, thigh: { length: inches(22), depth: inches(12) } };
    const narrow = garmentOf([tube(35)], measures);
    const found = only(foundIn(narrow.garment, narrow.ring), 'thigh-narrow');
    expect(found.needed / MM_PER_INCH).toBeCloseTo(36.006, 3);
    expect(found.total / MM_PER_INCH).toBeCloseTo(35, 6);
    const wide = garmentOf([tube(37)], measures);
    expect(kinds(wide.garment, wide.ring)).not.toContain('thigh-narrow');
  });
});
