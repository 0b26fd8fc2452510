/** The picture of a page laid flat, by any map from the flat page to the photo. */
import type { Point } from '../geometry/point';
import type { Rows } from './clean-up';

/** A picture as rows of red, green, blue and opacity, one byte each. */
export interface Pixels {
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

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
export function flatRows(photo: Pixels, plan: FlatPlan, rows: Rows): Pixels {
  const { width } = plan;
  const height = rows.to - rows.from;
  const pixels = new Uint8ClampedArray(width * height * 4);
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
    paintRow(photo, { upper, lower, share: (y + 0.5 - top) / MESH }, pixels, (y - rows.from) * width * 4, width);
  }
  return { pixels, width, height };
}

interface Band {
  readonly upper: Float64Array;
  readonly lower: Float64Array;
  readonly share: number;
}

function paintRow(photo: Pixels, { upper, lower, share }: Band, out: Uint8ClampedArray, start: number, width: number) {
  const from = photo.pixels;
  const [lastX, lastY] = [photo.width - 1, photo.height - 1];
  const row = photo.width * 4;
  let at = start;
  for (let c = 0; c * MESH < width; c++) {
    const mix = (k: number) => (upper[k] as number) * (1 - share) + (lower[k] as number) * share;
    const [x0, y0] = [mix(2 * c), mix(2 * c + 1)];
    const [stepX, stepY] = [(mix(2 * c + 2) - x0) / MESH, (mix(2 * c + 3) - y0) / MESH];
    const count = Math.min(MESH, width - c * MESH);
    for (let k = 0; k < count; k++, at += 4) {
      const sx = x0 + stepX * (k + 0.5);
      const sy = y0 + stepY * (k + 0.5);
      if (!(sx >= -0.5 && sy >= -0.5 && sx <= lastX + 0.5 && sy <= lastY + 0.5)) continue;
      const cx = Math.min(Math.max(sx, 0), lastX);
      const cy = Math.min(Math.max(sy, 0), lastY);
      const ix = cx | 0;
      const iy = cy | 0;
      const fx = cx - ix;
      const fy = cy - iy;
      const p = iy * row + ix * 4;
      const q = ix < lastX ? p + 4 : p;
      const below = iy < lastY ? row : 0;
      const w10 = fx * (1 - fy);
      const w01 = (1 - fx) * fy;
      const w11 = fx * fy;
      const w00 = 1 - fx - w01;
      for (let channel = 0; channel < 4; channel++) {
        out[at + channel] =
          w00 * (from[p + channel] as number) +
          w10 * (from[q + channel] as number) +
          w01 * (from[p + below + channel] as number) +
          w11 * (from[q + below + channel] as number);
      }
    }
  }
}
