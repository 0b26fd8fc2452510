/**
 * Where `f` is zero between `low` and `high`, within `accuracy` of the place, by halving. `undefined` when `f` has the
 * same sign at both ends, or no value at one of them.
 */
export function rootBetween(f: (x: number) => number, low: number, high: number, accuracy: number): number | undefined {
  const [atLow, atHigh] = [f(low), f(high)];
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (!(atLow * atHigh < 0)) return undefined;
  let [a, b] = [low, high];
  while (Math.abs(b - a) > accuracy) {
    const middle = (a + b) / 2;
    // No number lies between the two any more.
    if (middle === a || middle === b) break;
    if (f(middle) * atLow > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
