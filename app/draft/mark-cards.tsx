import { putDart, putLabel, putNotch, setGrain } from '../../core/garment/mark-edits';
import { outlineOf } from '../../core/garment/outline';
import type { Dart, Label, Notch, Piece } from '../../core/garment/piece';
import { edgeIndex } from '../../core/garment/with-piece';
import { pathLength } from '../../core/geometry/path';
import { distance, move, type TablePoint, vectorBetween } from '../../core/geometry/point';
import { useShownIn } from '../state/shown-in';
import { type Chosen, useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { TextField } from '../ui/text-field';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import { dartPlace } from './dart-place';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';
import { PlaceFields } from './point-card';
import { takeAway } from './point-keys';

interface MarkCardProps {
  readonly piece: Piece;
  readonly chosen: Chosen;
}

/** The card of the chosen dart, notch, grain line or words; nothing for any other choice. */
export function MarkCard({ piece, chosen }: MarkCardProps) {
  if (chosen.kind === 'grain') return <GrainCard piece={piece} />;
  if (chosen.kind === 'dart') {
    const dart = piece.darts.find(({ id }) => id === chosen.id);
    return dart ? <DartCard piece={piece} dart={dart} /> : null;
  }
  if (chosen.kind === 'notch') {
    const notch = piece.notches.find(({ id }) => id === chosen.id);
    return notch ? <NotchCard piece={piece} notch={notch} /> : null;
  }
  if (chosen.kind !== 'label') return null;
  const label = piece.labels.find(({ id }) => id === chosen.id);
  return label ? <LabelCard piece={piece} label={label} /> : null;
}

function DartCard({ piece, dart }: { readonly piece: Piece; readonly dart: Dart }) {
  const shownIn = useShownIn();
  const place = dartPlace(piece, dart);
  const put = (next: Dart) => editPiece(words.steps.dart, piece.id, (now) => putDart(now, next));
  if (!place) return null;
  const { mouth, depth, length } = place;
  return (
    <Card title={words.dartTitle} about="dart" aside={edgeWords(piece, dart.edgeId)}>
      <div className={styles.pair}>
        <LengthField
          label={words.dartWidth}
          value={dart.width}
          shownIn={shownIn}
          min={0.5}
          onCommit={(width) => width !== undefined && put({ ...dart, width: Math.min(width, length) })}
        />
        <LengthField
          label={words.dartDepth}
          hint={words.dartDepthHint}
          value={depth}
          shownIn={shownIn}
          min={1}
          onCommit={(next) =>
            next !== undefined && depth > 0 && put({ ...dart, point: deeper(mouth, dart.point, next) })
          }
        />
      </div>
      <AlongField
        piece={piece}
        edgeId={dart.edgeId}
        along={dart.along}
        onAlong={(along) => {
          const moved = dartPlace(piece, { ...dart, along });
          const shift = moved ? vectorBetween(mouth, moved.mouth) : { dx: 0, dy: 0 };
          put({ ...dart, along, point: move(dart.point, shift) });
        }}
      />
      <RemoveMark piece={piece} />
    </Card>
  );
}

function deeper(mouth: TablePoint, point: TablePoint, depth: number): TablePoint {
  return move(mouth, vectorBetween(mouth, point), depth / distance(mouth, point));
}

function NotchCard({ piece, notch }: { readonly piece: Piece; readonly notch: Notch }) {
  const put = (next: Notch) => editPiece(words.steps.notch, piece.id, (now) => putNotch(now, next));
  return (
    <Card title={words.notchTitle} about="notch" aside={edgeWords(piece, notch.edgeId)}>
      <AlongField
        piece={piece}
        edgeId={notch.edgeId}
        along={notch.along}
        onAlong={(along) => put({ ...notch, along })}
      />
      <Choice
        label={words.count}
        value={COUNTS[notch.count - 1] ?? 'one'}
        options={COUNTS.map((value) => ({ value, words: words.counts[value] }))}
        onChange={(value) => put({ ...notch, count: (COUNTS.indexOf(value) + 1) as Notch['count'] })}
      />
      <RemoveMark piece={piece} />
    </Card>
  );
}

const COUNTS = ['one', 'two', 'three'] as const;

function LabelCard({ piece, label }: { readonly piece: Piece; readonly label: Label }) {
  const put = (next: Label) => editPiece(words.steps.label, piece.id, (now) => putLabel(now, next));
  return (
    <Card title={words.labelTitle} about="words-on-piece" aside={piece.name}>
      <TextField
        label={words.labelText}
        hint={words.labelHint}
        value={label.text}
        onCommit={(text) => put({ ...label, text: text.trim() })}
      />
      <PlaceFields at={label.at} onPlace={(at) => put({ ...label, at })} />
      <RemoveMark piece={piece} />
    </Card>
  );
}

function GrainCard({ piece }: { readonly piece: Piece }) {
  const shownIn = useShownIn();
  const { grain } = piece;
  if (!grain) return null;
  const put = (from: TablePoint, to: TablePoint) =>
    editPiece(words.steps.grain, piece.id, (now) => setGrain(now, { from, to }));
  const { from, to } = grain;
  return (
    <Card
      title={words.grainTitle}
      about="grain"
      aside={words.grainLength(writeLength(distance(from, to), { shownIn }))}
    >
      <fieldset className={styles.group}>
        <legend>{words.grainFrom}</legend>
        <PlaceFields at={from} onPlace={(next) => put(next, to)} />
      </fieldset>
      <fieldset className={styles.group}>
        <legend>{words.grainTo}</legend>
        <PlaceFields at={to} onPlace={(next) => put(from, next)} />
      </fieldset>
      <div className={styles.row}>
        <Button onPress={() => put(from, { x: from.x, y: from.y + distance(from, to) })}>{words.grainUpright}</Button>
      </div>
      <RemoveMark piece={piece} />
    </Card>
  );
}

interface AlongFieldProps {
  readonly piece: Piece;
  readonly edgeId: string;
  readonly along: number;
  readonly onAlong: (along: number) => void;
}

function AlongField({ piece, edgeId, along, onAlong }: AlongFieldProps) {
  const shownIn = useShownIn();
  const index = edgeIndex(piece, edgeId);
  const path = outlineOf(piece).edges[index];
  const length = path ? pathLength(path) : 0;
  return (
    <LengthField
      label={words.along(words.cornerNumber(index + 1))}
      value={along}
      shownIn={shownIn}
      min={0}
      hint={words.edgeIs(writeLength(length, { shownIn }))}
      onCommit={(next) => next !== undefined && onAlong(Math.min(next, length))}
    />
  );
}

function RemoveMark({ piece }: { readonly piece: Piece }) {
  return (
    <div>
      <Button icon="bin" onPress={() => takeAway(piece, useTable.getState().chosen)}>
        {words.removeMark}
      </Button>
    </div>
  );
}

function edgeWords(piece: Piece, edgeId: string): string {
  const index = edgeIndex(piece, edgeId);
  return words.edgeOr(piece.edges[index]?.name ?? '', index + 1);
}
