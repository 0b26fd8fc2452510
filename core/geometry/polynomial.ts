/**
 * Real roots of small polynomials on an interval.
 *
 * A polynomial is its coefficients from the constant up: [c0, c1, c2] is c0 + c1 t + c2 t². Between two turning
 * points a polynomial is monotone and crosses zero at most once, so the roots of the derivative, found the same
 * way, fence in every root. Touching (double) roots may be missed when rounding lifts them off zero, and a root at the
 * very end of the interval when rounding puts it beyond: a caller who needs them looks at turning points and ends.
 */

/** Newton steps before a root is handed back as it stands; halving alone would reach the last bit in 60. */
const MOST_STEPS = 80;

/** The value at `t`, by Horner's scheme. */
export function polynomialAt(coefficients: readonly number[], t: number): number {
  let value = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) value = value * t + (coefficients[i] as number);
  return value;
}

/** The coefficients of the derivative. */
export function polynomialDerivative(coefficients: readonly number[]): number[] {
  const derivative: number[] = [];
  for (let i = 1; i < coefficients.length; i++) derivative.push((coefficients[i] as number) * i);
  return derivative;
}

/** The roots in [from, to], rising, each once. A polynomial that is zero throughout has none. */
export function polynomialRoots(coefficients: readonly number[], from = 0, to = 1): number[] {
  let degree = coefficients.length - 1;
  while (degree > 0 && coefficients[degree] === 0) degree--;
  if (degree < 1) return [];
  if (degree === 1) {
    const root = -(coefficients[0] as number) / (coefficients[1] as number);
    return root >= from && root <= to ? [root] : [];
  }
  const trimmed = degree === coefficients.length - 1 ? coefficients : coefficients.slice(0, degree + 1);
  const slope = polynomialDerivative(trimmed);
  const fences = polynomialRoots(slope, from, to);
  fences.push(to);
  const roots: number[] = [];
  let low = from;
  let atLow = polynomialAt(trimmed, from);
  for (const high of fences) {
    const atHigh = polynomialAt(trimmed, high);
    const root = rootBetween(trimmed, slope, low, atLow, high, atHigh);
    if (root !== undefined && !(root <= (roots[roots.length - 1] ?? -Infinity))) roots.push(root);
    low = high;
    atLow = atHigh;
  }
  return roots;
}

/** The one root of a monotone stretch: Newton's step where it stays inside the fence, halving where it does not. */
function rootBetween(
  coefficients: readonly number[],
  slope: readonly number[],
  from: number,
  atFrom: number,
  to: number,
  atTo: number,
): number | undefined {
  if (atFrom === 0) return from;
  if (atTo === 0) return to;
  if (atFrom > 0 === atTo > 0) return undefined;
  let low = from;
  let high = to;
  let t = low + (high - low) * Math.min(0.99, Math.max(0.01, atFrom / (atFrom - atTo)));
  for (let step = 0; step < MOST_STEPS; step++) {
    const value = polynomialAt(coefficients, t);
    if (value === 0) return t;
    if (value > 0 === atFrom > 0) low = t;
    else high = t;
    const steepness = polynomialAt(slope, t);
    let next = t - value / steepness;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - t) <= 4e-16 * Math.abs(t) || next === low || next === high) return next;
    t = next;
  }
  return t;
}
