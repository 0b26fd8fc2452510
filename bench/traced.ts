// npm run bench -- traced [--pictures folder]: outlines of real diagrams, by following the ink and by hand.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { flattenPath } from '../core/geometry/flatten';
import { distance, type Point } from '../core/geometry/point';
import { throughPointsFor } from '../core/geometry/simplify';
import type { Grey } from '../core/picture/grey';
import { inkCosts } from '../core/picture/ink-costs';
import { inkRuns } from '../core/picture/ink-followed';
import { spaced } from '../core/picture/ink-line';
import { furthestOff } from '../tests/picture/drawn-page';
import { type ReadPicture, type TracedOutline, tracedByInk } from '../tests/picture/ink-traced';
import type { Figure } from './figure';
import { greysOf, PICTURES_BESIDE } from './photo-pictures';
import { type ChosenOutline, OUTLINES } from './traced-outlines';

interface Entry {
  readonly id: string;
  readonly file: string;
  readonly px_points: Readonly<Record<string, readonly [number, number]>>;
}

/**
 * For each picture the fewest presses that trace one outline by its ink, beside the presses it takes by hand: its corners,
 * the places a curve must go through to stay within half the width of the printed line, and one to close.
 */
export async function tracedFigures(args: readonly string[]): Promise<Figure[]> {
  const named = args.includes('--pictures') ? args[args.indexOf('--pictures') + 1] : undefined;
  const folder = named ?? process.env.PHOTO_PICTURES ?? PICTURES_BESIDE;
  const list = join(folder, 'diagrams.json');
  if (!existsSync(list)) {
    console.error(`Nothing is measured: there is no ${list} (name a folder by --pictures).`);
    return [];
  }
  const entries = JSON.parse(readFileSync(list, 'utf8')) as readonly Entry[];
  const chosen = OUTLINES.flatMap((outline) => chosenIn(outline, entries));
  const greys = await greysOf(chosen.map(({ file }) => join(folder, file)));
  const figures = chosen.flatMap(({ id, file, corners }, k): Figure[] => {
    const counted = presses(greys[k] as Grey, corners);
    if (!counted) console.error(`not traced: ${file}`);
    return counted ? [figureOf(`presses_${id}`, counted)] : [];
  });
  const sum = (of: (figure: Figure) => number) => figures.reduce((total, figure) => total + of(figure), 0);
  const all = { byInk: sum(({ value }) => value), byHand: sum(({ baseline = 0 }) => baseline) };
  return [
    ...figures,
    figureOf('presses_all', all),
    {
      name: 'pictures',
      value: figures.length,
      unit: '',
      baseline: chosen.length,
      ratio: figures.length / chosen.length,
    },
  ];
}

function figureOf(name: string, { byInk, byHand }: { readonly byInk: number; readonly byHand: number }): Figure {
  return { name, value: byInk, unit: 'presses', baseline: byHand, ratio: byInk / byHand };
}

/** The file of an outline and where its corners lie in it; nothing where the list lacks it. */
function chosenIn(outline: ChosenOutline, entries: readonly Entry[]) {
  const at = ([x, y]: readonly [number, number]): Point => ({ x, y });
  const { id } = outline;
  if ('places' in outline) return [{ id, file: outline.file, corners: outline.places.map(at) }];
  const entry = entries.find((each) => each.id === id);
  if (!entry) return [];
  const corners = outline.corners.split(' ').map((name) => at(entry.px_points[name] as readonly [number, number]));
  return [{ id, file: entry.file, corners }];
}

function presses(grey: Grey, corners: readonly Point[]) {
  const same = (place: Point) => place;
  const picture: ReadPicture = { grey, costs: inkCosts(grey), toTable: same, toPhoto: same };
  const first = corners[0] as Point;
  const trace = (places: readonly Point[]) => tracedByInk(picture, [...places, first]);
  const whole = trace(corners);
  if (!whole) return undefined;
  const byHand = 1 + whole.lines.reduce((sum, each) => sum + 1 + throughByHand(each), 0);
  // One corner after another is left to the following, as long as the outline stays what it was.
  let kept = [...corners];
  for (const corner of corners.slice(1)) {
    const fewer = kept.filter((each) => each !== corner);
    const other = fewer.length > 1 ? trace(fewer) : undefined;
    if (other && isSame(whole, other)) kept = fewer;
  }
  return { byInk: kept.length + 1, byHand };
}

/** Places between two presses that a spline by hand needs: corners passed over among them. */
function throughByHand({ line, ends }: TracedOutline['lines'][number]): number {
  const runs = inkRuns(line, ends);
  const through = runs.map((run) => {
    const length = run.reduce((sum, place, k) => sum + (k > 0 ? distance(place, run[k - 1] as Point) : 0), 0);
    const places = spaced(run, Math.max(2, length / 140));
    return places.length > 2 ? throughPointsFor(places, { within: line.width / 2 }).length - 2 : 0;
  });
  return through.reduce((sum, each) => sum + each, runs.length - 1);
}

function isSame(one: TracedOutline, other: TracedOutline): boolean {
  const width = Math.max(...one.lines.map(({ line }) => line.width));
  const [a, b] = [one, other].map(({ paths }) =>
    spaced(
      paths.flatMap((path) => flattenPath(path, 0.1)),
      2,
    ),
  ) as [Point[], Point[]];
  return Math.max(furthestOff(a, b), furthestOff(b, a)) < Math.max(1.5, width);
}
