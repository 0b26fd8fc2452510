import { useMemo } from 'react';
import { whatChanges } from '../../core/check/what-changes';
import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { reshapeWords } from '../words/reshape';
import { seamsWords as words } from '../words/seams';
import { anglesWords } from './angles';
import { NewlyOpen } from './newly-open';
import { finely } from './seam-names';
import { type SeamTrial, triedOn } from './seam-trial';
import styles from './seams.module.css';
import { trySeam } from './seams-store';
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
    <Card title={words.trials[trial.kind]}>
      <p className={styles.help}>{words.trialHelp[trial.kind]}</p>
      <TrialFields garment={garment} seam={seam} walk={walk} trial={trial} />
      {tried.kind !== 'tried' && <Note tone="warn">{words.refused[tried.why]}</Note>}
      {tried.kind === 'tried' && tried.corners && (
        <dl className={styles.numbers}>
          <div>
            <dt>{words.anglesNow}</dt>
            <dd>{anglesWords(tried.corners.before)}</dd>
          </div>
          <div>
            <dt>{words.anglesThen}</dt>
            <dd>{anglesWords(tried.corners.after)}</dd>
          </div>
        </dl>
      )}
      {tried.kind === 'tried' && !changes && <Note tone="good">{words.changesNothing}</Note>}
      {changes && (
        <>
          <Changes before={garment} after={tried.garment} />
          <NewlyOpen before={garment} after={tried.garment} />
        </>
      )}
      <div className={styles.row}>
        <Button tone="chalk" icon="done" disabled={!changes} onPress={() => take(seam, trial)}>
          {reshapeWords.take}
        </Button>
        <Button icon="close" onPress={() => trySeam(undefined)}>
          {reshapeWords.leave}
        </Button>
      </div>
    </Card>
  );
}

function take(seam: Seam, trial: SeamTrial): void {
  const { garment, edit } = useGarment.getState();
  const tried = garment && triedOn(garment, seam, trial);
  if (tried?.kind !== 'tried') return;
  const label = words.steps[trial.kind];
  edit(label, () => tried.garment);
  trySeam(undefined);
  say(reshapeWords.taken(label));
}

/** Every edge that becomes longer or shorter, and the girths that change with it. */
function Changes({ before, after }: { readonly before: Garment; readonly after: Garment }) {
  const { edges, girths } = useMemo(() => whatChanges(before, after), [before, after]);
  const rows = [
    ...girths.map(({ level, ...lengths }) => ({ said: reshapeWords.round(level), ...lengths })),
    ...edges.map(({ piece, edge, ...lengths }) => ({ said: words.edgeOf(piece, edge.id), ...lengths })),
  ].map(({ said, before: was, after: is }) => ({ said, was: finely(before, was), is: finely(before, is) }));
  return (
    <dl className={styles.numbers}>
      {rows.map(
        ({ said, was, is }) =>
          was !== is && (
            <div key={said}>
              <dt>{said}</dt>
              <dd>{reshapeWords.fromTo(was, is)}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
