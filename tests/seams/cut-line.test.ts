import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { reflectionIn, rotationAbout, transformPoint, translation } from '../../core/geometry/affine';
import { flattenPath } from '../../core/geometry/flatten';
import { nearestOnPath, pathEnd, pathLength, pathStart, signedArea } from '../../core/geometry/path';
import { distance, type Point } from '../../core/geometry/point';
import { ringArea } from '../../core/geometry/polygon';
import { grownAreas } from '../../core/geometry/polygon-boolean';
import { type CutLine, cutLine, cutLineSoFar } from '../../core/seams/cut-line';
import { at, movedPiece, pieceOf, runBackwards } from './pieces';

const INCH = 25.4;

function cutOf(piece: Piece): CutLine {
  const cut = cutLine(piece);
  if (cut.kind !== 'cut-line') throw new Error(`no cut line: ${JSON.stringify(cut)}`);
  return cut;
}

/** A corner of `degrees` inside, at the origin, between two edges of 40 and 43 in. */
function wedge(degrees: number, allowance: number, finish: 'mitred' | 'blunt' | 'rounded' | 'squared'): Piece {
  const a = (degrees * Math.PI) / 180;
  return pieceOf(
    [at(0, 0), at(40 * INCH, 0), at(43 * INCH * Math.cos(a), 43 * INCH * Math.sin(a))],
    [{ allowance }, { allowance }, { allowance }],
    [finish],
  );
}

/** The distance of the cut line's own corner from the origin, where the first edge's part begins. */
function cornerReach(piece: Piece): number {
  return distance({ x: 0, y: 0 }, pathStart(cutOf(piece).edges[0] ?? []));
}

describe('cutLine(piece) at corners', () => {
  // s / sin(a / 2) for s = 1/2 in, in thousandths of an inch: plane geometry.
  const table = [
    [30, 1932],
    [45, 1307],
    [60, 1000],
    [75, 821],
    [90, 707],
    [120, 577],
    [135, 541],
  ] as const;
  it.each(table)('mitres an angle of %i degrees at %i thousandths of an inch for 1/2 in', (degrees, reach) => {
    const found = cornerReach(wedge(degrees, INCH / 2, 'mitred')) / INCH;
    expect(Math.abs(found * 1000 - reach)).toBeLessThan(0.5);
    expect(found).toBeCloseTo(0.5 / Math.sin((degrees * Math.PI) / 360), 9);
  });

  it('cuts a sharp corner off square at twice the allowance and says so', () => {
    const cut = cutOf(wedge(30, 13, 'blunt'));
    expect(cut.blunted).toContain('c0');
    const a = (30 * Math.PI) / 180;
    const along = (p: Point) => -p.x * Math.cos(a / 2) - p.y * Math.sin(a / 2);
    const reaches = flattenPath(cut.whole, 0.01).slice(1).map(along);
    expect(Math.max(...reaches)).toBeCloseTo(26, 6);
    expect(reaches.filter((reach) => Math.abs(reach - 26) < 1e-6)).toHaveLength(2);
    expect(cutOf(wedge(75, 13, 'blunt')).blunted).not.toContain('c0');
  });

  it('rounds about the corner', () => {
    const points = flattenPath(cutOf(wedge(70, 13, 'rounded')).whole, 0.001);
    const near = points.filter(({ x, y }) => x < 0 && y < 0.01).map((p) => distance({ x: 0, y: 0 }, p));
    expect(near.length).toBeGreaterThan(5);
    for (const reach of near) expect(Math.abs(reach - 13)).toBeLessThan(0.01);
  });

  it('squares: each allowance ends square to its own edge, by its own width', () => {
    const cut = cutOf(wedge(50, 13, 'squared'));
    const corner = flattenPath(cut.whole, 0.01)
      .slice(1)
      .filter((p) => Math.abs(distance(p, at(0, 0)) - 13 * Math.SQRT2) < 1e-6);
    expect(corner).toHaveLength(2);
    expect(cornerReach(wedge(90, 13, 'squared'))).toBeCloseTo(13 * Math.SQRT2, 6);
  });

  it('with unequal allowances stands at each from its own seam line', () => {
    const a = (70 * Math.PI) / 180;
    const piece = pieceOf(
      [at(0, 0), at(900, 0), at(800 * Math.cos(a), 800 * Math.sin(a))],
      [{ allowance: 11 }, { allowance: 12 }, { allowance: 29 }],
      ['mitred'],
    );
    const tip = pathStart(cutOf(piece).edges[0] ?? []);
    expect(tip.y).toBeCloseTo(-11, 9);
    expect(tip.x * Math.sin(a) - tip.y * Math.cos(a)).toBeCloseTo(-29, 9);
  });

  it('carries hem and waist straight to the fold line, which has no allowance', () => {
    const piece = pieceOf(
      [at(0, 3), at(150, 0), at(190, 580), at(0, 612)],
      [
        { role: 'waist', allowance: 14 },
        { allowance: 17 },
        { role: 'hem', allowance: 52 },
        { role: 'fold', allowance: 9 },
      ],
    );
    const fold = cutOf(piece).edges[3] ?? [];
    expect(Math.abs(pathStart(fold).x)).toBeLessThan(1e-9);
    expect(Math.abs(pathEnd(fold).x)).toBeLessThan(1e-9);
    expect(pathLength(fold)).toBeGreaterThan(609 + 52 + 14);
  });
});

describe('cutLine(piece) at a turned-up hem', () => {
  it('narrows the hem of a gore: f 11, k 0.1228 a side, depth 2 gives 11 - 2·2·0.1228 = 10.509', () => {
    const [f, k, length] = [11 * INCH, 0.1228, 30 * INCH];
    const top = f / 2 - k * length;
    const gore = pieceOf(
      [at(-top, 0), at(top, 0), at(f / 2, length), at(-f / 2, length)],
      [{ role: 'waist', allowance: 0 }, { allowance: 0 }, { role: 'hem', allowance: 2 * INCH }, { allowance: 0 }],
    );
    for (const piece of [gore, runBackwards(gore)]) {
      const cut = cutOf(piece);
      const hem = flattenPath(cut.whole, 0.01).filter(({ y }) => Math.abs(y - 32 * INCH) < 1e-6);
      const xs = hem.map(({ x }) => x / INCH);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(10.509, 3);
    }
  });

  it('folded up along the hem line lies on the cut line of the side', () => {
    const piece = pieceOf(
      [at(0, 0), at(170, 0), at(262, 610), at(0, 610)],
      [
        { role: 'waist', allowance: 12 },
        { allowance: 16, through: [at(236, 240)] },
        { role: 'hem', allowance: 47 },
        { role: 'fold' },
      ],
    );
    const cut = cutOf(piece);
    const up = reflectionIn(at(0, 610), at(100, 610));
    if (!up) throw new Error('no mirror');
    const below = flattenPath(cut.whole, 0.01).filter(({ x, y }) => y > 610.5 && y < 656.9 && x > 150);
    expect(below.length).toBeGreaterThan(0);
    for (const point of below) expect(nearestOnPath(cut.whole, transformPoint(up, point)).distance).toBeLessThan(0.02);
  });

  // Excess to ease in at the raw edge of a hem: angle × depth, so that 2 in on a full circle are 12.57 in (circle geometry).
  it.each([
    [360, 1 / 4, 1.57],
    [270, 1 / 2, 2.36],
    [180, 1, 3.14],
    [90, 3, 4.71],
    [81.85, 2, 2.86],
    [360, 2, 12.57],
  ])('is longer at its raw edge: %f degrees, %f in deep, %f in', (degrees, depth, excess) => {
    const angle = (degrees * Math.PI) / 180;
    const radius = 24 * INCH;
    const place = (share: number) => at(radius * Math.cos(angle * share), radius * Math.sin(angle * share));
    const through = Array.from({ length: 23 }, (_, i) => place((i + 1) / 24));
    // As arcs of a whole ring when it is one, else a sector with its point cut off and sides straight to the middle.
    const piece =
      degrees === 360
        ? pieceOf(
            [place(0), place(0.5)],
            [
              { role: 'hem', allowance: depth * INCH, through: through.slice(0, 11) },
              { role: 'hem', allowance: depth * INCH, through: through.slice(12) },
            ],
          )
        : pieceOf(
            [at(0, 0), place(0), place(1)],
            [{ allowance: 0 }, { role: 'hem', allowance: depth * INCH, through }, { allowance: 0 }],
          );
    const edges = outlineOf(piece).edges;
    const cut = cutOf(piece);
    const far = (p: Point) => Math.abs(distance(p, at(0, 0)) - radius - depth * INCH) < 0.05;
    const raw = cut.whole.filter(
      (segment) => far(segment.p0) && far(segment.kind === 'line' ? segment.p1 : segment.p3),
    );
    const stitch = edges
      .filter((_, i) => piece.edges[i]?.role === 'hem')
      .reduce((sum, path) => sum + pathLength(path), 0);
    expect(Math.abs((pathLength(raw) - stitch) / INCH - excess)).toBeLessThan(0.01);
  });
});

describe('cutLine(piece) as a whole', () => {
  const curved = pieceOf(
    [at(0, 0), at(210, -30), at(330, 150), at(290, 520), at(20, 470)],
    [
      { allowance: 9.5 },
      { allowance: 16, through: [at(235, 95)] },
      { allowance: 25.4 },
      { role: 'hem', allowance: 41, through: [at(150, 530)] },
      { allowance: 12.7, through: [at(-25, 230)] },
    ],
  );

  it('encloses the area Clipper2 finds for straight and curved outlines of one allowance', () => {
    const even: Piece = {
      ...curved,
      corners: curved.corners.map((corner) => ({ ...corner, finish: 'mitred' as const })),
      edges: curved.edges.map((edge) => ({ ...edge, allowance: 16 })),
    };
    const ring = flattenPath(outlineOf(even).whole, 0.001).slice(0, -1);
    const grown = grownAreas([ring], 16);
    if (grown.kind !== 'areas') throw new Error('unsure');
    const area = grown.rings.reduce((sum, each) => sum + ringArea(each), 0);
    expect(Math.abs(signedArea(cutOf(even).whole) - area)).toBeLessThan(0.01 * pathLength(outlineOf(even).whole));
  });

  it('turned, moved and mirrored is the cut line turned, moved and mirrored', () => {
    const mirror = reflectionIn(at(17, 5), at(40, 71));
    for (const map of [rotationAbout(at(31, 77), 1.234), translation({ dx: 1234.5, dy: -678.9 }), mirror]) {
      if (!map) throw new Error('no map');
      const [one, other] = [cutOf(curved), cutOf(movedPiece(curved, map))];
      expect(pathLength(other.whole)).toBeCloseTo(pathLength(one.whole), 2);
      for (const point of flattenPath(one.whole, 0.5)) {
        expect(nearestOnPath(other.whole, transformPoint(map, point)).distance).toBeLessThan(0.02);
      }
    }
  });

  it('is the same line whichever way the outline is run, and runs that way itself', () => {
    const [one, other] = [cutOf(curved), cutOf(runBackwards(curved))];
    expect(signedArea(one.whole)).toBeGreaterThan(0);
    expect(signedArea(other.whole) / signedArea(one.whole)).toBeCloseTo(-1, 6);
    for (const point of flattenPath(one.whole, 0.5))
      expect(nearestOnPath(other.whole, point).distance).toBeLessThan(0.02);
  });

  it('is one closed line whose parts lie in the order of the edges', () => {
    const { whole, edges } = cutOf(curved);
    expect(edges.flat()).toEqual(whole);
    whole.forEach((segment, i) => {
      expect(segment.p0).toEqual(pathEnd([whole.at(i - 1) ?? segment]));
    });
  });

  it('keeps every allowance as set when the shape changes', () => {
    const longer: Piece = {
      ...curved,
      corners: curved.corners.map((corner, i) => (i === 3 ? { ...corner, at: at(310, 660) } : corner)),
    };
    for (const piece of [curved, longer]) {
      const { edges } = cutOf(piece);
      piece.edges.forEach((edge, i) => {
        const stitch = outlineOf(piece).edges[i] ?? [];
        const cut = edges[i] ?? [];
        const middle = flattenPath(cut, 0.01).filter((_, k, all) => Math.abs(k / all.length - 0.5) < 0.1);
        for (const p of middle) {
          if (edge.shape.kind === 'curve') {
            expect(nearestOnPath(stitch, p).distance).toBeCloseTo(edge.allowance ?? 0, 1);
          }
        }
      });
    }
  });

  it('lets a short edge in a hollow be covered by its neighbours, and says so', () => {
    const piece = pieceOf(
      [at(0, 0), at(300, 0), at(300, 200), at(180, 200), at(176, 204), at(176, 320), at(0, 320)],
      Array.from({ length: 7 }, () => ({ allowance: 20 })),
    );
    const cut = cutOf(piece);
    expect(cut.swallowed).toEqual(['e3']);
    expect(signedArea(cut.whole)).toBeGreaterThan(signedArea(outlineOf(piece).whole));
  });

  it('works on a circle of two edges and gives its outline 2 π s more length', () => {
    const circle = (r: number) =>
      Array.from({ length: 15 }, (_, i) => ({
        x: r * Math.cos(((i + 1) * Math.PI) / 16),
        y: r * Math.sin(((i + 1) * Math.PI) / 16),
      }));
    const piece = pieceOf(
      [at(180, 0), at(-180, 0)],
      [
        { allowance: 11, through: circle(180) },
        { allowance: 11, through: circle(180).map(({ x, y }) => at(-x, -y)) },
      ],
    );
    expect(pathLength(cutOf(piece).whole)).toBeCloseTo(2 * Math.PI * 191, 0);
  });
});

describe('cutLine(piece) says why there is none', () => {
  const square = [at(0, 0), at(310, 0), at(310, 290), at(0, 290)];

  it('when an allowance has not been said; cutLineSoFar counts it as none', () => {
    const piece = pieceOf(square, [{ allowance: 12 }, {}, { allowance: 0 }, { role: 'fold' }]);
    expect(cutLine(piece)).toEqual({ kind: 'no-allowance-said', edgeIds: ['e1'] });
    const soFar = cutLineSoFar(piece);
    if (soFar.kind !== 'cut-line') throw new Error(soFar.kind);
    expect(signedArea(soFar.whole)).toBeCloseTo(310 * 302, 6);
  });

  it('when the outline crosses itself', () => {
    const piece = pieceOf([at(0, 0), at(310, 290), at(310, 0), at(0, 270)], Array(4).fill({ allowance: 12 }));
    const cut = cutLine(piece);
    expect(cut.kind).toBe('crossed-outline');
    // The two diagonals y = 290/310 x and y = 270 - 270/310 x ... cross where both agree.
    const x = 270 / (290 / 310 + 270 / 310);
    if (cut.kind === 'crossed-outline') expect(distance(cut.at, at(x, (290 / 310) * x))).toBeLessThan(0.1);
  });

  it('when a slot is too narrow for the allowances of its sides', () => {
    const slot = [at(0, 0), at(140, 0), at(140, 200), at(150, 200), at(150, 0), at(310, 0), at(310, 290), at(0, 290)];
    const cut = cutLine(pieceOf(slot, Array(8).fill({ allowance: 15 })));
    expect(cut.kind).toBe('allowance-does-not-fit');
    if (cut.kind === 'allowance-does-not-fit') expect(cut.edgeIds).toEqual(['e1', 'e3']);
    expect(cutLine(pieceOf(slot, Array(8).fill({ allowance: 4 }))).kind).toBe('cut-line');
  });

  it('and a piece drawn with its allowances is cut along its outline', () => {
    const piece: Piece = { ...pieceOf(square, [{ allowance: 12 }]), drawnAs: 'included' };
    expect(cutOf(piece).whole).toEqual(outlineOf(piece).whole);
  });

  it.each([
    ['all corners in one place', Array(4).fill(at(70, 30))],
    ['two coinciding corners', [at(0, 0), at(0, 0), at(310, 0), at(300, 290)]],
    ['no width', [at(0, 0), at(310, 0), at(150, 0), at(40, 0)]],
    ['a spike', [at(0, 0), at(310, 0), at(310, 290), at(310, 0)]],
  ])('no NaN for %s', (_, corners) => {
    const cut = cutLine(pieceOf(corners as Point[], Array(4).fill({ allowance: 12 })));
    const numbers = JSON.stringify(cut);
    expect(numbers).not.toContain('null');
  });
});

/** A gore of which one point of the hem has gone 700 m astray, as in a file with a figure too many in it. */
it('cutLine(piece) of a piece with a point far astray comes, and keeps to the allowance where the piece is sound', () => {
  const piece = pieceOf(
    [at(0, 0), at(60, 1), at(128, 699), at(-68, 703)],
    [
      { allowance: 16 },
      { allowance: 16, through: [at(84, 280), at(96, 490)] },
      { allowance: 51, through: [at(108, 703_708), at(30, 712), at(-48, 704)] },
      { allowance: 16 },
    ],
  );
  const { edges } = cutOf(piece);
  const stitch = outlineOf(piece).edges[1] ?? [];
  const onSeam = flattenPath(edges[1] ?? [], 0.01).filter(({ y }) => y > 50 && y < 650);
  expect(onSeam.length).toBeGreaterThan(5);
  for (const point of onSeam) expect(Math.abs(nearestOnPath(stitch, point).distance - 16)).toBeLessThan(0.03);
});
