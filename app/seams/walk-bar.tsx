import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { inches } from '../../core/units/inch';
import { Button } from '../ui/button';
import { seamsWords as words } from '../words/seams';
import { writeLength } from '../words/written';
import { seamName, sideName } from './seam-names';
import styles from './seams.module.css';
import { rollTo, useSeams } from './seams-store';
import { StripChart } from './strip-chart';
import { otherAlong } from './strip-marks';

interface WalkBarProps {
  readonly garment: Garment;
  readonly seam: Seam;
  readonly walk: SeamWalk;
}

/** A press walks on by this much. */
const STEP = { in: inches(1 / 2), cm: 10 } as const;

/** The strip of both sides over the table, and what walks the second piece along the first. */
export function WalkBar({ garment, seam, walk }: WalkBarProps) {
  const { shownIn } = garment;
  const { length } = walk.one;
  const along = Math.min(
    useSeams((state) => state.along),
    length,
  );
  const names = [sideName(garment, seam.one), sideName(garment, seam.other)] as const;
  const written = (mm: number) => writeLength(mm, { shownIn });
  const [at, there] = [written(along), written(otherAlong(walk, along))];
  // Steps of about an eighth of an inch that also come to the very end.
  const steps = Math.max(1, Math.round(length / (STEP[shownIn] / 4)));
  return (
    <section className={styles.bar} aria-label={words.walk(seamName(garment, seam))}>
      <StripChart garment={garment} walk={walk} along={along} names={names} />
      <output className={styles.contactWords}>{words.contactShort(at, there)}</output>
      <div className={styles.steps}>
        <Button icon="left" disabled={along <= 0} onPress={() => rollTo(Math.max(0, along - STEP[shownIn]))}>
          {words.back(written(STEP[shownIn]))}
        </Button>
        <input
          type="range"
          className={styles.slide}
          aria-label={words.slider}
          aria-valuetext={words.contact(names[0], at, names[1], there)}
          min={0}
          max={steps}
          step={1}
          value={Math.round((along / length) * steps)}
          onChange={(event) => rollTo((event.target.valueAsNumber / steps) * length)}
        />
        <Button icon="right" disabled={along >= length} onPress={() => rollTo(Math.min(length, along + STEP[shownIn]))}>
          {words.on(written(STEP[shownIn]))}
        </Button>
      </div>
    </section>
  );
}
