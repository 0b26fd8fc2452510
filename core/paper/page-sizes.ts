import type { PaperChoice, PaperSize } from '../garment/garment';

/** A sheet in mm. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
}

/** Upright sheets: ISO 216 for A sizes; ANSI Y14.1 for Letter and Tabloid, 8 1/2 by 14 in for Legal. */
const upright: Readonly<Record<PaperSize, Sheet>> = {
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
  letter: { width: 215.9, height: 279.4 },
  legal: { width: 215.9, height: 355.6 },
  tabloid: { width: 279.4, height: 431.8 },
};

/** The sheet as it is chosen, either way up. */
export function sheetOf({ size, turned }: Pick<PaperChoice, 'size' | 'turned'>): Sheet {
  const { width, height } = upright[size];
  return turned === 'upright' ? { width, height } : { width: height, height: width };
}
