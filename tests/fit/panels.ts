import type { Garment, Ring } from '../../core/garment/garment';
import type { Measure, MeasureName } from '../../core/garment/measure';
import type { Piece } from '../../core/garment/piece';
import { inches } from '../../core/units/inch';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

/** A panel with straight edges by its width at waist and hem and its length (in); its front edge is drawn first. */
export function panel(
  name: string,
  [waist, hem, long]: readonly [number, number, number],
  [front, back]: readonly ['fold' | 'seam', 'fold' | 'seam'],
): Piece {
  const [x0, x1] = front === 'fold' ? [0, waist] : back === 'fold' ? [-waist, 0] : [-waist / 2, waist / 2];
  const [h0, h1] = front === 'fold' ? [0, hem] : back === 'fold' ? [-hem, 0] : [-hem / 2, hem / 2];
  const piece = traced(name, [
    [[inches(x0), 0], 'waist'],
    [[inches(x1), 0], back],
    [[inches(h1), inches(long)], 'hem'],
    [[inches(h0), inches(long)], front],
  ]);
  const isOnFold = front === 'fold' || back === 'fold';
  return { ...piece, cut: isOnFold ? { how: 'fold', count: 1 } : { how: 'pair', count: 2 } };
}

/** Front and back on the fold with a side gore between them on both sides: 26 in round the waist. */
export function fourGores(measures: Partial<Record<MeasureName, number | Measure>> = figure): {
  readonly garment: Garment;
  readonly ring: Ring;
} {
  return garmentOf(
    [
      panel('front', [4, 9, 38], ['fold', 'seam']),
      panel('side', [5, 15, 38], ['seam', 'seam']),
      panel('back', [4, 11, 38], ['seam', 'fold']),
    ],
    measures,
  );
}
