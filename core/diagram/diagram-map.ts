import type { Diagram } from '../garment/diagram';
import type { MeasureSet } from '../garment/measure';
import { type PhotoPoint, type TablePoint, vectorBetween } from '../geometry/point';
import { composeHomography, type Homography, invertHomography } from '../geometry/projective';
import { type Scale, type ScaledLine, solveScale } from './solve-scale';
import { inFrontOnly, type NotSquared, onPlane, type SquaredPlane, squaredPlane } from './squared-plane';
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
  readonly toTable: Homography;
  readonly toPhoto: Homography;
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
  const { x, y } = diagram.placedAt;
  const toTable = composeHomography([across, 0, x, 0, down, y, 0, 0, 1], plane.fromPhoto);
  const toPhoto = invertHomography(toTable);
  if (!toPhoto) return { kind: 'not-squared', why: 'coincident' };
  return { kind: 'map', plane, scale, across, down, toTable, toPhoto };
}

/** A place of the picture on the table; `undefined` on the horizon or beyond it. */
export function photoToTable(map: DiagramMap, point: PhotoPoint): TablePoint | undefined {
  return inFrontOnly(map.toTable, point, map.plane.inFront);
}

/** A place of the table on the picture; `undefined` where the table runs behind the camera. */
export function tableToPhoto(map: DiagramMap, point: TablePoint): PhotoPoint | undefined {
  const inFront = photoToTable(map, map.plane.inFront);
  return inFront && inFrontOnly(map.toPhoto, point, inFront);
}

/** The known lengths that say something, as runs on the flat plane. */
function linesOnPlane(diagram: Diagram, plane: SquaredPlane, set: MeasureSet): ScaledLine[] {
  return diagram.knownLengths.flatMap(({ id, from, to, says }) => {
    const [a, b] = [onPlane(plane, from), onPlane(plane, to)];
    const full = fullSizeLength(says, set);
    return a && b && full.kind === 'full-size' ? [{ id, run: vectorBetween(a, b), length: full.length }] : [];
  });
}
