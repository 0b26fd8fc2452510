/** Gores cut from straight breadths of cloth, as underclothes mostly were. Lengths in mm. */

import { inches } from '../units/inch';
import type { DraftQuestion } from './draft-question';

/** A gore with its two widths, and how long its sloping edges are. */
export interface BreadthGore {
  readonly top: number;
  readonly bottom: number;
  readonly slant: number;
}

/**
 * A breadth cut in two by one sloping line into equal gores, `narrow` at one end and the rest at the other, so the
 * Workwoman's Guide (1838). `undefined` where the narrow end is none or wider than half of the breadth.
 */
export function goresFromBreadth(breadth: {
  readonly width: number;
  readonly length: number;
  readonly narrow: number;
}): BreadthGore | undefined {
  const { width, length, narrow } = breadth;
  if (!(narrow >= 0 && narrow <= width / 2 && length > 0)) return undefined;
  const wide = width - narrow;
  return { top: narrow, bottom: wide, slant: Math.hypot(wide - narrow, length) };
}

/** A gore that widens evenly on both sides of its middle, from its two widths and its height. */
export function evenGore({
  top,
  bottom,
  height,
}: {
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
}): BreadthGore {
  return { top, bottom, slant: Math.hypot((bottom - top) / 2, height) };
}

/** How high a piece is whose two sides slope evenly (mm); `undefined` where the slope is no longer than it must reach across. */
export function heightFromSlant({ top, bottom, slant }: BreadthGore): number | undefined {
  const across = Math.abs(bottom - top) / 2;
  return slant > across ? Math.sqrt(slant * slant - across * across) : undefined;
}

/** What is sewn round: whole breadths and gores, wide ends down or, for a gore turned round, up. */
export interface BreadthPart {
  readonly times: number;
  readonly top: number;
  readonly bottom: number;
}

/** The girth of a skirt of breadths and gores at its top and at its hem, seams not taken off. */
export function roundOfBreadths(parts: readonly BreadthPart[]) {
  return {
    top: parts.reduce((sum, { times, top }) => sum + times * top, 0),
    bottom: parts.reduce((sum, { times, bottom }) => sum + times * bottom, 0),
  };
}

/** How the second length of the four-gored petticoat is cut, which its source does not say any more: into two equal gores. */
export interface SideGoreAnswer {
  readonly narrow: number;
}

export interface FourGoredPetticoat {
  readonly kind: 'four-gored-petticoat';
  readonly front: BreadthGore;
  readonly back: BreadthPart;
  /** Where she has said how they are cut. */
  readonly side: BreadthGore | undefined;
  /** Top and hem of front and back, and of the side gores where they are known. */
  readonly round: { readonly top: number; readonly bottom: number };
  readonly questions: readonly DraftQuestion[];
}

const FRONT = { top: inches(7), bottom: inches(10) } as const;
const BACK = inches(15);

/**
 * The four-gored petticoat of Garments for Girls (1910s): from one breadth of 27 in a front gore 10 wide, sloped to 7 at
 * the top, and a straight back of 15; the side gores come from a second one. The text on those is cut off: without an
 * answer they are asked about and left out of the sums.
 */
export function fourGoredPetticoat(cloth: {
  readonly width: number;
  readonly length: number;
  readonly side?: SideGoreAnswer;
}): FourGoredPetticoat | undefined {
  const { width, length, side } = cloth;
  const sideGore = side && goresFromBreadth({ width, length, narrow: side.narrow });
  if (!(length > 0) || (side && !sideGore)) return undefined;
  const front = evenGore({ ...FRONT, height: length });
  const back = { times: 1, top: BACK, bottom: BACK };
  const round = roundOfBreadths([{ times: 1, ...front }, back, ...(sideGore ? [{ times: 2, ...sideGore }] : [])]);
  return {
    kind: 'four-gored-petticoat',
    front,
    back,
    side: sideGore,
    round,
    questions: sideGore ? [] : [{ kind: 'figure-missing', what: 'side-gores' }],
  };
}
