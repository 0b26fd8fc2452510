import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { compareWords as words } from '../words/compare';
import type { Source } from './compare-store';

/** What a piece is called. */
export function nameOf(piece: Piece): string {
  return piece.name || words.unnamed;
}

/** What an edge is called in its piece: by its name, else by what it is where no other edge is that, else by its number. */
export function edgeName({ edges }: Piece, index: number): string {
  const edge = edges[index];
  const alone = edge && edges.filter(({ role }) => role === edge.role).length === 1;
  return words.edgeOr(edge?.name || (alone && words.roles[edge.role]) || '', index + 1);
}

/** A corner by the edges that meet there. */
export function cornerName(piece: Piece, index: number): string {
  return words.cornerOf(edgeName(piece, (index + piece.edges.length - 1) % piece.edges.length), edgeName(piece, index));
}

/** Both pieces in few words, different from one another: by what they are of where they are one piece, else by name. */
export function shortNames(
  mine: Piece,
  other: Piece,
  source: Source,
  otherGarment: Garment,
): { readonly mine: string; readonly other: string } {
  switch (source.kind) {
    case 'piece':
      return { mine: nameOf(mine), other: nameOf(other) };
    case 'traced':
      return { mine: words.now, other: words.traced };
    case 'version':
      return { mine: words.now, other: words.version(source.number, '') };
    case 'draft':
      return { mine: nameOf(mine), other: words.draft };
    case 'shelf':
      return { mine: words.now, other: otherGarment.name || words.unnamed };
  }
}
