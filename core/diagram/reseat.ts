import type { Garment } from '../garment/garment';
import { currentSet } from '../garment/measure-value';
import { mapPiece } from '../garment/move-piece';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import type { Point } from '../geometry/point';
import { type DiagramMap, diagramMap, photoToTable, tableToPhoto, tableToPlane } from './diagram-map';
import { halvesOf } from './halves';

/**
 * The garment after a change of its pictures or measures, with every piece traced from one carried along where that picture
 * lies otherwise than before, so that each point stays on the printed line it was placed on. Allowances stay as said; darts
 * and notches keep their share of the way along their edge. Where a picture cannot be laid out before or after, pieces stay.
 */
export function carryPieces(before: Garment, after: Garment): Garment {
  const [from, to] = [mapsOf(before), mapsOf(after)];
  const hasMoved = (id: string) => {
    const [a, b] = [from.get(id), to.get(id)];
    return a !== undefined && b !== undefined && !liesAlike(a, b);
  };
  if (![...from.keys()].some(hasMoved)) return after;
  let moved = false;
  const pieces = after.pieces.map((piece) => {
    if (piece.diagramId === undefined) return piece;
    const halves = halvesOf(before.diagrams, piece.diagramId).filter(({ id }) => from.has(id) && to.has(id));
    if (!halves.some(({ id }) => hasMoved(id))) return piece;
    let hasFollowed = false;
    const followed = carried(piece, (point) => {
      const owner = halves.find(({ id }) => liesOn(from.get(id), point)) ?? halves.at(-1);
      if (!owner || !hasMoved(owner.id)) return point;
      const [a, b] = [from.get(owner.id), to.get(owner.id)];
      const seen = a && tableToPhoto(a, point);
      hasFollowed = true;
      return (b && seen && photoToTable(b, seen)) ?? point;
    });
    // A half that lies otherwise now moves nothing that was traced on the other.
    if (!hasFollowed) return piece;
    moved = true;
    return followed;
  });
  return moved ? { ...after, pieces } : after;
}

function mapsOf(garment: Garment): Map<string, DiagramMap> {
  const set = currentSet(garment);
  const maps = new Map<string, DiagramMap>();
  for (const diagram of garment.diagrams) {
    const map = diagramMap(diagram, set, garment.diagrams);
    if (map.kind === 'map') maps.set(diagram.id, map);
  }
  return maps;
}

/** Whether a place of the table lies on the page of a picture. */
function liesOn(map: DiagramMap | undefined, point: Point): boolean {
  if (!map) return false;
  const { x, y } = tableToPlane(map, point);
  return x >= 0 && y >= 0 && x <= map.plane.across && y <= map.plane.down;
}

/** A plane is remembered with what it was squared up by, so the same one means nothing changed there. */
function liesAlike(a: DiagramMap, b: DiagramMap): boolean {
  if (a.plane !== b.plane || a.across !== b.across || a.down !== b.down) return false;
  if (!a.joint || !b.joint)
    return !a.joint && !b.joint && a.placedAt.x === b.placedAt.x && a.placedAt.y === b.placedAt.y;
  const [one, other] = [a.joint.onto, b.joint.onto];
  return one.a === other.a && one.b === other.b && one.e === other.e && one.f === other.f;
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
