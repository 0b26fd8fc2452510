import { useState } from 'react';
import { rectanglePiece } from '../../core/garment/new-piece';
import { outlineOf } from '../../core/garment/outline';
import { addPiece } from '../../core/garment/piece-list';
import { pieceOf } from '../../core/garment/with-piece';
import { pathBounds } from '../../core/geometry/path';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import styles from './draft.module.css';
import { useDraft } from './draft-store';
import { OutlinesIn } from './outlines-in';
import { chosenPieceId, usePieceIds } from './pieces-layer';

/** Every piece by its name, and the ways to a new one, unless one is being traced. */
export function PiecesCard({ isTracing = false }: { readonly isTracing?: boolean }) {
  const ids = usePieceIds();
  const hasDiagram = useGarment((state) => (state.garment?.diagrams.length ?? 0) > 0);
  const goTo = useTable((table) => table.goTo);
  return (
    <Card title={words.pieces} about="pieces" aside={ids.length > 0 ? ids.length : undefined}>
      {ids.length === 0 && !isTracing && <p>{words.noPieces}</p>}
      {!hasDiagram && (
        <Note tone="plain" action={{ words: words.toDiagram, onPress: () => goTo('diagram') }}>
          {words.noDiagram}
        </Note>
      )}
      {ids.length > 0 && (
        <ul className={styles.list}>
          {ids.map((id) => (
            <PieceLine key={id} pieceId={id} />
          ))}
        </ul>
      )}
      {!isTracing && (
        <>
          <div className={styles.row}>
            <Button icon="plus" step="trace" onPress={() => useDraft.setState({ mode: 'trace' })}>
              {words.trace}
            </Button>
          </div>
          <RectangleForm />
          <OutlinesIn />
        </>
      )}
    </Card>
  );
}

/** One piece by its name. It listens for what it shows and for nothing else of the piece. */
function PieceLine({ pieceId }: { readonly pieceId: string }) {
  const name = useGarment((state) => state.garment && pieceOf(state.garment, pieceId)?.name);
  const cut = useGarment((state) => state.garment && pieceOf(state.garment, pieceId)?.cut);
  const inHand = useTable((table) => chosenPieceId(table.chosen) === pieceId);
  const choose = useTable((table) => table.choose);
  return (
    <li>
      <Button icon="piece" tone="quiet" pressed={inHand} onPress={() => choose({ kind: 'piece', pieceId })}>
        {name}
      </Button>
      {cut && <span className={styles.aside}>{words.cutWords(cut.count, cut.how)}</span>}
    </li>
  );
}

/** How far a new rectangle is laid from what is there. */
const GAP = inches(1);

function RectangleForm() {
  const shownIn = useShownIn();
  const [across, setAcross] = useState<number>();
  const [down, setDown] = useState<number>();
  const ready = across !== undefined && down !== undefined && across > 0 && down > 0;

  function add() {
    const { garment, edit } = useGarment.getState();
    if (!garment) return;
    if (!ready) {
      say(words.said.bothNumbers);
      return;
    }
    const piece = rectanglePiece(
      freePlace(),
      { across, down },
      { newId, name: words.rectangleName(garment.pieces.length + 1) },
    );
    if (!piece) return;
    edit(words.steps.rectangle, (now) => addPiece(now, piece));
    useTable.getState().choose({ kind: 'piece', pieceId: piece.id });
    setAcross(undefined);
    setDown(undefined);
  }

  return (
    <fieldset className={styles.group}>
      <legend>{words.rectangle}</legend>
      <p className={styles.help}>{words.rectangleHelp}</p>
      <div className={styles.pair}>
        <LengthField label={words.width} value={across} shownIn={shownIn} onCommit={setAcross} allowEmpty min={1} />
        <LengthField label={words.height} value={down} shownIn={shownIn} onCommit={setDown} allowEmpty min={1} />
      </div>
      <div>
        <Button icon="plus" onPress={add}>
          {words.addRectangle}
        </Button>
      </div>
    </fieldset>
  );
}

/** Below everything drafted so far, at the table's zero across. */
function freePlace() {
  const pieces = useGarment.getState().garment?.pieces ?? [];
  const lowest = Math.max(0, ...pieces.map((piece) => pathBounds(outlineOf(piece).whole).maxY + GAP));
  return { x: 0, y: lowest };
}
