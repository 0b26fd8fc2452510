import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import type { Edge, EdgeRole, Piece } from '../../core/garment/piece';
import type { EdgeRef } from '../../core/garment/seam';
import { pieceOf } from '../../core/garment/with-piece';
import type { Path } from '../../core/geometry/segment';
import { edgeLength } from '../../core/seams/edge-length';
import type { Chosen } from '../state/table-store';
import { Pick } from '../ui/pick';
import { trialWords } from '../words/trial';

interface EdgeChoiceProps {
  readonly label: string;
  readonly garment: Garment;
  readonly value: EdgeRef;
  readonly onChange: (edge: EdgeRef) => void;
  /** Which edges may be chosen; all of them unless said. */
  readonly only?: (piece: Piece, edge: Edge) => boolean;
}

/** An edge of any piece, by its name; pressing it on the table does the same. */
export function EdgeChoice({ label, garment, value, onChange, only = () => true }: EdgeChoiceProps) {
  const options = garment.pieces.flatMap((piece) =>
    piece.edges
      .filter((edge) => only(piece, edge))
      .map((edge) => ({ value: keyOf({ pieceId: piece.id, edgeId: edge.id }), words: trialWords.edgeOf(piece, edge) })),
  );
  return (
    <Pick
      label={label}
      value={keyOf(value)}
      options={options}
      onChange={(key) => {
        const [pieceId = '', edgeId = ''] = key.split(' ');
        onChange({ pieceId, edgeId });
      }}
    />
  );
}

function keyOf({ pieceId, edgeId }: EdgeRef): string {
  return `${pieceId} ${edgeId}`;
}

/** The edge that is chosen, with its piece. */
export function chosenEdge(garment: Garment, chosen: Chosen): (EdgeRef & { piece: Piece; edge: Edge }) | undefined {
  if (chosen.kind !== 'edge' && chosen.kind !== 'through') return undefined;
  return edgeAt(garment, chosen);
}

/** The edge of a reference, with its piece. */
export function edgeAt(garment: Garment, ref: EdgeRef): (EdgeRef & { piece: Piece; edge: Edge }) | undefined {
  const piece = pieceOf(garment, ref.pieceId);
  const edge = piece?.edges.find(({ id }) => id === ref.edgeId);
  return piece && edge && { pieceId: ref.pieceId, edgeId: ref.edgeId, piece, edge };
}

/** The piece that is chosen, or that something is chosen of. */
export function chosenPiece(garment: Garment, chosen: Chosen): Piece | undefined {
  return 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
}

/** The edge to begin with: the chosen one if it may be, else the longest that may of the chosen piece, else of any. */
export function firstEdge(garment: Garment, chosen: Chosen, only: EdgeChoiceProps['only'] = notFold) {
  const picked = chosenEdge(garment, chosen);
  if (picked && only(picked.piece, picked.edge)) return picked;
  const inHand = chosenPiece(garment, chosen);
  const pieces = inHand ? [inHand, ...garment.pieces] : garment.pieces;
  const piece = pieces.find((one) => one.edges.some((edge) => only(one, edge)));
  const edges = piece?.edges.filter((edge) => only(piece, edge)) ?? [];
  const edge = piece && edges.toSorted((a, b) => lengthOf(piece, b.id) - lengthOf(piece, a.id))[0];
  return piece && edge && { pieceId: piece.id, edgeId: edge.id, piece, edge };
}

/** The edge to begin with where one of a role is the likeliest: the chosen one, else that one, else any but a fold. */
export function firstEdgeLike(garment: Garment, chosen: Chosen, role: EdgeRole) {
  const isLikely: EdgeChoiceProps['only'] = (_, edge) =>
    chosen.kind === 'edge' ? edge.id === chosen.edgeId && edge.role !== 'fold' : edge.role === role;
  return firstEdge(garment, chosen, isLikely) ?? firstEdge(garment, chosen);
}

/** Whether cloth is sewn or finished at the edge. */
export function notFold(_: Piece, { role }: Edge): boolean {
  return role !== 'fold';
}

/** The stitch length of an edge; 0 when the piece has none of that id. */
export function lengthOf(piece: Piece, edgeId: string): number {
  return edgeLength(piece, edgeId) ?? 0;
}

/** The run of an edge; `undefined` when the piece has none of that id. */
export function edgePathOf(piece: Piece, edgeId: string): Path | undefined {
  return outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === edgeId)];
}
