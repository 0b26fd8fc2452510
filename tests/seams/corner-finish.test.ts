import { describe, expect, it } from 'vitest';
import { cornerAngle } from '../../core/seams/corner-angle';
import { cornerFinish, SHARP } from '../../core/seams/corner-finish';
import { at, pieceOf, runBackwards } from './pieces';

/** Waist on top, a fold at the left, a side seam at the right, a hem below. */
const gore = pieceOf(
  [at(0, 0), at(170, 0), at(260, 610), at(0, 640)],
  [{ role: 'waist' }, { role: 'seam' }, { role: 'hem' }, { role: 'fold' }],
);

describe('cornerFinish(piece, corner) chooses by custom (common practice)', () => {
  it('mirrors a hem and a side, mitres waist and side', () => {
    expect([0, 1, 2, 3].map((index) => cornerFinish(gore, index))).toEqual(['mitred', 'mitred', 'mirrored', 'mitred']);
  });

  it('keeps what she has set, but carries the cut edge straight to a fold', () => {
    const set = pieceOf(
      gore.corners.map((corner) => corner.at),
      gore.edges,
      ['rounded', 'squared', 'blunt', 'rounded'],
    );
    expect([0, 1, 2, 3].map((index) => cornerFinish(set, index))).toEqual(['mitred', 'squared', 'blunt', 'mitred']);
  });

  it('cuts a corner blunt below 60 degrees, where the mitre is longer than twice the allowance', () => {
    const withAngle = (degrees: number) => {
      const a = (degrees * Math.PI) / 180;
      return pieceOf([at(0, 0), at(300, 0), at(211 * Math.cos(a), 211 * Math.sin(a))], [{}, {}, {}]);
    };
    expect(SHARP).toBeCloseTo(Math.PI / 3, 12);
    expect(cornerFinish(withAngle(59), 0)).toBe('blunt');
    expect(cornerFinish(withAngle(61), 0)).toBe('mitred');
  });
});

describe('cornerAngle(piece, corner) is the angle inside', () => {
  it('of a jutting and of a hollow corner, whichever way the piece is run', () => {
    // A square of 200 with a notch to its middle: the hollow corner has 270 degrees.
    const piece = pieceOf([at(0, 0), at(200, 0), at(200, 200), at(100, 200), at(100, 90), at(0, 90)], []);
    const degrees = (of: typeof piece) => of.corners.map((_, i) => (cornerAngle(of, i) * 180) / Math.PI);
    for (const angle of [degrees(piece), degrees(runBackwards(piece))]) {
      expect(angle.toSorted((a, b) => a - b)[5]).toBeCloseTo(270, 9);
      expect(angle.reduce((sum, each) => sum + each, 0)).toBeCloseTo(4 * 180, 9);
    }
  });

  it('passes over edges without length', () => {
    const piece = pieceOf([at(0, 0), at(300, 0), at(300, 0), at(300, 220)], []);
    expect(cornerAngle(piece, 1)).toBeCloseTo(Math.PI / 2, 9);
    expect(cornerAngle(piece, 2)).toBeCloseTo(Math.PI / 2, 9);
  });
});
