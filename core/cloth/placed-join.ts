import type { PieceJoin } from '../garment/garment-cloth';
import type { Point } from '../geometry/point';
import type { Placed, ToLay } from './lay-task';
import { joinLine } from './piecing';
import { boxInStance, inStance } from './stance-outline';

/** Where a laid part is joined to its other part, as a line on the cloth; `undefined` for a piece that is cut whole. */
export function placedJoin(
  piece: ToLay,
  { stance, at }: Placed,
  joins: readonly PieceJoin[],
): [Point, Point] | undefined {
  const line = joins.length > 0 ? joinLine(piece, joins) : undefined;
  const how = piece.stances[stance];
  const box = line && how && boxInStance(piece.outline, how);
  if (!line || !how || !box) return undefined;
  const onCloth = (point: Point) => {
    const { x, y } = inStance(point, how);
    return { x: x - box.minX + at.x, y: y - box.minY + at.y };
  };
  return [onCloth(line[0]), onCloth(line[1])];
}
