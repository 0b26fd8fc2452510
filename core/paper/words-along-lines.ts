import type { Mark, Words } from '../drawing/drawing';
import { boxContains } from '../geometry/bounds';
import { flattenPath } from '../geometry/flatten';
import { move, type Point } from '../geometry/point';
import { inkPlaces, type PagePlan, wordsRun } from './page-plan';

/** Words keep this far from the strips that pages share (mm). */
const CLEAR = 3;

/** Places along the line that are tried lie this far apart (mm). */
const TRY_EVERY = 4;

/** A line belongs to words that stand no further from it than this, in their sizes. */
const BESIDE = 1.5;

/** Nothing drawn comes nearer to the middle of the words than this, in their sizes. */
const FREE = 0.55;

/** How finely lines are followed (mm). */
const FOLLOW = 0.5;

/**
 * The drawing of a piece with the words on its folds and its grain line moved along that line, where a join would cut
 * through them, to the nearest place where they stand whole on one page, on no line if there is such a place. The very
 * same drawing where nothing need be moved. `all` is everything drawn on these pages.
 */
export function wordsAlongLines(marks: readonly Mark[], all: readonly Mark[], plan: PagePlan): readonly Mark[] {
  const isAlong = (mark: Mark) =>
    mark.kind === 'words' && (mark.content.kind === 'fold' || mark.content.kind === 'grain');
  const cut = marks.filter((mark): mark is Words => isAlong(mark) && !isWhole(mark as Words, plan));
  if (cut.length === 0) return marks;
  const ink = inkPlaces([
    ...all.filter(({ kind }) => kind === 'stroke'),
    ...marks.filter((mark) => mark.kind === 'words' && !isAlong(mark)),
  ]);
  const moved = marks.map((mark) => (cut.includes(mark as Words) ? movedAlong(mark as Words, marks, plan, ink) : mark));
  return moved.every((mark, index) => mark === marks[index]) ? marks : moved;
}

function along(words: Words, by: number): Words {
  return { ...words, at: move(words.at, { dx: Math.cos(words.angle), dy: Math.sin(words.angle) }, by) };
}

/** Whether one page shows words whole, clear of what it shares with the next in the direction they run. */
function isWhole(words: Words, { pages, paper }: PagePlan): boolean {
  const inset = paper.overlap + CLEAR;
  const isLevel = Math.abs(Math.cos(words.angle)) > Math.abs(Math.sin(words.angle));
  const [across, down] = isLevel ? [inset, words.size / 2] : [words.size / 2, inset];
  return pages.some(({ window: { minX, minY, maxX, maxY } }) => {
    const clear = { minX: minX + across, minY: minY + down, maxX: maxX - across, maxY: maxY - down };
    return wordsRun(words).every((end) => boxContains(clear, end));
  });
}

/** Words where they stand whole on a page, along the line they belong to. */
function movedAlong(words: Words, marks: readonly Mark[], plan: PagePlan, ink: readonly Point[]): Words {
  const [cos, sin] = [Math.cos(words.angle), Math.sin(words.angle)];
  const seen = ({ x, y }: Point) => ({
    along: (x - words.at.x) * cos + (y - words.at.y) * sin,
    off: Math.abs((y - words.at.y) * cos - (x - words.at.x) * sin),
  });
  const lines = marks.flatMap((mark) => {
    if (mark.kind !== 'stroke' || mark.line !== words.content.kind) return [];
    const points = flattenPath(mark.path, FOLLOW).map(seen);
    return points.every(({ off }) => off <= BESIDE * words.size) ? [points.map((point) => point.along)] : [];
  });
  const half = Math.max(...wordsRun(words).map((end) => seen(end).along));
  const [from, to] = [Math.min(...lines.flat()) + half, Math.max(...lines.flat()) - half];
  const near = ink.map(seen).filter(({ off }) => off < FREE * words.size);
  const count = Math.max(0, Math.floor((to - from) / TRY_EVERY) + 1);
  const shifts = Array.from({ length: count }, (_, k) => from + k * TRY_EVERY)
    .filter((shift) => isWhole(along(words, shift), plan))
    .sort((a, b) => Math.abs(a) - Math.abs(b));
  const free = shifts.find((shift) => !near.some((place) => Math.abs(place.along - shift) < half));
  const shift = free ?? shifts[0];
  return shift === undefined ? words : along(words, shift);
}
