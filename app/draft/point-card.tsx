import { setCornerFinish } from '../../core/garment/corner-edits';
import { CORNER_FINISHES, type CornerFinish, type Piece } from '../../core/garment/piece';
import type { TablePoint } from '../../core/geometry/point';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import type { Stop } from '../table/walk';
import { writeSquares } from '../table/write-squares';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Pick } from '../ui/pick';
import { draftWords as words } from '../words/draft';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';
import { moveStop, takeAway, walk } from './point-keys';

interface PointCardProps {
  readonly piece: Piece;
  readonly stop: Stop;
}

/** The exact place of a corner or curve point, to be typed, and how the cut line turns at a corner. */
export function PointCard({ piece, stop }: PointCardProps) {
  const title = stop.kind === 'corner' ? words.cornerTitle(stop.number) : words.throughTitle;
  return (
    <Card title={title} about="point" aside={piece.name}>
      <PlaceFields at={stop.at} onPlace={(to) => moveStop(piece, stop, to)} />
      <p className={styles.help}>{words.fromZero}</p>
      {stop.kind === 'corner' && <FinishPick piece={piece} cornerId={stop.cornerId} />}
      <div className={styles.row}>
        <Button icon="left" onPress={() => walk(piece, -1)}>
          {words.before1}
        </Button>
        <Button icon="right" onPress={() => walk(piece, 1)}>
          {words.next1}
        </Button>
        <Button icon="bin" onPress={() => takeAway(piece, useTable.getState().chosen)}>
          {stop.kind === 'corner' ? words.removeCorner : words.removeThrough}
        </Button>
      </div>
    </Card>
  );
}

interface PlaceFieldsProps {
  readonly at: TablePoint;
  readonly onPlace: (to: TablePoint) => void;
}

/** A place across and down from the table's zero. */
export function PlaceFields({ at, onPlace }: PlaceFieldsProps) {
  const shownIn = useShownIn();
  const hint = (length: number) => (shownIn === 'cm' ? { hint: words.inSquares(writeSquares(length, shownIn)) } : {});
  const commit = (to: Partial<TablePoint>, length: number | undefined) => {
    if (length !== undefined) onPlace({ ...at, ...to });
  };
  return (
    <div className={styles.pair}>
      <LengthField
        label={words.across}
        value={at.x}
        shownIn={shownIn}
        onCommit={(x) => commit({ x: x ?? at.x }, x)}
        {...hint(at.x)}
      />
      <LengthField
        label={words.down}
        value={at.y}
        shownIn={shownIn}
        onCommit={(y) => commit({ y: y ?? at.y }, y)}
        {...hint(at.y)}
      />
    </div>
  );
}

const FINISH_VALUES = ['chosen', ...CORNER_FINISHES] as const;

function FinishPick({ piece, cornerId }: { readonly piece: Piece; readonly cornerId: string }) {
  const finish: CornerFinish | undefined = piece.corners.find((corner) => corner.id === cornerId)?.finish;
  return (
    <Pick
      label={words.finish}
      value={finish ?? 'chosen'}
      options={FINISH_VALUES.map((value) => ({
        value,
        words: value === 'chosen' ? words.finishChosen : words.finishes[value],
      }))}
      onChange={(value) =>
        editPiece(words.steps.corner, piece.id, (now) =>
          setCornerFinish(now, cornerId, value === 'chosen' ? undefined : value),
        )
      }
    />
  );
}
