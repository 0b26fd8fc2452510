import type { Covered } from './covered';

const FAR = 1e12;

/**
 * How far each cell is from the nearest one of a kind, in cells from middle to middle: exact, a column and then a row at
 * a time as lower envelopes of parabolas (Felzenszwalb and Huttenlocher, Distance Transforms of Sampled Functions, 2012).
 */
export function farFrom({ wide, high, cells }: Covered, isKind: (what: number) => boolean): Float64Array {
  const squares = new Float64Array(wide * high);
  for (let i = 0; i < squares.length; i++) squares[i] = isKind(cells[i] ?? 0) ? 0 : FAR;
  for (let x = 0; x < wide; x++) along(squares, x, wide, high);
  for (let y = 0; y < high; y++) along(squares, y * wide, 1, wide);
  return squares.map(Math.sqrt);
}

/** One line of `count` cells from `start`, `step` apart, in place. */
function along(squares: Float64Array, start: number, step: number, count: number): void {
  const values = Float64Array.from({ length: count }, (_, i) => squares[start + i * step] ?? FAR);
  const tops = [0];
  const ends = [Number.NEGATIVE_INFINITY];
  const meet = (a: number, b: number) => ((values[b] ?? 0) + b * b - (values[a] ?? 0) - a * a) / (2 * (b - a));
  for (let i = 1; i < count; i++) {
    let at = meet(tops.at(-1) ?? 0, i);
    while (tops.length > 1 && at <= (ends.at(-1) ?? 0)) {
      tops.pop();
      ends.pop();
      at = meet(tops.at(-1) ?? 0, i);
    }
    tops.push(i);
    ends.push(at);
  }
  let k = 0;
  for (let i = 0; i < count; i++) {
    while ((ends[k + 1] ?? Number.POSITIVE_INFINITY) < i) k += 1;
    const top = tops[k] ?? 0;
    squares[start + i * step] = (i - top) * (i - top) + (values[top] ?? 0);
  }
}
