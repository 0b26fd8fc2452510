import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { edgeIndex } from '../../core/garment/with-piece';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import type { TablePoint } from '../../core/geometry/point';
import type { ShownIn } from '../../core/units/inch';
import type { Chosen } from '../state/table-store';
import { tableWords as words } from '../words/table';
import { writeLength } from '../words/written';
import { handlePlace } from './name-place';
import { chosenStop, type Stop } from './walk';
import { writeSquares } from './write-squares';

/** How much is told: where it is, or with it every length that belongs to it. */
export type Telling = 'short' | 'full';

/** What is chosen of a piece, in words and numbers; nothing for marks, which the notebook tells. */
export function readPlace(piece: Piece, chosen: Chosen, shownIn: ShownIn, telling: Telling): string | undefined {
  const stop = chosenStop(piece, chosen);
  if (stop) return readStop(piece, stop, shownIn, telling);
  if (chosen.kind === 'edge') return readEdge(piece, edgeIndex(piece, chosen.edgeId), shownIn, telling);
  return chosen.kind === 'piece' ? readPiece(piece, shownIn, telling) : undefined;
}

/** Where the middle of what is chosen lies; nothing for what the piece does not have. */
export function placeOfChosen(piece: Piece, chosen: Chosen): TablePoint | undefined {
  const stop = chosenStop(piece, chosen);
  if (stop) return stop.at;
  if (chosen.kind === 'piece') return handlePlace(piece);
  if (chosen.kind !== 'edge') return undefined;
  const path = outlineOf(piece).edges[edgeIndex(piece, chosen.edgeId)];
  return path && pathAtLength(path, pathLength(path) / 2).point;
}

function readStop(piece: Piece, stop: Stop, shownIn: ShownIn, telling: Telling): string {
  const place = words.place(writeSquares(stop.at.x, shownIn), writeSquares(stop.at.y, shownIn));
  if (stop.kind === 'through') {
    return words.read.through(edgeNameAt(piece, edgeIndex(piece, stop.edgeId)), place);
  }
  const here = words.read.corner(stop.number, place);
  if (telling === 'short') return here;
  const count = piece.edges.length;
  const before = (stop.number - 2 + count) % count;
  return words.read.between(here, named(piece, before, shownIn), named(piece, stop.number - 1, shownIn));
}

function readEdge(piece: Piece, index: number, shownIn: ShownIn, telling: Telling): string | undefined {
  const edge = piece.edges[index];
  if (!edge) return undefined;
  const here = named(piece, index, shownIn);
  if (telling === 'short') return words.read.edge(here);
  const allowance = edge.allowance === undefined ? undefined : writeLength(edge.allowance, { shownIn });
  return words.read.wholeEdge(here, index + 1, ((index + 1) % piece.corners.length) + 1, allowance);
}

function readPiece(piece: Piece, shownIn: ShownIn, telling: Telling): string {
  const here = words.read.piece(piece.name, piece.corners.length);
  if (telling === 'short') return here;
  return words.read.round(
    here,
    piece.edges.map((_, index) => named(piece, index, shownIn)),
  );
}

function named(piece: Piece, index: number, shownIn: ShownIn): string {
  const length = pathLength(outlineOf(piece).edges[index] ?? []);
  return words.read.edgeOf(edgeNameAt(piece, index), writeLength(length, { shownIn }));
}

function edgeNameAt(piece: Piece, index: number): string {
  return words.edgeOr(piece.edges[index]?.name ?? '', index + 1);
}
