import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { PinnedLength } from '../../core/mockup/pinned-length';
import { inches } from '../../core/units/inch';
import { Choice } from '../ui/choice';
import { LengthStepper } from '../ui/length-stepper';
import { Switch } from '../ui/switch';
import { mockupWords as words } from '../words/mockup';
import styles from './mockup.module.css';
import { STEPS } from './new-change';

interface LengthFormProps {
  readonly garment: Garment;
  readonly what: PinnedLength;
  readonly onChange: (what: PinnedLength) => void;
}

/** Where a line across begins before she has said: half-way to the hip of most bodies. */
const DEPTH_AT_FIRST = inches(4);

/** Longer or shorter: by how much, where, and on which pieces. */
export function LengthForm({ garment, what, onChange }: LengthFormProps) {
  const { shownIn } = garment;
  const step = STEPS[shownIn];
  const { at, by, pieceIds } = what;
  const toggle = (id: string, on: boolean) =>
    onChange({ ...what, pieceIds: on ? [...pieceIds, id] : pieceIds.filter((one) => one !== id) });
  return (
    <div className={styles.thumbs}>
      <Choice
        label={words.lengthWay}
        value={by < 0 ? 'shorter' : 'longer'}
        options={(['longer', 'shorter'] as const).map((way) => ({ value: way, words: words.lengthWays[way] }))}
        onChange={(way) => onChange({ ...what, by: way === 'longer' ? Math.abs(by) : -Math.abs(by) })}
      />
      <LengthStepper
        label={words.lengthBy}
        value={Math.abs(by)}
        step={step.by}
        min={step.by / 4}
        shownIn={shownIn}
        onCommit={(length) => length !== undefined && onChange({ ...what, by: by < 0 ? -length : length })}
      />
      <Choice
        label={words.at}
        value={at.kind}
        options={(['hem', 'depth'] as const).map((kind) => ({ value: kind, words: words.ats[kind] }))}
        onChange={(kind) => onChange({ ...what, at: kind === 'hem' ? { kind } : { kind, depth: DEPTH_AT_FIRST } })}
      />
      {at.kind === 'depth' && (
        <LengthStepper
          label={words.depth}
          value={at.depth}
          step={step.along}
          min={step.along}
          shownIn={shownIn}
          onCommit={(depth) => depth !== undefined && onChange({ ...what, at: { kind: 'depth', depth } })}
        />
      )}
      <fieldset className={styles.pieces}>
        <legend>{words.pieces}</legend>
        {cutPieces(garment).map(({ id, name }) => (
          <Switch key={id} label={name} on={pieceIds.includes(id)} onChange={(on) => toggle(id, on)} />
        ))}
      </fieldset>
    </div>
  );
}
