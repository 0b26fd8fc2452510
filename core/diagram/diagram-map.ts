import type { Diagram } from '../garment/diagram';
import type { MeasureSet } from '../garment/measure';
import { type PhotoPoint, type TablePoint, vectorBetween } from '../geometry/point';
import { type Scale, type ScaledLine, solveScale } from './solve-scale';
import { fromPlane, type NotSquared, onPlane, type SquaredPlane, squaredPlane } from './squared-plane';
import { fullSizeLength } from './stated-length';

/** How a picture lies on the table at full size. */
export interface DiagramMap {
  readonly kind: 'map';
  readonly plane: SquaredPlane;
  /** `undefined` while no known length says anything; the size on the table is then only a stand-in. */
  readonly scale: Scale | undefined;
  /** mm per unit of the flat plane, the stand-in included. */
  readonly across: number;
  readonly down: number;
  /** Where the plane's zero lies. */
  readonly placedAt: TablePoint;
}

/** Without a known length the longer side of the rectangle is taken for this many mm, so that something can be seen. */
export const STAND_IN_SIZE = 500;

/** The map of a picture onto the table, or why there is none. */
export function diagramMap(diagram: Diagram, set: MeasureSet): DiagramMap | NotSquared {
  const plane = squaredPlane(diagram);
  if (plane.kind === 'not-squared') return plane;
  const scale = solveScale(linesOnPlane(diagram, plane, set));
  const standIn = STAND_IN_SIZE / Math.max(plane.across, plane.down);
  const { across, down } = scale ?? { across: standIn, down: standIn };
  return { kind: 'map', plane, scale, across, down, placedAt: diagram.placedAt };
}

/** A place of the picture on the table; `undefined` on the horizon or beyond it. */
export function photoToTable({ plane, across, down, placedAt }: DiagramMap, point: PhotoPoint): TablePoint | undefined {
  const place = onPlane(plane, point);
  return place && { x: placedAt.x + across * place.x, y: placedAt.y + down * place.y };
}

/** A place of the table on the picture; `undefined` where the table runs behind the camera. */
export function tableToPhoto({ plane, across, down, placedAt }: DiagramMap, point: TablePoint): PhotoPoint | undefined {
  return fromPlane(plane, { x: (point.x - placedAt.x) / across, y: (point.y - placedAt.y) / down });
}

/** The known lengths that say something, as runs on the flat plane. */
function linesOnPlane(diagram: Diagram, plane: SquaredPlane, set: MeasureSet): ScaledLine[] {
  return diagram.knownLengths.flatMap(({ id, from, to, says }) => {
    const [a, b] = [onPlane(plane, from), onPlane(plane, to)];
    const full = fullSizeLength(says, set);
    return a && b && full.kind === 'full-size' ? [{ id, run: vectorBetween(a, b), length: full.length }] : [];
  });
}
