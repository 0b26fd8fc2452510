import { SEWING_TOLERANCE } from '../../core/fit/fit-findings';
import { obeyWhole } from '../../core/fit/obey-whole';
import { printedSum, type SumPart } from '../../core/fit/printed-sums';
import type { Garment } from '../../core/garment/garment';
import type { PrintedWhole } from '../../core/garment/printed-whole';
import { putWhole, removeWhole } from '../../core/garment/printed-whole-edits';
import { type EdgeRef, isSameEdge } from '../../core/garment/seam';
import { pieceOf } from '../../core/garment/with-piece';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { Switch } from '../ui/switch';
import { TextField } from '../ui/text-field';
import { draftWords } from '../words/draft';
import { trialWords } from '../words/trial';
import { writeLength } from '../words/written';
import styles from './draft.module.css';

const words = draftWords.wholes;
const RULING = ['unsettled', 'parts', 'whole'] as const;

interface WholeEntryProps {
  readonly garment: Garment;
  readonly whole: PrintedWhole;
}

/** One figure for several edges: what it is, which edges, their sum, and which rules where they clash. */
export function WholeEntry({ garment, whole }: WholeEntryProps) {
  const { shownIn } = garment;
  const sum = printedSum(garment, whole);
  const put = (changed: PrintedWhole) => useGarment.getState().edit(words.step, (now) => putWhole(now, changed));
  const title = whole.name.trim() || words.unnamed;
  return (
    <fieldset className={styles.group}>
      <legend>{title}</legend>
      <div className={styles.pair}>
        <TextField label={words.name} value={whole.name} onCommit={(name) => put({ ...whole, name })} />
        <LengthField
          label={words.length}
          value={whole.length}
          shownIn={shownIn}
          min={1}
          onCommit={(length) => length !== undefined && put({ ...whole, length })}
        />
      </div>
      <ul className={styles.list}>
        {sum.parts.map((part) => (
          <PartLine
            key={`${part.ref.pieceId} ${part.ref.edgeId}`}
            {...{ garment, part }}
            onRemove={() => put({ ...whole, edges: whole.edges.filter((edge) => !isSameEdge(edge, part.ref)) })}
          />
        ))}
      </ul>
      <EdgeToAdd
        garment={garment}
        taken={whole.edges}
        onAdd={(edge) => put({ ...whole, edges: [...whole.edges, edge] })}
      />
      <Switch
        label={words.counted}
        on={whole.counted === 'in-garment'}
        onChange={(on) => {
          const { counted: _, ...bare } = whole;
          put(on ? { ...bare, counted: 'in-garment' } : bare);
        }}
      />
      {sum.parts.length > 0 && <SumNote {...{ garment, whole, sum }} />}
      {sum.parts.length > 0 && (
        <Choice
          label={words.rules}
          value={whole.rules}
          options={RULING.map((value) => ({ value, words: words.ruling[value] }))}
          onChange={(rules) => put({ ...whole, rules })}
        />
      )}
      <div>
        <Button
          icon="bin"
          tone="quiet"
          onPress={() => useGarment.getState().edit(words.step, (now) => removeWhole(now, whole.id))}
        >
          {words.remove(title)}
        </Button>
      </div>
    </fieldset>
  );
}

function edgeName(garment: Garment, { pieceId, edgeId }: EdgeRef): string {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId);
  return piece && edge ? trialWords.edgeOf(piece, edge) : '';
}

interface PartLineProps {
  readonly garment: Garment;
  readonly part: SumPart;
  readonly onRemove: () => void;
}

function PartLine({ garment, part, onRemove }: PartLineProps) {
  const name = edgeName(garment, part.ref);
  const length = writeLength(part.length, { shownIn: garment.shownIn });
  return (
    <li>
      {name}
      <span className={styles.aside}>{(part.isPrinted ? words.printed : words.drawn)(length, part.times)}</span>
      <Button icon="bin" tone="quiet" title={words.leaveOut(name)} onPress={onRemove} />
    </li>
  );
}

interface EdgeToAddProps {
  readonly garment: Garment;
  readonly taken: readonly EdgeRef[];
  readonly onAdd: (edge: EdgeRef) => void;
}

function EdgeToAdd({ garment, taken, onAdd }: EdgeToAddProps) {
  const left = garment.pieces
    .flatMap(({ id, edges }) => edges.map((edge) => ({ pieceId: id, edgeId: edge.id })))
    .filter((edge) => !taken.some((other) => isSameEdge(edge, other)));
  return (
    <Pick
      label={words.addEdge}
      value=""
      options={[
        { value: '', words: words.noEdge },
        ...left.map((edge, index) => ({ value: String(index), words: edgeName(garment, edge) })),
      ]}
      onChange={(index) => {
        const edge = left[Number(index)];
        if (index !== '' && edge) onAdd(edge);
      }}
    />
  );
}

interface SumNoteProps extends WholeEntryProps {
  readonly sum: ReturnType<typeof printedSum>;
}

/** The sum written out, and against the whole. */
function SumNote({ garment, whole, sum: { parts, sum, drawn } }: SumNoteProps) {
  const { shownIn } = garment;
  const write = (length: number) => writeLength(length, { shownIn });
  const terms = parts.map(({ length, times }) => (times === 1 ? write(length) : words.times(times, write(length))));
  const said = words.sum(terms, write(sum));
  const compared = whole.rules === 'whole' ? drawn : sum;
  const off = compared - whole.length;
  if (Math.abs(off) <= SEWING_TOLERANCE) return <Note tone="good">{words.agrees(said)}</Note>;
  const sentence =
    whole.rules === 'whole'
      ? words.drawnApart(write(drawn), write(Math.abs(off)))
      : words.apart(said, write(whole.length), write(Math.abs(off)));
  if (whole.rules === 'parts') return <Note tone="plain">{sentence}</Note>;
  return (
    <Note tone="warn" action={{ words: words.obey, onPress: () => obey(garment, whole) }}>
      {sentence}
    </Note>
  );
}

function obey(garment: Garment, whole: PrintedWhole): void {
  const obeyed = obeyWhole(garment, whole);
  if ('kind' in obeyed) {
    say(words.cannotObey(pieceOf(garment, obeyed.pieceId)?.name ?? ''));
    return;
  }
  useGarment.getState().edit(words.obeyStep, () => obeyed);
  say(words.obeyed(writeLength(whole.length, { shownIn: garment.shownIn })));
}
