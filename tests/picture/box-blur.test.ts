import { describe, expect, it } from 'vitest';
import { boxBlurred } from '../../core/picture/box-blur';
import { seeded } from './drawn-photo';

describe('boxBlurred', () => {
  it('is the mean of each square, counted out one by one, for three radii', () => {
    const random = seeded(3);
    const [width, height] = [17, 11];
    const data = Uint8Array.from({ length: width * height }, () => random() * 256);
    for (const radius of [0, 1, 4]) {
      const blurred = boxBlurred({ width, height, data }, radius).data;
      for (let y = 0; y < height; y++) {
        for (let x = 0; x < width; x++) {
          let sum = 0;
          for (let j = y - radius; j <= y + radius; j++) {
            for (let i = x - radius; i <= x + radius; i++) {
              const row = Math.min(Math.max(j, 0), height - 1);
              sum += data[row * width + Math.min(Math.max(i, 0), width - 1)] as number;
            }
          }
          expect(Math.abs((blurred[y * width + x] as number) - sum / (2 * radius + 1) ** 2)).toBeLessThanOrEqual(0.51);
        }
      }
    }
  });
});
