import { cross, dot, type Point, type Vector, vectorBetween } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/** Places of a moving ring, from one to another, all along which it touches one that stays. */
export interface SlidingSide {
  readonly from: Point;
  readonly to: Point;
  /** At its ends corner lies on corner; those of a curve's chords are none. */
  readonly endsIn: 'corner' | 'curve';
}

/** So far a piece stays clear of what it touches (mm): more than rounding, and no chalk is as fine. */
const CLEAR = 1e-4;

/** The sine from which two sides make a corner: a curve's chords turn by less. */
const SHARP = 0.25;

/** A side this much inside (a share of its length) still lies along the other: rounding. */
const ALONG = 1e-9;

interface Corner {
  readonly at: Point;
  /** To the corner before and the one after. */
  readonly back: Vector;
  readonly on: Vector;
  readonly isSharp: boolean;
}

/**
 * All sides along which a ring may slide on another, as moves of the one that moves: each of its outer corners on each
 * side of the other, and each of its sides on each outer corner of the other, where neither goes into the other right
 * there. Both run clockwise to the eye. A move may still overlap elsewhere. All lie a ten-thousandth of a millimetre clear.
 */
export function slidingSides(stays: Ring, moves: Ring): SlidingSide[] {
  const sides: SlidingSide[] = [];
  const [theirs, own] = [outerCorners(stays), outerCorners(moves)];
  forSides(stays, (from, run, out) => {
    for (const { at, back, on, isSharp } of own) {
      if (goesInto(out, back) || goesInto(out, on)) continue;
      const start = { x: from.x - at.x + out.dx * CLEAR, y: from.y - at.y + out.dy * CLEAR };
      sides.push(sideFrom(start, run, isSharp));
    }
  });
  forSides(moves, (from, run, out) => {
    for (const { at, back, on, isSharp } of theirs) {
      if (goesInto(out, back) || goesInto(out, on)) continue;
      const start = { x: at.x - from.x - out.dx * CLEAR, y: at.y - from.y - out.dy * CLEAR };
      sides.push(sideFrom(start, { dx: -run.dx, dy: -run.dy }, isSharp));
    }
  });
  return sides;
}

function sideFrom(from: Point, run: Vector, isSharp: boolean): SlidingSide {
  return { from, to: { x: from.x + run.dx, y: from.y + run.dy }, endsIn: isSharp ? 'corner' : 'curve' };
}

function forSides(ring: Ring, visit: (from: Point, run: Vector, out: Vector) => void): void {
  ring.forEach((from, i) => {
    const run = vectorBetween(from, ring[(i + 1) % ring.length] as Point);
    const length = Math.hypot(run.dx, run.dy);
    if (length > 0) visit(from, run, { dx: run.dy / length, dy: -run.dx / length });
  });
}

function goesInto(out: Vector, side: Vector): boolean {
  return dot(out, side) < -ALONG * Math.hypot(side.dx, side.dy);
}

function outerCorners(ring: Ring): Corner[] {
  return ring.flatMap((at, i) => {
    const back = vectorBetween(at, ring[(i + ring.length - 1) % ring.length] as Point);
    const on = vectorBetween(at, ring[(i + 1) % ring.length] as Point);
    const sine = cross({ dx: -back.dx, dy: -back.dy }, on) / (Math.hypot(back.dx, back.dy) * Math.hypot(on.dx, on.dy));
    if (!(sine > -ALONG)) return [];
    return [{ at, back, on, isSharp: sine > SHARP || dot(back, on) > 0 }];
  });
}
