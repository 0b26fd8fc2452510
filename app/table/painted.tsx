import type { Context } from 'konva/lib/Context';
import Konva from 'konva/lib/Core';
import type { Shape as KonvaShape } from 'konva/lib/Shape';
import { useCallback } from 'react';
import { Shape } from 'react-konva/lib/ReactKonvaCore';
import type { Box } from '../../core/geometry/bounds';
import { useLook } from '../ui/look';
import { seenBox } from './view';

/** What a painter needs to know besides the canvas. */
export interface Ground {
  /** World units in one CSS pixel, or in one of the magnifying glass: a line two pixels wide is `2 * px`. */
  readonly px: number;
  /** The part of the world in sight. */
  readonly seen: Box;
  /** Device pixels in one of those. */
  readonly pixelRatio: number;
}

/** Paints something in world units. Keep the function while the thing stays the same; a new one means paint anew. */
export type Paint = (ink: CanvasRenderingContext2D, ground: Ground) => void;

/** Paints without leaving a trace on the canvas's state, and so that a fault in one thing leaves the others as they are. */
function paintAlone(ink: CanvasRenderingContext2D, work: () => void): void {
  const { save, restore } = ink;
  let depth = 0;
  ink.save = () => {
    depth += 1;
    save.call(ink);
  };
  ink.restore = () => {
    depth -= 1;
    restore.call(ink);
  };
  ink.save();
  try {
    work();
  } catch (fault) {
    reportError(fault);
  }
  while (depth > 0) ink.restore();
  ink.save = save;
  ink.restore = restore;
}

/** One thing on the canvas, painted in one go. */
export function Painted({ paint }: { readonly paint: Paint }) {
  const painted = useLook((look) => look.painted);
  // biome-ignore lint/correctness/useExhaustiveDependencies: in other colours it is painted anew
  const scene = useCallback(
    (context: Context, shape: KonvaShape) => {
      const stage = shape.getStage();
      if (!stage) return;
      const view = { scale: stage.scaleX(), x: stage.x(), y: stage.y() };
      const pixelRatio = context.canvas.getPixelRatio();
      const ink = context._context as CanvasRenderingContext2D;
      const ground = {
        // Under the magnifier places lie further apart while lines and points keep their size, so nothing is hidden.
        px: Konva.pixelRatio / pixelRatio / view.scale,
        seen: seenBox(view, stage.size()),
        pixelRatio: Konva.pixelRatio,
      };
      paintAlone(ink, () => paint(ink, ground));
    },
    [paint, painted],
  );
  return <Shape sceneFunc={scene} listening={false} perfectDrawEnabled={false} />;
}
