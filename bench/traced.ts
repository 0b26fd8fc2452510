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

/** One outline on each picture, by the names of its corners in `diagrams.json`; D11 needs a press in its armhole. */
const OUTLINES: Readonly<Record<string, string>> = {
  D01: 'bk_top t12 b32 b42',
  D02: 'p1TL p1TR p1BR p1BL',
  D03: 'fold_waist front_waist crotch leg_top leg_hem BL',
  D04: 'l2top v6top v6bot l2bot',
  D06: 'A_TL A_TR A_BR A_BL',
  D07: 'P2a P2b P2c P2d',
  D08: 'P2a P2b P2c P2d',
  D10: 'G1a G1b G1c G1d',
  D11: 'f_neckCF f_neckSh f_sh f_chest f_ua f_hem fBL',
  D12: 'B C F G Z A',
  D14: 'TL TR BR BL',
  D16: 'topR sleeveTR sleeveBR underarmR hemR tipL',
  D17: 'TL TR BR BL',
  D18: 'TL TR BR BL',
  D19: 't3TL t3TR t3BR t3BL',
};

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
  const entries = (JSON.parse(readFileSync(list, 'utf8')) as readonly Entry[]).filter(({ id }) => OUTLINES[id]);
  const greys = await greysOf(entries.map(({ file }) => join(folder, file)));
  const figures = entries.flatMap((entry, k): Figure[] => {
    const counted = presses(greys[k] as Grey, cornersIn(entry));
    if (!counted) console.error(`not traced: ${entry.file}`);
    return counted ? [figureOf(`presses_${entry.id}`, counted)] : [];
  });
  const sum = (of: (figure: Figure) => number) => figures.reduce((total, figure) => total + of(figure), 0);
  const all = { byInk: sum(({ value }) => value), byHand: sum(({ baseline = 0 }) => baseline) };
  return [...figures, figureOf('presses_all', all), { name: 'pictures', value: figures.length, unit: '' }];
}

function figureOf(name: string, { byInk, byHand }: { readonly byInk: number; readonly byHand: number }): Figure {
  return { name, value: byInk, unit: 'presses', baseline: byHand, ratio: byInk / byHand };
}

function cornersIn({ id, px_points }: Entry): Point[] {
  return (OUTLINES[id] as string).split(' ').map((name) => {
    const [x, y] = px_points[name] as readonly [number, number];
    return { x, y };
  });
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
