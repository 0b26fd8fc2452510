import { outlineOf } from '../../core/garment/outline';
import type { Dart, Piece } from '../../core/garment/piece';
import { edgeIndex } from '../../core/garment/with-piece';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import { distance, type TablePoint } from '../../core/geometry/point';

/** Where the middle of a dart's mouth lies, how deep the dart is, and how long the edge it lies on (mm). */
export function dartPlace(
  piece: Piece,
  dart: Dart,
): { readonly mouth: TablePoint; readonly depth: number; readonly length: number } | undefined {
  const path = outlineOf(piece).edges[edgeIndex(piece, dart.edgeId)];
  if (!path) return undefined;
  const mouth = pathAtLength(path, dart.along).point;
  return { mouth, depth: distance(mouth, dart.point), length: pathLength(path) };
}
