import type { LineKind } from './drawing';

/** A point of type, 1/72 in, in mm. */
export const MM_PER_PT = 25.4 / 72;

/** How a line is drawn, in mm: its width, and dashes and gaps by turns (none for an unbroken line). */
export interface LineStyle {
  readonly width: number;
  readonly dash: readonly number[];
}

/**
 * One look for each kind of line, told apart by width and dashes and never by colour, so that a grey print loses
 * nothing. Cut lines unbroken, stitch lines dashed, folds, those of pleats too, and centres dash-dot (common practice on printed patterns);
 * widths from the series of ISO 128-2 (from memory), none below half a point.
 */
export const lineStyles: Readonly<Record<LineKind, LineStyle>> = {
  cut: { width: 0.5, dash: [] },
  stitch: { width: 0.25, dash: [3, 1.5] },
  fold: { width: 0.5, dash: [8, 2, 1, 2] },
  grain: { width: 0.25, dash: [] },
  dart: { width: 0.25, dash: [1.5, 1] },
  'pleat-fold': { width: 0.25, dash: [6, 1.5, 1, 1.5] },
  'pleat-placement': { width: 0.25, dash: [4, 2] },
  gathers: { width: 0.25, dash: [] },
  notch: { width: 0.35, dash: [] },
  opening: { width: 0.5, dash: [] },
  level: { width: 0.18, dash: [10, 1.5, 1, 1.5, 1, 1.5] },
  centre: { width: 0.18, dash: [6, 1.5, 0.8, 1.5] },
  drill: { width: 0.18, dash: [] },
  upright: { width: 0.7, dash: [] },
  corner: { width: 0.25, dash: [] },
};
