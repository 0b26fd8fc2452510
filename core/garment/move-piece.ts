import { type Affine, reflectionIn, rotationAbout, transformPoint, translation } from '../geometry/affine';
import type { Point, Vector } from '../geometry/point';
import type { Piece } from './piece';

/** Every place of the piece taken through one map of places. Lengths along edges are for the caller to look after. */
export function mapPiece(piece: Piece, map: (point: Point) => Point): Piece {
  const { grain } = piece;
  return {
    ...piece,
    corners: piece.corners.map((corner) => ({ ...corner, at: map(corner.at) })),
    edges: piece.edges.map((edge) =>
      edge.shape.kind === 'curve' ? { ...edge, shape: { ...edge.shape, through: edge.shape.through.map(map) } } : edge,
    ),
    darts: piece.darts.map((dart) => ({ ...dart, point: map(dart.point) })),
    labels: piece.labels.map((label) => ({ ...label, at: map(label.at) })),
    ...(grain ? { grain: { from: map(grain.from), to: map(grain.to) } } : {}),
  };
}

/** The piece moved over the table. */
export function movePiece(piece: Piece, by: Vector): Piece {
  return by.dx === 0 && by.dy === 0 ? piece : through(piece, translation(by));
}

/** The piece turned about a place, clockwise to the eye. */
export function turnPiece(piece: Piece, centre: Point, angle: number): Piece {
  return angle === 0 ? piece : through(piece, rotationAbout(centre, angle));
}

/** The piece as seen in a mirror standing on the line from `from` to `to`; the same piece for a line of no length. */
export function mirrorPiece(piece: Piece, from: Point, to: Point): Piece {
  const map = reflectionIn(from, to);
  return map ? through(piece, map) : piece;
}

function through(piece: Piece, map: Affine): Piece {
  return mapPiece(piece, (point) => transformPoint(map, point));
}
