export const PAPER_SIZES = ['a4', 'letter', 'legal', 'a3', 'tabloid', 'a0', 'roll'] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

/** Lengths along the four sides of an upright sheet (mm). */
export interface Sides {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Which sheets pages are printed on, and how neighbours are joined. Lengths in mm. */
export interface SheetChoice {
  readonly size: PaperSize;
  readonly turned: 'upright' | 'sideways';
  /** Left clear on every side of the sheet: what her printer cannot reach, or more. */
  readonly margin: number;
  /** Left clear on each side of a full-size page, where that differs; none more than `margin`. */
  readonly margins?: Sides;
  /** How far neighbouring pages share the drawing. */
  readonly overlap: number;
  /** Cut off both pages and set edge to edge; laid over one another unless said. */
  readonly joins?: 'butted';
  /** How wide the roll is, and how long the sheet cut from it; of a roll alone. */
  readonly rollWidth?: number;
  readonly rollLength?: number;
}
