import { between, distance, type Point, unit, type Vector, vectorBetween } from '../geometry/point';
import type { Grey } from './grey';
import { type FittedLine, fittedLine, lineMeeting } from './ink-fit';
import { greyAt, inkAcross } from './ink-profile';
import { median } from './median';

/** The ink nearest a place: where lines meet or turn sharply, where one ends, or simply the middle of a line. */
export interface InkNear {
  readonly at: Point;
  readonly what: 'meeting' | 'end' | 'line';
}

/** Directions in which a ring round a place is looked at. */
const LOOKS = 72;

/** Two lines that leave a place within this of straight on are one line that goes through it. */
const STRAIGHT_ON = (24 * Math.PI) / 180;

/** Inky pixels tried for a cut lie at least half of this apart. */
const LOOKED_APART = 3;

/** So many cuts tell how wide a line is: right at a corner or tick one of them may run along the other line. */
const CUTS = 5;

/** Times a place is moved to where the lines that leave it meet. */
const ROUNDS = 3;

/** How far the ink may be broader than the line before it is no line any more, in line's widths. */
const BROAD = 2.2;

/**
 * The ink near a place of a picture: where lines meet if they do within `reach` pixels, else where a line ends there, else
 * the nearest middle of a line. The ticks and arrows at the ends of a measured line are such meetings. `undefined` on bare
 * paper.
 */
export function inkNear(grey: Grey, place: Point, reach: number): InkNear | undefined {
  const line = lineNear(grey, place, reach);
  if (!line) return undefined;
  const { width } = line;
  let best: InkNear | undefined;
  let nearest = reach;
  const tried: Point[] = [];
  for (const start of inkyPlaces(grey, place, reach, line.limit, width)) {
    if (tried.some((other) => distance(other, start) < width * 0.8)) continue;
    const found = settled(grey, start, width, line.limit);
    tried.push(start);
    if (!found) continue;
    // An end beside a meeting is most often the tip of a tick or of a barb.
    const off = distance(found.at, place) + (found.what === 'end' ? reach / 2 : 0);
    if (off > nearest) continue;
    best = found;
    nearest = off;
  }
  return best ?? { at: line.at, what: 'line' };
}

interface LineHere {
  readonly at: Point;
  readonly width: number;
  /** Darker than this is ink, here. */
  readonly limit: number;
}

/** The nearest middle of a line within reach, how wide the line is there, and how dark ink is. */
function lineNear(grey: Grey, place: Point, reach: number): LineHere | undefined {
  const { paper, ink } = shades(grey, place, reach + 4);
  if (paper - ink < 0.1) return undefined;
  const limit = (paper + ink) / 2;
  let at: Point | undefined;
  const widths: number[] = [];
  for (const inky of inkyPlaces(grey, place, reach, limit, LOOKED_APART)) {
    const along = runThrough(grey, inky, 7);
    const across = inkAcross(grey, inky, { dx: -along.dy, dy: along.dx }, 9);
    if (!across || !Number.isFinite(across.width)) continue;
    at ??= { x: inky.x - along.dy * across.off, y: inky.y + along.dx * across.off };
    widths.push(across.width);
    if (widths.length === CUTS) break;
  }
  return at && { at, width: Math.max(1.2, median(widths)), limit };
}

function shades(grey: Grey, place: Point, reach: number): { readonly paper: number; readonly ink: number } {
  const seen: number[] = [];
  forEachPixel(grey, place, reach, (_, shade) => seen.push(shade));
  seen.sort((a, b) => a - b);
  // A fine line is a hundredth of what is seen round it; the very darkest may be a speck of noise.
  return { paper: seen[Math.floor(seen.length * 0.85)] ?? 1, ink: seen[Math.floor(seen.length * 0.01)] ?? 1 };
}

function forEachPixel(
  { width, height, data }: Grey,
  place: Point,
  reach: number,
  look: (at: Point, shade: number) => void,
): void {
  for (let y = Math.max(0, Math.floor(place.y - reach)); y <= Math.min(height - 1, place.y + reach); y++) {
    for (let x = Math.max(0, Math.floor(place.x - reach)); x <= Math.min(width - 1, place.x + reach); x++) {
      look({ x: x + 0.5, y: y + 0.5 }, data[y * width + x] as number);
    }
  }
}

/** The direction in which a place is darkest on both sides. */
function runThrough(grey: Grey, place: Point, half: number): Vector {
  let best: Vector = { dx: 1, dy: 0 };
  let darkest = Number.POSITIVE_INFINITY;
  for (let look = 0; look < LOOKS / 2; look++) {
    const way = { dx: Math.cos((2 * Math.PI * look) / LOOKS), dy: Math.sin((2 * Math.PI * look) / LOOKS) };
    let sum = 0;
    for (let r = -half; r <= half; r++) sum += greyAt(grey, { x: place.x + way.dx * r, y: place.y + way.dy * r });
    if (sum >= darkest) continue;
    darkest = sum;
    best = way;
  }
  return best;
}

/** Inky pixels within reach, the nearest first, not nearer to one another than half the line's width. */
function inkyPlaces(grey: Grey, place: Point, reach: number, limit: number, width: number): Point[] {
  const inky: { readonly at: Point; readonly off: number }[] = [];
  forEachPixel(grey, place, reach, (at, shade) => {
    const off = distance(at, place);
    if (shade <= limit && off <= reach) inky.push({ at, off });
  });
  inky.sort((a, b) => a.off - b.off);
  const kept: Point[] = [];
  for (const { at } of inky) {
    if (kept.every((other) => distance(other, at) >= Math.max(1, width / 2))) kept.push(at);
  }
  return kept;
}

/** Where the lines that leave a place meet, come to by moving there again and again; or where its only line ends. */
function settled(grey: Grey, start: Point, width: number, limit: number): InkNear | undefined {
  let at = start;
  for (let round = 0; ; round++) {
    const ways = waysFrom(grey, at, width, limit);
    if (ways.length === 1) return endOf(grey, at, ways[0] as Vector, width, limit);
    if (ways.length < 2 || (ways.length === 2 && isStraightOn(ways[0] as Vector, ways[1] as Vector))) return undefined;
    const lines = ways.flatMap((way) => lineAlong(grey, at, way, width) ?? []);
    const meeting = lines.length >= 2 ? lineMeeting(lines) : undefined;
    if (!meeting || distance(meeting, start) > 2.5 * width + 1) return undefined;
    const moved = distance(meeting, at);
    at = meeting;
    if (round >= ROUNDS || moved < 0.05) break;
  }
  return greyAt(grey, at) <= limit + 0.1 ? { at, what: 'meeting' } : undefined;
}

/** The directions in which lines leave a place: the dark stretches of two rings round it, where both agree. */
function waysFrom(grey: Grey, at: Point, width: number, limit: number): Vector[] {
  const inner = darkStretches(grey, at, 2.2 * width + 1.5, limit, width);
  const outer = darkStretches(grey, at, 3.4 * width + 2.5, limit, width);
  return inner.filter((way) => outer.some((other) => way.dx * other.dx + way.dy * other.dy > 0.9));
}

function darkStretches(grey: Grey, at: Point, radius: number, limit: number, width: number): Vector[] {
  const dark = Array.from({ length: LOOKS }, (_, look) => {
    const angle = (2 * Math.PI * look) / LOOKS;
    return greyAt(grey, { x: at.x + radius * Math.cos(angle), y: at.y + radius * Math.sin(angle) }) < limit;
  });
  const light = dark.indexOf(false);
  if (light < 0) return [];
  const found: Vector[] = [];
  for (let i = 1; i <= LOOKS; ) {
    if (!dark[(light + i) % LOOKS]) {
      i += 1;
      continue;
    }
    const first = i;
    while (dark[(light + i) % LOOKS]) i += 1;
    const middle = (2 * Math.PI * (light + (first + i - 1) / 2)) / LOOKS;
    const wide = ((i - first) * 2 * Math.PI * radius) / LOOKS;
    if (wide < BROAD * width + 1) found.push({ dx: Math.cos(middle), dy: Math.sin(middle) });
  }
  return found;
}

function isStraightOn(a: Vector, b: Vector): boolean {
  return a.dx * b.dx + a.dy * b.dy < -Math.cos(STRAIGHT_ON);
}

/** The line that leaves a place in some direction, from where the others are out of the way. */
function lineAlong(grey: Grey, at: Point, way: Vector, width: number): FittedLine | undefined {
  const places: Point[] = [];
  const cut = { dx: -way.dy, dy: way.dx };
  for (let r = 1.5 * width + 1; r <= 4 * width + 5; r += 0.75) {
    const place = { x: at.x + way.dx * r, y: at.y + way.dy * r };
    const across = inkAcross(grey, place, cut, 1.6 * width + 1.5);
    if (!across || across.width > width * 1.6 + 0.5) continue;
    places.push({ x: place.x + cut.dx * across.off, y: place.y + cut.dy * across.off });
  }
  return places.length >= 3 ? fittedLine(places) : undefined;
}

/** The very end of a line that leaves a place in one direction only. */
function endOf(grey: Grey, at: Point, way: Vector, width: number, limit: number): InkNear | undefined {
  const line = lineAlong(grey, at, way, width);
  if (!line) return undefined;
  const { along } = line;
  const back = along.dx * way.dx + along.dy * way.dy > 0 ? -1 : 1;
  const by = unit(vectorBetween({ x: 0, y: 0 }, { x: along.dx * back, y: along.dy * back }));
  if (!by) return undefined;
  // From a little up the line back towards the end, as far as it is dark.
  const inside = 2 * width + 1;
  const from = {
    x: at.x + way.dx * inside,
    y: at.y + way.dy * inside,
  };
  const forward = (from.x - line.through.x) * by.dx + (from.y - line.through.y) * by.dy;
  const foot = { x: line.through.x + by.dx * forward, y: line.through.y + by.dy * forward };
  for (let r = 0; r <= 6 * width + 6; r += 0.25) {
    const here = { x: foot.x + by.dx * r, y: foot.y + by.dy * r };
    if (greyAt(grey, here) > limit) return { at: between(here, foot, r > 0 ? 0.125 / r : 0), what: 'end' };
  }
  return undefined;
}
