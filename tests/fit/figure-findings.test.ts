import { describe, expect, it } from 'vitest';
import { figureFindings } from '../../core/fit/figure-findings';
import { obeyWhole } from '../../core/fit/obey-whole';
import { printedSum } from '../../core/fit/printed-sums';
import { setStated } from '../../core/garment/edge-edits';
import type { Garment } from '../../core/garment/garment';
import type { Piece, StatedOnEdge } from '../../core/garment/piece';
import { removePiece } from '../../core/garment/piece-list';
import type { PrintedWhole } from '../../core/garment/printed-whole';
import { inches } from '../../core/units/inch';
import { traced } from '../shaping/traced';
import { garmentOf } from './skirts';

/** A gore whose hem is 17 1/2 in, straight, drawn a little off. */
const gore = (name: string): Piece => ({
  ...traced(name, [
    [[0, 0], 'waist'],
    [[160, 0], 'seam'],
    [[300, 950], 'hem'],
    [[-140, 950], 'seam'],
  ]),
  id: name,
});

const sewn = (pieces: readonly Piece[]): Garment => garmentOf(pieces, {}).garment;

const printed = (piece: Piece, index: number, length: number, rules: StatedOnEdge['rules'] = 'unsettled') =>
  setStated(piece, piece.edges[index]?.id ?? '', { length: inches(length), rules });

const ref = (piece: Piece, index: number) => ({ pieceId: piece.id, edgeId: piece.edges[index]?.id ?? '' });

function skirt(more: Partial<PrintedWhole> = {}, hems: readonly number[] = [12.25, 12.25]): Garment {
  const pieces = hems.map((hem, k) => printed(gore(`gore-${k}`), 2, hem));
  const whole: PrintedWhole = {
    id: 'hem',
    name: 'Hem',
    length: inches(25),
    edges: pieces.map((piece) => ref(piece, 2)),
    rules: 'unsettled',
    ...more,
  };
  return { ...sewn(pieces), wholes: [whole] };
}

describe('figureFindings', () => {
  it('says that hems of 12 1/4 and 12 1/4 in add to 24 1/2 in where the whole says 25', () => {
    const [clash, ...rest] = figureFindings(skirt());
    expect(rest).toEqual([]);
    expect(clash).toMatchObject({
      kind: 'figures-clash',
      weight: 'stop',
      name: 'Hem',
      sum: inches(24.5),
      whole: inches(25),
      allPrinted: true,
      lengths: [
        { length: inches(12.25), times: 1 },
        { length: inches(12.25), times: 1 },
      ],
    });
  });

  it('is content within a sixteenth of an inch, and when she lets the single figures rule', () => {
    expect(figureFindings(skirt({}, [12.5, 12.45]))).toEqual([]);
    expect(figureFindings(skirt({ rules: 'parts' }))).toEqual([]);
  });

  it('counts an edge as often as it is in the whole garment: the 17 1/2 in printed for each of four gores want 17 3/4', () => {
    // The Perfect Dressmaking System (1914), page 13: 17 1/2 in for the hem of a gore, of a skirt of 81 in with 10 in in the front.
    const piece = { ...printed(gore('gore'), 2, 17.5), cut: { how: 'pair', count: 4 } as const };
    const whole = { id: 'w', name: '', length: inches(71), edges: [ref(piece, 2)], rules: 'unsettled' } as const;
    const garment: Garment = { ...sewn([piece]), wholes: [{ ...whole, counted: 'in-garment' }] };
    expect(figureFindings(garment)).toMatchObject([{ sum: inches(70), lengths: [{ length: inches(17.5), times: 4 }] }]);
  });

  it('passes over an edge that is gone', () => {
    const garment = removePiece(skirt(), 'gore-1');
    expect(garment.wholes?.[0]?.edges).toHaveLength(1);
    expect(printedSum(garment, garment.wholes?.[0] as PrintedWhole).sum).toBeCloseTo(inches(12.25), 9);
  });

  it('holds the figures of the two sides of a seam against one another, less the ease that is meant', () => {
    const [front, back] = [printed(gore('front'), 1, 38), printed(gore('back'), 3, 39)];
    const seam = { id: 's', name: '', one: [ref(front, 1)], other: [ref(back, 3)], ease: 0, way: 'opposite' } as const;
    const garment = { ...sewn([front, back]), seams: [seam] };
    expect(figureFindings(garment)).toMatchObject([
      { kind: 'seam-figures-clash', one: inches(38), other: inches(39), weight: 'warn' },
    ]);
    expect(figureFindings({ ...garment, seams: [{ ...seam, ease: inches(-1) }] })).toEqual([]);
  });

  it('says when a straight edge is printed longer than all the others together', () => {
    const piece = [0, 1, 3].reduce((now, index) => printed(now, index, 10), printed(gore('gore'), 2, 31));
    expect(figureFindings(sewn([piece]))).toMatchObject([
      { kind: 'figures-cannot-close', stated: inches(31), others: expect.closeTo(inches(30), 9) },
    ]);
  });
});

describe('obeyWhole', () => {
  it('shares what is wanting among the edges and pulls them', () => {
    const garment = skirt();
    const obeyed = obeyWhole(garment, garment.wholes?.[0] as PrintedWhole);
    if ('kind' in obeyed) throw new Error(obeyed.why);
    expect(printedSum(obeyed, obeyed.wholes?.[0] as PrintedWhole)).toMatchObject({
      sum: expect.closeTo(inches(25), 6),
      drawn: expect.closeTo(inches(25), 2),
    });
    expect(figureFindings(obeyed)).toEqual([]);
  });

  it('is found again when an edge is moved afterwards', () => {
    const garment = skirt({ rules: 'whole' });
    expect(figureFindings(garment)).toMatchObject([{ kind: 'whole-not-met', whole: inches(25) }]);
  });
});
