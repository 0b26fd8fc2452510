/** The middle of the numbers by size, the upper of two; 0 of none. */
export function median(numbers: ArrayLike<number>): number {
  const sorted = Float64Array.from(numbers).sort();
  return sorted[sorted.length >> 1] ?? 0;
}
