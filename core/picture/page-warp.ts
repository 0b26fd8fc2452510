/** The picture of a page laid flat, by any map from the flat page to the photo. */
import type { Point } from '../geometry/point';
import type { Rows } from './clean-up';
import type { Raster } from './raster';

/** How large the flat picture is, and where a place of it (pixels from its top left corner) is seen in the photo. */
export interface FlatPlan {
  readonly width: number;
  readonly height: number;
  readonly toPhoto: (flat: Point) => Point;
}

/** The map is asked every so many pixels and mixed between: it bends far less than a tenth of a pixel in between. */
const MESH = 16;

/**
 * Rows of the flat picture, between pixels by two straight mixes; clear where the photo does not reach. Asked for strip by
 * strip, a worker can tell how far it is and be stopped; together the strips are the picture.
 */
export function flatRows(photo: Raster, plan: FlatPlan, rows: Rows): Raster {
  const { width } = plan;
  const height = rows.to - rows.from;
  const pixels = new Uint8ClampedArray(width * height * 4);
  const made = new Uint32Array(pixels.buffer);
  const whole = photo.pixels.byteOffset % 4 === 0 ? photo.pixels : photo.pixels.slice();
  const from = new Uint32Array(whole.buffer, whole.byteOffset, whole.length >> 2);
  const columns = Math.ceil(width / MESH) + 1;
  let [upper, lower] = [new Float64Array(2 * columns), new Float64Array(2 * columns)];
  const fill = (list: Float64Array, y: number) => {
    for (let c = 0; c < columns; c++) {
      const at = plan.toPhoto({ x: c * MESH, y });
      list[2 * c] = at.x - 0.5;
      list[2 * c + 1] = at.y - 0.5;
    }
  };
  let band = Number.NaN;
  for (let y = rows.from; y < rows.to; y++) {
    const top = Math.floor(y / MESH) * MESH;
    if (top !== band) {
      if (top === band + MESH) [upper, lower] = [lower, upper];
      else fill(upper, top);
      fill(lower, top + MESH);
      band = top;
    }
    const row = made.subarray((y - rows.from) * width, (y - rows.from + 1) * width);
    paintRow(from, photo, { upper, lower, share: (y + 0.5 - top) / MESH }, row);
  }
  return { pixels, width, height };
}

interface Band {
  readonly upper: Float64Array;
  readonly lower: Float64Array;
  readonly share: number;
}

/** Every other byte of a pixel. */
const TWO_BYTES = 0x00ff00ff;

/** A half in each of the two upper halves, so that what is left off below rounds. */
const HALVES = 0x00800080;

/**
 * One row. The four bytes of a pixel are mixed two by two in whole numbers, with weights of 256ths of a pixel, which
 * takes a third less time than byte by byte and is no more than a grey level off.
 */
function paintRow(
  from: Uint32Array,
  size: { readonly width: number; readonly height: number },
  { upper, lower, share }: Band,
  out: Uint32Array,
): void {
  const [lastX, lastY] = [size.width - 1, size.height - 1];
  const width = out.length;
  let at = 0;
  for (let c = 0; c * MESH < width; c++) {
    const mix = (k: number) => (upper[k] as number) * (1 - share) + (lower[k] as number) * share;
    const [x0, y0] = [mix(2 * c), mix(2 * c + 1)];
    const [stepX, stepY] = [(mix(2 * c + 2) - x0) / MESH, (mix(2 * c + 3) - y0) / MESH];
    const count = Math.min(MESH, width - c * MESH);
    for (let k = 0; k < count; k++, at++) {
      const sx = x0 + stepX * (k + 0.5);
      const sy = y0 + stepY * (k + 0.5);
      if (!(sx >= -0.5 && sy >= -0.5 && sx <= lastX + 0.5 && sy <= lastY + 0.5)) continue;
      const cx = Math.min(Math.max(sx, 0), lastX);
      const cy = Math.min(Math.max(sy, 0), lastY);
      const ix = cx | 0;
      const iy = cy | 0;
      const right = ((cx - ix) * 256 + 0.5) | 0;
      const below = ((cy - iy) * 256 + 0.5) | 0;
      const w11 = (right * below + 128) >> 8;
      const w10 = right - w11;
      const w01 = below - w11;
      const w00 = 256 - right - w01;
      const p = iy * size.width + ix;
      const q = iy < lastY ? p + size.width : p;
      const next = ix < lastX ? 1 : 0;
      const a = from[p] as number;
      const b = from[p + next] as number;
      const d = from[q] as number;
      const e = from[q + next] as number;
      const even =
        Math.imul(a & TWO_BYTES, w00) +
        Math.imul(b & TWO_BYTES, w10) +
        Math.imul(d & TWO_BYTES, w01) +
        Math.imul(e & TWO_BYTES, w11) +
        HALVES;
      const odd =
        Math.imul((a >>> 8) & TWO_BYTES, w00) +
        Math.imul((b >>> 8) & TWO_BYTES, w10) +
        Math.imul((d >>> 8) & TWO_BYTES, w01) +
        Math.imul((e >>> 8) & TWO_BYTES, w11) +
        HALVES;
      out[at] = ((even >>> 8) & TWO_BYTES) | (odd & ~TWO_BYTES);
    }
  }
}
