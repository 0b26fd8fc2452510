/** Weighted least squares on a few unknowns. */

/** One equation: what each unknown counts for, what the sum should be, and how much the equation weighs. */
export interface Equation {
  readonly row: ArrayLike<number>;
  readonly right: number;
  readonly weight: number;
}

/**
 * The unknowns that leave the least sum of weighted squares, by Cholesky's factors of the normal equations, each unknown
 * drawn towards 0 by `pull` times the mean of the diagonal. `undefined` when the equations do not settle them.
 */
export function leastSquares(equations: readonly Equation[], unknowns: number, pull = 0): number[] | undefined {
  const normal = Array.from({ length: unknowns }, () => new Float64Array(unknowns));
  const right = new Float64Array(unknowns);
  for (const { row, right: wanted, weight } of equations) {
    for (let i = 0; i < unknowns; i++) {
      const scaled = weight * (row[i] as number);
      if (scaled === 0) continue;
      right[i] = (right[i] as number) + scaled * wanted;
      const line = normal[i] as Float64Array;
      for (let j = 0; j <= i; j++) line[j] = (line[j] as number) + scaled * (row[j] as number);
    }
  }
  const trace = normal.reduce((sum, line, i) => sum + (line[i] as number), 0);
  normal.forEach((line, i) => {
    line[i] = (line[i] as number) + (pull * trace) / unknowns;
  });
  return solved(normal, right);
}

function solved(normal: readonly Float64Array[], right: Float64Array): number[] | undefined {
  const count = right.length;
  const at = (i: number, j: number) => (normal[i] as Float64Array)[j] as number;
  for (let i = 0; i < count; i++) {
    const own = at(i, i);
    for (let j = 0; j <= i; j++) {
      let rest = at(i, j);
      for (let k = 0; k < j; k++) rest -= at(i, k) * at(j, k);
      if (i === j && !(rest > 1e-13 * own)) return undefined;
      (normal[i] as Float64Array)[j] = i === j ? Math.sqrt(rest) : rest / at(j, j);
    }
  }
  const x = Array.from(right);
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < i; k++) x[i] = (x[i] as number) - at(i, k) * (x[k] as number);
    x[i] = (x[i] as number) / at(i, i);
  }
  for (let i = count - 1; i >= 0; i--) {
    for (let k = i + 1; k < count; k++) x[i] = (x[i] as number) - at(k, i) * (x[k] as number);
    x[i] = (x[i] as number) / at(i, i);
  }
  return x;
}
