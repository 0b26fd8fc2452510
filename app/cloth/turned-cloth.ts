/** On an upright phone the cloth runs down the screen, its fold or first selvedge on the right, so that it fills it. */
import { useSyncExternalStore } from 'react';
import type { Box } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import type { Paint } from '../table/painted';
import type { Drag, PointerAt, Tool } from '../table/tool';

const UPRIGHT = '(max-width: 46rem) and (orientation: portrait)';

/** Whether the cloth is shown running down the screen. */
export function useTurnedCloth(): boolean {
  return useSyncExternalStore(watch, () => matchMedia(UPRIGHT).matches);
}

function watch(changed: () => void): () => void {
  const query = matchMedia(UPRIGHT);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
}

/** A box of the cloth as it is shown: x becomes y, y becomes minus x. */
export function turnedBox({ minX, minY, maxX, maxY }: Box): Box {
  return { minX: -maxY, minY: minX, maxX: -minY, maxY: maxX };
}

/** Paints what is given in places of the cloth. */
export function turnedPaint(paint: Paint): Paint {
  return (ink, ground) => {
    ink.transform(0, 1, -1, 0, 0, 0);
    paint(ink, ground);
  };
}

/** Where a word has to be turned to in turned paint so that it reads across the screen. */
export const READS_ACROSS = -Math.PI / 2;

const onCloth = ({ x, y }: Point): Point => ({ x: y, y: -x });

const KEYS: Readonly<Record<string, string>> = {
  ArrowRight: 'ArrowUp',
  ArrowLeft: 'ArrowDown',
  ArrowDown: 'ArrowRight',
  ArrowUp: 'ArrowLeft',
};

/** A tool that works in places of the cloth, for the screen on which it is turned. */
export function turnedTool(tool: Tool): Tool {
  const told = (at: PointerAt): PointerAt => ({ ...at, world: onCloth(at.world) });
  return {
    get cursor() {
      return tool.cursor;
    },
    hover: (at) => tool.hover?.(at && told(at)),
    press(at) {
      const drag = tool.press(told(at));
      if (!drag) return undefined;
      const turned: Drag = {
        move: (to) => drag.move(told(to)),
        end: (to) => drag.end(told(to)),
        cancel: () => drag.cancel(),
      };
      return turned;
    },
    tap: (at) => tool.tap?.(told(at)),
    key: (press) => tool.key?.({ ...press, key: KEYS[press.key] ?? press.key }) ?? false,
  };
}
