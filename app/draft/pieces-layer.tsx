import { useCallback, useMemo } from 'react';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pieceOf } from '../../core/garment/with-piece';
import { pathLength } from '../../core/geometry/path';
import { distance, move, type Vector, vectorBetween } from '../../core/geometry/point';
import type { ShownIn } from '../../core/units/inch';
import { isDragging, useGarment } from '../state/garment-store';
import { type Chosen, useTable } from '../state/table-store';
import { paintAlongEdge, paintName, paintPiece } from '../table/paint-piece';
import { type Paint, Painted } from '../table/painted';
import { writeLength } from '../words/written';
import { type ChosenPart, paintGrips, paintHandle } from './paint-grips';
import { useRestedGarment } from './rested-garment';

/** The piece of an id, or none; the same object for as long as the piece is the same. */
export function usePiece(pieceId: string | undefined): Piece | undefined {
  return useGarment((state) => state.garment?.pieces.find((piece) => piece.id === pieceId));
}

/** The ids of the pieces, the same list for as long as none comes or goes. */
export function usePieceIds(): readonly string[] {
  const joined = useGarment((state) => state.garment?.pieces.map((piece) => piece.id).join(' ') ?? '');
  return useMemo(() => (joined === '' ? [] : joined.split(' ')), [joined]);
}

/** The piece that something is chosen of. */
export function chosenPieceId(chosen: Chosen): string | undefined {
  return 'pieceId' in chosen ? chosen.pieceId : undefined;
}

/** A piece that is not being worked on. Each listens for itself, so that dragging one draws no other. */
export function QuietPiece({ pieceId }: { readonly pieceId: string }) {
  const piece = usePiece(pieceId);
  const inHand = useTable((table) => chosenPieceId(table.chosen) === pieceId);
  const paint = useCallback<Paint>(
    (ink, { px }) => {
      if (!piece) return;
      paintPiece(ink, piece, px, 'quiet');
      paintName(ink, piece, px);
    },
    [piece],
  );
  return inHand ? null : <Painted paint={paint} />;
}

interface PieceInHandProps {
  readonly shownIn: ShownIn;
  /** Whether its points can be taken hold of now. */
  readonly grips: 'shown' | 'hidden';
}

/** The chosen piece with its points and the length of every edge, in one go. */
export function PieceInHand({ shownIn, grips }: PieceInHandProps) {
  const chosen = useTable((table) => table.chosen);
  const piece = usePiece(chosenPieceId(chosen));
  const rested = useRestedGarment();
  const before = rested && piece && pieceOf(rested, piece.id);
  const paint = useCallback<Paint>(
    (ink, { px }) => {
      if (!piece) return;
      paintPiece(ink, piece, px, 'in-hand', before && alongBefore(piece, before));
      outlineOf(piece).edges.forEach((path, index) => {
        paintAlongEdge(ink, piece, index, writeLength(pathLength(path), { shownIn }), px);
      });
      if (grips === 'shown') {
        paintGrips(ink, piece, px, partOf(chosen));
        paintHandle(ink, piece, px);
      } else paintName(ink, piece, px);
    },
    [piece, before, chosen, shownIn, grips],
  );
  return <Painted paint={paint} />;
}

/**
 * The cut line takes longest to work out: where the outline is being dragged it is that of a moment ago, and a piece that
 * is only moved takes it along.
 */
function alongBefore(piece: Piece, before: Piece): { readonly piece: Piece; readonly by: Vector } | undefined {
  const [first] = piece.corners;
  const [was] = before.corners;
  if (piece === before || !isDragging() || !first || !was) return undefined;
  if (piece.corners === before.corners && piece.edges === before.edges) return undefined;
  const by = vectorBetween(was.at, first.at);
  const isMoved = piece.corners.every(({ at }, index) => {
    const from = before.corners[index]?.at;
    return from && distance(at, move(from, by)) < 1e-6;
  });
  const sameEdges = piece.edges.every((edge, index) => edge === before.edges[index] || edge.shape.kind === 'curve');
  return { piece: before, by: isMoved && sameEdges ? by : { dx: 0, dy: 0 } };
}

function partOf(chosen: Chosen): ChosenPart {
  if (chosen.kind === 'corner') return { cornerId: chosen.cornerId };
  if (chosen.kind === 'edge') return { edgeId: chosen.edgeId };
  if (chosen.kind === 'through') return { edgeId: chosen.edgeId, throughIndex: chosen.index };
  if (chosen.kind === 'dart' || chosen.kind === 'notch' || chosen.kind === 'label') return { markId: chosen.id };
  if (chosen.kind === 'grain') return { markId: 'grain' };
  return {};
}
