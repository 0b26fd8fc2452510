/** The smallest pivot, as a share of its diagonal entry, for which a system still has one answer. */
const SINGULAR = 1e-12;

/**
 * The numbers x that make `rows` · x come nearest to `values`, each row counted by its weight, by the normal equations
 * and Cholesky's method. `rows` holds them one after another; their length is rows.length / values.length. Right for a
 * handful of unknowns of like size; `undefined` when the rows leave an unknown open.
 */
export function leastSquares(
  rows: Float64Array,
  values: Float64Array,
  weights: Float64Array,
): readonly number[] | undefined {
  const size = values.length > 0 ? rows.length / values.length : 0;
  const square = new Float64Array(size * size);
  const right = new Float64Array(size);
  for (let i = 0, p = 0; i < values.length; i++, p += size) {
    const weight = weights[i] as number;
    if (weight <= 0) continue;
    for (let j = 0; j < size; j++) {
      const entry = weight * (rows[p + j] as number);
      right[j] = (right[j] as number) + entry * (values[i] as number);
      for (let k = 0; k <= j; k++) {
        square[j * size + k] = (square[j * size + k] as number) + entry * (rows[p + k] as number);
      }
    }
  }
  return size > 0 && isFactored(square, size) ? solved(square, right, size) : undefined;
}

/** Whether the lower half of `square` could be turned into its Cholesky factor, in place. */
function isFactored(square: Float64Array, size: number): boolean {
  for (let j = 0; j < size; j++) {
    const own = square[j * size + j] as number;
    let pivot = own;
    for (let k = 0; k < j; k++) pivot -= (square[j * size + k] as number) ** 2;
    if (!(pivot > SINGULAR * own)) return false;
    const root = Math.sqrt(pivot);
    square[j * size + j] = root;
    for (let i = j + 1; i < size; i++) {
      let sum = square[i * size + j] as number;
      for (let k = 0; k < j; k++) sum -= (square[i * size + k] as number) * (square[j * size + k] as number);
      square[i * size + j] = sum / root;
    }
  }
  return true;
}

function solved(factor: Float64Array, right: Float64Array, size: number): readonly number[] {
  const x = Array.from(right);
  for (let j = 0; j < size; j++) {
    for (let k = 0; k < j; k++) x[j] = (x[j] as number) - (factor[j * size + k] as number) * (x[k] as number);
    x[j] = (x[j] as number) / (factor[j * size + j] as number);
  }
  for (let j = size - 1; j >= 0; j--) {
    for (let k = j + 1; k < size; k++) x[j] = (x[j] as number) - (factor[k * size + j] as number) * (x[k] as number);
    x[j] = (x[j] as number) / (factor[j * size + j] as number);
  }
  return x;
}
