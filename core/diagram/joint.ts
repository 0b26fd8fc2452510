/** How one half of a diagram is laid onto the other by places seen in both. */
import type { Affine } from '../geometry/affine';
import { invertAffine, transformPoint } from '../geometry/affine';
import { distance, type Point } from '../geometry/point';
import type { PointPair } from '../geometry/projective';
import { bestSimilarity } from '../geometry/similarity';

export interface Joint {
  /** From its own flat plane, in mm at full size, to the table: turned and shifted, never stretched. */
  readonly onto: Affine;
  readonly back: Affine;
  /** By what its own scale was multiplied so that the places match; 1 where it keeps its own. */
  readonly factor: number;
  /** How far the matching places lie apart, in mm, in their order. */
  readonly apart: readonly number[];
}

/** The least-squares joint of places here (mm on its own plane) onto places on the table; `undefined` for fewer than two. */
export function jointOf(pairs: readonly PointPair[], size: 'fitted' | 'own'): Joint | undefined {
  const fitted = bestSimilarity(pairs, size === 'fitted' ? 'free' : 'kept');
  if (!fitted) return undefined;
  const factor = Math.hypot(fitted.a, fitted.b);
  const [a, b] = [fitted.a / factor, fitted.b / factor];
  const onto = { ...fitted, a, b, c: -b, d: a };
  const back = invertAffine(onto);
  if (!back) return undefined;
  const grown = ({ x, y }: Point) => ({ x: factor * x, y: factor * y });
  return { onto, back, factor, apart: pairs.map(({ from, to }) => distance(transformPoint(onto, grown(from)), to)) };
}
