import { describe, expect, it } from 'vitest';
import { asGarment, girthsBeside } from '../../core/compare/girths-beside';
import { girthsOf } from '../../core/fit/round-body';
import type { Garment } from '../../core/garment/garment';
import { rectanglePiece } from '../../core/garment/new-piece';
import type { Piece } from '../../core/garment/piece';
import { idsInOrder, linden } from '../garment/linden';

const newId = idsInOrder();

/** A rectangle hanging from its top, `across` wide and cut twice. */
function cloth(across: number, down: number): Piece {
  const piece = rectanglePiece({ x: 31, y: 19 }, { across, down }, { newId, name: 'cloth' }) as Piece;
  return {
    ...piece,
    cut: { how: 'pair', count: 2 },
    edges: piece.edges.map((edge, i) => ({ ...edge, role: i === 0 ? 'waist' : 'seam' })),
  };
}

function worn(pieces: readonly Piece[], ringId: string, name: string): Garment {
  const ring = {
    id: ringId,
    name,
    members: pieces.map(({ id }) => ({ pieceId: id })),
    levels: [
      { id: 'w', girth: 'waist', depth: { kind: 'length', length: 0 }, ease: 11 },
      { id: 'h', girth: 'hip', depth: { kind: 'length', length: 190 }, ease: 47 },
      { id: 'k', girth: 'knee', depth: { kind: 'length', length: 520 }, ease: 0 },
    ],
  } as const;
  const { seams: _seams, ...rest } = linden();
  return { ...rest, pieces, rings: [ring] };
}

describe('girthsBeside', () => {
  const mine = worn([cloth(170, 610), cloth(190, 640)], 'a', 'skirt');

  it('measures both all the way round at the depths of the first, and says where the other ends above one', () => {
    const theirs = worn([cloth(175, 480), cloth(203, 700)], 'b', 'other skirt');
    expect(girthsBeside(mine, theirs).map(({ level, depth, one, other }) => [level.id, depth, one, other])).toEqual([
      ['w', 0, 720, 756],
      ['h', 190, 720, 756],
      ['k', 520, 720, undefined],
    ]);
  });

  it('agrees with the girths of the Fit room when a garment is beside itself', () => {
    const whole = linden();
    const beside = girthsBeside(whole, whole);
    const alone = whole.rings.flatMap((ring) => girthsOf(whole, ring));
    expect(beside.length).toBeGreaterThan(0);
    for (const { level, one, other } of beside) {
      const girth = alone.find((found) => found.level.id === level.id);
      expect(one).toBe(girth?.kind === 'no-depth' ? undefined : girth?.total);
      expect(other).toBe(one);
    }
  });

  it('takes pieces of a draft that hang from a waist as going round, and leaves out those that do not', () => {
    const flounce = {
      ...cloth(400, 90),
      edges: cloth(400, 90).edges.map((edge) => ({ ...edge, role: 'seam' as const })),
    };
    const draft = asGarment(mine, [cloth(181, 530), flounce]);
    expect(girthsBeside(mine, draft).map(({ other }) => other)).toEqual([362, 362, 362]);
    expect(girthsBeside(mine, asGarment(mine, [flounce]))).toEqual([]);
  });

  it('goes by id, then by name, and does not guess among several', () => {
    const [ring] = mine.rings;
    if (!ring) throw new Error('there is a ring');
    const two = {
      ...mine,
      rings: [
        { ...ring, id: 'c', name: 'lining' },
        { ...ring, id: 'd' },
      ],
    };
    expect(girthsBeside(mine, two)).toHaveLength(3);
    const strange = { ...two, rings: two.rings.map((one, i) => ({ ...one, name: `ring ${i}` })) };
    expect(girthsBeside(mine, strange)).toEqual([]);
  });
});
