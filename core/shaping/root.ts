/** Halvings at most: a millimetre over a kilometre comes to far below rounding. */
const MOST_STEPS = 100;

/**
 * Where `f` is zero between `low` and `high`, within `accuracy` of the place: false position with the Illinois rule (the
 * end kept twice is given half its weight). `undefined` when `f` has the same sign at both ends, or no value there.
 */
export function rootBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  accuracy: number,
): number | undefined {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return undefined;
  let kept: 'a' | 'b' | undefined;
  for (let step = 0; step < MOST_STEPS && Math.abs(b - a) > accuracy; step++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (fx === 0) return x;
    if (fx * fb < 0) {
      [a, fa] = [b, fb];
      kept = undefined;
    } else {
      fa /= kept === 'a' ? 2 : 1;
      kept = 'a';
    }
    if (Math.abs(x - b) <= accuracy && kept === undefined) return x;
    [b, fb] = [x, fx];
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}
