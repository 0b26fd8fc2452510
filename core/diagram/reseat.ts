import type { Diagram } from '../garment/diagram';
import type { Garment } from '../garment/garment';
import type { MeasureSet } from '../garment/measure';
import { mapPiece } from '../garment/move-piece';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import type { Point } from '../geometry/point';
import { applyHomography, composeHomography } from '../geometry/projective';
import { diagramMap } from './diagram-map';

/**
 * The garment with every piece traced from a diagram carried along when the diagram is squared up or scaled anew, so
 * that each point stays on the printed line it was placed on. Allowances stay as said; darts and notches keep their
 * share of the way along their edge. The garment as it was when either map cannot be had.
 */
export function reseatPieces(
  garment: Garment,
  before: { readonly diagram: Diagram; readonly set: MeasureSet },
  after: { readonly diagram: Diagram; readonly set: MeasureSet },
): Garment {
  const from = diagramMap(before.diagram, before.set);
  const to = diagramMap(after.diagram, after.set);
  if (from.kind === 'not-squared' || to.kind === 'not-squared') return garment;
  const map = composeHomography(to.toTable, from.toPhoto);
  const isSame = from.toTable.every((number, index) => number === to.toTable[index]);
  if (isSame || !garment.pieces.some((piece) => piece.diagramId === after.diagram.id)) return garment;
  return {
    ...garment,
    pieces: garment.pieces.map((piece) => (piece.diagramId === after.diagram.id ? carried(piece, map) : piece)),
  };
}

function carried(piece: Piece, map: Parameters<typeof applyHomography>[0]): Piece {
  const moved = mapPiece(piece, (point: Point) => applyHomography(map, point) ?? point);
  const [before, after] = [outlineOf(piece).edges, outlineOf(moved).edges];
  const grown = new Map(
    piece.edges.map((edge, index) => {
      const was = before[index];
      const is = after[index];
      const length = was ? pathLength(was) : 0;
      return [edge.id, is && length > 0 ? pathLength(is) / length : 1];
    }),
  );
  const factor = (edgeId: string) => grown.get(edgeId) ?? 1;
  return {
    ...moved,
    darts: moved.darts.map((dart) => ({
      ...dart,
      along: dart.along * factor(dart.edgeId),
      width: dart.width * factor(dart.edgeId),
    })),
    notches: moved.notches.map((notch) => ({ ...notch, along: notch.along * factor(notch.edgeId) })),
  };
}
