import { describe, expect, it } from 'vitest';
import { symmetricEigen } from '../../core/geometry/symmetric-eigen';
import { seededRandom } from './shapes';

describe('symmetricEigen', () => {
  it('knows the second-difference matrix: 2 - 2 cos(k π / (n + 1))', () => {
    const size = 6;
    const matrix = Array.from({ length: size }, (_, i) =>
      Array.from({ length: size }, (_, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)),
    );
    symmetricEigen(matrix).forEach(({ value }, k) => {
      expect(value).toBeCloseTo(2 - 2 * Math.cos(((k + 1) * Math.PI) / (size + 1)), 12);
    });
  });

  it('gives unit vectors that the matrix only stretches', () => {
    const random = seededRandom(4);
    const size = 9;
    const half = Array.from({ length: size }, () => Array.from({ length: size }, () => random() - 0.5));
    const matrix = half.map((row, i) => row.map((each, j) => each + ((half[j] as number[])[i] as number)));
    for (const { value, vector } of symmetricEigen(matrix)) {
      expect(Math.hypot(...vector)).toBeCloseTo(1, 12);
      matrix.forEach((row, i) => {
        const image = row.reduce((sum, each, j) => sum + each * (vector[j] as number), 0);
        expect(Math.abs(image - value * (vector[i] as number))).toBeLessThan(1e-12);
      });
    }
  });
});
