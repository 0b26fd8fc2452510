import { distance, type Point } from '../geometry/point';
import { CELL, coveredBy } from './covered';
import { farFrom } from './far-from';

interface Window {
  readonly width: number;
  readonly height: number;
}

/**
 * So many pages it takes at least, whatever way pieces and sheets are turned, shifted and put together: the most of
 * three counts that each hold for any way of printing on sheets in rows and columns that hang together.
 */
export function pagesBound(pieces: readonly (readonly Point[])[], window: Window, overlap: number): number {
  const [long, short] = [Math.max(window.width, window.height), Math.min(window.width, window.height)];
  const across = Math.hypot(long, short);
  const each = pieces.map((ink) => Math.max(farApart(ink, across), inRow(ink, long, short, overlap)));
  const area = pieces.reduce((sum, ink) => sum + neededArea(ink, long, short, overlap), 0);
  // Each page but the first of those a piece hangs on shares a strip with one before it, which adds nothing.
  const strip = overlap * short;
  return Math.max(
    pieces.length > 0 ? 1 : 0,
    ...each,
    Math.ceil(area / (long * short) - 1e-9),
    Math.ceil((area - pieces.length * strip) / (long * short - strip) - 1e-9),
  );
}

/** Of more places than this only some are looked at: what holds for them holds for all. */
const MOST_PLACES = 10_000;

/** Places further apart than a window's diagonal each need a page of their own. */
function farApart(all: readonly Point[], across: number): number {
  const every = Math.ceil(all.length / MOST_PLACES);
  const ink = every > 1 ? all.filter((_, index) => index % every === 0) : all;
  const from = furthest(ink, ink[0]);
  if (!from) return 0;
  // How far each place is from the nearest of those chosen.
  const near = ink.map((place) => distance(from, place));
  for (let count = 1; ; count++) {
    let best = -1;
    near.forEach((far, index) => {
      // Of the places far enough the nearest, so that more find room.
      if (far > across && (best < 0 || far < (near[best] ?? 0))) best = index;
    });
    const chosen = ink[best];
    if (!chosen) return count;
    ink.forEach((place, index) => {
      near[index] = Math.min(near[index] ?? 0, distance(chosen, place));
    });
  }
}

/** Pages that hang together reach furthest in a row: how many it takes from one end of a piece to the other. */
function inRow(ink: readonly Point[], long: number, short: number, overlap: number): number {
  const from = furthest(ink, ink[0]);
  const to = furthest(ink, from);
  if (!from || !to) return 0;
  const reach = distance(from, to);
  for (let count = 1; ; count++) {
    const row = (side: number) => count * (side - overlap) + overlap;
    if (Math.max(Math.hypot(row(long), short), Math.hypot(row(short), long)) >= reach) return count;
  }
}

function furthest(ink: readonly Point[], from: Point | undefined): Point | undefined {
  return from && ink.reduce((a, b) => (distance(b, from) > distance(a, from) ? b : a));
}

/**
 * How much of the inside of a piece must lie on pages (mm²): all but what pages without a line of their own may leave out.
 * Such a page is free of lines but for the strips that it shares with others. What is left of it holds a circle anywhere
 * along its middle, all of them together a stadium; and so many pages are left out at most as there is room for stadiums,
 * each of them leaving out no more than its own part of the paper.
 */
function neededArea(ink: readonly Point[], long: number, short: number, overlap: number): number {
  const covered = coveredBy(ink);
  const { wide, high, cells } = covered;
  const [free, freeLong] = [short - 2 * overlap, long - 2 * overlap];
  if (free < 4 * CELL) return 0;
  const radius = free / 2 / CELL - 1;
  const fromLines = farFrom(covered, (what) => what === 2);
  const middles = cells.map((what, index) => (what === 1 && (fromLines[index] ?? 0) >= radius ? 1 : 0));
  const fromMiddles = farFrom({ ...covered, cells: middles }, (what) => what === 1);
  const reach = ((short - overlap) / 2 / CELL) * Math.SQRT2 + 2;
  let [inside, within, round] = [0, 0, 0];
  for (let index = 0; index < wide * high; index++) {
    if (cells[index] !== 1) continue;
    const far = fromMiddles[index] ?? 0;
    inside += 1;
    if (far <= reach) within += 1;
    if (far <= radius + 2) round += 1;
  }
  const stadium = free * (freeLong - free) + (Math.PI / 4) * free * free;
  const leftOut = Math.floor((round * CELL * CELL) / stadium) * (long - overlap) * (short - overlap);
  return Math.max(0, inside * CELL * CELL - Math.min(within * CELL * CELL, leftOut));
}
