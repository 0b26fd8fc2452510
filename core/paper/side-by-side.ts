import type { SheetChoice } from '../garment/sheet-choice';
import { boxOfPoints } from '../geometry/bounds';
import { CELL, coveredBy, Ground, longestFirst, type Run, runsOf } from './covered';
import { movedMarks, movedPoint } from './moved-marks';
import { inkPlaces, planPages, windowSize } from './page-plan';
import { APART } from './place-beside';
import { drawingOf, type PlacedPiece, type TapedSheet } from './placed-piece';
import { costOf, sumOf } from './sheet-cost';

/** Pieces fill so many rows or columns of pages side by side, and no more than one can reach across (mm). */
const MOST_ACROSS = 1600;

/** A band longer than this is not begun anew from its pieces: it would lie on no table (mm). */
const LONGEST = 1800;

/** Of so many ways to fill bands it is tried whether shifting the pages saves more. */
const MOST_SHIFTED = 3;

/** What is drawn keeps so far from the edge of the pages (mm). */
const CLEAR = 2;

/** A band of pages: so many rows filled from the left, or so many columns filled from above. */
interface Band {
  readonly fills: 'rows' | 'columns';
  /** How much room there is from side to side of it (mm). */
  readonly wide: number;
}

/** A piece as it would lie, its drawing beginning at zero both ways. */
interface Stance {
  readonly placed: PlacedPiece;
  readonly width: number;
  readonly height: number;
  readonly runs: readonly Run[];
}

/**
 * Pieces laid close, side by side, over so many rows or columns of pages as take least paper; where some take less on
 * pages of their own, they stay there. `alone` has each piece on its own pages.
 */
export function sideBySide(
  alone: readonly TapedSheet[],
  sheets: SheetChoice,
  place: (sheet: TapedSheet, angle: number) => PlacedPiece,
): readonly TapedSheet[] {
  if (alone.length < 2) return alone;
  const largest = alone
    .map((sheet) => ({ sheet, stances: stancesOf(sheet, place) }))
    .sort((a, b) => longestOf(b.stances) - longestOf(a.stances));
  const found = bandsOf(sheets)
    .map((band) => filled(largest, band, sheets))
    .sort((a, b) => sumOf(a) - sumOf(b))
    .slice(0, MOST_SHIFTED)
    .map((one) => one.map((sheet) => shifted(sheet, sheets)));
  return [alone, ...found].reduce((best, one) => (sumOf(one) < sumOf(best) ? one : best));
}

function bandsOf(sheets: SheetChoice): Band[] {
  const { width, height } = windowSize(sheets);
  if (sheets.size === 'roll') return [{ fills: 'columns', wide: width - 2 * CLEAR }];
  const bands = (fills: Band['fills'], side: number) => {
    const count = Math.max(1, Math.floor((MOST_ACROSS - side) / (side - sheets.overlap)) + 1);
    return Array.from({ length: count }, (_, k): Band => {
      return { fills, wide: k * (side - sheets.overlap) + side - 2 * CLEAR };
    });
  };
  return [...bands('rows', height), ...bands('columns', width)];
}

function stancesOf(sheet: TapedSheet, place: (sheet: TapedSheet, angle: number) => PlacedPiece): Stance[] {
  const own = sheet.placed[0]?.motion.angle ?? 0;
  const angles = new Set([0, Math.PI, Math.PI / 2, -Math.PI / 2, own, own + Math.PI]);
  return [...angles].map((angle) => {
    const turned = place(sheet, angle);
    const box = boxOfPoints(inkPlaces(drawingOf([turned]))) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
    const placed = moved(turned, -box.minX, -box.minY);
    const runs = runsOf(coveredBy(inkPlaces(drawingOf([placed]))));
    return { placed, width: box.maxX - box.minX, height: box.maxY - box.minY, runs: longestFirst(runs) };
  });
}

function longestOf(stances: readonly Stance[]): number {
  return Math.max(...stances.map(({ width, height }) => Math.max(width, height)));
}

function moved(placed: PlacedPiece, dx: number, dy: number): PlacedPiece {
  const by = { angle: 0, dx, dy };
  const { x, y } = movedPoint(by, { x: placed.motion.dx, y: placed.motion.dy });
  return {
    ...placed,
    motion: { ...placed.motion, dx: x, dy: y },
    marks: movedMarks(placed.marks, by),
    under: placed.under.map((one) => movedMarks(one, by)),
  };
}

interface Lying {
  readonly placed: readonly PlacedPiece[];
  readonly from: readonly TapedSheet[];
  readonly taken: readonly Run[];
  /** How far along the band pieces lie (mm). */
  readonly end: number;
}

/** Every piece in the first band where it finds room, as near its beginning as can be. */
function filled(
  pieces: readonly { readonly sheet: TapedSheet; readonly stances: readonly Stance[] }[],
  band: Band,
  sheets: SheetChoice,
): TapedSheet[] {
  const lying: Lying[] = [];
  const without: TapedSheet[] = [];
  for (const { sheet, stances } of pieces) {
    const fitting = stances.filter((stance) => acrossOf(stance, band) <= band.wide);
    let at = 0;
    let next: Lying | undefined;
    for (; at < lying.length && !next; at++) {
      const there = lying[at];
      const better = there && nearest(fitting, band, there, sheet);
      if (better && better.end <= LONGEST) next = better;
    }
    if (next) lying[at - 1] = next;
    else {
      const first = nearest(fitting, band, { placed: [], from: [], taken: [], end: 0 }, sheet);
      if (first) lying.push(first);
      else without.push(sheet);
    }
  }
  return [...without, ...lying.flatMap(({ placed, from }) => cheaper(placed, from, sheets))];
}

function acrossOf({ width, height }: Stance, { fills }: Band): number {
  return fills === 'rows' ? height : width;
}

/** The piece where it ends soonest in the band. */
function nearest(stances: readonly Stance[], band: Band, there: Lying, sheet: TapedSheet): Lying | undefined {
  const ground = there.taken.length > 0 ? new Ground(there.taken, APART) : undefined;
  let best: { stance: Stance; x: number; y: number; end: number } | undefined;
  for (const stance of stances) {
    const long = band.fills === 'rows' ? stance.width : stance.height;
    const most = Math.floor((band.wide - acrossOf(stance, band)) / CELL);
    const last = Math.ceil(there.end / CELL) + APART + 1;
    search: for (let along = 0; along <= last; along++) {
      if (best && along * CELL + long >= best.end) break;
      for (let aside = 0; aside <= most; aside++) {
        const [x, y] = band.fills === 'rows' ? [along, aside] : [aside, along];
        if (ground && !stance.runs.every((run) => ground.isFree(run, x, y))) continue;
        best = { stance, x, y, end: along * CELL + long };
        break search;
      }
    }
  }
  if (!best) return undefined;
  const { stance, x, y, end } = best;
  return {
    placed: [...there.placed, moved(stance.placed, x * CELL, y * CELL)],
    from: [...there.from, sheet],
    taken: [...there.taken, ...stance.runs.map(({ row, from, to }) => ({ row: row + y, from: from + x, to: to + x }))],
    end: Math.max(there.end, end),
  };
}

/** The band on its pages, or its pieces on pages of their own where that takes no more. */
function cheaper(
  placed: readonly PlacedPiece[],
  from: readonly TapedSheet[],
  sheets: SheetChoice,
): readonly TapedSheet[] {
  const plan = planPages([...drawingOf(placed)], sheets, { x: -CLEAR, y: -CLEAR });
  if (!plan) return from;
  const both = { placed, plan };
  return costOf(both) < sumOf(from) ? [both] : from;
}

/** The same pieces with the pages shifted under them, where that takes fewer. */
function shifted(sheet: TapedSheet, sheets: SheetChoice): TapedSheet {
  const plan = planPages(drawingOf(sheet.placed), sheets);
  return plan && costOf({ plan }) < costOf(sheet) ? { ...sheet, plan } : sheet;
}
