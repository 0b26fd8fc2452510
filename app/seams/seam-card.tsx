import type { Garment } from '../../core/garment/garment';
import { isOwnMirror, type Seam } from '../../core/garment/seam';
import { changeSeam, removeSeam } from '../../core/garment/seam-edits';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { seamsWords as words } from '../words/seams';
import { seamName, sideName } from './seam-names';
import { bandSide } from './seam-sums';
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
    <Card title={words.theSeam}>
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
            <EaseField garment={garment} seam={seam} side="one" onEase={change} />
            <EaseField garment={garment} seam={seam} side="other" onEase={change} />
          </div>
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

interface EaseFieldProps extends SeamCardProps {
  readonly side: 'one' | 'other';
  readonly onEase: (label: string, how: (seam: Seam) => Seam) => void;
}

/** By how much one side is meant to be the longer; the other side has its own field, and only one of the two is filled. */
function EaseField({ garment, seam, side, onEase }: EaseFieldProps) {
  const sign = side === 'one' ? 1 : -1;
  const isLap = bandSide(garment, seam) === side;
  const own = sign * seam.ease;
  return (
    <LengthField
      label={isLap ? words.lapOf : words.easedInBy(sideName(garment, seam[side]))}
      value={own > 0 ? own : undefined}
      shownIn={garment.shownIn}
      allowEmpty
      min={0}
      {...(isLap ? { hint: words.lapHint } : {})}
      onCommit={(length) => onEase(words.steps.ease, (now) => ({ ...now, ease: length ? sign * length : 0 }))}
    />
  );
}

function unpair(garment: Garment, seam: Seam): void {
  useGarment.getState().edit(words.steps.unpair, (before) => removeSeam(before, seam.id));
  say(words.unpaired(seamName(garment, seam)));
  openSeam(undefined);
}
