import type { Mark } from '../drawing/drawing';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { Motion } from '../garment/printed';
import { type Box, boxContains, boxOfPoints, growBox } from '../geometry/bounds';
import { flattenPath } from '../geometry/flatten';
import type { Point } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';
import { movedMarks, movedPoint } from './moved-marks';
import { inkPlaces, type PagePlan } from './page-plan';
import { wordsAlongLines } from './words-along-lines';

/** What is written on a piece keeps this far from lines and from the shared strips of its page (mm). */
const CLEAR = 3;

/** Places on a page that are tried lie this far apart (mm). */
const TRY_EVERY = 8;

/** How finely the outline is followed (mm). */
const FOLLOW = 0.5;

interface Lying {
  readonly piece: Piece;
  readonly motion: Motion;
  readonly marks: readonly Mark[];
}

/**
 * The drawing of a piece with what is written on it moved where a join would cut through it: what stands in its middle, to
 * the nearest place within the piece where all of it stands on one page and on no line; words on folds and on the grain,
 * along their line. The very same drawing where nothing need be moved or there is no such place. `all` is everything
 * drawn on these pages.
 */
export function wordsOnAPage(lying: Lying, all: readonly Mark[], plan: PagePlan): readonly Mark[] {
  return wordsAlongLines(middleOnAPage(lying, all, plan), all, plan);
}

function middleOnAPage({ piece, motion, marks }: Lying, all: readonly Mark[], plan: PagePlan): readonly Mark[] {
  const written = marks.filter(isWritten);
  const places = inkPlaces(written);
  const sizes = written.map((mark) => (mark.kind === 'words' ? mark.size / 2 : 0));
  const box = boxOfPoints(places);
  if (!box) return marks;
  const block = growBox(box, Math.max(...sizes));
  const inset = -(plan.paper.overlap + CLEAR);
  const pages = plan.pages.map(({ window }) => growBox(window, inset));
  if (pages.some((page) => holds(page, block))) return marks;
  const ring = flattenPath(outlineOf(piece).whole, FOLLOW).map((point) => movedPoint(motion, point));
  const lines = inkPlaces(all.filter((mark) => !isWritten(mark)));
  const isFree = ({ dx, dy }: Shift): boolean => {
    const there = shifted(block, dx, dy);
    const near = growBox(there, CLEAR);
    return (
      cornersOf(there).every((corner) => placeInRing(ring, corner) === 'inside') &&
      !lines.some((at) => boxContains(near, at))
    );
  };
  const shift = pages
    .flatMap((page) => shiftsInto(page, block))
    .sort((a, b) => Math.hypot(a.dx, a.dy) - Math.hypot(b.dx, b.dy))
    .find(isFree);
  if (!shift) return marks;
  return marks.map((mark) => (isWritten(mark) ? (movedMarks([mark], { angle: 0, ...shift })[0] as Mark) : mark));
}

/** The name, how it is cut, what is allowed, and the arrow above them. */
function isWritten(mark: Mark): boolean {
  if (mark.kind === 'stroke') return mark.line === 'upright';
  const { kind } = mark.content;
  return (
    kind === 'piece-name' || kind === 'upright' || kind === 'cut' || kind === 'allowance' || kind === 'right-side-up'
  );
}

interface Shift {
  readonly dx: number;
  readonly dy: number;
}

/** Ways to shift a block so that it lies within a page: the shortest, and every few mm. */
function shiftsInto(page: Box, block: Box): Shift[] {
  const across = stepsInto(page.minX - block.minX, page.maxX - block.maxX);
  const down = stepsInto(page.minY - block.minY, page.maxY - block.maxY);
  return across.flatMap((dx) => down.map((dy) => ({ dx, dy })));
}

function stepsInto(least: number, most: number): number[] {
  if (most < least) return [];
  const shortest = Math.min(most, Math.max(least, 0));
  const count = Math.floor((most - least) / TRY_EVERY);
  return [shortest, ...Array.from({ length: count + 1 }, (_, k) => least + k * TRY_EVERY)];
}

function shifted({ minX, minY, maxX, maxY }: Box, dx: number, dy: number): Box {
  return { minX: minX + dx, minY: minY + dy, maxX: maxX + dx, maxY: maxY + dy };
}

function cornersOf({ minX, minY, maxX, maxY }: Box): Point[] {
  return [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
}

function holds(outer: Box, inner: Box): boolean {
  return cornersOf(inner).every((corner) => boxContains(outer, corner));
}
