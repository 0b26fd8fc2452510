import type { Vector } from '../../core/geometry/point';

/** How far an arrow key moves a point, in pixels of the photo; with Shift the larger step. */
const STEP = 1;
const LARGE_STEP = 10;

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The move an arrow key asks for; `undefined` for every other key. */
export function arrowStep(press: { readonly key: string; readonly shift: boolean }): Vector | undefined {
  const arrow = arrows[press.key];
  const by = press.shift ? LARGE_STEP : STEP;
  return arrow && { dx: arrow[0] * by, dy: arrow[1] * by };
}
