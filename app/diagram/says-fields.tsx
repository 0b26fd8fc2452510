import type { ReactNode } from 'react';
import type { StatedLength } from '../../core/garment/diagram';
import { MEASURES, type MeasureName } from '../../core/garment/measure';
import type { ShownIn } from '../../core/units/inch';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Pick } from '../ui/pick';
import { diagramWords } from '../words/diagram';
import { measureNames } from '../words/measures';
import { midSentence } from '../words/written';
import styles from './diagram-room.module.css';

const words = diagramWords.known;

interface SaysFieldsProps {
  /** `undefined` while nothing is said yet. */
  readonly says: StatedLength | undefined;
  readonly shownIn: ShownIn;
  /** Measures taken, offered first. */
  readonly taken: readonly MeasureName[];
  readonly onChange: (says: StatedLength) => void;
  readonly kind: StatedLength['kind'];
  readonly onKind: (kind: StatedLength['kind']) => void;
  /** The fields of a scale bar. */
  readonly bar: ReactNode;
}

type Share = keyof typeof words.shares;

/** How long a line is at full size: a length, a scale bar, or a share of a measure picked from lists, and ease. */
export function SaysFields({ says, shownIn, taken, onChange, kind, onKind, bar }: SaysFieldsProps) {
  return (
    <>
      <Choice
        label={words.kind}
        value={kind}
        options={[
          { value: 'length', words: words.length },
          { value: 'bar', words: words.scaleBar },
          { value: 'share', words: words.share },
        ]}
        onChange={onKind}
      />
      {kind === 'bar' && bar}
      {kind === 'length' && (
        <LengthField
          label={words.fullSize}
          value={says?.kind === 'length' ? says.length : undefined}
          shownIn={shownIn}
          min={1}
          onCommit={(length) => length !== undefined && onChange({ kind: 'length', length })}
        />
      )}
      {kind === 'share' && (
        <ShareFields says={says?.kind === 'share' ? says : firstShare(taken)} {...{ shownIn, taken, onChange }} />
      )}
    </>
  );
}

interface ShareFieldsProps {
  readonly shownIn: ShownIn;
  readonly taken: readonly MeasureName[];
  readonly onChange: (says: StatedLength) => void;
  readonly says: Extract<StatedLength, { kind: 'share' }>;
}

function ShareFields({ says, shownIn, taken, onChange }: ShareFieldsProps) {
  const share = `${says.parts}/${says.of}`;
  const listed = Object.keys(words.shares) as Share[];
  const shares = listed.some((each) => each === share)
    ? listed.map((value) => ({ value: value as string, words: words.shares[value] as string }))
    : [{ value: share, words: share }, ...listed.map((value) => ({ value, words: words.shares[value] }))];
  const measures = [...taken, ...MEASURES.filter((name) => !taken.includes(name))];
  return (
    <div className={styles.share}>
      <Pick
        label={words.part}
        value={share}
        options={shares}
        onChange={(picked) => {
          const [parts = 1, of = 1] = picked.split('/').map(Number);
          onChange({ ...says, parts, of });
        }}
      />
      <Pick
        label={words.ofThe}
        value={says.measure}
        options={measures.map((value) => ({ value, words: midSentence(measureNames[value]) }))}
        onChange={(measure) => onChange({ ...says, measure })}
      />
      <LengthField
        label={words.ease}
        value={says.ease}
        shownIn={shownIn}
        onCommit={(ease) => onChange({ ...says, ease: ease ?? 0 })}
      />
    </div>
  );
}

/** A quarter of the waist is what half a front on a fold shows. */
export function firstShare(taken: readonly MeasureName[]): Extract<StatedLength, { kind: 'share' }> {
  const measure = taken.includes('waist') ? 'waist' : (taken[0] ?? 'waist');
  return { kind: 'share', measure, parts: 1, of: 4, ease: 0 };
}
