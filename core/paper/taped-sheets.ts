import { pieceDrawing } from '../drawing/piece-drawing';
import type { PaperChoice } from '../garment/garment';
import type { Piece } from '../garment/piece';
import type { SheetChoice } from '../garment/sheet-choice';
import { boxOfPoints } from '../geometry/bounds';
import { coveredArea } from './covered';
import { joinsOffCorners } from './joins-off-corners';
import { STAYS_PUT } from './moved-marks';
import { inkPlaces, type PagePlan, planPages, windowsFor } from './page-plan';
import { sheetChoiceOf } from './page-sizes';
import { pagesBound } from './pages-bound';
import { placeBeside } from './place-beside';
import { drawingOf, type Lines, lines, placedBy, sheetOfOne, type TapedSheet, type Under } from './placed-piece';
import { costOf, isLess, paperOf, sumOf } from './sheet-cost';
import { sideBySide } from './side-by-side';
import { wordsOnAPage } from './words-on-a-page';

/** How many pages there are, and how many there might be. */
export interface PagesCounted {
  readonly pages: number;
  /** Each piece as it is drawn, in rows and columns of the sheets chosen, none left out. */
  readonly plain: number;
  /** With fewer it cannot be done, whatever way pieces and sheets are turned. */
  readonly least: number;
  /** How much paper that is, mm². */
  readonly paper: number;
}

export interface TapedSheets {
  readonly sheets: readonly TapedSheet[];
  /** The pieces for which the paper has no room. */
  readonly leftOut: readonly Piece[];
  readonly counted: PagesCounted;
}

export interface Laying {
  readonly under?: Under | undefined;
  /** Told the share done, 0 to 1. */
  readonly tell?: ((share: number) => void) | undefined;
}

/**
 * The pieces on as few pages as are found: each turned where that saves some, and put beside another on its pages where
 * that does. The same pieces on the same paper lie the same way.
 */
export function tapedSheets(pieces: readonly Piece[], paper: PaperChoice, options: Laying = {}): TapedSheets {
  const { under = [], tell } = options;
  const sheets = sheetChoiceOf(paper);
  const alone = pieces.flatMap((piece, index) => {
    tell?.((index / pieces.length) * 0.5);
    const sheet =
      paper.placed === 'as-drawn' ? asDrawn(lines(piece, under), sheets) : turned(lines(piece, under), sheets);
    return sheet ? [sheet] : [];
  });
  const joined = paper.placed === 'as-drawn' ? alone : fewest(alone, under, sheets, tell);
  const order = (sheet: TapedSheet) => Math.min(...sheet.placed.map(({ piece }) => pieces.indexOf(piece)));
  const found = joined
    .toSorted((a, b) => order(a) - order(b))
    .map(joinsOffCorners)
    .map(withWordsWhole);
  const leftOut = pieces.filter((piece) => !alone.some(({ placed: [one] }) => one?.piece === piece));
  return { sheets: found, leftOut, counted: counted(found, alone, sheets) };
}

/** What is written on the pieces moved to where no join cuts through it. */
function withWordsWhole(sheet: TapedSheet): TapedSheet {
  const all = drawingOf(sheet.placed);
  const placed = sheet.placed.map((one) => ({ ...one, marks: wordsOnAPage(one, all, sheet.plan) }));
  if (placed.every(({ marks }, index) => marks === sheet.placed[index]?.marks)) return sheet;
  return { placed, plan: { ...sheet.plan, ink: inkPlaces(drawingOf(placed)) } };
}

function asDrawn(drawn: Lines, sheets: SheetChoice): TapedSheet | undefined {
  return sheetOfOne(placedBy(drawn, STAYS_PUT), sheets);
}

/** So many of the turns that look best are tried, and turns that are looked at stand so many degrees apart. */
const TURNS_TRIED = 4;
const TURN_EVERY = 3;

function turned(drawn: Lines, sheets: SheetChoice): TapedSheet | undefined {
  const first = asDrawn(drawn, sheets);
  if (!first) return undefined;
  const tried = likelyTurns(first, sheets).map((angle) => sheetOfOne(placedBy(drawn, { angle, dx: 0, dy: 0 }), sheets));
  return tried.reduce<TapedSheet>((best, one) => (one && isLess(costOf(one), costOf(best)) ? one : best), first);
}

/** The turns by which a drawing's box takes fewest rows and columns, the least box first among equals; a quarter turn always. */
function likelyTurns({ plan: { ink, window } }: TapedSheet, sheets: SheetChoice): number[] {
  const angles = Array.from({ length: 180 / TURN_EVERY }, (_, k) => (k * TURN_EVERY * Math.PI) / 180).slice(1);
  const ranked = angles.map((angle) => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const box = boxOfPoints(ink.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos })));
    const [wide, high] = box ? [box.maxX - box.minX + 8, box.maxY - box.minY + 8] : [0, 0];
    const columns = windowsFor(wide, window.width, sheets.overlap);
    const rows = sheets.size === 'roll' ? high / 1000 : windowsFor(high, window.height, sheets.overlap);
    return { angle, cells: columns * rows, area: wide * high };
  });
  ranked.sort((a, b) => a.cells - b.cells || a.area - b.area);
  return [Math.PI / 2, ...ranked.slice(0, TURNS_TRIED).map(({ angle }) => angle)];
}

/** The pieces together in whichever way takes less paper. */
function fewest(
  alone: readonly TapedSheet[],
  under: Under,
  sheets: SheetChoice,
  tell?: (share: number) => void,
): readonly TapedSheet[] {
  const one = together(alone, under, sheets, tell);
  const other = sideBySide(alone, sheets, ({ placed: [first] }, angle) => {
    if (!first) throw new Error('there is a piece on every sheet');
    return placedBy(lines(first.piece, under), { angle, dx: 0, dy: 0 });
  });
  return isLess(sumOf(other), sumOf(one)) ? other : one;
}

/** Puts pieces on the pages of others as long as that takes less paper than pages of their own. */
function together(
  alone: readonly TapedSheet[],
  under: Under,
  sheets: SheetChoice,
  tell?: (share: number) => void,
): TapedSheet[] {
  const done: TapedSheet[] = [];
  const largest = alone.toSorted((a, b) => costOf(b) - costOf(a) || boxOf(b) - boxOf(a));
  for (const [index, sheet] of largest.entries()) {
    tell?.(0.5 + (index / largest.length) * 0.5);
    let best: { readonly at: number; readonly both: TapedSheet; readonly takes: number } | undefined;
    for (const [at, there] of done.entries()) {
      const both = besideOn(there, sheet, under, sheets);
      const takes = both ? costOf(both) - costOf(there) : Number.POSITIVE_INFINITY;
      if (both && isLess(takes, best?.takes ?? costOf(sheet))) best = { at, both, takes };
      if (takes <= 0) break;
    }
    if (best) done[best.at] = best.both;
    else done.push(sheet);
  }
  return done;
}

function boxOf({ plan: { drawn } }: TapedSheet): number {
  return (drawn.maxX - drawn.minX) * (drawn.maxY - drawn.minY);
}

/** A piece put on the pages of others where it takes least, with the pages planned anew. */
function besideOn(there: TapedSheet, alone: TapedSheet, older: Under, sheets: SheetChoice): TapedSheet | undefined {
  const [one] = alone.placed;
  if (!one || !mayHaveRoom(there, alone, sheets)) return undefined;
  const drawn = lines(one.piece, older);
  const first = placedBy(drawn, STAYS_PUT);
  const { angle } = one.motion;
  const angles = [...new Set([0, Math.PI / 2, Math.PI, -Math.PI / 2, angle, angle + Math.PI])];
  const drawings = there.placed.map((other) => drawingOf([other]));
  // On a roll there is always room further down.
  const fewerThan = sheets.size === 'roll' ? 2 : alone.plan.pages.length;
  const place = placeBeside({ plans: waysToLie(there, sheets), drawings }, drawingOf([first]), angles, fewerThan);
  if (!place) return undefined;
  const placed = [...there.placed, placedBy(drawn, place.motion)];
  const all = drawingOf(placed);
  // Of equals the one that lies more evenly on its pages.
  const plans = [planPages(all, sheets), planPages([...all], sheets, place.plan.origin)];
  const both = plans.flatMap((plan) => (plan ? [{ placed, plan }] : []));
  return both.sort((a, b) => costOf(a) - costOf(b))[0];
}

/**
 * The pages of a sheet with what is on them in the upper left, in the lower right, or evenly as it is: as long as that
 * takes no more of them, for each leaves room elsewhere.
 */
function waysToLie({ placed, plan }: TapedSheet, sheets: SheetChoice): PagePlan[] {
  if (sheets.size === 'roll') return [plan];
  const { drawn, window, step, columns, rows } = plan;
  const upperLeft = { x: drawn.minX - CLEAR_AROUND, y: drawn.minY - CLEAR_AROUND };
  const lowerRight = {
    x: drawn.maxX + CLEAR_AROUND - (columns - 1) * step.across - window.width,
    y: drawn.maxY + CLEAR_AROUND - (rows - 1) * step.down - window.height,
  };
  const others = [upperLeft, lowerRight].flatMap((at) => planPages([...drawingOf(placed)], sheets, at) ?? []);
  return [...others.filter(({ pages }) => pages.length <= plan.pages.length), plan];
}

/** What is in a corner of the pages stands so far from their edge (mm). */
const CLEAR_AROUND = 2;

/** Whether the pages there, and as many more as would still save one, are as large as what would lie on them. */
function mayHaveRoom(there: TapedSheet, alone: TapedSheet, sheets: SheetChoice): boolean {
  if (sheets.size === 'roll') return true;
  const { window, step } = there.plan;
  const pages = there.plan.pages.length + alone.plan.pages.length - 1;
  const covers = [...there.placed, ...alone.placed].reduce(
    (sum, one) => sum + coveredArea(inkPlaces(drawingOf([one]))),
    0,
  );
  return covers <= pages * Math.max(window.width * step.down, window.height * step.across);
}

function counted(found: readonly TapedSheet[], alone: readonly TapedSheet[], sheets: SheetChoice): PagesCounted {
  const window = alone[0]?.plan.window;
  const inks = alone.map(({ plan }) => plan.ink);
  return {
    pages: found.reduce((sum, { plan }) => sum + plan.pages.length, 0),
    plain: alone.reduce((sum, { placed: [one] }) => sum + (one ? plainPages(one.piece, sheets) : 0), 0),
    // A roll is as long as it needs to be: there pages are no measure.
    least: !window || sheets.size === 'roll' ? found.length : pagesBound(inks, window, sheets.overlap),
    paper: found.reduce((sum, sheet) => sum + paperOf(sheet), 0),
  };
}

/** The pages of a piece as it is drawn, in rows and columns from its own corner. */
function plainPages(piece: Piece, sheets: SheetChoice): number {
  const plan = planPages(pieceDrawing(piece), sheets);
  return plan ? plan.rows * plan.columns : 0;
}
