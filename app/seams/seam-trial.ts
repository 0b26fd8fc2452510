import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import { matchNotches } from '../../core/seams/match-notches';
import {
  type CornersNotTrued,
  type SeamCorners,
  type TrueCornersOptions,
  trueCorners,
} from '../../core/seams/true-corners';
import { type NotTrued, type TrueSeamOptions, trueSeam } from '../../core/seams/true-seam';
import { newId } from '../state/new-id';

/** A change of a seam that is being tried. */
export type SeamTrial =
  | ({ readonly kind: 'lengths' } & TrueSeamOptions)
  | { readonly kind: 'notches'; readonly from: 'one' | 'other' }
  | ({ readonly kind: 'corners' } & TrueCornersOptions);

/** What a change makes of the garment, or why it makes nothing of it. */
export type TriedSeam =
  | {
      readonly kind: 'tried';
      readonly garment: Garment;
      readonly corners?: { readonly before: SeamCorners; readonly after: SeamCorners };
    }
  | NotTrued
  | CornersNotTrued;

/** Tries a change; the garment itself stays as it is. */
export function trySeamOn(garment: Garment, seam: Seam, trial: SeamTrial, newId: () => string): TriedSeam {
  switch (trial.kind) {
    case 'lengths': {
      const trued = trueSeam(garment, seam, trial);
      return 'kind' in trued ? trued : { kind: 'tried', garment: trued };
    }
    case 'notches':
      return { kind: 'tried', garment: matchNotches(garment, seam, { from: trial.from, newId }) };
    case 'corners': {
      const trued = trueCorners(garment, seam, trial);
      if (trued.kind === 'corners-not-trued') return trued;
      const { before, after } = trued;
      return { kind: 'tried', garment: trued.garment, corners: { before, after } };
    }
  }
}

/** Ways to true the lengths, the plainest first. */
const WAYS: readonly TrueSeamOptions[] = [
  { move: 'other', where: 'at-end' },
  { move: 'one', where: 'at-end' },
  { move: 'other', where: 'at-start' },
  { move: 'one', where: 'at-start' },
];

/** The first plain way in which the lengths can be trued; spread over both sides when there is none. */
export function firstWay(garment: Garment, seam: Seam): TrueSeamOptions {
  const way = WAYS.find((options) => !('kind' in trueSeam(garment, seam, options)));
  return way ?? { move: 'both', where: 'spread' };
}

let last: { garment: Garment; seam: Seam; trial: SeamTrial; tried: TriedSeam } | undefined;

/** The same, worked out once for each garment, seam and set of its choices, so that what is shown is what is taken. */
export function triedOn(garment: Garment, seam: Seam, trial: SeamTrial): TriedSeam {
  if (last?.garment !== garment || last.seam !== seam || last.trial !== trial) {
    last = { garment, seam, trial, tried: trySeamOn(garment, seam, trial, newId) };
  }
  return last.tried;
}
