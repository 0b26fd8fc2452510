import type { Box } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import type { View } from '../state/table-store';

export type { View } from '../state/table-store';

/** The size of a box on the screen, in CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The least and most CSS pixels a world unit may take. */
export interface ScaleLimits {
  readonly min: number;
  readonly max: number;
}

/** Steps of a wheel or a button in one doubling. Whole steps come back to exactly the scale they began at. */
const STEPS_A_DOUBLING = 64;

/** Left clear round what is fitted, in CSS pixels: more along the top and left, where the numbers stand. */
const FIT_MARGIN_PX = { before: 46, after: 20 } as const;

/** Where a place of the world lies on the screen. */
export function toScreen(view: View, world: Point): Point {
  return { x: view.x + world.x * view.scale, y: view.y + world.y * view.scale };
}

/** The place of the world at a place of the screen. */
export function toWorld(view: View, screen: Point): Point {
  return { x: (screen.x - view.x) / view.scale, y: (screen.y - view.y) / view.scale };
}

/** The view slid by screen pixels. */
export function panned(view: View, dx: number, dy: number): View {
  return { scale: view.scale, x: view.x + dx, y: view.y + dy };
}

/**
 * The view at another scale with the world under `anchor` (screen pixels) staying where it is. At a limit that is
 * reached already it is the same view, so nothing creeps.
 */
export function zoomedTo(view: View, scale: number, anchor: Point, limits: ScaleLimits): View {
  const held = Math.min(limits.max, Math.max(limits.min, scale));
  if (!(held > 0) || held === view.scale) return view;
  const factor = held / view.scale;
  return { scale: held, x: anchor.x - (anchor.x - view.x) * factor, y: anchor.y - (anchor.y - view.y) * factor };
}

/** The scale some whole steps (64 to a doubling) away, always one of the same ladder of scales. */
export function steppedScale(scale: number, steps: number): number {
  return 2 ** ((Math.round(Math.log2(scale) * STEPS_A_DOUBLING) + steps) / STEPS_A_DOUBLING);
}

/** The view that shows a box of the world as large as it goes, in the middle of what the margins leave. */
export function fittedView(fit: Box, size: Size, limits: ScaleLimits): View {
  const { before, after } = FIT_MARGIN_PX;
  const across = Math.max(1, size.width - before - after) / Math.max(fit.maxX - fit.minX, 1e-6);
  const down = Math.max(1, size.height - before - after) / Math.max(fit.maxY - fit.minY, 1e-6);
  const scale = Math.min(limits.max, Math.max(limits.min, Math.min(across, down)));
  return {
    scale,
    x: (size.width + before - after) / 2 - ((fit.minX + fit.maxX) / 2) * scale,
    y: (size.height + before - after) / 2 - ((fit.minY + fit.maxY) / 2) * scale,
  };
}

/** The view in which a box of the world fills the width; what is too high for the window begins at its top. */
export function widthView(fit: Box, size: Size, limits: ScaleLimits): View {
  const whole = fittedView({ ...fit, maxY: fit.minY }, size, limits);
  const { before, after } = FIT_MARGIN_PX;
  const high = (fit.maxY - fit.minY) * whole.scale;
  const spare = Math.max(0, size.height - before - after - high);
  return { ...whole, y: before + spare / 2 - fit.minY * whole.scale };
}

/** The box of the world that can be seen. */
export function seenBox(view: View, size: Size): Box {
  const from = toWorld(view, { x: 0, y: 0 });
  const to = toWorld(view, { x: size.width, y: size.height });
  return { minX: from.x, minY: from.y, maxX: to.x, maxY: to.y };
}

/** Two fingers at the start of a pinch: the world under their middle, how far apart they were, and the scale. */
export interface Pinch {
  readonly world: Point;
  readonly apart: number;
  readonly scale: number;
}

/** A pinch begun with fingers at two places of the screen. Fingers on one spot count as a pixel apart. */
export function beginPinch(view: View, a: Point, b: Point): Pinch {
  return {
    world: toWorld(view, middle(a, b)),
    apart: Math.max(1, Math.hypot(b.x - a.x, b.y - a.y)),
    scale: view.scale,
  };
}

/** The view of a pinch: what was under the middle of the fingers is there again, also at the limits of scale. */
export function pinchedView(pinch: Pinch, a: Point, b: Point, limits: ScaleLimits): View {
  const apart = Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
  const scale = Math.min(limits.max, Math.max(limits.min, (pinch.scale * apart) / pinch.apart));
  const at = middle(a, b);
  return { scale, x: at.x - pinch.world.x * scale, y: at.y - pinch.world.y * scale };
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
