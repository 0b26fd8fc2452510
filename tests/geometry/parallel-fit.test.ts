import { describe, expect, it } from 'vitest';
import { fittedPiece } from '../../core/geometry/parallel-fit';
import { parallelPlace } from '../../core/geometry/parallel-source';
import { errorAlongNormals } from './parallel-error';
import { cubicOf } from './shapes';

const EDGE = cubicOf([0, 0], [20, 80], [90, 130], [160, 100]);

describe('fittedPiece', () => {
  const pieceOver = (from: number, to: number, accuracy: number) =>
    fittedPiece(EDGE, 12, from, parallelPlace(EDGE, 12, from), to, parallelPlace(EDGE, 12, to), accuracy);

  it('measures its own error along the true normals', () => {
    const { piece, error } = pieceOver(0.2, 0.6, 0);
    const found = errorAlongNormals([EDGE], [piece], 12, 200);
    expect(error).toBeGreaterThan(0.8 * found);
    expect(error).toBeLessThan(1.05 * found);
  });

  it('comes 64 times nearer, or about so, for half the length', () => {
    const ratio = (pieceOver(0.2, 0.6, 0).error as number) / (pieceOver(0.3, 0.5, 0).error as number);
    expect(ratio).toBeGreaterThan(32);
  });

  it('says that a cubic goes astray where it would have to turn too far', () => {
    const bend = cubicOf([0, 0], [0, 100], [30, 100], [30, 0]);
    const whole = fittedPiece(bend, -9, 0, parallelPlace(bend, -9, 0), 1, parallelPlace(bend, -9, 1), 0.01);
    expect(whole.error).toBeUndefined();
  });
});
