/** The value below which the given share of the numbers lies. */
export function quantile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}

/** How long each of `times` runs takes, in ms, after some that do not count. */
export function timesOf(
  run: (index: number) => unknown,
  options: { readonly times: number; readonly warm: number },
): number[] {
  for (let i = 0; i < options.warm; i++) run(i);
  return Array.from({ length: options.times }, (_, index) => {
    const began = performance.now();
    run(options.warm + index);
    return performance.now() - began;
  });
}
