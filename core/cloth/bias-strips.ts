/** Sums for strips cut on the true bias. */

/** Strips of one width, cut at 45° and joined end to end. */
export interface BiasStripsWanted {
  /** The length of strip wanted when all are joined. */
  readonly length: number;
  /** The width each is cut to. */
  readonly width: number;
  /** Taken by each join, on each side of it. */
  readonly joinAllowance: number;
}

/** What it takes to cut strips across a straight length of cloth. */
export interface BiasStripsFound {
  readonly strips: number;
  readonly joins: number;
  /** The length of one strip, from slanted end to slanted end along its middle. */
  readonly each: number;
  /** How much of the cloth's length the strips take, side by side, slant counted. */
  readonly clothLength: number;
}

/** The length of the longest true-bias run across cloth this wide: the diagonal of a square. */
export function biasRun(across: number): number {
  return across * Math.SQRT2;
}

/**
 * The length of continuous strip a square of cloth gives: its area over the width of the strip, less one seam taken off
 * the square's side (0 unless said). Common practice; nothing is counted for corners.
 */
export function stripFromSquare(side: number, width: number, seam = 0): number {
  return width > 0 ? Math.max(0, side - seam) ** 2 / width : 0;
}

/** The side of the square that gives so long a continuous strip; the opposite of {@link stripFromSquare}. */
export function squareForStrip(length: number, width: number, seam = 0): number {
  return Math.sqrt(Math.max(0, length * width)) + seam;
}

/**
 * Strips cut from edge to edge at 45° across cloth `across` wide. Joined on the straight grain, each join takes twice its
 * allowance measured along the strip at 45°, that is √2 times as much. `undefined` where a strip would be shorter than
 * what its own joins take.
 */
export function biasStrips(across: number, wanted: BiasStripsWanted): BiasStripsFound | undefined {
  const each = biasRun(across);
  const perJoin = 2 * wanted.joinAllowance * Math.SQRT2;
  if (!(wanted.length > 0) || !(wanted.width > 0) || each <= perJoin) return undefined;
  const strips = Math.max(1, Math.ceil((wanted.length - perJoin) / (each - perJoin) - 1e-9));
  return { strips, joins: strips - 1, each, clothLength: across + strips * wanted.width * Math.SQRT2 };
}
