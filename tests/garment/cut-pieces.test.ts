import { expect, it } from 'vitest';
import { cutPieces, isGuide } from '../../core/garment/cut-pieces';
import type { Piece } from '../../core/garment/piece';
import { linden } from './linden';

it('cutPieces leaves out guides and keeps the order, and is the same list where there are none', () => {
  const [first, second] = linden().pieces.map(({ use: _, ...piece }): Piece => piece);
  if (!first || !second) throw new Error('two pieces are needed');
  const guide: Piece = { ...second, id: 'guide', use: 'guide' };
  expect(cutPieces({ pieces: [first, guide, second] })).toEqual([first, second]);
  const pieces = [first, second];
  expect(cutPieces({ pieces })).toBe(pieces);
  expect([isGuide(first), isGuide(guide)]).toEqual([false, true]);
});
