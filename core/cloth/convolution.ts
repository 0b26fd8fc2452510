/**
 * The convolution of two rings: closed runs that go round each place as often as the one shape and the other, turned by
 * half and moved there, have parts in common. What they go round at all is the sum of the two (Minkowski).
 *
 * At every corner of one ring its direction turns from one side's to the next one's; the sides of the other that run in
 * a direction passed over on the way are drawn from there, backwards where the corner is hollow. After Guibas, Ramshaw
 * and Stolfi, "A kinetic framework for computational geometry" (FOCS 1983).
 */
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';

/** The convolution of two simple rings that run clockwise to the eye. */
export function convolution(a: Ring, b: Ring): Point[][] {
  const p = withSides(a);
  const q = withSides(b);
  if (p.length === 0 || q.length === 0) return [];
  const order = orderOf(p, q);
  const ahead = new Map<number, number[]>();
  const join = (from: number, to: number) => {
    const known = ahead.get(from);
    if (known) known.push(to);
    else ahead.set(from, [to]);
  };
  const node = (i: number, j: number) => (i % p.length) * q.length + (j % q.length);
  const drawFrom = (ring: readonly Cornered[], places: Int32Array, corner: number) => {
    const { from, to, backwards } = turnAt(ring, places, corner);
    const count = order.side.length;
    const step = backwards ? count - 1 : 1;
    for (let place = (from + step) % count; place !== to; place = (place + step) % count) {
      const side = order.side[place] as number;
      if (side < 0 === (ring === q)) continue;
      const [begin, end] =
        ring === p ? [node(corner, -1 - side), node(corner, -side)] : [node(side, corner), node(side + 1, corner)];
      if (backwards) join(end, begin);
      else join(begin, end);
    }
  };
  for (let i = 0; i < p.length; i++) drawFrom(p, order.p, i);
  for (let j = 0; j < q.length; j++) drawFrom(q, order.q, j);
  return runsOf(ahead).map((run) =>
    run.map((at) => {
      const [from, to] = [p[Math.floor(at / q.length)] as Cornered, q[at % q.length] as Cornered];
      return { x: from.x + to.x, y: from.y + to.y };
    }),
  );
}

/** A corner and the direction of the side from it to the next. */
interface Cornered extends Point {
  readonly direction: number;
}

function withSides(ring: Ring): Cornered[] {
  const corners = ring.filter((point, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Point;
    return point.x !== before.x || point.y !== before.y;
  });
  if (corners.length < 3) return [];
  return corners.map(({ x, y }, i) => {
    const next = corners[(i + 1) % corners.length] as Point;
    // A direction has one number only: half a turn, not less than half a turn.
    const direction = Math.atan2(next.y - y, next.x - x);
    return { x, y, direction: direction === -Math.PI ? Math.PI : direction };
  });
}

/** Directions of all sides of two rings in one order. */
interface Order {
  /** The places of each ring's sides. */
  readonly p: Int32Array;
  readonly q: Int32Array;
  /** The side at each place: of the first ring by its number, of the other one by its number below zero, less one. */
  readonly side: Int32Array;
}

/**
 * Puts all directions in one order. Like ones come one after the other, always in the same way: as if the sides were
 * turned by a trifle, so that no two run alike.
 */
function orderOf(p: readonly Cornered[], q: readonly Cornered[]): Order {
  const sides = [...p.map((_, i) => i), ...q.map((_, j) => -1 - j)];
  const directionOf = (side: number) => (side < 0 ? (q[-1 - side] as Cornered) : (p[side] as Cornered)).direction;
  // A stable order: like directions stay as they are.
  const side = Int32Array.from(sides.sort((one, other) => directionOf(one) - directionOf(other)));
  const order = { p: new Int32Array(p.length), q: new Int32Array(q.length), side };
  side.forEach((number, place) => {
    if (number < 0) order.q[-1 - number] = place;
    else order.p[number] = place;
  });
  return order;
}

/** What is passed over at a corner: the places between two directions, and which way. */
function turnAt(ring: readonly Cornered[], places: Int32Array, corner: number) {
  const before = (corner + ring.length - 1) % ring.length;
  const [from, to] = [places[before] as number, places[corner] as number];
  let turn = (ring[corner] as Cornered).direction - (ring[before] as Cornered).direction;
  if (turn > Math.PI) turn -= 2 * Math.PI;
  if (turn < -Math.PI) turn += 2 * Math.PI;
  return { from, to, backwards: turn === 0 ? to < from : turn < 0 };
}

/** Follows the sides until each is used; every place is left as often as it is come to. */
function runsOf(ahead: Map<number, number[]>): number[][] {
  const runs: number[][] = [];
  for (const [start, exits] of ahead) {
    while (exits.length > 0) {
      const run: number[] = [];
      let at: number | undefined = start;
      while (at !== undefined) {
        run.push(at);
        at = ahead.get(at)?.pop();
      }
      // The run has come back to where it began.
      run.pop();
      runs.push(run);
    }
  }
  return runs;
}
