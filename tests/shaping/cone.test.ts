import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneOf, farEdgeAt, middleDip } from '../../core/shaping/cone';

/**
 * Skirts cut as four panels, inches: waist, hip, depth between them; then the radius of the waist, that of the hip, the
 * angle of the whole and of a panel in degrees, the widths of a panel, its rise, its far corner and the dip of a panel
 * with two equal edges. The radius is W d / (H - W), the rule of Laura I. Baldt, Clothing for Women (1916), for a circular
 * flounce; the other columns are computed from it.
 */
const panels = [
  [28, 38, 7, 19.6, 26.6, 81.851, 20.463, 7, 9.5, 1.237, 6.852, 0.312],
  [26, 40, 7, 13, 20, 114.592, 28.648, 6.5, 10, 1.591, 6.233, 0.404],
  [28, 40, 8, 18.667, 26.667, 85.944, 21.486, 7, 10, 1.297, 6.837, 0.327],
  [24, 36, 6, 12, 18, 114.592, 28.648, 6, 9, 1.469, 5.753, 0.373],
  [25, 40, 7, 11.667, 18.667, 122.777, 30.694, 6.25, 10, 1.635, 5.955, 0.416],
  [32, 44, 8, 21.333, 29.333, 85.944, 21.486, 8, 11, 1.483, 7.814, 0.374],
  [72, 112, 12, 21.6, 33.6, 190.986, 47.746, 18, 28, 7.076, 15.988, 1.848],
] as const;

const degrees = (angle: number) => (angle * 180) / Math.PI;

describe('coneOf', () => {
  it.each(panels)(
    'lays a waist of %f, a hip of %f and %f between them flat (Baldt 1916 and computed)',
    (waist, hip, depth, radius, hipRadius, whole, angle, width, hipWidth, rise, across, dip) => {
      const panel = coneOf({ waist: waist / 4, hip: hip / 4, depth });
      expect(1 / panel.curvature).toBeCloseTo(radius, 3);
      expect(1 / panel.curvature + depth).toBeCloseTo(hipRadius, 3);
      expect(degrees(panel.angle)).toBeCloseTo(angle, 3);
      expect(degrees(coneOf({ waist, hip, depth }).angle)).toBeCloseTo(whole, 3);
      expect(panel.angle / panel.curvature).toBeCloseTo(width, 9);
      expect(panel.angle * (1 / panel.curvature + depth)).toBeCloseTo(hipWidth, 9);
      expect(Math.abs(panel.rise - rise)).toBeLessThan(0.0006);
      expect(panel.across).toBeCloseTo(across, 3);
      expect(middleDip(panel)).toBeCloseTo(dip, 3);
    },
  );

  it.each([
    // The taper a quarter of 28 and 38 over 7 in has left once darts take their part; computed.
    [0, 1.237],
    [1, 0.854],
    [1.75, 0.468],
  ])('rises less where darts of %f in take part of the shape', (darts, rise) => {
    expect(coneOf({ waist: 7 + darts, hip: 9.5, depth: 7 }).rise).toBeCloseTo(rise, 3);
  });

  it('agrees with the quarter inch Ingalls gives the front gore (Text-Book on Domestic Art, 1911)', () => {
    expect(Math.abs(coneOf({ waist: 3, hip: 4, depth: 6 }).rise - 0.25)).toBeLessThan(1 / 64);
  });

  it('is a straight waist where the hip is no larger, and dips at the side where it is smaller', () => {
    expect(coneOf({ waist: 213, hip: 213, depth: 170 })).toEqual({
      waist: 213,
      curvature: 0,
      angle: 0,
      across: 213,
      rise: 0,
    });
    const narrowing = coneOf({ waist: 230, hip: 211, depth: 170 });
    expect(narrowing.curvature).toBeLessThan(0);
    expect(narrowing.rise).toBeLessThan(0);
  });

  it('runs on without a jump from a hip just smaller than the waist to one just larger', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 400, noNaN: true }),
        fc.double({ min: 60, max: 250, noNaN: true }),
        fc.double({ min: -5e-4, max: 5e-4, noNaN: true }),
        (waist, depth, more) => {
          const cone = coneOf({ waist, hip: waist + more, depth });
          // To first order the rise is waist × (hip - waist) / 2 depth.
          expect(Math.abs(cone.rise - (waist * more) / (2 * depth))).toBeLessThan(1e-5);
          expect(Math.abs(cone.across - waist)).toBeLessThan(1e-5);
        },
      ),
      { seed: 7 },
    );
  });
});

describe('farEdgeAt', () => {
  it('stands on the circle of the hip, square to the waist', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 400, noNaN: true }),
        fc.double({ min: 100, max: 400, noNaN: true }),
        fc.double({ min: 120, max: 250, noNaN: true }),
        (waist, hip, depth) => {
          const cone = coneOf({ waist, hip, depth });
          const at = farEdgeAt(cone, depth);
          expect(Math.hypot(at.across - cone.across, at.rise - cone.rise)).toBeCloseTo(depth, 9);
          const tangent = [Math.cos(cone.angle), Math.sin(cone.angle)] as const;
          const along = (at.across - cone.across) * tangent[0] + (at.rise - cone.rise) * tangent[1];
          expect(Math.abs(along)).toBeLessThan(1e-9 * depth);
        },
      ),
      { seed: 7 },
    );
  });
});
