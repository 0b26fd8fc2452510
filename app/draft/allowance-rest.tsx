import { cutPieces, isGuide } from '../../core/garment/cut-pieces';
import { edgesWithoutAllowance, withAllowanceWhereNone } from '../../core/garment/missing-allowances';
import type { Piece } from '../../core/garment/piece';
import { useGarment } from '../state/garment-store';
import { useShownIn } from '../state/shown-in';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';

interface RestProps {
  readonly piece: Piece;
  /** What the edge in hand is allowed (mm). */
  readonly allowance: number;
}

/** The allowance of one edge for every edge that has none yet: in its piece, and in all pieces. */
export function SameOnTheRest({ piece, allowance }: RestProps) {
  const shownIn = useShownIn();
  const edit = useGarment((state) => state.edit);
  const everywhere = useGarment((state) => (state.garment ? missingIn(cutPieces(state.garment)) : 0));
  const here = missingIn([piece]);
  if (everywhere === 0) return null;
  const said = writeLength(allowance, { shownIn });
  return (
    <div className={styles.row}>
      {here > 0 && (
        <Button
          onPress={() => editPiece(words.steps.allowance, piece.id, (now) => withAllowanceWhereNone(now, allowance))}
        >
          {words.sameOnRest(said, here)}
        </Button>
      )}
      {everywhere > here && (
        <Button
          onPress={() =>
            edit(words.steps.allowance, (now) => ({
              ...now,
              pieces: now.pieces.map((one) => (isGuide(one) ? one : withAllowanceWhereNone(one, allowance))),
            }))
          }
        >
          {words.sameInAllPieces(said, everywhere)}
        </Button>
      )}
    </div>
  );
}

interface MissingProps {
  readonly pieceId: string;
  readonly missing: number;
}

/** One field for all edges of a piece that have no allowance yet. */
export function AllowanceWhereNone({ pieceId, missing }: MissingProps) {
  const shownIn = useShownIn();
  if (missing === 0) return null;
  return (
    <LengthField
      label={words.allowanceWhereNone(missing)}
      value={undefined}
      shownIn={shownIn}
      allowEmpty
      min={0}
      hint={words.allowanceHint}
      onCommit={(allowance) =>
        allowance !== undefined &&
        editPiece(words.steps.allowance, pieceId, (now) => withAllowanceWhereNone(now, allowance))
      }
    />
  );
}

function missingIn(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + edgesWithoutAllowance(piece).length, 0);
}
