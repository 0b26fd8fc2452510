import { sheetOf } from './page-sizes';
import type { TapedSheet } from './placed-piece';

/** How much paper a sheet takes (mm²). */
export function paperOf({ plan }: Pick<TapedSheet, 'plan'>): number {
  const { width, height } = sheetOf(plan.paper);
  return plan.pages.length * width * height;
}

/** A join over the whole width of a roll is as bad as so much more of it (mm). */
const JOIN_COSTS = 300;

/** What is to be kept small: of sheets that are all alike their number, of a roll its length and the joins. */
export function costOf(sheet: Pick<TapedSheet, 'plan'>): number {
  const { paper, pages } = sheet.plan;
  const joins = paper.size === 'roll' ? (pages.length - 1) * sheetOf(paper).width * JOIN_COSTS : 0;
  return paperOf(sheet) + joins;
}

/** What several of them cost. */
export function sumOf(sheets: readonly Pick<TapedSheet, 'plan'>[]): number {
  return sheets.reduce((sum, sheet) => sum + costOf(sheet), 0);
}

/** A saving smaller than this share of one page is none (mm² over mm²): a roll may save a hair. */
const WORTH_IT = 0.02;

/** Whether it saves enough to be done. */
export function isLess(a: number, b: number): boolean {
  return a < b * (1 - WORTH_IT);
}
