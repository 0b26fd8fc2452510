import type { PaperChoice } from '../garment/garment';
import type { PaperSize, SheetChoice, Sides } from '../garment/sheet-choice';
import { inches } from '../units/inch';

/** A sheet in mm. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
}

/** Upright sheets: ISO 216 for A sizes; ANSI Y14.1 for Letter and Tabloid, 8 1/2 by 14 in for Legal. */
export const UPRIGHT: Readonly<Record<Exclude<PaperSize, 'roll'>, Sheet>> = {
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
  letter: { width: 215.9, height: 279.4 },
  legal: { width: 215.9, height: 355.6 },
  tabloid: { width: 279.4, height: 431.8 },
  a0: { width: 841, height: 1189 },
};

/** The usual width of a roll (common practice of copy shops), until she says hers. */
export const ROLL_WIDTH = inches(36);

/**
 * No page is longer than 14,400 units of 1/72 in, which is 200 in: the largest page PDF knows without changing its unit,
 * and what larger pages are shown and printed as is anybody's guess (PDF Reference 1.7, appendix C).
 */
export const LONGEST_PAGE = inches(200);

/** The sheet as it is chosen, either way up. A roll of which no length is said is as long as a page may be. */
export function sheetOf({
  size,
  turned,
  rollWidth = ROLL_WIDTH,
  rollLength = LONGEST_PAGE,
}: Pick<SheetChoice, 'size' | 'turned' | 'rollWidth' | 'rollLength'>): Sheet {
  if (size === 'roll') return { width: rollWidth, height: rollLength };
  const { width, height } = UPRIGHT[size];
  return turned === 'upright' ? { width, height } : { width: height, height: width };
}

/** All ink keeps this far from the edge of a sheet while nobody knows what the printer loses (mm). */
export const SAFE_MARGIN = 10;

/** Pages set edge to edge show this much of one another, half of it beyond the line they are cut along (mm). */
const BUTTED_OVERLAP = 2;

/** The sheets that a choice of paper comes to. */
export function sheetChoiceOf(paper: PaperChoice): SheetChoice {
  const { size, turned, margin, overlap, joins, rollWidth, loses, losesAt } = paper;
  return {
    size,
    turned,
    margin: Math.max(margin, loses ?? SAFE_MARGIN),
    ...(losesAt && { margins: marginsAt(losesAt, turned) }),
    overlap: joins === 'butted' ? BUTTED_OVERLAP : overlap,
    ...(joins && { joins }),
    ...(size === 'roll' && { rollWidth: rollWidth ?? ROLL_WIDTH }),
  };
}

/**
 * What a page keeps clear on each side where the printer was measured at each. A page that lies sideways goes through it
 * turned a quarter, nobody knows which way: so its sides take the larger of two.
 */
function marginsAt({ top, right, bottom, left }: Sides, turned: SheetChoice['turned']): Sides {
  if (turned === 'upright') return { top, right, bottom, left };
  const [long, short] = [Math.max(left, right), Math.max(top, bottom)];
  return { top: long, right: short, bottom: long, left: short };
}

/** What a full-size page keeps clear on each side (mm). */
export function marginsOf({ margin, margins }: Pick<SheetChoice, 'margin' | 'margins'>): Sides {
  return margins ?? { top: margin, right: margin, bottom: margin, left: margin };
}

/** The sheet for lists and first pages: the one chosen, or for large paper one that fits both A4 and Letter. */
export function homeSheet(paper: Pick<SheetChoice, 'size' | 'turned'>): Sheet {
  if (paper.size !== 'a0' && paper.size !== 'roll') return sheetOf(paper);
  return { width: UPRIGHT.a4.width, height: UPRIGHT.letter.height };
}

/** What such a sheet keeps clear on every side (mm): of a margin meant for larger paper, only what leaves room to write. */
export function homeMargin(paper: PaperChoice): number {
  const { width, height } = homeSheet(paper);
  return Math.min(sheetChoiceOf(paper).margin, Math.min(width, height) / 6);
}
