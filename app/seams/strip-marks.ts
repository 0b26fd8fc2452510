import type { SeamNotch, SeamSide } from '../../core/seams/seam-sides';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { easedShare } from '../../core/seams/walk';

/** How a notch stands to the other side. */
export type NotchState = 'meets' | 'off' | 'alone';

/** A notch of one side; those that belong together have one number on both sides. */
export interface StripNotch {
  readonly id: string;
  readonly along: number;
  readonly count: SeamNotch['count'];
  readonly pieceId: string;
  readonly state: NotchState;
  readonly number: number | undefined;
  /** How far the first side's notch lies beyond its partner once the ease is spread; 0 for one without. */
  readonly apart: number;
}

/** Both sides of a seam pulled straight and laid one over the other, in mm of the walk. */
export interface Strip {
  readonly longest: number;
  readonly one: StripSide;
  readonly other: StripSide;
}

interface StripSide {
  readonly length: number;
  /** Where one edge of the side ends and the next begins. */
  readonly joins: readonly number[];
  readonly notches: readonly StripNotch[];
}

/** Lays the sides of a seam straight, with the notches numbered in the order in which they are met. */
export function stripOf(walk: SeamWalk): Strip {
  const met = walk.meetings.toSorted((a, b) => a.one.along - b.one.along);
  const sideOf = (which: 'one' | 'other'): StripSide => {
    const { length, notches } = walk[which];
    return {
      length,
      joins: joinsOf(walk[which]),
      notches: notches.map((notch) => {
        const index = met.findIndex((meeting) => meeting[which] === notch);
        const meeting = met[index];
        const { id, along, count, pieceId } = notch;
        return {
          id,
          along,
          count,
          pieceId,
          state: !meeting ? 'alone' : meeting.agrees ? 'meets' : 'off',
          number: meeting && index + 1,
          apart: meeting?.apart ?? 0,
        };
      }),
    };
  };
  return { longest: Math.max(walk.one.length, walk.other.length), one: sideOf('one'), other: sideOf('other') };
}

function joinsOf({ stretches, length }: SeamSide): number[] {
  return stretches.flatMap(({ from }) => (from > 0 && from < length ? [from] : []));
}

/** The place of the second side that meets `along` of the first, the ease spread evenly; its end where it is too short. */
export function otherAlong(walk: SeamWalk, along: number): number {
  const ease = (walk.totals.difference - walk.totals.beyondEase) / walk.repeats;
  return Math.min(walk.other.length, along * easedShare(walk.one.length, ease));
}
