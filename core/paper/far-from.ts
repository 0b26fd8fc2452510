import type { Covered } from './covered';

const FAR = 1e12;

/**
 * How far each cell is from the nearest one of a kind, in cells from middle to middle: exact, a column and then a row at
 * a time as lower envelopes of parabolas (Felzenszwalb and Huttenlocher, Distance Transforms of Sampled Functions, 2012).
 */
export function farFrom({ wide, high, cells }: Covered, isKind: (what: number) => boolean): Float64Array {
  const squares = new Float64Array(wide * high);
  for (let i = 0; i < squares.length; i++) squares[i] = isKind(cells[i] ?? 0) ? 0 : FAR;
  const longest = Math.max(wide, high);
  const scratch = {
    values: new Float64Array(longest),
    tops: new Int32Array(longest),
    ends: new Float64Array(longest + 1),
  };
  for (let x = 0; x < wide; x++) along(squares, { start: x, step: wide, count: high }, scratch);
  for (let y = 0; y < high; y++) along(squares, { start: y * wide, step: 1, count: wide }, scratch);
  return squares.map(Math.sqrt);
}

interface Line {
  readonly start: number;
  readonly step: number;
  readonly count: number;
}

/** Room to work in, used again for every line. */
interface Scratch {
  readonly values: Float64Array;
  /** The cells whose parabolas are lowest somewhere, and from where on. */
  readonly tops: Int32Array;
  readonly ends: Float64Array;
}

/** One line of cells, in place. */
function along(squares: Float64Array, { start, step, count }: Line, { values, tops, ends }: Scratch): void {
  for (let i = 0; i < count; i++) values[i] = squares[start + i * step] as number;
  const meet = (a: number, b: number) =>
    ((values[b] as number) + b * b - (values[a] as number) - a * a) / (2 * (b - a));
  let last = 0;
  tops[0] = 0;
  ends[0] = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < count; i++) {
    let at = meet(tops[last] as number, i);
    while (last > 0 && at <= (ends[last] as number)) {
      last -= 1;
      at = meet(tops[last] as number, i);
    }
    last += 1;
    tops[last] = i;
    ends[last] = at;
  }
  ends[last + 1] = Number.POSITIVE_INFINITY;
  let k = 0;
  for (let i = 0; i < count; i++) {
    while ((ends[k + 1] as number) < i) k += 1;
    const top = tops[k] as number;
    squares[start + i * step] = (i - top) * (i - top) + (values[top] as number);
  }
}
