import { writeSquares } from '../table/write-squares';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { useDraft } from './draft-store';
import { useShownIn } from './edit-piece';
import { lengthBeingDrawn, lengthOfWay } from './trace';

/** Where the pointer is, in squares, and how fine the picture is. Not spoken: it changes with every movement. */
export function ReadOut({ mmPerPx }: { readonly mmPerPx: number | undefined }) {
  const shownIn = useShownIn();
  const at = useDraft((draft) => draft.pointer?.at);
  const length = useDraft(({ mode, trace, pointer, way }) =>
    mode === 'trace' ? (way ? lengthOfWay(way) : lengthBeingDrawn(trace, pointer?.at)) : undefined,
  );
  const hint = useDraft(({ mode, trace, nextPoint, pointer }) => {
    if (mode !== 'trace') return undefined;
    if (trace.length === 0) return words.pressFirst;
    return pointer ? undefined : words.pressNext[nextPoint];
  });
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
