import type { Diagram } from '../garment/diagram';
import type { Garment } from '../garment/garment';
import type { MeasureSet } from '../garment/measure';
import { mapPiece } from '../garment/move-piece';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import type { Point } from '../geometry/point';
import { type DiagramMap, diagramMap, photoToTable, tableToPhoto } from './diagram-map';

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
  const map = (point: Point) => {
    const seen = tableToPhoto(from, point);
    return (seen && photoToTable(to, seen)) ?? point;
  };
  if (liesAlike(from, to) || !garment.pieces.some((piece) => piece.diagramId === after.diagram.id)) return garment;
  return {
    ...garment,
    pieces: garment.pieces.map((piece) => (piece.diagramId === after.diagram.id ? carried(piece, map) : piece)),
  };
}

/** A plane is remembered with what it was squared up by, so the same one means nothing changed there. */
function liesAlike(a: DiagramMap, b: DiagramMap): boolean {
  const isThere = a.placedAt.x === b.placedAt.x && a.placedAt.y === b.placedAt.y;
  return a.plane === b.plane && a.across === b.across && a.down === b.down && isThere;
}

function carried(piece: Piece, map: (point: Point) => Point): Piece {
  const moved = mapPiece(piece, map);
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
