import { describe, expect, it } from 'vitest';
import type { ToLay } from '../../core/cloth/lay-task';
import { type LayingChoice, type PieceToLay, pieceToLay } from '../../core/cloth/piece-to-lay';
import { outlineInStance } from '../../core/cloth/stance-outline';
import type { Cut, Piece } from '../../core/garment/piece';
import { rotationAbout, transformPoint } from '../../core/geometry/affine';
import { boxOfPoints } from '../../core/geometry/bounds';
import { ringArea } from '../../core/geometry/polygon';
import { at, pieceOf } from '../seams/pieces';

/** Half a front: the fold on the left and 500 long, 200 wide above and 260 below, 10 allowed all round but on the fold. */
function halfFront(cut: Cut): Piece {
  const sides = [{ allowance: 10 }, { allowance: 10 }, { allowance: 10 }, { role: 'fold', allowance: 0 }] as const;
  const corners = [at(40, 30), at(240, 30), at(300, 530), at(40, 530)];
  return { ...pieceOf(corners, sides, [], cut), grain: { from: at(90, 100), to: at(90, 400) } };
}

const straight: LayingChoice = { grain: 'straight', tolerance: 0.5 };
const double = { folded: 'lengthwise', nap: 'none' } as const;
const single = { folded: 'open', nap: 'none' } as const;

function entries(made: PieceToLay): readonly ToLay[] {
  if (made.kind !== 'to-lay') throw new Error(made.kind);
  return made.entries;
}

function size(entry: ToLay | undefined, stance = 0) {
  const box = boxOfPoints(outlineInStance(entry?.outline ?? [], entry?.stances[stance] ?? { turn: 0 }));
  return [box?.maxX ?? 0, box?.maxY ?? 0];
}

describe('pieceToLay(piece, cloth, choice)', () => {
  it('lays a piece on the fold with its fold on the fold, grain along the cloth, as drawn or end for end', () => {
    const [entry, ...rest] = entries(pieceToLay(halfFront({ how: 'fold', count: 2 }), double, straight));
    expect(rest).toEqual([]);
    expect(entry?.count).toBe(2);
    expect(entry?.onFold).toBe('along');
    expect(entry?.stances).toHaveLength(2);
    const [long, wide] = size(entry);
    expect(long).toBeCloseTo(520, 6);
    // 260 and the allowance of a side that leans 60 in 500, where it meets the hem's.
    expect(wide).toBeGreaterThan(270);
    expect(wide).toBeLessThan(273);
    const onFold = entry?.outline.filter(({ y }) => y === 0).map(({ x }) => x) ?? [];
    expect(Math.max(...onFold) - Math.min(...onFold)).toBeCloseTo(520, 6);
    expect(Math.min(...(entry?.outline.map(({ y }) => y) ?? []))).toBe(0);
  });

  it('keeps the top of every piece the same way on one-way cloth', () => {
    const napped = { ...double, nap: 'one-way' } as const;
    expect(entries(pieceToLay(halfFront({ how: 'fold', count: 1 }), napped, straight))[0]?.stances).toEqual([
      { turn: 0 },
    ]);
    expect(entries(pieceToLay(halfFront({ how: 'single', count: 1 }), napped, straight))[0]?.stances).toEqual([
      { turn: 0 },
    ]);
    // Turned and mirrored about the fold, the widest end stays where the grain points.
    const turned = turnedBy(halfFront({ how: 'fold', count: 1 }), 2);
    for (const piece of [halfFront({ how: 'fold', count: 1 }), turned]) {
      const outline = entries(pieceToLay(piece, napped, straight))[0]?.outline ?? [];
      const deepest = outline.reduce((far, point) => (point.y > far.y ? point : far));
      expect(deepest.x).toBeGreaterThan(Math.max(...outline.map(({ x }) => x)) - 30);
    }
  });

  it('opens it out on single cloth, to twice the half', () => {
    const half = entries(pieceToLay(halfFront({ how: 'fold', count: 3 }), double, straight))[0];
    const [whole] = entries(pieceToLay(halfFront({ how: 'fold', count: 3 }), single, straight));
    expect(whole?.count).toBe(3);
    expect(whole?.onFold).toBeUndefined();
    expect(Math.abs(ringArea(whole?.outline ?? []))).toBeCloseTo(2 * Math.abs(ringArea(half?.outline ?? [])), 1);
    expect(size(whole)[1]).toBeCloseTo(2 * (size(half)[1] ?? 0), 3);
    expect(size(whole)[0]).toBeCloseTo(520, 3);
  });

  it('cuts pairs from double cloth two at a time, from single cloth by hands, mirrored in the grain', () => {
    const pair = halfFront({ how: 'pair', count: 4 });
    expect(entries(pieceToLay(pair, double, straight)).map(({ count }) => count)).toEqual([2]);
    const hands = entries(pieceToLay(pair, single, straight));
    expect(hands.map(({ id, count }) => [id, count])).toEqual([
      ['p', 2],
      ['p/mirrored', 2],
    ]);
    const [one, other] = hands.map(({ outline }) => outline);
    expect(ringArea(other ?? [])).toBeCloseTo(ringArea(one ?? []), 6);
    expect(other?.map(({ y }) => -y).sort()).toEqual(one?.map(({ y }) => y).sort());
  });

  it('says how many are spare when single pieces are cut from double cloth', () => {
    const made = pieceToLay(halfFront({ how: 'single', count: 3 }), double, straight);
    expect(made.kind === 'to-lay' && made.spare).toBe(3);
    // A gore that flares alike on both sides: two from each place of two layers.
    const sides = [{ allowance: 12 }, { allowance: 12 }, { allowance: 12 }, { allowance: 12 }] as const;
    const gore = pieceOf([at(0, 0), at(90, 0), at(130, 400), at(-40, 400)], sides, [], { how: 'single', count: 3 });
    const either = pieceToLay({ ...gore, grain: { from: at(45, 50), to: at(45, 350) } }, double, straight);
    expect(entries(either)[0]?.count).toBe(2);
    expect(either.kind === 'to-lay' && either.spare).toBe(1);
  });

  it('turns the grain across or on the true bias, and tilts no further than she permits', () => {
    const piece = halfFront({ how: 'single', count: 1 });
    const degrees = (choice: LayingChoice) =>
      entries(pieceToLay(piece, single, choice))[0]?.stances.map(({ turn }) => Math.round((turn * 180) / Math.PI));
    expect(degrees({ ...straight, grain: 'cross' })).toEqual([90, 270]);
    expect(degrees({ ...straight, grain: 'bias' })).toEqual([45, 225, -45, 135]);
    const tilted = [0, 3, -3, 2, -2, 1, -1];
    expect(degrees({ ...straight, tilt: Math.PI / 60 })).toEqual(tilted.flatMap((by) => [by, 180 + by]));
    // Whatever she permits, the angles are not so many that they slow the laying, and none is beyond.
    const wide = degrees({ ...straight, tilt: Math.PI / 20 })?.map((turn) => (turn > 90 ? turn - 180 : turn));
    expect(wide).toHaveLength(18);
    expect([Math.max(...(wide ?? [])), Math.min(...(wide ?? []))]).toEqual([9, -9]);
    const cross = entries(pieceToLay(piece, single, { ...straight, grain: 'cross' }))[0];
    expect(size(cross)[1]).toBeCloseTo(520, 6);
  });

  it('lays a fold across the grain on the fold of cloth folded crosswise', () => {
    const across = { ...halfFront({ how: 'fold', count: 1 }), grain: { from: at(60, 200), to: at(220, 200) } };
    const [entry] = entries(pieceToLay(across, { folded: 'crosswise', nap: 'none' }, straight));
    expect(entry?.onFold).toBe('across');
    expect(size(entry)[1]).toBeCloseTo(520, 6);
  });

  it('says what is missing', () => {
    const piece = halfFront({ how: 'fold', count: 1 });
    const { grain: _, ...noGrain } = halfFront({ how: 'single', count: 1 });
    const unfolded = { ...piece, edges: piece.edges.map((edge) => ({ ...edge, role: 'seam' as const })) };
    const unsaid = { ...piece, edges: piece.edges.map(({ allowance: __, ...edge }) => edge) };
    const plain = { ...noGrain, edges: unfolded.edges };
    expect(pieceToLay(unfolded, double, straight).kind).toBe('no-fold-edge');
    expect(pieceToLay(unsaid, double, straight).kind).toBe('no-cut-line');
    expect(pieceToLay(plain, double, straight).kind).toBe('no-grain');
  });
});

function turnedBy(piece: Piece, angle: number): Piece {
  const map = rotationAbout(at(3, 8), angle);
  const { grain } = piece;
  return {
    ...piece,
    corners: piece.corners.map((corner) => ({ ...corner, at: transformPoint(map, corner.at) })),
    ...(grain ? { grain: { from: transformPoint(map, grain.from), to: transformPoint(map, grain.to) } } : {}),
  };
}
