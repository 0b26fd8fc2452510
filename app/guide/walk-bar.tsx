import { useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { useGuide } from '../state/guide-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Icon } from '../ui/icon';
import { say } from '../ui/say';
import { guideWords as words } from '../words/guide/guide';
import { shellWords } from '../words/shell';
import { inFull } from '../words/written';
import styles from './guide.module.css';
import { walkSteps } from './walk-steps';

/** The walk through the demo garment: one sentence along the foot of the page, never in the way of what it speaks of. */
export function WalkBar() {
  const walk = useGuide((guide) => guide.walk);
  const garment = useGarment((state) => state.garment);
  if (!walk || !garment || garment.id !== walk.garmentId) return null;
  return <Bar step={Math.min(walk.step, walkSteps.length - 1)} garmentId={walk.garmentId} />;
}

function Bar({ step, garmentId }: { readonly step: number; readonly garmentId: string }) {
  const setWalk = useGuide((guide) => guide.setWalk);
  const goTo = useTable((table) => table.goTo);
  const room = useTable((table) => table.room);
  const garment = useGarment((state) => state.garment);
  const findings = useFindings((state) => state.findings);
  const at = walkSteps[step];
  const said = at && words.steps[at.name];

  if (!at || !said || !garment) return null;
  const isDone = at.isDone?.(garment, findings) ?? false;
  const isLast = step === walkSteps.length - 1;

  function turnTo(next: number) {
    const to = walkSteps[next];
    if (!to) return;
    setWalk({ garmentId, step: next });
    goTo(to.room, garment && to.shows?.(garment));
  }

  function leave() {
    setWalk(undefined);
    say(words.walkLeft);
  }

  return (
    <section className={styles.walk} aria-label={words.walk}>
      <p className={styles.walkCount}>{words.walkStep(step + 1, walkSteps.length)}</p>
      <div className={styles.walkSaid} aria-live="polite">
        <h2>
          {said.title}
          {isDone && (
            <span className={styles.walkDone}>
              <Icon name="done" /> {words.walkDone}
            </span>
          )}
        </h2>
        <p>{inFull(said.say, garment.shownIn)}</p>
      </div>
      <div className={styles.walkButtons}>
        {room !== at.room && (
          <Button tone="chalk" onPress={() => goTo(at.room, at.shows?.(garment))}>
            {words.walkGoThere(shellWords.rooms[at.room])}
          </Button>
        )}
        {step > 0 && <Button onPress={() => turnTo(step - 1)}>{words.walkBack}</Button>}
        {isLast ? (
          <Button tone="chalk" onPress={() => setWalk(undefined)}>
            {words.walkEnd}
          </Button>
        ) : (
          <>
            <Button tone={isDone || !at.isDone ? 'chalk' : 'plain'} onPress={() => turnTo(step + 1)}>
              {words.walkNext}
            </Button>
            <Button tone="quiet" onPress={leave}>
              {words.walkLeave}
            </Button>
          </>
        )}
      </div>
    </section>
  );
}
