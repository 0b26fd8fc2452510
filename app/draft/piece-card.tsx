import { memo, useState } from 'react';
import { mirrorPiece, movePiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import type { Cut, DrawnAs, Piece } from '../../core/garment/piece';
import { copyPiece, removePiece } from '../../core/garment/piece-list';
import { isCutForBoth, setSide } from '../../core/garment/piece-side';
import { pieceOf } from '../../core/garment/with-piece';
import { pathBounds } from '../../core/geometry/path';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { CountField } from '../ui/count-field';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { Pick as PickOne } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { draftWords as words } from '../words/draft';
import { AllowanceWhereNone } from './allowance-rest';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';
import { FoldEdge } from './fold-edge';
import { PieceFindings } from './piece-findings';

const HOWS = ['single', 'pair', 'fold'] as const;
const SIDES = ['both', 'left', 'right'] as const;
const DRAWN = ['net', 'included', 'not-known'] as const;

/** Only what the card shows: a point that is dragged changes none of it, and so does not draw the card anew. */
type PieceCardProps = Pick<Piece, 'id' | 'name' | 'cut' | 'drawnAs' | 'remarks'> & {
  readonly side: Piece['side'];
  /** How many of its edges have no allowance yet. */
  readonly missing: number;
};

/** What a piece says aloud: its name, how it is cut, what the line is; and what can be done with the whole of it. */
export const PieceCard = memo(function PieceCard({ id, name, cut, drawnAs, side, missing, remarks }: PieceCardProps) {
  const setCut = (next: Cut) => editPiece(words.steps.cut, id, (now) => ({ ...now, cut: next }));
  const setDrawn = (next: DrawnAs) => editPiece(words.steps.drawnAs, id, (now) => ({ ...now, drawnAs: next }));
  return (
    <Card title={name || words.piece} about="piece" aboutWhat={words.piece}>
      <PieceFindings pieceId={id} />
      <TextField
        label={words.pieceName}
        value={name}
        onCommit={(next) => editPiece(words.steps.name, id, (now) => ({ ...now, name: next.trim() || now.name }))}
      />
      <div className={styles.pair}>
        <CountField label={words.cutCount} value={cut.count} onCommit={(count) => setCut({ ...cut, count })} />
        <PickOne
          label={words.cutHow}
          value={cut.how}
          options={HOWS.map((how) => ({ value: how, words: words.how[how] }))}
          onChange={(how) => setCut({ ...cut, how })}
        />
      </div>
      {cut.how === 'fold' && <FoldEdge pieceId={id} />}
      <div data-step="drawn-as">
        <Choice
          label={words.drawnAs}
          value={drawnAs}
          options={DRAWN.map((value) => ({ value, words: words.drawn[value] }))}
          onChange={setDrawn}
        />
      </div>
      {drawnAs === 'not-known' && <Note tone="stop">{words.drawnUnknown}</Note>}
      {drawnAs === 'included' && <Note tone="plain">{words.drawnIncluded}</Note>}
      <AllowanceWhereNone pieceId={id} missing={missing} />
      <Choice
        label={words.bodySide}
        value={side ?? 'both'}
        options={SIDES.map((value) => ({ value, words: words.bodySides[value] }))}
        onChange={(next) =>
          editPiece(words.steps.bodySide, id, (now) => setSide(now, next === 'both' ? undefined : next))
        }
      />
      <p className={styles.help}>{words.bodySideHelp[side ?? 'both']}</p>
      {isCutForBoth({ cut, ...(side && { side }) }) && <Note tone="warn">{words.cutForBoth}</Note>}
      <MoveForm pieceId={id} />
      <TextField
        label={words.remarks}
        value={remarks}
        multiline
        onCommit={(next) => editPiece(words.steps.remarks, id, (now) => ({ ...now, remarks: next }))}
      />
      <div className={styles.row}>
        <Button icon="copy" onPress={() => copy(id, 'as-is')}>
          {words.copy}
        </Button>
        <Button icon="mirror" onPress={() => copy(id, 'mirrored')}>
          {words.copyMirrored}
        </Button>
        <Button icon="bin" tone="wrong" onPress={() => remove(id, name)}>
          {words.remove}
        </Button>
      </div>
    </Card>
  );
});

/** How far a copy is laid beside its piece. */
const GAP = inches(1);

function copy(id: string, way: 'as-is' | 'mirrored'): void {
  const { garment, edit } = useGarment.getState();
  const piece = garment && pieceOf(garment, id);
  if (!garment || !piece) return;
  const box = pathBounds(outlineOf(piece).whole);
  const across = box.maxX - box.minX + GAP;
  const name = words.copyName(piece.name);
  const copied = copyPiece(garment, piece.id, { newId, name, across });
  const made = copied.pieces.at(-1);
  if (!made || copied === garment) return;
  const middle = (box.minX + box.maxX) / 2 + across;
  const laid =
    way === 'mirrored' ? mirrorPiece(made, { x: middle, y: box.minY }, { x: middle, y: box.minY + 1 }) : made;
  edit(words.steps.copyPiece, (now) => ({ ...now, pieces: [...now.pieces, laid] }));
  useTable.getState().choose({ kind: 'piece', pieceId: laid.id });
}

function remove(id: string, name: string): void {
  useTable.getState().choose({ kind: 'nothing' });
  useGarment.getState().edit(words.steps.removePiece, (garment) => removePiece(garment, id));
  say(words.said.removed(name));
}

function MoveForm({ pieceId }: { readonly pieceId: string }) {
  const shownIn = useShownIn();
  const [across, setAcross] = useState<number>();
  const [down, setDown] = useState<number>();
  const moves = (across ?? 0) !== 0 || (down ?? 0) !== 0;
  return (
    <fieldset className={styles.group}>
      <legend>{words.movePiece}</legend>
      <div className={styles.pair}>
        <LengthField label={words.moveAcross} value={across} shownIn={shownIn} onCommit={setAcross} allowEmpty />
        <LengthField label={words.moveDown} value={down} shownIn={shownIn} onCommit={setDown} allowEmpty />
      </div>
      <div>
        <Button
          onPress={() => {
            if (moves)
              editPiece(words.steps.movePiece, pieceId, (now) => movePiece(now, { dx: across ?? 0, dy: down ?? 0 }));
            else say(words.said.howFar);
          }}
        >
          {words.moveIt}
        </Button>
      </div>
    </fieldset>
  );
}
