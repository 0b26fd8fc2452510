import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { Button } from '../ui/button';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import { useCloth } from './cloth-store';
import { editCloth } from './new-cloth';
import type { ShownLay } from './shown-lay';

interface DrawingBarProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** While a flaw or a shape is being drawn on the cloth: what to do, and when it is done. */
export function DrawingBar({ cloth, lay }: DrawingBarProps) {
  const drawing = useCloth((state) => state.drawing);
  if (!drawing) return null;
  const { what, corners } = drawing;
  const stop = () => useCloth.setState({ drawing: undefined });
  const done = () => {
    editCloth(cloth, (now) =>
      what === 'shape' ? { ...now, shape: corners } : { ...now, flaws: [...now.flaws, openedOut(corners, cloth, lay)] },
    );
    stop();
  };
  return (
    <div className={styles.drawing}>
      <p>
        {words.drawingHelp[what]} {words.corners(corners.length)}.
      </p>
      <div className={styles.row}>
        <Button tone="chalk" icon="done" disabled={corners.length < 3} onPress={done}>
          {words.done}
        </Button>
        <Button
          icon="undo"
          disabled={corners.length === 0}
          onPress={() => useCloth.setState({ drawing: { what, corners: corners.slice(0, -1) } })}
        >
          {words.lastBack}
        </Button>
        <Button onPress={stop}>{words.notAfterAll}</Button>
      </div>
    </div>
  );
}

/** A place drawn on the cloth as it lies and is washed, as a place of the cloth opened out and unwashed. */
function openedOut(corners: readonly Point[], cloth: GarmentCloth, { laying }: ShownLay): Point[] {
  const { along = 0, across = 0 } = cloth.shrinks ?? {};
  const washed = laying.cloth;
  const usable = washed.width - 2 * washed.selvedge;
  const corner = boxOfPoints(washed.shape ?? []);
  return corners.map(({ x, y }) => {
    if (corner) return { x: x + corner.minX, y: y + corner.minY };
    const opened =
      cloth.folded === 'lengthwise'
        ? { x, y: usable / 2 + y }
        : { x: cloth.folded === 'crosswise' ? (washed.atHand ?? 0) / 2 + x : x, y };
    return { x: opened.x / (1 - along), y: opened.y / (1 - across) };
  });
}
