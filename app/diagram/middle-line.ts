import type { Diagram } from '../../core/garment/diagram';
import type { FreshLine } from './desk-store';

/** A line to begin with when its ends are to be typed: level, in the middle of the picture. */
export function middleLine({ id, widthPx, heightPx }: Diagram): FreshLine {
  const y = heightPx / 2;
  return { diagramId: id, from: { x: widthPx / 4, y }, to: { x: (3 * widthPx) / 4, y } };
}
