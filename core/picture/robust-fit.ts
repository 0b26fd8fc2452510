/** Smooth curves through readings some of which are wrong. */
import { leastSquares } from './least-squares';

/** A polynomial over -1 to 1 in Chebyshev's terms, and how well the readings keep to it. */
export interface BowFit {
  readonly terms: readonly number[];
  /** The weight each reading ended with, 0 (left out) to 1. */
  readonly weights: Float64Array;
  /** The spread of the readings about the curve: the median distance over 0.6745, one sigma where they scatter normally. */
  readonly spread: number;
}

const ROUNDS = 12;

/** The tuning constant of Tukey's biweight for 95 % efficiency: readings further off than this many sigmas are left out. */
const LEFT_OUT = 4.685;

/** A median distance for normal scatter, in sigmas. */
const MEDIAN_OF_NORMAL = 0.6745;

/**
 * The polynomial of `degree` through the readings `values[i]` at `at[i]` (-1 to 1), each with its own weight, by least
 * squares reweighted after Tukey's biweight (Holland & Welsch, Robust regression using iteratively reweighted
 * least-squares, 1977). `noise` is the least spread to reckon with. `undefined` with fewer readings than terms.
 */
export function robustBow(
  at: Float64Array,
  values: Float64Array,
  given: Float64Array,
  options: { readonly degree: number; readonly noise: number },
): BowFit | undefined {
  const { degree, noise } = options;
  const weights = given.slice();
  const offs = new Float64Array(values.length);
  let terms: readonly number[] | undefined;
  let spread = noise;
  for (let round = 0; round < ROUNDS; round++) {
    terms = bowThrough(at, values, weights, degree);
    if (!terms) return undefined;
    for (let i = 0; i < values.length; i++) offs[i] = Math.abs((values[i] as number) - bowAt(terms, at[i] as number));
    const used = offs.filter((_, i) => (given[i] as number) > 0).sort();
    spread = Math.max(noise, (used[used.length >> 1] ?? noise) / MEDIAN_OF_NORMAL);
    for (let i = 0; i < values.length; i++) {
      const off = (offs[i] as number) / (LEFT_OUT * spread);
      weights[i] = off < 1 ? (given[i] as number) * (1 - off * off) ** 2 : 0;
    }
  }
  return terms && { terms, weights, spread };
}

/** The value of a fitted curve at `t`. */
export function bowAt(terms: readonly number[], t: number): number {
  let [sum, before, now] = [terms[0] ?? 0, 1, t];
  for (let k = 1; k < terms.length; k++) {
    sum += (terms[k] as number) * now;
    [before, now] = [now, 2 * t * now - before];
  }
  return sum;
}

function bowThrough(at: Float64Array, values: Float64Array, weights: Float64Array, degree: number) {
  const size = degree + 1;
  const rows = new Float64Array(at.length * size);
  for (let i = 0, p = 0; i < at.length; i++, p += size) {
    const t = at[i] as number;
    rows[p] = 1;
    if (size > 1) rows[p + 1] = t;
    for (let k = 2; k < size; k++) rows[p + k] = 2 * t * (rows[p + k - 1] as number) - (rows[p + k - 2] as number);
  }
  return leastSquares(rows, values, weights);
}
