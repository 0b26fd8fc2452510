import type { DrawnText } from '../../core/paper/pdf-document';

/** Letters are drawn so large (px): over 600 to the inch for the largest on paper, and more for the rest. */
const EM = 220;

/** No text is drawn wider than this (px). */
const WIDEST = 16_000;

/** A text in whatever fonts this device has, as black and white; `undefined` where a worker cannot draw. */
export function drawText(text: string, weight: 'plain' | 'bold'): DrawnText | undefined {
  if (typeof OffscreenCanvas === 'undefined') return undefined;
  const font = `${weight === 'bold' ? 700 : 400} ${EM}px sans-serif`;
  const measure = new OffscreenCanvas(1, 1).getContext('2d');
  if (!measure) return undefined;
  measure.font = font;
  const size = measure.measureText(text);
  const left = Math.ceil(size.actualBoundingBoxLeft) + 2;
  const base = Math.ceil(size.actualBoundingBoxAscent) + 2;
  const width = left + Math.ceil(size.actualBoundingBoxRight) + 2;
  const height = base + Math.ceil(size.actualBoundingBoxDescent) + 2;
  if (!(width > 0 && width <= WIDEST && height > 0)) return undefined;
  const ink = new OffscreenCanvas(width, height).getContext('2d');
  if (!ink) return undefined;
  ink.font = font;
  ink.fillText(text, left, base);
  const { data } = ink.getImageData(0, 0, width, height);
  return { em: EM, advance: size.width, left, base, width, height, bits: inkBits(data, width, height) };
}

/** One bit a pixel, set where more than half of it is inked. */
function inkBits(rgba: Uint8ClampedArray, width: number, height: number): Uint8Array {
  const row = Math.ceil(width / 8);
  const bits = new Uint8Array(row * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if ((rgba[(y * width + x) * 4 + 3] as number) < 128) continue;
      const at = y * row + (x >> 3);
      bits[at] = (bits[at] as number) | (0x80 >> (x & 7));
    }
  }
  return bits;
}
