import type { LineKind } from '../drawing/drawing';

/** The kinds of lines that the key explains, in its order. */
export const KEY_LINES = [
  'cut',
  'stitch',
  'fold',
  'grain',
  'notch',
  'opening',
  'dart',
  'pleat-fold',
  'pleat-placement',
  'gathers',
  'level',
  'drill',
  'corner',
  'upright',
] as const satisfies readonly LineKind[];
export type KeyLine = (typeof KEY_LINES)[number];
