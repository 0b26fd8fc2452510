/**
 * Eigenvalues and eigenvectors of a small symmetric matrix by Jacobi's rotations.
 * See: G. Golub & C. Van Loan, Matrix Computations, section 8.5 (cyclic Jacobi).
 */

/** One eigenvalue with its unit vector. */
export interface EigenPair {
  readonly value: number;
  readonly vector: readonly number[];
}

/** Rounds through all pairs of rows; a dozen is far more than a 9 by 9 matrix ever asks. */
const MOST_SWEEPS = 30;

/** The eigenpairs of a symmetric matrix given by rows, smallest value first. The matrix itself is left alone. */
export function symmetricEigen(matrix: readonly (readonly number[])[]): EigenPair[] {
  const size = matrix.length;
  const m = matrix.map((row) => row.slice());
  const vectors = m.map((_, i) => m.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS && offDiagonal(m) > 0; sweep++) {
    for (let p = 0; p < size - 1; p++) {
      for (let q = p + 1; q < size; q++) rotate(m, vectors, p, q);
    }
  }
  return m
    .map((row, i) => ({ value: row[i] as number, vector: vectors.map((each) => each[i] as number) }))
    .sort((a, b) => a.value - b.value);
}

/** Turns rows and columns p and q so that the entry they share becomes zero. */
function rotate(m: number[][], vectors: number[][], p: number, q: number): void {
  const rowP = m[p] as number[];
  const rowQ = m[q] as number[];
  const shared = rowP[q] as number;
  const scale = Math.abs(rowP[p] as number) + Math.abs(rowQ[q] as number);
  if (Math.abs(shared) <= Number.EPSILON * 1e-3 * scale || shared === 0) {
    rowP[q] = 0;
    rowQ[p] = 0;
    return;
  }
  const half = ((rowQ[q] as number) - (rowP[p] as number)) / (2 * shared);
  const tan = (half >= 0 ? 1 : -1) / (Math.abs(half) + Math.hypot(half, 1));
  const cos = 1 / Math.hypot(tan, 1);
  const sin = tan * cos;
  for (const row of m) mix(row, p, q, cos, sin);
  for (let k = 0; k < m.length; k++) {
    const a = rowP[k] as number;
    const b = rowQ[k] as number;
    rowP[k] = cos * a - sin * b;
    rowQ[k] = sin * a + cos * b;
  }
  for (const row of vectors) mix(row, p, q, cos, sin);
}

function mix(row: number[], p: number, q: number, cos: number, sin: number): void {
  const a = row[p] as number;
  const b = row[q] as number;
  row[p] = cos * a - sin * b;
  row[q] = sin * a + cos * b;
}

function offDiagonal(m: readonly (readonly number[])[]): number {
  let sum = 0;
  m.forEach((row, i) => {
    for (let j = i + 1; j < row.length; j++) sum += Math.abs(row[j] as number);
  });
  return sum;
}
