import { describe, expect, it } from 'vitest';
import { type Cloth, groundOf, openedLength } from '../../core/cloth/cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import { ringArea } from '../../core/geometry/polygon';

const INCH = 25.4;

const rectangle = (x0: number, y0: number, x1: number, y1: number) => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

const cotton: Cloth = {
  id: 'c',
  name: 'Cotton',
  width: 36 * INCH,
  selvedge: 0.5 * INCH,
  atHand: 90 * INCH,
  folded: 'open',
  nap: 'none',
  flaws: [],
};

function ground(cloth: Cloth) {
  const made = groundOf(cloth);
  if (made.kind !== 'ground') throw new Error(made.kind);
  return made;
}

describe('groundOf(cloth)', () => {
  it('loses both selvedges, and half the width or the length to a fold', () => {
    expect(ground(cotton).ground.across).toBeCloseTo(35 * INCH, 9);
    expect(ground({ ...cotton, folded: 'lengthwise' }).ground.across).toBeCloseTo(17.5 * INCH, 9);
    expect(ground({ ...cotton, folded: 'crosswise' }).lengthAtHand).toBeCloseTo(45 * INCH, 9);
    expect(openedLength({ ...cotton, folded: 'crosswise' }, 700)).toBe(1400);
    expect(openedLength(cotton, 700)).toBe(700);
  });

  it('counts a flaw on whichever layer it lies, measured from the fold', () => {
    const middle = 17.5 * INCH;
    const flaws = [
      rectangle(100, middle - 90, 130, middle + 40),
      rectangle(300, 20, 350, 50),
      rectangle(500, middle + 60, 520, middle + 85),
    ];
    const { kept } = ground({ ...cotton, folded: 'lengthwise', flaws }).ground;
    const boxes = kept.map((ring) => boxOfPoints(ring)).map((box) => [box?.minX, box?.minY, box?.maxX, box?.maxY]);
    const near = [
      [100, 0, 130, 90],
      [100, 0, 130, 40],
      [300, middle - 50, 350, middle - 20],
      [500, 60, 520, 85],
    ];
    expect(boxes).toHaveLength(4);
    boxes.forEach((box, i) => {
      box.forEach((value, k) => {
        expect(Math.abs((value ?? Number.NaN) - (near[i]?.[k] ?? Number.NaN))).toBeLessThan(0.001);
      });
    });
  });

  it('keeps free what a remnant lacks of the box round it', () => {
    const remnant = [
      { x: 50, y: 20 },
      { x: 750, y: 20 },
      { x: 750, y: 420 },
      { x: 350, y: 520 },
      { x: 50, y: 320 },
    ];
    const { ground: ofRemnant, lengthAtHand } = ground({ ...cotton, shape: remnant });
    expect(ofRemnant.across).toBe(500);
    expect(lengthAtHand).toBe(700);
    const lacking = ofRemnant.kept.reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
    expect(lacking).toBeCloseTo((300 * 200) / 2 + (400 * 100) / 2, 1);
  });

  it('refuses one-way cloth folded crosswise, and cloth that is all selvedge', () => {
    expect(groundOf({ ...cotton, folded: 'crosswise', nap: 'one-way' }).kind).toBe('nap-against-itself');
    expect(groundOf({ ...cotton, width: 20 }).kind).toBe('no-width');
  });
});
