/** Systems in which each unknown is tied only to its two neighbours. */

/** One entry of each list a row: below · x[k-1] + diagonal · x[k] + above · x[k+1] = right. */
export interface Tridiagonal {
  readonly below: number[];
  readonly diagonal: number[];
  readonly above: number[];
  readonly right: number[];
}

/**
 * The solution by elimination without pivoting (L. H. Thomas), safe where the diagonal outweighs its neighbours.
 * The first `below` and the last `above` are left out of account.
 */
export function solveTridiagonal({ below, diagonal, above, right }: Tridiagonal): number[] {
  const count = right.length;
  const solution = new Array<number>(count).fill(0);
  const share = new Array<number>(count).fill(0);
  let value = 0;
  for (let k = 0; k < count; k++) {
    const tie = k > 0 ? (below[k] as number) : 0;
    const pivot = (diagonal[k] as number) - tie * (k > 0 ? (share[k - 1] as number) : 0);
    share[k] = (above[k] as number) / pivot;
    value = ((right[k] as number) - tie * value) / pivot;
    solution[k] = value;
  }
  for (let k = count - 2; k >= 0; k--) {
    solution[k] = (solution[k] as number) - (share[k] as number) * (solution[k + 1] as number);
  }
  return solution;
}

/**
 * The solution when the first and the last unknown are neighbours too: the first `below` belongs to the last unknown,
 * the last `above` to the first. Two plain solutions are mixed (Sherman and Morrison 1950).
 */
export function solveCyclic({ below, diagonal, above, right }: Tridiagonal): number[] {
  const count = right.length;
  const wrapTop = below[0] as number;
  const wrapBottom = above[count - 1] as number;
  const lead = diagonal[0] as number;
  if (count === 1) return [(right[0] as number) / (lead + wrapTop + wrapBottom)];
  const changed = diagonal.slice();
  changed[0] = 2 * lead;
  changed[count - 1] = (diagonal[count - 1] as number) + (wrapTop * wrapBottom) / lead;
  const edge = new Array<number>(count).fill(0);
  edge[0] = -lead;
  edge[count - 1] = wrapBottom;
  const plain = solveTridiagonal({ below, diagonal: changed, above, right });
  const ripple = solveTridiagonal({ below, diagonal: changed, above, right: edge });
  const wrap = -wrapTop / lead;
  const last = count - 1;
  const mix =
    ((plain[0] as number) + wrap * (plain[last] as number)) /
    (1 + (ripple[0] as number) + wrap * (ripple[last] as number));
  return plain.map((each, k) => each - mix * (ripple[k] as number));
}
