import type { LineKind, Mark } from '../drawing/drawing';
import { markOf } from '../garment/version-mark';
import { type Box, boxContains, growBox } from '../geometry/bounds';
import { distanceToChord, flattenPath } from '../geometry/flatten';
import { distance, type Point } from '../geometry/point';
import { clippedLines, placesAlong } from './clipped-lines';

/** How finely lines are followed, and how finely their places are written (mm). */
const FLATNESS = 0.02;
const STEP = 0.02;

/** Lines that have moved by no more than this are as they were printed (mm): less than a pencil draws. */
const STAYS = 0.1;

/** Lines are compared at places no further apart than this (mm). */
const LOOK_EVERY = 5;

/** A mark longer than this is kept as a short one that knows only whether anything is different. */
const LONGEST = 9000;

interface Line {
  readonly kind: LineKind;
  readonly points: readonly Point[];
}
interface Said {
  readonly text: string;
  readonly at: Point;
}
interface Content {
  /** What is said of the whole piece on each of its pages: how it is cut and what is allowed. */
  readonly piece: string;
  readonly lines: readonly Line[];
  readonly words: readonly Said[];
}

/**
 * A mark for what is drawn in a window of the table, counted from the window's own corner: every line and her own words
 * where they stand, and how the piece is cut. What only stands where there is room, such as its name, is left out.
 */
export function pageMark(marks: readonly Mark[], window: Box): string {
  const { piece, lines, words } = contentIn(marks, window);
  const mark = JSON.stringify([
    piece,
    lines.map(({ kind, points }) => `${kind} ${written(points)}`),
    words.map(({ text, at }) => [text, ...steps(at)]),
  ]);
  return mark.length > LONGEST ? markOf(mark) : mark;
}

/** Whether a page with that mark shows what is drawn in the window now, to a tenth of a millimetre. */
export function isAsPrinted(mark: string, marks: readonly Mark[], window: Box): boolean {
  if (mark === pageMark(marks, window)) return true;
  const was = readMark(mark);
  if (!was) return false;
  const now = contentIn(marks, window);
  // A line along the very side of the window may be cut off on one of the two.
  const about = contentIn(marks, window, 1);
  const middle = growBox({ minX: 0, minY: 0, maxX: window.maxX - window.minX, maxY: window.maxY - window.minY }, -0.5);
  return (
    was.piece === now.piece &&
    was.lines.every((line) => isDrawn(placesAlong(line.points, LOOK_EVERY), line.kind, about.lines)) &&
    now.lines.every(({ kind, points }) =>
      isDrawn(
        placesAlong(points, LOOK_EVERY).filter((place) => boxContains(middle, place)),
        kind,
        was.lines,
      ),
    ) &&
    was.words.every((said) => isSaid(said, about.words)) &&
    now.words.every((said) => !boxContains(middle, said.at) || isSaid(said, was.words))
  );
}

function isDrawn(places: readonly Point[], kind: LineKind, lines: readonly Line[]): boolean {
  const like = lines.filter((line) => line.kind === kind);
  return places.every((place) =>
    like.some(({ points }) => points.some((to, index) => distanceToChord(place, points[index - 1] ?? to, to) <= STAYS)),
  );
}

function isSaid({ text, at }: Said, words: readonly Said[]): boolean {
  return words.some((other) => other.text === text && distance(other.at, at) <= STAYS);
}

function contentIn(marks: readonly Mark[], window: Box, about = 0): Content {
  const box = growBox(window, about);
  const home = ({ x, y }: Point): Point => ({ x: x - window.minX, y: y - window.minY });
  const lines: Line[] = [];
  const words: Said[] = [];
  const piece: unknown[] = [];
  for (const mark of marks) {
    if (mark.kind === 'stroke') {
      if (mark.line === 'upright') continue;
      const runs = clippedLines(flattenPath(mark.path, FLATNESS), box);
      lines.push(...runs.map((points) => ({ kind: mark.line, points: points.map(home) })));
    } else if (mark.content.kind === 'label' || mark.content.kind === 'gathers') {
      if (boxContains(box, mark.at)) words.push({ text: contentText(mark.content), at: home(mark.at) });
    } else if (mark.role === 'cut-count' || mark.role === 'note') piece.push(mark.content);
  }
  return { piece: JSON.stringify(piece), lines, words };
}

function contentText(
  content: { readonly kind: 'label'; readonly text: string } | { readonly kind: 'gathers' },
): string {
  return content.kind === 'label' ? content.text : JSON.stringify(content);
}

function steps({ x, y }: Point): [number, number] {
  return [Math.round(x / STEP), Math.round(y / STEP)];
}

/** Places as steps from one to the next, in short figures. */
function written(points: readonly Point[]): string {
  let [lastX, lastY] = [0, 0];
  return points
    .map((point) => {
      const [x, y] = steps(point);
      const step = `${(x - lastX).toString(36)},${(y - lastY).toString(36)}`;
      [lastX, lastY] = [x, y];
      return step;
    })
    .join(' ');
}

function readMark(mark: string): Content | undefined {
  try {
    const [piece, lines, words] = JSON.parse(mark) as [string, string[], [string, number, number][]];
    return {
      piece,
      lines: lines.map((line) => {
        const [kind, ...points] = line.split(' ');
        let [x, y] = [0, 0];
        return {
          kind: kind as LineKind,
          points: points.map((step) => {
            const [dx = '', dy = ''] = step.split(',');
            x += Number.parseInt(dx, 36);
            y += Number.parseInt(dy, 36);
            return { x: x * STEP, y: y * STEP };
          }),
        };
      }),
      words: words.map(([text, x, y]) => ({ text, at: { x: x * STEP, y: y * STEP } })),
    };
  } catch {
    // A short mark, or a damaged one: it can only be the same or not.
    return undefined;
  }
}
