import type { ColourName } from '../ui/canvas-colours';

/** How lines and fills are told apart, by their run as much as by their colour; in CSS pixels, for canvas and key alike. */
export const LOOKS = {
  under: { colour: 'ink', width: 2, dash: [] },
  over: { colour: 'chalk', width: 3, dash: [11, 5] },
  /** Rising lines without a break. */
  more: { colour: 'chalkDeep', width: 1.25, dash: [], rises: true },
  /** Falling dots. */
  less: { colour: 'wrong', width: 2.25, dash: [2.25, 4.5], rises: false },
} as const satisfies Record<string, { readonly colour: ColourName; readonly [more: string]: unknown }>;

export type Fill = 'more' | 'less';

/** From one line of a fill to the next, across (CSS pixels). */
export const FILL_STEP = 10;
