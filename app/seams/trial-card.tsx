import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { changedFigures } from '../trial/changed-figures';
import { Figures } from '../trial/figures';
import { NewlyOpen } from '../trial/newly-open';
import { TakeOrLeave } from '../trial/take-or-leave';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { seamsWords as words } from '../words/seams';
import { anglesWords } from './angles';
import { finely } from './seam-names';
import { type SeamTrial, triedOn } from './seam-trial';
import styles from './seams.module.css';
import { leaveTrial } from './seams-store';
import { TrialFields } from './trial-fields';

interface TrialCardProps {
  readonly garment: Garment;
  readonly seam: Seam;
  readonly walk: SeamWalk;
  readonly trial: SeamTrial;
}

/** The change being tried: its choices, what it does in numbers, what it would newly bring up; then take it or leave it. */
export function TrialCard({ garment, seam, walk, trial }: TrialCardProps) {
  const tried = triedOn(garment, seam, trial);
  const changes = tried.kind === 'tried' && tried.garment !== garment;
  return (
    <Card title={words.trials[trial.kind]} about="trueing">
      <p className={styles.help}>{words.trialHelp[trial.kind]}</p>
      <TrialFields garment={garment} seam={seam} walk={walk} trial={trial} />
      {tried.kind !== 'tried' && <Note tone="warn">{words.refused[tried.why]}</Note>}
      {tried.kind === 'tried' && tried.corners && (
        <Figures
          rows={[
            { words: words.anglesNow, value: anglesWords(tried.corners.before) },
            { words: words.anglesThen, value: anglesWords(tried.corners.after) },
          ]}
        />
      )}
      {tried.kind === 'tried' && !changes && <Note tone="good">{words.changesNothing}</Note>}
      {changes && (
        <>
          <Figures rows={changedFigures(garment, tried.garment, (mm) => finely(garment, mm))} />
          <NewlyOpen before={garment} after={tried.garment} />
        </>
      )}
      <TakeOrLeave
        garment={garment}
        after={tried.kind === 'tried' ? tried.garment : undefined}
        label={words.steps[trial.kind]}
        onDone={leaveTrial}
      />
    </Card>
  );
}
