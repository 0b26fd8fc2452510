import type { Point } from '../../core/geometry/point';

export type PointerKind = 'mouse' | 'pen' | 'touch';

/** Where the pointer is, in the world and on the screen. */
export interface PointerAt {
  readonly world: Point;
  /** CSS pixels from the top left of the canvas. */
  readonly screen: Point;
  readonly kind: PointerKind;
  /** Alt or Shift is held: no snapping for now. */
  readonly free: boolean;
  /** How near counts as on it, in world units. */
  readonly reach: number;
}

/**
 * A drag that a tool has begun. `move` comes at most once a frame and only once the pointer has really moved; then
 * exactly one of `end` and `cancel`. A press that never moved ends where it began, without any `move`.
 */
export interface Drag {
  move(at: PointerAt): void;
  end(at: PointerAt): void;
  cancel(): void;
}

/** A key pressed while the canvas has the focus. */
export interface KeyPress {
  readonly key: string;
  readonly shift: boolean;
}

/** What the pointer does. Without a drag from `press` the press moves the table. */
export interface Tool {
  readonly cursor: string;
  press(at: PointerAt): Drag | undefined;
  hover?(at: PointerAt | undefined): void;
  /** A press that `press` declined and that did not move the table either. */
  tap?(at: PointerAt): void;
  /** Whether the key meant something to the tool. Escape comes only when no drag is in progress. */
  key?(press: KeyPress): boolean;
}

/** How near counts as on it, in CSS pixels. */
export const REACH_PX: Readonly<Record<PointerKind, number>> = { touch: 22, pen: 12, mouse: 8 };
