import { useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import type { Piece } from '../../core/garment/piece';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Paint } from '../table/painted';
import { PiecesTable } from '../table/pieces-table';
import { canvasColours } from '../ui/canvas-colours';
import { clothWords as words } from '../words/cloth';
import { useCloth } from './cloth-store';
import { layTool } from './lay-tool';
import { laidName } from './names';
import { type ClothLaidOut, layRing, paintCloth, paintEnd } from './paint-cloth';
import { paintLay } from './paint-lay';
import type { ShownLay } from './shown-lay';
import { READS_ACROSS, turnedBox, turnedPaint, turnedTool, useTurnedCloth } from './turned-cloth';

interface LayTableProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** Round the cloth, for its selvedge and what is written there (mm). */
const MARGIN = 70;

/** How much cloth is shown where nothing says its length, and beyond the end of a lay (mm). */
const LEAST_LENGTH = 1000;
const BEYOND = 120;

const keepNothing = () => undefined;

const straightPaint = (paint: Paint): Paint => paint;

/** What lies here is gone over by the keys of the tool: pieces of cloth, not of the table. */
const NO_PIECES: readonly Piece[] = [];

/** The cloth with the pieces on it, to be moved, turned and pinned. */
export function LayTable({ garment, cloth, lay }: LayTableProps) {
  const { shownIn } = garment;
  const inHand = useCloth((state) => state.inHand);
  const drawing = useCloth((state) => state.drawing);
  const { laying, faults, shown } = lay;
  const { made } = laying;
  const across = made.kind === 'task' ? made.task.ground.across : laidAcross(laying.cloth);
  const length = Math.max(
    laidLength(laying.cloth) ?? LEAST_LENGTH,
    laying.cloth.shape ? 0 : Math.ceil(((lay.standing?.lay.length ?? 0) + BEYOND) / 100) * 100,
  );
  const isTurned = useTurnedCloth();
  const fit = useMemo(() => {
    const box = { minX: -MARGIN, minY: -MARGIN, maxX: length + MARGIN, maxY: across + 1.6 * MARGIN };
    return isTurned ? turnedBox(box) : box;
  }, [length, across, isTurned]);
  const latest = useRef({ garment, cloth, lay });
  useLayoutEffect(() => {
    latest.current = { garment, cloth, lay };
  });
  const tool = useMemo(() => {
    const straight = layTool(() => latest.current);
    return isTurned ? turnedTool(straight) : straight;
  }, [isTurned]);
  const laidOut = useMemo<ClothLaidOut>(() => {
    const ground = made.kind === 'task' ? made.task.ground : { across, kept: [] };
    const end = laying.cloth.shape ? undefined : laidLength(laying.cloth);
    return { laying, ground, length, end, shownIn };
  }, [laying, made, across, length, shownIn]);
  const still = useCallback<Paint>((ink, ground) => paintCloth(ink, laidOut, ground), [laidOut]);
  const moving = useCallback<Paint>(
    (ink, ground) => {
      const angle = isTurned ? READS_ACROSS : 0;
      const name = (id: string) => laidName(id, garment, cloth);
      paintLay(ink, { shown, faults, inHand, name, joins: cloth.pieced ?? [], angle }, ground);
      paintEnd(ink, laidOut, ground);
    },
    [shown, faults, inHand, garment, cloth, laidOut, isTurned],
  );
  const drawn = useCallback<Paint>(
    (ink, { px }) => {
      if (!drawing) return;
      ink.strokeStyle = canvasColours.chalk;
      ink.fillStyle = canvasColours.chalk;
      ink.lineWidth = 2.5 * px;
      layRing(ink, drawing.corners);
      ink.stroke();
      for (const { x, y } of drawing.corners) {
        ink.beginPath();
        ink.arc(x, y, 5 * px, 0, 2 * Math.PI);
        ink.fill();
      }
    },
    [drawing],
  );
  const asSeen = isTurned ? turnedPaint : straightPaint;
  return (
    <PiecesTable
      key={`${cloth.id} ${isTurned}`}
      view={undefined}
      onView={keepNothing}
      fit={fit}
      fitAgain={Math.round(across) * 10_000 + Math.round(length / 300)}
      tool={tool}
      label={words.tableLabel}
      shownIn={shownIn}
      pieces={NO_PIECES}
      leftwards={isTurned}
      still={useMemo(() => [asSeen(still)], [asSeen, still])}
      moving={useMemo(() => [asSeen(moving), asSeen(drawn)], [asSeen, moving, drawn])}
    />
  );
}

/** How wide the cloth is as it lies, where nothing can be laid on it. */
function laidAcross(cloth: ShownLay['laying']['cloth']): number {
  const box = cloth.shape && boxOfPoints(cloth.shape);
  if (box) return Math.max(1, box.maxY - box.minY);
  const usable = Math.max(1, cloth.width - 2 * cloth.selvedge);
  return cloth.folded === 'lengthwise' ? usable / 2 : usable;
}

/** How long the cloth at hand is as it lies, if that is known. */
function laidLength(cloth: ShownLay['laying']['cloth']): number | undefined {
  const box = cloth.shape && boxOfPoints(cloth.shape);
  if (box) return box.maxX - box.minX;
  return cloth.folded === 'crosswise' && cloth.atHand !== undefined ? cloth.atHand / 2 : cloth.atHand;
}
