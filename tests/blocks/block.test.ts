import { describe, expect, it } from 'vitest';
import { type Block, type BlockKind, type BodyMeasures, blockMeasures, draftBlock } from '../../core/blocks/block';
import { outlineOf } from '../../core/garment/outline';
import { pathBounds } from '../../core/geometry/path';
import { measured, plainNames } from './body-checks';
import { bodyOf, type LowerRow, SPREAD, UPPER, upperBodyOf, WAIST_OVER_HIP } from './survey-bodies';

const ease = { waist: 25, hip: 50 };
const round = { ...ease, bust: 70 };

/** One of each kind, with no two figures alike. */
const EVERY: Readonly<Record<BlockKind, Block>> = {
  'plain-skirt': { kind: 'plain-skirt', length: 651, ease },
  'two-dart-skirt': { kind: 'two-dart-skirt', length: 652 },
  'gored-skirt': { kind: 'gored-skirt', gores: 6, length: 653, hem: 1901, ease },
  'shared-gores': { kind: 'shared-gores', rule: 'five-equal', hem: 2057, offFloor: 150, ease },
  'five-gored-underskirt': { kind: 'five-gored-underskirt', offFloor: 160 },
  'circle-skirt': { kind: 'circle-skirt', share: 0.75, length: 654, sections: 1, waistEase: 12 },
  flounce: { kind: 'flounce', top: 1829, bottom: 2845, depth: 305, sections: 3 },
  'shaped-band': { kind: 'shaped-band', depth: 51, below: 20, parts: 2, lap: 25, on: 'whole', ease },
  'yoke-drawers': { kind: 'yoke-drawers', side: 432 },
  'school-drawers': { kind: 'school-drawers', side: 584 },
  'childs-drawers': { kind: 'childs-drawers', leg: 431 },
  'small-drawers': { kind: 'small-drawers', side: 508 },
  'small-underwaist': { kind: 'small-underwaist', underarm: 178 },
  bloomers: { kind: 'bloomers', outside: 660 },
  bodice: { kind: 'bodice', ease: round, opens: 'back' },
  slip: { kind: 'slip', ease: round, opens: 'front', joined: 'waist', length: 655, hem: 1902, gores: 4 },
  'bias-slip': { kind: 'bias-slip' },
};

const MIDDLE = { ...bodyOf([700, 1018, 980, 790, 1628]), bust: 900 };

describe('draftBlock', () => {
  it.each(Object.values(EVERY))('drafts $kind from just the measures it says it needs', (block) => {
    const only = Object.fromEntries(blockMeasures(block.kind).map((name) => [name, MIDDLE[name]])) as BodyMeasures;
    const made = draftBlock(block, only, plainNames());
    expect(made.kind).toBe('drafted');
    for (const name of blockMeasures(block.kind)) {
      const { [name]: _, ...rest } = only;
      expect(draftBlock(block, rest, plainNames())).toEqual({ kind: 'measures-missing', missing: [name] });
    }
  });

  it.each(Object.values(EVERY))('lays the pieces of $kind beside one another, every id its own', (block) => {
    const made = measured(block, MIDDLE);
    if (made.kind !== 'measured') throw new Error(made.why);
    const boxes = made.pieces.map((piece) => pathBounds(outlineOf(piece).whole));
    boxes.slice(1).forEach((box, i) => {
      expect(box.minX).toBeGreaterThan((boxes[i]?.maxX ?? 0) + 40);
    });
    const ids = made.pieces.flatMap((piece) => [piece.id, ...piece.edges.map(({ id }) => id)]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(made.crossings).toBe(0);
    expect(made.isClosed).toBe(true);
  });

  it('asks for the underbust of a slip that is joined there, and drafts it', () => {
    const slip: Block = { ...EVERY.slip, joined: 'underbust' } as Block;
    const { underbust: _, ...without } = MIDDLE;
    expect(draftBlock(slip, without, plainNames())).toEqual({ kind: 'measures-missing', missing: ['underbust'] });
    expect(draftBlock(slip, MIDDLE, plainNames()).kind).toBe('drafted');
  });

  it('passes the refusal of a draft on', () => {
    const skirt: Block = { kind: 'plain-skirt', length: 120, ease };
    expect(draftBlock(skirt, MIDDLE, plainNames())).toEqual({ kind: 'no-gore', why: 'hip-below-hem' });
  });

  it('hands the questions of a source on with the pieces', () => {
    const made = draftBlock(EVERY['five-gored-underskirt'], MIDDLE, plainNames());
    expect(made.kind === 'drafted' && made.questions.map(({ kind }) => kind)).toEqual(['source-ends']);
  });
});

/** Lengths come out right to a tenth of a millimetre, corners to a thousandth of a radian. */
const LENGTH = 0.1;
const SQUARE = 1e-3;

const FOR_ANY_BODY: readonly Block[] = [
  EVERY['plain-skirt'],
  EVERY['gored-skirt'],
  EVERY['shared-gores'],
  { kind: 'shared-gores', rule: 'four-panels', hem: 2058, offFloor: 151, ease },
  { ...EVERY['circle-skirt'], share: 1 } as Block,
  EVERY.slip,
  EVERY['shaped-band'],
  { kind: 'shaped-band', depth: 63, parts: 1, lap: 31, on: 'fold', ease },
];

function wellMade(block: Block, body: BodyMeasures): void {
  const made = measured(block, body);
  if (made.kind !== 'measured') throw new Error(made.why);
  expect(made.isClosed).toBe(true);
  expect(made.crossings).toBe(0);
  expect(made.offSquare).toBeLessThan(SQUARE);
  expect(made.offLength).toBeLessThan(LENGTH);
}

/** ANSUR II (2012), see survey-bodies.ts. */
describe('blocks for bodies as they are', () => {
  const rows: readonly LowerRow[] = [...WAIST_OVER_HIP, ...SPREAD];

  it.each(FOR_ANY_BODY)('$kind closes, is square at the waist and has the lengths asked for', (block) => {
    for (const row of rows) wellMade(block, bodyOf(row));
  });

  it('has a bodice for each, of the bust, the waist and the neck asked for', () => {
    for (const row of rows) wellMade(EVERY.bodice, bodyOf(row));
    for (const row of UPPER) wellMade(EVERY.bodice, upperBodyOf(row));
  });

  it('draws a waist larger than the hip without darts, its side sloping outwards to the waist', () => {
    for (const row of WAIST_OVER_HIP) {
      const made = measured({ kind: 'plain-skirt', length: 651, ease: { waist: 40, hip: 40 } }, bodyOf(row));
      if (made.kind !== 'measured') throw new Error(made.why);
      expect(made.pieces.flatMap(({ darts }) => darts)).toEqual([]);
      const [waist, hem] = [made.pieces[0]?.corners[1]?.at.x ?? 0, made.pieces[0]?.corners[2]?.at.x ?? 0];
      expect(waist).toBeGreaterThan(hem);
    }
  });
});
