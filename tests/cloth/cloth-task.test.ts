import { describe, expect, it } from 'vitest';
import type { Cloth } from '../../core/cloth/cloth';
import { clothTask, clothVariants } from '../../core/cloth/cloth-task';
import { layFaults } from '../../core/cloth/lay-check';
import { laidFor } from '../../core/cloth/lay-search';
import { seededRandom } from '../../core/cloth/seeded-random';
import type { Cut, Piece } from '../../core/garment/piece';
import { inches } from '../../core/units/inch';
import { at, pieceOf } from '../seams/pieces';

const cotton: Cloth = {
  id: 'c',
  name: 'Cotton',
  width: inches(36),
  selvedge: inches(0.5),
  atHand: inches(90),
  folded: 'lengthwise',
  nap: 'none',
  flaws: [],
};

const choice = { grain: 'straight', tolerance: 0.5 } as const;

function panel(id: string, wide: number, long: number, cut: Cut): Piece {
  const corners = [at(0, 0), at(wide, 0), at(wide + 40, long), at(0, long)];
  const sides = [{ allowance: 12 }, { allowance: 15 }, { allowance: 40 }, { role: 'fold', allowance: 0 }] as const;
  return { ...pieceOf(corners, sides, [], cut), id, grain: { from: at(50, 50), to: at(50, 250) } };
}

const garment = [
  panel('front', 250, 640, { how: 'fold', count: 1 }),
  panel('side', 180, 600, { how: 'pair', count: 4 }),
  { ...panel('base', 250, 640, { how: 'fold', count: 1 }), use: 'guide' as const },
];

const band = { id: 'band', length: 760, width: 70, count: 1, cut: 'along' } as const;

describe('clothTask(pieces, cloth, choice)', () => {
  it.each(['lengthwise', 'open', 'crosswise'] as const)(
    'on %s cloth makes what can be laid without fault',
    (folded) => {
      const made = clothTask({ pieces: garment, strips: [band] }, { ...cotton, folded }, choice);
      if (made.kind !== 'task') throw new Error(JSON.stringify(made.reasons));
      expect(made.task.toLay.some(({ id }) => id === 'base')).toBe(false);
      const lay = laidFor(made.task, { steps: 30, random: seededRandom(2) });
      expect(lay && layFaults(made.task, lay)).toEqual([]);
      expect(made.lengthAtHand).toBeCloseTo(folded === 'crosswise' ? inches(45) : inches(90), 9);
    },
  );

  it('says everything that stands against it', () => {
    const wide = panel('wide', 430, 700, { how: 'fold', count: 1 });
    const { grain: _, ...noGrain } = panel('side', 180, 600, { how: 'pair', count: 2 });
    const plain = { ...noGrain, edges: noGrain.edges.map((edge) => ({ ...edge, role: 'seam' as const })) };
    const made = clothTask({ pieces: [wide, plain], strips: [] }, cotton, choice);
    if (made.kind !== 'cannot-lay') throw new Error('the piece is too wide');
    expect(made.reasons.map(({ kind }) => kind).sort()).toEqual(['no-grain', 'too-wide']);
    const tooWide = made.reasons.find((reason) => reason.kind === 'too-wide');
    expect(tooWide?.across).toBeCloseTo(inches(17.5), 9);
    expect(tooWide?.needs).toBeGreaterThan(430 + 40 + 15);
  });
});

describe('clothVariants(from, cloth, choice, which)', () => {
  it('gives each width and grain once, and what cannot be laid on it', () => {
    const which = { widths: [inches(27), inches(54)], grains: ['straight', 'cross', 'bias'] as const };
    const variants = clothVariants({ pieces: garment, strips: [] }, { ...cotton, folded: 'open' }, choice, which);
    expect(variants.map(({ width, grain, made }) => [Math.round(width / inches(1)), grain, made.kind])).toEqual([
      [27, 'straight', 'task'],
      [27, 'cross', 'cannot-lay'],
      [27, 'bias', 'cannot-lay'],
      [54, 'straight', 'task'],
      [54, 'cross', 'task'],
      [54, 'bias', 'task'],
    ]);
  });
});
