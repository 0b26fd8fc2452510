import { describe, expect, it } from 'vitest';
import { cutOutline } from '../../core/cloth/cut-outline';
import { reflectionIn, rotationAbout, transformPath } from '../../core/geometry/affine';
import { flattenPath } from '../../core/geometry/flatten';
import { nearestOnPath, reversePath, signedArea } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';
import { placeInRing, ringArea } from '../../core/geometry/polygon';
import { cubic, line, type Path } from '../../core/geometry/segment';

const at = (x: number, y: number): Point => ({ x, y });

/** A gore: straight sides, the waist hollow, the hem round, and a side that swings both ways. */
const gore: Path = [
  cubic(at(10, 0), at(60, 35), at(120, 30), at(170, 5)),
  cubic(at(170, 5), at(230, 260), at(150, 420), at(280, 700)),
  cubic(at(280, 700), at(190, 770), at(60, 760), at(-40, 690)),
  line(at(-40, 690), at(10, 0)),
];

describe('cutOutline(path, tolerance)', () => {
  const maps = [rotationAbout(at(3, 5), 0), rotationAbout(at(3, 5), 2.1), reflectionIn(at(0, 0), at(3, 1))];
  const ways = maps.flatMap((map) => (map ? [transformPath(map, gore), reversePath(transformPath(map, gore))] : []));

  it.each([0.2, 1, 5])('holds the whole path, and stands off it by %f mm at most but at corners', (tolerance) => {
    for (const path of ways) {
      const ring = cutOutline(path, tolerance);
      expect(ringArea(ring)).toBeGreaterThanOrEqual(Math.abs(signedArea(path)));
      for (const point of flattenPath(path, 1e-2)) expect(placeInRing(ring, point)).not.toBe('outside');
      const middles = ring.map((a, i) => {
        const b = ring[(i + 1) % ring.length] as Point;
        return at((a.x + b.x) / 2, (a.y + b.y) / 2);
      });
      for (const middle of middles) expect(nearestOnPath(path, middle).distance).toBeLessThan(tolerance);
    }
  });

  it('leaves straight edges exactly where they are', () => {
    const breadth = [
      line(at(0, 0), at(914.4, 0)),
      line(at(914.4, 0), at(914.4, 300)),
      cubic(at(914.4, 300), at(600, 300), at(300, 300), at(0, 300)),
      line(at(0, 300), at(0, 0)),
    ];
    expect(Math.max(...cutOutline(breadth, 2).map(({ y }) => y))).toBe(300);
    expect(ringArea(cutOutline(breadth, 2))).toBeCloseTo(914.4 * 300, 6);
  });
});
