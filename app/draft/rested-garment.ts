import { startTransition, useEffect, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { isDragging, useGarment } from '../state/garment-store';

/** How often at most the garment is looked at anew while it is being dragged, so that a drag is never held up. */
const SHORTEST_REST_MS = 80;
/** And how often at least, on a slow machine. */
const LONGEST_REST_MS = 800;
/** A frame that takes longer than this is felt. */
const FELT_MS = 24;
/** The frames after a step in which its cost shows. */
const FRAMES_AFTER = 4;

const listeners = new Set<(garment: Garment | undefined) => void>();
let timer: ReturnType<typeof setTimeout> | undefined;
let stepped = Number.NEGATIVE_INFINITY;
/** How long it rests now: longer after each step that was felt, and back again little by little. */
let rest = SHORTEST_REST_MS;

useGarment.subscribe((now, before) => {
  if (now.garment === before.garment) return;
  // A field that is left and a choice that is pressed right after it are two changes, each shown at once.
  if (!isDragging()) {
    clearTimeout(timer);
    step();
  } else timer ??= setTimeout(step, Math.max(0, rest - (performance.now() - stepped)));
});

function step(): void {
  timer = undefined;
  stepped = performance.now();
  const { garment } = useGarment.getState();
  const tell = () => {
    for (const listener of listeners) listener(garment);
  };
  if (!isDragging()) {
    tell();
    return;
  }
  watchCost();
  // During a drag the numbers may come a little later; the point under the pointer may not.
  startTransition(tell);
}

/** Rests longer where a step holds the drag up, and less where none does. */
function watchCost(): void {
  let last = performance.now();
  let left = FRAMES_AFTER;
  let worst = 0;
  const look = (now: number) => {
    worst = Math.max(worst, now - last);
    last = now;
    left -= 1;
    if (left > 0) requestAnimationFrame(look);
    else rest = worst > FELT_MS ? Math.min(LONGEST_REST_MS, rest * 1.6) : Math.max(SHORTEST_REST_MS, rest / 1.25);
  };
  requestAnimationFrame(look);
}

/** The garment as it is, or a moment ago: it follows a drag in steps instead of frame by frame, a single change at once. */
export function useRestedGarment(): Garment | undefined {
  const [garment, setGarment] = useState(() => useGarment.getState().garment);
  useEffect(() => {
    listeners.add(setGarment);
    setGarment(useGarment.getState().garment);
    return () => {
      listeners.delete(setGarment);
    };
  }, []);
  return garment;
}
