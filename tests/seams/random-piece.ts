/** Random pieces with straight and curved edges, jutting and hollow corners, and allowances of the trade. */
import type { Piece } from '../../core/garment/piece';
import type { Point } from '../../core/geometry/point';
import { pieceOf, runBackwards, type Side } from './pieces';

/** A repeatable source of numbers in [0, 1): the linear congruence of Numerical Recipes (Press et al.), 32 bits. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const widths = [0, 6.35, 9.525, 12.7, 15.875, 25.4, 50.8];

/** A ring about the origin with 3 to 10 corners, 60 to 500 mm out; half of the edges curve. */
export function randomPiece(random: () => number, allowance?: number): Piece {
  const count = 3 + Math.floor(random() * 8);
  const corners: Point[] = [];
  for (let i = 0; i < count; i++) {
    const angle = ((i + 0.7 * random()) / count) * 2 * Math.PI;
    const out = 60 + 440 * random();
    corners.push({ x: out * Math.cos(angle), y: out * Math.sin(angle) });
  }
  const sides: Side[] = corners.map((from, i) => {
    const to = corners[(i + 1) % count] as Point;
    const width = allowance ?? (widths[Math.floor(random() * widths.length)] as number);
    if (random() < 0.5) return { allowance: width };
    const bow = (random() - 0.5) * 0.5;
    const share = 0.3 + 0.4 * random();
    const through = [
      {
        x: from.x + (to.x - from.x) * share - (to.y - from.y) * bow,
        y: from.y + (to.y - from.y) * share + (to.x - from.x) * bow,
      },
    ];
    return { allowance: width, through };
  });
  const piece = pieceOf(corners, sides);
  return random() < 0.5 ? piece : runBackwards(piece);
}
