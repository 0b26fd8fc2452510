import { shapedBand, shapedBandPieces } from '../../../core/blocks/shaped-band';
import { girthsOf, levelDepth, ringPieces } from '../../../core/fit/round-body';
import type { Garment } from '../../../core/garment/garment';
import { currentSet } from '../../../core/garment/measure-value';
import { withNewPieces } from '../../../core/garment/with-new-pieces';
import { bandFromPattern, bandPieces } from '../../../core/seams/band-from-pattern';
import { joinedPanels } from '../../../core/seams/joined-panels';
import { inches } from '../../../core/units/inch';
import { newId } from '../../state/new-id';
import { Choice } from '../../ui/choice';
import { CountField } from '../../ui/count-field';
import { LengthField } from '../../ui/length-field';
import { Note } from '../../ui/note';
import { blockWords } from '../../words/blocks';
import { reshapeWords } from '../../words/reshape';
import { writeLength } from '../../words/written';
import type { Change, Tried, Trying } from '../change';
import styles from '../reshape.module.css';

const words = reshapeWords.band;

interface Band {
  readonly from: 'body' | 'pattern';
  readonly depth: number;
  /** From the body: how far below the waist its upper edge lies. */
  readonly below: number;
  /** From the pattern: whether it lies below the waist, or stands above it. */
  readonly lies: 'below' | 'above';
  readonly parts: number;
  readonly lap: number;
  readonly on: 'fold' | 'whole';
}

export const bandChange: Change = {
  name: 'band',
  icon: 'fold',
  begin: (garment) =>
    trying({
      from: garment.rings.length > 0 && garment.pieces.length > 0 ? 'pattern' : 'body',
      depth: inches(1.5),
      below: 0,
      lies: 'below',
      parts: 1,
      lap: inches(1),
      on: 'fold',
    }),
};

function trying(wish: Band): Trying {
  return {
    name: 'band',
    label: () => words.label,
    make: (garment) => (wish.from === 'body' ? fromBody(garment, wish) : fromPattern(garment, wish)),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
  };
}

/** Waist and hip with their ease, and how far apart they lie, as the levels of the fit have them. */
function bodyOf(garment: Garment) {
  const ring = garment.rings[0];
  const girths = ring ? girthsOf(garment, ring) : [];
  const wanted = (name: 'waist' | 'hip') => {
    const girth = girths.find(({ level }) => level.girth === name);
    return girth?.kind === 'measured' ? girth.wanted : undefined;
  };
  const hip = ring?.levels.find(({ girth }) => girth === 'hip');
  const hipDepth = hip && levelDepth(hip, currentSet(garment));
  return { waist: wanted('waist'), hip: wanted('hip'), hipDepth: typeof hipDepth === 'number' ? hipDepth : undefined };
}

function fromBody(garment: Garment, { depth, below, parts, lap, on }: Band): Tried {
  const { waist, hip, hipDepth } = bodyOf(garment);
  if (waist === undefined || hip === undefined || hipDepth === undefined) {
    return { kind: 'not-tried', sentence: words.noBody };
  }
  const sizes = { waist, hip, hipDepth, depth, below };
  const pieces = shapedBandPieces({ ...sizes, parts, lap, on }, { newId, nameOf: blockWords.nameOf });
  if ('why' in pieces) return { kind: 'not-tried', sentence: blockWords.refusal(pieces) };
  const { top, bottom, straightError } = shapedBand(sizes);
  return {
    kind: 'tried',
    garment: withNewPieces(garment, pieces),
    figures: figuresOf(garment, top, bottom, straightError),
  };
}

function fromPattern(garment: Garment, { depth, lies, parts, lap }: Band): Tried {
  const ring = garment.rings[0];
  const { hipDepth = depth } = bodyOf(garment);
  const joined = ring && joinedPanels(garment, ringPieces(garment, ring), { over: Math.max(depth, hipDepth) });
  if (joined?.kind !== 'joined-panels') return { kind: 'not-tried', sentence: words.noRing };
  const band = bandFromPattern(joined, { depth, lies });
  const pieces = bandPieces(joined, { depth, lies, parts, lap, newId, name: blockWords.nameOf('band') });
  if ('why' in pieces) return { kind: 'not-tried', sentence: words.refused[pieces.why] };
  if (band.kind === 'no-band') return { kind: 'not-tried', sentence: words.refused[band.why] };
  const { top, bottom, straightError } = band;
  return {
    kind: 'tried',
    garment: withNewPieces(garment, pieces),
    figures: figuresOf(garment, top, bottom, straightError),
  };
}

function figuresOf({ shownIn }: Garment, top: number, bottom: number, straightError: number) {
  const write = (mm: number) => writeLength(mm, { shownIn });
  return [
    { words: words.top, value: write(top) },
    { words: words.bottom, value: write(bottom) },
    { words: words.straight, value: words.off(write(Math.abs(straightError)), straightError >= 0 ? 'short' : 'long') },
  ];
}

/** Whether a waist that goes round the body is still drawn straight: the band would follow its peaks. */
function hasStraightWaist({ rings, pieces }: Garment): boolean {
  const members = rings[0]?.members ?? [];
  return pieces.some(
    ({ id, edges }) =>
      members.some(({ pieceId }) => pieceId === id) &&
      edges.some(({ role, shape }) => role === 'waist' && shape.kind === 'straight'),
  );
}

interface FieldsProps {
  readonly wish: Band;
  readonly garment: Garment;
  readonly onChange: (wish: Band) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const change = (next: Partial<Band>) => onChange({ ...wish, ...next });
  const length = (label: string, key: 'depth' | 'below' | 'lap') => (
    <LengthField
      label={label}
      value={wish[key]}
      shownIn={garment.shownIn}
      min={0}
      onCommit={(mm) => mm !== undefined && change({ [key]: mm })}
    />
  );
  return (
    <>
      <Choice
        label={words.from}
        value={wish.from}
        options={(['pattern', 'body'] as const).map((value) => ({ value, words: words.froms[value] }))}
        onChange={(from) => change({ from })}
      />
      {wish.from === 'pattern' && (
        <Choice
          label={words.lies}
          value={wish.lies}
          options={(['below', 'above'] as const).map((value) => ({ value, words: words.lie[value] }))}
          onChange={(lies) => change({ lies })}
        />
      )}
      {wish.from === 'pattern' && hasStraightWaist(garment) && <Note tone="plain">{words.straightWaists}</Note>}
      <div className={styles.pair}>
        {length(words.depth, 'depth')}
        {length(words.lap, 'lap')}
        {wish.from === 'body' && length(words.below, 'below')}
        <CountField label={words.parts} value={wish.parts} onCommit={(parts) => change({ parts })} />
      </div>
      {wish.from === 'body' && (
        <Choice
          label={words.on}
          value={wish.on}
          options={(['fold', 'whole'] as const).map((value) => ({ value, words: words.ons[value] }))}
          onChange={(on) => change({ on })}
        />
      )}
    </>
  );
}
