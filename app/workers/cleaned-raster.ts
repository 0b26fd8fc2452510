import { type CleanUp, cleanedRows } from '../../core/picture/cleaned';
import { greyOf } from '../../core/picture/grey';
import type { Raster } from '../../core/picture/raster';

/** Rows made between two tellings of how far it is. */
const STRIP = 128;

/** A picture cleaned up, in its own pixels; what is clear in it, as beyond the edge of a photo laid flat, stays clear. */
export function cleanedRaster({ pixels, width, height }: Raster, how: CleanUp, tell: (share: number) => void): Raster {
  const rowsOf = cleanedRows(greyOf(pixels, width, height), how);
  for (let from = 0; from < height; from += STRIP) {
    const to = Math.min(height, from + STRIP);
    const { data } = rowsOf({ from, to });
    for (let i = 0, at = from * width * 4; i < data.length; i++, at += 4) {
      const light = Math.round((data[i] as number) * 255);
      pixels[at] = light;
      pixels[at + 1] = light;
      pixels[at + 2] = light;
    }
    tell(to / height);
  }
  return { pixels, width, height };
}
