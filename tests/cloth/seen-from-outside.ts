/**
 * What is wrong with a lay, judged from the cloth as it comes off the roll: pieces turned and moved by hand here, both
 * layers of folded cloth unfolded, areas by Clipper2 alone. Nothing of the laying or of its own check is used.
 */
import { areaPathsD, differenceD, FillRule, intersectD, type PathsD } from 'clipper2-ts';
import type { Cloth } from '../../core/cloth/cloth';
import type { Lay, LayTask, Placed } from '../../core/cloth/lay-task';
import type { LaidGrain } from '../../core/cloth/piece-to-lay';
import type { Point } from '../../core/geometry/point';

/** A hundredth of a square millimetre, and a thousandth of a millimetre. */
const AREA = 0.01;
const OFF = 0.001;

/** Decimals of a millimetre that areas are worked out to. */
const DECIMALS = 5;

/** The ring of a placed piece, its box's corner at its place. */
export function ringOf({ toLay }: LayTask, { id, stance, at }: Placed): Point[] {
  const piece = toLay.find((one) => one.id === id);
  const how = piece?.stances[stance];
  if (!piece || !how) throw new Error(`${id} has no stance ${stance}`);
  const turned = piece.outline.map(({ x, y }) => {
    const across = how.over ? -x : x;
    return {
      x: across * Math.cos(how.turn) - y * Math.sin(how.turn),
      y: across * Math.sin(how.turn) + y * Math.cos(how.turn),
    };
  });
  const left = Math.min(...turned.map(({ x }) => x));
  const top = Math.min(...turned.map(({ y }) => y));
  return turned.map(({ x, y }) => ({ x: x - left + at.x, y: y - top + at.y }));
}

function common(a: Point[], b: Point[]): number {
  return Math.abs(areaPathsD(intersectD([a], [b], FillRule.NonZero, DECIMALS)));
}

/** The same ring on each layer of the cloth as it is opened out. */
function openedOut({ width, selvedge, folded, shape, atHand = 0 }: Cloth, ring: Point[]): Point[][] {
  if (folded === 'open' || shape) return [ring];
  const middle = folded === 'lengthwise' ? (width - 2 * selvedge) / 2 : atHand / 2;
  return [-1, 1].map((side) =>
    ring.map(({ x, y }) => {
      return folded === 'lengthwise' ? { x, y: middle + side * y } : { x: middle + side * x, y };
    }),
  );
}

/** Everything that is wrong, in words; empty for a good lay. */
export function wrongs(cloth: Cloth, task: LayTask, lay: Lay): string[] {
  const rings = lay.placed.map((placed) => ringOf(task, placed));
  const said: string[] = [];
  const width = cloth.width - 2 * cloth.selvedge;
  // On a remnant places are measured from the corner of the box round it.
  const corner = cloth.shape ? extent(cloth.shape) : { left: 0, top: 0 };
  const flaws = cloth.flaws.map((flaw) => flaw.map(({ x, y }) => ({ x: x - corner.left, y: y - corner.top })));
  const across = cloth.shape ? extent(cloth.shape).high : cloth.folded === 'lengthwise' ? width / 2 : width;
  rings.forEach((ring, i) => {
    const { id } = lay.placed[i] as Placed;
    for (const other of rings.slice(0, i)) {
      const area = common(ring, other);
      if (area > AREA) said.push(`${id} overlaps by ${area} mm²`);
    }
    const xs = ring.map(({ x }) => x);
    const ys = ring.map(({ y }) => y);
    if (Math.min(...xs) < -OFF || Math.max(...xs) > lay.length + OFF) said.push(`${id} is off an end`);
    if (Math.min(...ys) < -OFF || Math.max(...ys) > across + OFF) said.push(`${id} is off an edge`);
    for (const layer of openedOut(cloth, ring)) {
      for (const flaw of flaws) if (common(layer, flaw) > AREA) said.push(`${id} lies on a flaw`);
    }
    if (cloth.shape) {
      const lacking = beyondRemnant(ring, [...cloth.shape]);
      if (lacking > AREA) said.push(`${id} lies off the remnant by ${lacking} mm²`);
    }
  });
  for (const { id, count } of task.toLay) {
    const copies = lay.placed.filter((placed) => placed.id === id).map(({ copy }) => copy);
    if (new Set(copies).size !== count || copies.length !== count) said.push(`${id} is laid ${copies.length} times`);
  }
  return [...said, ...unmatched(cloth, lay)];
}

function extent(ring: readonly Point[]) {
  const xs = ring.map(({ x }) => x);
  const ys = ring.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, wide: Math.max(...xs) - left, high: Math.max(...ys) - top };
}

/** What of a ring lies in the box round a remnant but not on the remnant. */
function beyondRemnant(ring: Point[], shape: Point[]): number {
  const { left, top, wide, high } = extent(shape);
  const box = [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: high },
    { x: 0, y: high },
  ];
  const moved = shape.map(({ x, y }) => ({ x: x - left, y: y - top }));
  const inBox: PathsD = intersectD([ring], [box], FillRule.NonZero, DECIMALS);
  return Math.abs(areaPathsD(differenceD(inBox, [moved], FillRule.NonZero, DECIMALS)));
}

/** Copies of one piece that lie the same way must be whole repeats apart. */
function unmatched({ repeat }: Cloth, { placed }: Lay): string[] {
  return placed.flatMap((one, i) =>
    placed.slice(0, i).flatMap((other) => {
      if (!repeat || one.id !== other.id || one.stance !== other.stance) return [];
      const off = (apart: number, every: number) =>
        every > 0 ? Math.abs(apart - Math.round(apart / every) * every) : 0;
      const by = Math.max(off(one.at.x - other.at.x, repeat.along), off(one.at.y - other.at.y, repeat.across));
      return by > OFF ? [`${one.id} is off the repeat by ${by} mm`] : [];
    }),
  );
}

/** How far a direction that runs with the grain on the piece is off its wanted place on the cloth, at least; radians. */
export function offGrain(ring: readonly Point[], grain: LaidGrain, leastSide: number): number {
  const wanted = grain === 'straight' ? [0] : grain === 'cross' ? [Math.PI / 2] : [Math.PI / 4, -Math.PI / 4];
  const offs = ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] as Point;
    if (Math.hypot(b.x - a.x, b.y - a.y) < leastSide) return [];
    return wanted.map((turn) => {
      const off = Math.abs(Math.atan2(b.y - a.y, b.x - a.x) - turn) % Math.PI;
      return Math.min(off, Math.PI - off);
    });
  });
  return Math.min(...offs);
}
