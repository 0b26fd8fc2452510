/**
 * What is to be laid on what, as the laying itself sees it: outlines, the ways each may be turned, and one long cloth.
 *
 * Cloth runs along +x from its cut end at x = 0; its two edges are y = 0 and y = across. Outlines have the straight of
 * the grain along x as they are given.
 */
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/** One way a piece may lie: turned clockwise to the eye by `turn`, after being turned over (mirrored in x) if said. */
export interface Stance {
  readonly turn: number;
  readonly over?: 'mirrored';
}

/** A piece to be laid. */
export interface ToLay {
  readonly id: string;
  /** The cut line, grain along x. */
  readonly outline: Ring;
  /** How often it is laid. */
  readonly count: number;
  /** Never empty. */
  readonly stances: readonly Stance[];
  /** Its fold edge must lie on the fold: along the cloth at y = 0, or across it at x = 0. */
  readonly onFold?: 'along' | 'across';
  /** A place of the outline that must fall on the same place of every repeat of the cloth. */
  readonly match?: Point;
}

/** The id under which the other hand of a piece is laid. */
export function otherHand(id: string): string {
  return `${id}/mirrored`;
}

/** Where pieces are laid. */
export interface LayGround {
  /** How wide the cloth is where it is laid: folded lengthwise, half of it. */
  readonly across: number;
  /** Where nothing may lie: flaws, and what a remnant lacks of its straight strip. */
  readonly kept: readonly Ring[];
  /** The repeat of stripes or figures, along and across the cloth; 0 where there is none. */
  readonly repeat?: { readonly along: number; readonly across: number };
}

/** A piece in its place: the outline, in its stance, with the top left of its box at `at`. */
export interface Placed {
  readonly id: string;
  /** Which of its `count`, from 0. */
  readonly copy: number;
  /** Which of its stances, by number. */
  readonly stance: number;
  readonly at: Point;
}

/** Where every piece lies, and how much of the cloth's length they take. */
export interface Lay {
  readonly placed: readonly Placed[];
  readonly length: number;
}

/** What is laid on what. `pinned` pieces stay where they are put; the rest is laid round them. */
export interface LayTask {
  readonly ground: LayGround;
  readonly toLay: readonly ToLay[];
  readonly pinned?: readonly Placed[];
}
