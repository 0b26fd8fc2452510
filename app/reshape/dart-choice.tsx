import type { Garment } from '../../core/garment/garment';
import type { Dart, Piece } from '../../core/garment/piece';
import { pieceOf } from '../../core/garment/with-piece';
import type { Chosen } from '../state/table-store';
import { Pick } from '../ui/pick';
import { reshapeWords as words } from '../words/reshape';
import { trialWords } from '../words/trial';
import { chosenPiece } from './edge-choice';

interface DartRef {
  readonly pieceId: string;
  readonly dartId: string;
}

interface DartChoiceProps {
  readonly garment: Garment;
  readonly value: DartRef;
  readonly onChange: (piece: Piece, dart: Dart) => void;
}

/** A dart of any piece, named by its piece and its edge. */
export function DartChoice({ garment, value, onChange }: DartChoiceProps) {
  const darts = garment.pieces.flatMap((piece) => piece.darts.map((dart) => ({ piece, dart })));
  return (
    <Pick
      label={words.dart}
      value={value.dartId}
      options={darts.map(({ piece, dart }) => ({ value: dart.id, words: dartName(piece, dart) }))}
      onChange={(id) => {
        const found = darts.find(({ dart }) => dart.id === id);
        if (found) onChange(found.piece, found.dart);
      }}
    />
  );
}

function dartName(piece: Piece, dart: Dart): string {
  const edge = piece.edges.find(({ id }) => id === dart.edgeId);
  const number = piece.darts.filter(({ edgeId }) => edgeId === dart.edgeId).indexOf(dart) + 1;
  return words.dartOn(edge ? trialWords.edgeOf(piece, edge) : piece.name, number);
}

/** The dart of a reference, with its piece. */
export function dartAt(garment: Garment, { pieceId, dartId }: DartRef): { piece: Piece; dart: Dart } | undefined {
  const piece = pieceOf(garment, pieceId);
  const dart = piece?.darts.find(({ id }) => id === dartId);
  return piece && dart && { piece, dart };
}

/** The dart to begin with: the chosen one, else the first of the chosen piece, else the first there is. */
export function firstDart(garment: Garment, chosen: Chosen): { piece: Piece; dart: Dart } | undefined {
  const inHand = chosenPiece(garment, chosen);
  if (inHand && chosen.kind === 'dart') {
    const dart = inHand.darts.find(({ id }) => id === chosen.id);
    if (dart) return { piece: inHand, dart };
  }
  const pieces = inHand ? [inHand, ...garment.pieces] : garment.pieces;
  const piece = pieces.find(({ darts }) => darts.length > 0);
  const dart = piece?.darts[0];
  return piece && dart && { piece, dart };
}
