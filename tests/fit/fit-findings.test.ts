import { describe, expect, it } from 'vitest';
import { circleSizes, sectorPieces } from '../../core/blocks/sector';
import { type FitFinding, fitFindings } from '../../core/fit/fit-findings';
import type { Garment } from '../../core/garment/garment';
import type { MeasureName } from '../../core/garment/measure';
import type { Piece } from '../../core/garment/piece';
import { setEase, setTimes } from '../../core/garment/ring-edits';
import { curvedWaist } from '../../core/shaping/curved-waist';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { straightPanel, traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

/** A rectangle on the fold, four of it round the body: so wide that waist and hip are both `girth` in. */
function tube(girth: number, cut: Piece['cut'] = { how: 'fold', count: 2 }): Piece {
  const width = inches(girth / 4);
  const piece = traced('tube', [
    [[0, 0], 'waist'],
    [[width, 0], 'seam'],
    [[width, inches(25)], 'hem'],
    [[0, inches(25)], 'fold'],
  ]);
  return { ...piece, cut };
}

type Measures = Partial<Record<MeasureName, number>>;

const kindsOf = (found: readonly FitFinding[]) => found.map(({ kind }) => kind);
const findingsOf = (pieces: readonly Piece[], measures: Measures = figure) =>
  fitFindings(garmentOf(pieces, measures).garment);

function only<Kind extends FitFinding['kind']>(found: readonly FitFinding[], kind: Kind) {
  const [first, second] = found.filter((each): each is Extract<FitFinding, { kind: Kind }> => each.kind === kind);
  if (!first || second) throw new Error(`not one ${kind} in ${kindsOf(found).join(', ')}`);
  return first;
}

/** A half circle on the fold in two sections; its waist and hem are those of the whole skirt. */
function halfCircle(waist: number, openSide: 'open' | 'closed'): Piece {
  const sizes = { ...circleSizes({ waist: inches(waist), length: inches(26), share: 0.5 }), sections: 2 };
  const made = sectorPieces(sizes, { newId: numbered(), name: 'Skirt', topRole: 'waist' });
  if (!Array.isArray(made)) throw new Error(made.why);
  const [piece] = made;
  if (!piece) throw new Error('no piece');
  if (openSide === 'closed') return piece;
  return { ...piece, edges: piece.edges.map((edge, i) => (i === 1 ? { ...edge, role: 'opening' } : edge)) };
}

function numbered() {
  let count = 0;
  return () => `h${++count}`;
}

describe('fitFindings', () => {
  it('asks for a piece, then for a ring', () => {
    const { garment } = garmentOf([], figure);
    expect(kindsOf(fitFindings(garment))).toEqual(['no-piece']);
    const ringless: Garment = { ...garmentOf([tube(42)], figure).garment, rings: [] };
    expect(kindsOf(fitFindings(ringless))).toEqual(['no-ring']);
  });

  it.each([
    [2, { how: 'fold', count: 1 }],
    [4, { how: 'single', count: 1 }],
  ] as const)('says that a panel is missing when the total is one part in %i', (parts, cut) => {
    // Waist and hip that want the same: 28.5 in round.
    const found = findingsOf([tube(28.5, cut)], { ...figure, hip: 26.5, highHip: 27.5 });
    expect(only(found, 'panel-missing')).toMatchObject({ weight: 'stop', parts });
    expect(kindsOf(found)).not.toContain('girth-too-small');
  });

  it('says so for a third, too', () => {
    const { garment, ring } = garmentOf([tube(28.5)], { ...figure, hip: 26.5, highHip: 27.5 });
    const third = setTimes(garment, ring.id, ring.members[0]?.pieceId ?? '', 4 / 3);
    expect(only(fitFindings(third), 'panel-missing').parts).toBe(3);
  });

  it('stops at less than the body and warns at less than the ease, by how much', () => {
    const short = findingsOf([tube(37)], { ...figure, waist: 36, highHip: 36 });
    const hip = only(short, 'girth-too-small');
    expect(hip).toMatchObject({ weight: 'stop', girth: 'hip' });
    expect((hip.body - hip.total) / MM_PER_INCH).toBeCloseTo(1, 6);
    const tight = findingsOf([tube(39)], { ...figure, waist: 38, highHip: 38 });
    const eased = only(tight, 'girth-too-small');
    expect(eased).toMatchObject({ weight: 'warn', girth: 'hip' });
    expect((eased.wanted - eased.total) / MM_PER_INCH).toBeCloseTo(1, 6);
  });

  it('passes what is short by less than a sixteenth of an inch', () => {
    const found = findingsOf([tube(40 - 1 / 20)], { ...figure, waist: 39, highHip: 39 });
    expect(kindsOf(found)).not.toContain('girth-too-small');
  });

  it('warns of much over at the waist only', () => {
    const found = findingsOf([tube(40)]);
    const over = only(found, 'girth-too-large');
    expect(over.girth).toBe('waist');
    expect((over.total - over.wanted) / MM_PER_INCH).toBeCloseTo(11.5, 6);
  });

  it('says what the straight waist of a shaped piece should be, and no more once the curve is taken', () => {
    const panel: Piece = { ...straightPanel(inches(7.125), inches(10), inches(8)), cut: { how: 'fold', count: 2 } };
    const finding = only(findingsOf([panel]), 'straight-waist');
    // The cone of 28.5 and 40 in over 8 in: a quarter of it rises 28.5 × 8/11.5 × (1 - cos(11.5/32)) = 1.267 in.
    expect(Math.abs(finding.rise / MM_PER_INCH - 1.267)).toBeLessThan(1 / 4);
    expect(finding.curved / MM_PER_INCH).toBeCloseTo(7.125, 2);
    const wish = { waistEdgeId: panel.edges[0]?.id ?? '', length: inches(7.125), hipDepth: inches(8) };
    const curve = curvedWaist(panel, wish);
    if (curve.kind !== 'curved-waist') throw new Error(curve.why);
    expect(kindsOf(findingsOf([curve.piece]))).not.toContain('straight-waist');
  });

  it('stops at an outline that crosses itself, and says where', () => {
    const bowTie = traced('bow', [
      [[0, 0], 'waist'],
      [[200, 0], 'seam'],
      [[0, 300], 'hem'],
      [[200, 300], 'seam'],
    ]);
    const finding = only(findingsOf([bowTie]), 'outline-crosses');
    expect(finding.weight).toBe('stop');
    expect(finding.at.x).toBeCloseTo(100, 6);
    expect(finding.at.y).toBeCloseTo(150, 6);
  });

  it('stops at a printed figure the drawing does not obey, until it is settled', () => {
    const stated = (rules: 'unsettled' | 'drawing' | 'figure', length: number) => {
      const piece = tube(42);
      const edges = piece.edges.map((edge, i) => (i === 1 ? { ...edge, stated: { length, rules } } : edge));
      return findingsOf([{ ...piece, edges }]);
    };
    const unsettled = only(stated('unsettled', inches(26)), 'figure-unsettled');
    expect(unsettled).toMatchObject({ weight: 'stop', drawn: inches(25), stated: inches(26) });
    expect(only(stated('figure', inches(26)), 'figure-not-met').weight).toBe('stop');
    expect(kindsOf(stated('drawing', inches(26)))).not.toContain('figure-unsettled');
    expect(kindsOf(stated('unsettled', inches(25 + 1 / 20)))).not.toContain('figure-unsettled');
  });

  it('warns of a hem less than 6 in wider than the hip (common practice)', () => {
    const finding = only(findingsOf([tube(42)]), 'hem-narrow');
    expect(finding.sweep / MM_PER_INCH).toBeCloseTo(42, 6);
    expect(kindsOf(findingsOf([tube(45)]))).not.toContain('hem-narrow');
  });

  it.each([
    // How deep a closed circular skirt, waist 28 on hips of 38 in, must open: (38 - 28)/(2 π f), computed.
    [1, 1.59],
    [0.75, 2.12],
    [0.5, 3.18],
    [0.25, 6.37],
  ])('says how deep the opening of %f of a circle must be', (share, depth) => {
    const sizes = { ...circleSizes({ waist: inches(28), length: inches(26), share }), sections: 2 };
    const made = sectorPieces(sizes, { newId: numbered(), name: 'Skirt', topRole: 'waist' });
    if (!Array.isArray(made)) throw new Error(made.why);
    const finding = only(findingsOf(made), 'no-opening');
    expect(finding.depth / MM_PER_INCH).toBeCloseTo(depth, 2);
  });

  it('asks for no opening where one is named, or none is needed', () => {
    expect(kindsOf(findingsOf([halfCircle(28, 'closed')]))).toContain('no-opening');
    expect(kindsOf(findingsOf([halfCircle(28, 'open')]))).not.toContain('no-opening');
    expect(kindsOf(findingsOf([tube(42)]))).not.toContain('no-opening');
  });

  it('says when an opening is too short for the hips, and needs no more once it is long enough', () => {
    // 24 in at the waist, 46 at 8 in down and 106.5 at 30, evenly: 38 in of hips pass (38 - 24)/(46 - 24) of 8 in down.
    const skirt = (opening: number): Piece => {
      const half = (girth: number) => inches(girth / 4);
      const piece = traced('skirt', [
        [[0, 0], 'waist'],
        [[half(24), 0], 'seam'],
        [[half(106.5), inches(30)], 'hem'],
        [[0, inches(30)], 'seam'],
        [[0, inches(opening)], 'opening'],
      ]);
      return { ...piece, cut: { how: 'pair', count: 4 } };
    };
    const short = only(findingsOf([skirt(4)]), 'opening-short');
    expect(short).toMatchObject({ weight: 'warn', place: { kind: 'edge', pieceId: skirt(4).id } });
    expect(short.opening / MM_PER_INCH).toBeCloseTo(4, 9);
    expect(short.needed / MM_PER_INCH).toBeCloseTo((14 / 22) * 8, 6);
    expect(kindsOf(findingsOf([skirt(5.5)]))).not.toContain('opening-short');
    expect(kindsOf(findingsOf([skirt(4)]))).not.toContain('no-opening');
  });

  it('says which pieces end above a level instead of judging a girth without them', () => {
    const short: Piece = {
      ...traced('yoke', [
        [[0, 0], 'waist'],
        [[inches(10), 0], 'seam'],
        [[inches(10), inches(6)], 'hem'],
        [[0, inches(6)], 'fold'],
      ]),
      cut: { how: 'fold', count: 1 },
    };
    const found = findingsOf([tube(40, { how: 'fold', count: 1 }), short]);
    const below = only(found, 'level-below-piece');
    expect(below).toMatchObject({ weight: 'warn', girth: 'hip', pieceIds: [short.id] });
    expect(below.place).toMatchObject({ kind: 'ring' });
    expect(below.depth / MM_PER_INCH).toBeCloseTo(8, 9);
    expect(kindsOf(found)).not.toContain('panel-missing');
    expect(found.filter(({ kind }) => kind === 'girth-too-small')).toEqual([]);
  });

  it('names missing measures and pieces without a waist', () => {
    expect(
      only(findingsOf([tube(42)], { waist: 40 }).filter(isMissing('waistToHip')), 'girth-measure-missing').weight,
    ).toBe('warn');
    const { garment, ring } = garmentOf([tube(42)], figure);
    const bare = { ...garment, pieces: garment.pieces.map(withoutWaist) };
    expect(kindsOf(fitFindings({ ...bare, rings: [ring] }))).toEqual(['no-waist-edge']);
  });

  it('has nothing to say of a wide enough skirt that opens', () => {
    const { garment, ring } = garmentOf([halfCircle(28.5, 'open')], figure);
    expect(fitFindings(setEase(garment, ring.id, ring.levels[0]?.id ?? '', inches(0.5)))).toEqual([]);
  });
});

const isMissing = (measure: MeasureName) => (finding: FitFinding) =>
  finding.kind === 'girth-measure-missing' && finding.measure === measure;

function withoutWaist(piece: Piece): Piece {
  return { ...piece, edges: piece.edges.map((edge) => (edge.role === 'waist' ? { ...edge, role: 'seam' } : edge)) };
}
