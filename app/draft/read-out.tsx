import { useSyncExternalStore } from 'react';
import { useShownIn } from '../state/shown-in';
import { writeSquares } from '../table/write-squares';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { useDraft } from './draft-store';
import { lengthBeingDrawn, lengthOfWay } from './trace';

/** Where the pointer is, in squares, and how fine the picture is. Not spoken: it changes with every movement. */
export function ReadOut({ mmPerPx }: { readonly mmPerPx: number | undefined }) {
  const shownIn = useShownIn();
  const { mode, trace, nextPoint, pointer, way } = useSyncExternalStore(inSteps, useDraft.getState);
  const at = pointer?.at;
  const isTracing = mode === 'trace';
  const length = isTracing ? (way ? lengthOfWay(way) : lengthBeingDrawn(trace, at)) : undefined;
  const hint = !isTracing
    ? undefined
    : trace.length === 0
      ? words.pressFirst
      : at === undefined
        ? words.pressNext[nextPoint]
        : undefined;
  if (!at && !hint && mmPerPx === undefined) return null;
  return (
    <p className={styles.readOut} data-at={at !== undefined || undefined} aria-hidden="true">
      {hint && <strong>{hint}</strong>}
      {at && <span>{words.squares(writeSquares(at.x, shownIn), writeSquares(at.y, shownIn))}</span>}
      {length !== undefined && <span>{words.lengthSoFar(writeLength(length, { shownIn }))}</span>}
      {mmPerPx !== undefined && (
        <span className={styles.fine}>{words.onePixel(words.onePixelLength(mmPerPx, shownIn))}</span>
      )}
    </p>
  );
}

/** How often figures that run along with the pointer are written: oftener nobody could read them. */
const STEP_MS = 80;

function inSteps(listener: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = useDraft.subscribe(() => {
    timer ??= setTimeout(() => {
      timer = undefined;
      listener();
    }, STEP_MS);
  });
  return () => {
    stop();
    clearTimeout(timer);
  };
}
