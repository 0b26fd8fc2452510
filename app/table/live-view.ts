import { type RefObject, useEffect, useLayoutEffect, useState, useSyncExternalStore } from 'react';
import type { Box } from '../../core/geometry/bounds';
import type { View } from '../state/table-store';
import { fittedView, panned, type ScaleLimits, type Size } from './view';

/** The view as it is this moment, kept outside React so that moving the table disturbs nothing but the canvas. */
export interface LiveView {
  get(): View | undefined;
  /** Moves the table by hand: from then on the view is the user's own and no longer fits itself. */
  move(view: View): void;
  /** Moves the table by hand in one go, and remembers where it was. */
  jump(view: View): void;
  /** Goes back to where the table was before the last jump; once more comes back from there. Whether there was such a place. */
  back(): boolean;
  /** From now on the view stays as it is when what there is to show changes. */
  claim(): void;
  subscribe(listener: () => void): () => void;
}

/** How long the table must lie still before the room hears of its place. */
const REST_MS = 150;

interface LiveViewOptions {
  /** The view the room remembers; another one than was last told of moves the table there. */
  readonly view: View | undefined;
  readonly onView: (view: View) => void;
  readonly fit: Box;
  readonly size: Size | undefined;
  readonly limits: ScaleLimits;
  /** Another value than before shows everything again, whatever the view is. */
  readonly fitAgain: number;
}

/** The moving view of a canvas. It fits the picture until it is first moved, and tells the room once it comes to rest. */
export function useLiveView({ view, onView, fit, size, limits, fitAgain }: LiveViewOptions): LiveView {
  const [memory] = useState(() => newMemory(view, fitAgain));

  useLayoutEffect(() => {
    if (view === undefined || view === memory.told) return;
    memory.told = view;
    memory.move(view);
  }, [view, memory]);

  useLayoutEffect(() => {
    if (!size) return;
    const before = memory.size;
    const now = memory.get();
    memory.size = size;
    if (fitAgain !== memory.fitAgain) {
      memory.fitAgain = fitAgain;
      memory.show(fittedView(fit, size, limits));
    } else if (!memory.own || !now) memory.show(fittedView(fit, size, limits));
    else if (before && before !== size) {
      memory.show(panned(now, (size.width - before.width) / 2, (size.height - before.height) / 2));
    }
  }, [size, fit, limits, fitAgain, memory]);

  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const tell = () => {
      clearTimeout(timer);
      timer = undefined;
      const now = memory.get();
      if (!memory.own || !now || now === memory.told) return;
      memory.told = now;
      onView(now);
    };
    const stop = memory.subscribe(() => {
      clearTimeout(timer);
      timer = setTimeout(tell, REST_MS);
    });
    return () => {
      stop();
      if (timer !== undefined) tell();
    };
  }, [memory, onView]);

  return memory;
}

/** The view, drawn anew whenever it moves. */
export function useMovingView(live: LiveView): View | undefined {
  return useSyncExternalStore(live.subscribe, live.get);
}

function newMemory(first: View | undefined, fitAgain: number) {
  const listeners = new Set<() => void>();
  let view = first;
  let before: View | undefined;
  const memory = {
    /** The view the room was last told of or told us. */
    told: first,
    own: first !== undefined,
    fitAgain,
    size: undefined as Size | undefined,
    get: () => view,
    show(next: View) {
      if (next === view) return;
      view = next;
      for (const listener of listeners) listener();
    },
    claim() {
      memory.own = true;
    },
    move(next: View) {
      memory.own = true;
      memory.show(next);
    },
    jump(next: View) {
      if (view && next !== view) before = view;
      memory.move(next);
    },
    back() {
      const there = before;
      if (!there) return false;
      memory.jump(there);
      return true;
    },
    subscribe(listener: () => void) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
  return memory;
}

/** The size of an element, followed as it changes; `undefined` until it has one. */
export function useSizeOf(element: RefObject<HTMLElement | null>): Size | undefined {
  const [size, setSize] = useState<Size>();
  useLayoutEffect(() => {
    const box = element.current;
    if (!box) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = box;
      if (width < 1 || height < 1) return;
      setSize((before) => (before && before.width === width && before.height === height ? before : { width, height }));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(box);
    return () => watch.disconnect();
  }, [element]);
  return size;
}
