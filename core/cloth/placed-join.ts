import type { PieceJoin } from '../garment/garment-cloth';
import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import type { Placed, ToLay } from './lay-task';
import { joinLine } from './piecing';
import { inStance } from './stance-outline';

/** Where a laid part is joined to its other part, as a line on the cloth; `undefined` for a piece that is cut whole. */
export function placedJoin(
  piece: ToLay,
  { stance, at }: Placed,
  joins: readonly PieceJoin[],
): [Point, Point] | undefined {
  const line = joins.length > 0 ? joinLine(piece, joins) : undefined;
  const how = piece.stances[stance];
  const corner = line && how && boxOfPoints(piece.outline.map((point) => inStance(point, how)));
  if (!line || !how || !corner) return undefined;
  const onCloth = (point: Point) => {
    const { x, y } = inStance(point, how);
    return { x: x - corner.minX + at.x, y: y - corner.minY + at.y };
  };
  return [onCloth(line[0]), onCloth(line[1])];
}
