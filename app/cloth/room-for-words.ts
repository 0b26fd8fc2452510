import type { ToLay } from '../../core/cloth/lay-task';
import { ringCentre } from '../../core/cloth/ring-middle';
import { rotationAbout, transformPoint } from '../../core/geometry/affine';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import type { Shown } from './shown-lay';

/** Where there is room for words on a piece as it lies. */
interface Room {
  readonly middle: Point;
  /** How far it reaches along its grain, and across. */
  readonly wide: number;
  readonly high: number;
}

/** For each piece in each way it lies, from the corner of its box. */
const rooms = new WeakMap<ToLay, Map<number, Room>>();

/** The room on a piece, on the cloth. */
export function roomOf({ ring, place, piece }: Shown): Room {
  const known = rooms.get(piece) ?? new Map<number, Room>();
  rooms.set(piece, known);
  const { at, stance } = place;
  const had = known.get(stance) ?? roomIn(ring, at, piece.stances[stance]?.turn ?? 0);
  known.set(stance, had);
  return { ...had, middle: { x: at.x + had.middle.x, y: at.y + had.middle.y } };
}

function roomIn(ring: readonly Point[], at: Point, turn: number): Room {
  const straight = ring.map((point) => transformPoint(rotationAbout(at, -turn), point));
  const box = boxOfPoints(straight) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const { x, y } = transformPoint(rotationAbout(at, turn), ringCentre(straight));
  return { middle: { x: x - at.x, y: y - at.y }, wide: box.maxX - box.minX, high: box.maxY - box.minY };
}
