import type { Garment } from '../../core/garment/garment';
import { isOwnMirror, type Seam, type SeamLap } from '../../core/garment/seam';
import { changeSeam, removeSeam, withLap } from '../../core/garment/seam-edits';
import { lapEnd } from '../../core/seams/seam-sides';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { seamsWords as words } from '../words/seams';
import { seamName, sideName } from './seam-names';
import { bandSide, roleAtEnd } from './seam-sums';
import styles from './seams.module.css';
import { openSeam } from './seams-store';
import { SideEdges } from './side-edges';

interface SeamCardProps {
  readonly garment: Garment;
  readonly seam: Seam;
}

/** What a seam says of itself: its name, its edges, the difference that is meant, and which way it runs. */
export function SeamCard({ garment, seam }: SeamCardProps) {
  const change = (label: string, how: (seam: Seam) => Seam) =>
    useGarment.getState().edit(label, (before) => changeSeam(before, seam.id, how));
  const mirror = isOwnMirror(seam);
  return (
    <Card title={words.theSeam} about="one-seam">
      <TextField
        label={words.name}
        value={seam.name}
        hint={words.nameHint}
        onCommit={(name) => change(words.steps.name, (now) => ({ ...now, name: name.trim() }))}
      />
      <SideEdges garment={garment} seam={seam} side="one" />
      <SideEdges garment={garment} seam={seam} side="other" />
      {!mirror && (
        <>
          <div className={styles.pair}>
            {(['one', 'other'] as const).map((side) =>
              (seam.lap?.side ?? bandSide(garment, seam)) === side ? (
                <LapField key={side} garment={garment} seam={seam} side={side} onChange={change} />
              ) : (
                <EaseField key={side} garment={garment} seam={seam} side={side} onChange={change} />
              ),
            )}
          </div>
          {seam.lap && <LapEnd garment={garment} seam={seam} lap={seam.lap} onChange={change} />}
          <Choice
            label={words.way}
            value={seam.way}
            options={(['opposite', 'same'] as const).map((way) => ({ value: way, words: words.ways[way] }))}
            onChange={(way) => change(words.steps.way, (now) => ({ ...now, way }))}
          />
        </>
      )}
      <div className={styles.row}>
        <Button icon="bin" onPress={() => unpair(garment, seam)}>
          {words.unpair}
        </Button>
      </div>
    </Card>
  );
}

interface ChangeProps extends SeamCardProps {
  readonly onChange: (label: string, how: (seam: Seam) => Seam) => void;
}

interface SideFieldProps extends ChangeProps {
  readonly side: 'one' | 'other';
}

/** By how much one side is meant to be the longer; the other side has its own field, and only one of the two is filled. */
function EaseField({ garment, seam, side, onChange }: SideFieldProps) {
  const sign = side === 'one' ? 1 : -1;
  const own = sign * seam.ease;
  return (
    <LengthField
      label={words.easedInBy(sideName(garment, seam[side]))}
      value={own > 0 ? own : undefined}
      shownIn={garment.shownIn}
      allowEmpty
      min={0}
      onCommit={(length) => onChange(words.steps.ease, (now) => ({ ...now, ease: length ? sign * length : 0 }))}
    />
  );
}

/** What of a band lies beyond the waist. Garments of old have it as an ease of the band. */
function LapField({ garment, seam, side, onChange }: SideFieldProps) {
  const asEase = (side === 'one' ? 1 : -1) * seam.ease;
  return (
    <LengthField
      label={words.lapOf}
      value={seam.lap?.length ?? (asEase > 0 ? asEase : undefined)}
      shownIn={garment.shownIn}
      allowEmpty
      min={0}
      hint={words.lapHint}
      onCommit={(length) =>
        onChange(words.steps.lap, (now) =>
          withLap(now, length ? { side, length, at: now.lap?.at ?? lapEnd(garment, now, side) } : undefined, side),
        )
      }
    />
  );
}

/** At which end of the walk a lap lies, told by what the other side runs into there. */
function LapEnd({ garment, seam, lap, onChange }: ChangeProps & { readonly lap: SeamLap }) {
  const walk = walkOfSeam(garment, seam);
  const beside = (end: 'at-start' | 'at-end') => words.beside(walk && roleAtEnd(walk, end));
  return (
    <Choice
      label={words.lapAt}
      value={lap.at}
      options={(['start', 'end'] as const).map((at) => ({
        value: at,
        words: words.wheres[`at-${at}`](beside(`at-${at}`)),
      }))}
      onChange={(at) => onChange(words.steps.lap, (now) => withLap(now, { ...lap, at }, lap.side))}
    />
  );
}

function unpair(garment: Garment, seam: Seam): void {
  useGarment.getState().edit(words.steps.unpair, (before) => removeSeam(before, seam.id));
  say(words.unpaired(seamName(garment, seam)));
  openSeam(undefined);
}
