/**
 * A whole shared into equal parts, each a whole number of steps, so that what is written for the parts adds up to what
 * is written for the whole. Parts differ by at most one step. `total` and `step` in mm, `parts` at least 1.
 */
export function shareOut(total: number, parts: number, step: number): number[] {
  const steps = Math.round(total / step);
  return Array.from({ length: parts }, (_, index) => {
    const upTo = Math.round((steps * (index + 1)) / parts);
    const before = Math.round((steps * index) / parts);
    return (upTo - before) * step;
  });
}
