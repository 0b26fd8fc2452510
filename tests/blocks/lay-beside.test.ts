import { describe, expect, it } from 'vitest';
import { goredSkirtPieces } from '../../core/blocks/gored-skirt';
import { laidBeside } from '../../core/blocks/lay-beside';
import { outlineOf } from '../../core/garment/outline';
import { pathBounds } from '../../core/geometry/path';
import { numberedIds } from './in-inches';

describe('laidBeside', () => {
  it('leaves the first where it is and lays the others to the right of it, tops in a line', () => {
    const newId = numberedIds();
    const pieces = [510, 620, 730].flatMap((length) => {
      const sizes = { waist: 700, hip: 960, hipDepth: 190, hem: 1500, length, gores: 4 };
      const made = goredSkirtPieces(sizes, { newId, name: `${length}` });
      return Array.isArray(made) ? made : [];
    });
    const laid = laidBeside(pieces);
    expect(laid[0]).toBe(pieces[0]);
    const boxes = laid.map((piece) => pathBounds(outlineOf(piece).whole));
    expect((boxes[1]?.minX ?? 0) - (boxes[0]?.maxX ?? 0)).toBeCloseTo(80, 6);
    expect((boxes[2]?.minX ?? 0) - (boxes[1]?.maxX ?? 0)).toBeCloseTo(80, 6);
    expect(boxes[2]?.minY).toBeCloseTo(boxes[0]?.minY ?? 99, 6);
    expect(laidBeside([])).toEqual([]);
  });
});
