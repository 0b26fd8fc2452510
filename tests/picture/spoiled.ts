import type { Random } from '../../core/cloth/place-search';

/** What a camera does to a picture (light 0 to 1, row by row): each function changes it in place. */

/** Blur of `sigma` pixels, as a Gaussian out to three of them. */
export function blur(data: Float32Array, width: number, height: number, sigma: number): void {
  if (sigma < 0.2) return;
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, k) => Math.exp(-((k - reach) ** 2) / (2 * sigma * sigma)));
  const whole = weights.reduce((sum, each) => sum + each, 0);
  const pass = (count: number, step: number, lines: number, lineStep: number) => {
    const line = new Float32Array(count);
    for (let l = 0; l < lines; l++) {
      for (let k = 0; k < count; k++) line[k] = data[l * lineStep + k * step] as number;
      for (let k = 0; k < count; k++) {
        let sum = 0;
        for (let w = -reach; w <= reach; w++) {
          sum += (weights[w + reach] as number) * (line[Math.min(Math.max(k + w, 0), count - 1)] as number);
        }
        data[l * lineStep + k * step] = sum / whole;
      }
    }
  };
  pass(width, 1, height, width);
  pass(height, width, width, 1);
}

/** Noise of this standard deviation, nearly normal: the sum of four even chances. */
export function noise(data: Float32Array, sigma: number, random: Random): void {
  const scale = sigma * Math.sqrt(3);
  for (let i = 0; i < data.length; i++) {
    data[i] = (data[i] as number) + scale * (random() + random() + random() + random() - 2);
  }
}

/** The luminance table of ITU-T T.81, annex K.1. */
const TABLE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51,
  87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101,
  72, 92, 95, 98, 112, 100, 103, 99,
];

const COSINES = Float64Array.from({ length: 64 }, (_, i) => {
  const [k, n] = [i >> 3, i & 7];
  return Math.cos(((2 * n + 1) * k * Math.PI) / 16) * (k === 0 ? Math.sqrt(1 / 8) : 0.5);
});

/** Squares of 8 by 8 rounded as a JPEG file of this quality (1 to 100) does. */
export function jpegBlocks(data: Float32Array, width: number, height: number, quality: number): void {
  const percent = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  const steps = TABLE.map((each) => Math.max(1, Math.floor((each * percent + 50) / 100)) / 255);
  const [block, half] = [new Float64Array(64), new Float64Array(64)];
  const transform = (isBack: boolean) => {
    for (let i = 0; i < 64; i++) {
      const [r, k] = [i >> 3, i & 7];
      let sum = 0;
      for (let n = 0; n < 8; n++) {
        sum += (block[r * 8 + n] as number) * (COSINES[isBack ? n * 8 + k : k * 8 + n] as number);
      }
      half[i] = sum;
    }
    for (let i = 0; i < 64; i++) {
      const [k, c] = [i >> 3, i & 7];
      let sum = 0;
      for (let n = 0; n < 8; n++) {
        sum += (half[n * 8 + c] as number) * (COSINES[isBack ? n * 8 + k : k * 8 + n] as number);
      }
      block[i] = sum;
    }
  };
  for (let y = 0; y + 8 <= height; y += 8) {
    for (let x = 0; x + 8 <= width; x += 8) {
      for (let i = 0; i < 64; i++) block[i] = data[(y + (i >> 3)) * width + x + (i & 7)] as number;
      transform(false);
      for (let i = 0; i < 64; i++) {
        const step = steps[i] as number;
        block[i] = Math.round((block[i] as number) / step) * step;
      }
      transform(true);
      for (let i = 0; i < 64; i++) data[(y + (i >> 3)) * width + x + (i & 7)] = block[i] as number;
    }
  }
}
