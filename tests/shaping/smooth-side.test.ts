import { describe, expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { linesThrough } from '../../core/seams/corner-place';
import { backOnCourse } from '../../core/shaping/back-on-course';
import { curvedWaist } from '../../core/shaping/curved-waist';
import { levelLine } from '../../core/shaping/level-line';
import { inches } from '../../core/units/inch';
import { at } from '../seams/pieces';
import { bowsOf, changesOfBend } from './bends';
import { bodies } from './bodies';
import { straightGore, straightPanel, traced } from './traced';

type Places = readonly (readonly [number, number])[];

const inchPlaces = (places: Places) => places.map(([x, y]) => [inches(x), inches(y)] as const);

/** Half a panel on the fold, in inches: waist, side through some places, hem. */
function panel(side: Places, hem: readonly [number, number] = [13, 27]): Piece {
  const [fold, corner, end, foot] = inchPlaces([[0, 0], [7, 0], hem, [0, hem[1] + 1]]) as [
    readonly [number, number],
    readonly [number, number],
    readonly [number, number],
    readonly [number, number],
  ];
  return traced('panel', [
    [fold, 'waist'],
    [corner, 'seam', inchPlaces(side)],
    [end, 'hem'],
    [foot, 'fold'],
  ]);
}

function shaped(piece: Piece, length: number, hipDepth: number): Piece {
  const waistEdgeId = piece.edges.find(({ role }) => role === 'waist')?.id ?? '';
  const made = curvedWaist(piece, { waistEdgeId, length, hipDepth });
  if (made.kind !== 'curved-waist') throw new Error(made.why);
  return made.piece;
}

/** The gaps between the points of an edge, its corners among them (mm). */
function gapsOf(piece: Piece, index: number): number[] {
  const shape = piece.edges[index]?.shape;
  const [from, to] = [piece.corners[index]?.at, piece.corners[(index + 1) % piece.corners.length]?.at];
  if (!from || !to) return [];
  const points = [from, ...(shape?.kind === 'curve' ? shape.through : []), to];
  return points.slice(1).map((point, i) => distance(point, points[i] ?? point));
}

/** The farthest a side lies off the line it was traced by, from `down` mm along it on. */
function farthestOff(piece: Piece, made: Piece, index: number, down: number): number {
  const [old, led] = [outlineOf(piece).edges[index] ?? [], outlineOf(made).edges[index] ?? []];
  const total = pathLength(led);
  let most = 0;
  for (let along = down; along <= total; along += 10) {
    most = Math.max(most, nearestOnPath(old, pathAtLength(led, along).point).distance);
  }
  return most;
}

const sides: readonly (readonly [name: string, piece: Piece])[] = [
  [
    'curved as in the demo',
    panel([
      [8.75, 4],
      [10, 8],
    ]),
  ],
  [
    'followed by the ink, its second point below the hip',
    panel([
      [7.72, 1.62],
      [10.35, 9.61],
    ]),
  ],
  ['straight', panel([])],
  [
    'flaring below the hip',
    panel(
      [
        [8.7, 4],
        [9.8, 8],
        [11.8, 16],
        [14, 23],
      ],
      [18, 32],
    ),
  ],
  [
    'falling straight, then flaring',
    panel(
      [
        [8.9, 4],
        [9.8, 8],
        [10.2, 13],
        [10.8, 19],
        [13, 26],
      ],
      [20, 32],
    ),
  ],
  [
    'hollowed below the hip',
    panel([
      [8.75, 4],
      [9.8, 8],
      [9.9, 12],
    ]),
  ],
  [
    'by ten points',
    panel([
      [7.9, 2],
      [8.75, 4],
      [9.45, 6],
      [10, 8],
      [10.4, 10],
      [10.8, 12],
      [11.3, 15],
      [11.8, 18],
      [12.4, 22],
    ]),
  ],
];

describe('the side below a curved waist', () => {
  it.each(sides)('bends no oftener than it was traced: %s', (_, piece) => {
    for (const hipDepth of [7, 8, 9].map(inches)) {
      for (const length of [6.5, 7, 7.125, 7.5].map(inches)) {
        const made = shaped(piece, length, hipDepth);
        const [old, led] = [outlineOf(piece).edges[1] ?? [], outlineOf(made).edges[1] ?? []];
        expect(changesOfBend(led), bowsOf(led).join(' ')).toBeLessThanOrEqual(changesOfBend(old));
        expect(Math.min(...gapsOf(made, 1))).toBeGreaterThan(Math.min(inches(0.9), ...gapsOf(piece, 1)) - 1);
        expect(Math.abs(pathLength(outlineOf(made).edges[0] ?? []) - length)).toBeLessThan(0.01);
        const hips = [piece, made].map((one) => levelLine(one, hipDepth)?.length ?? 0);
        expect(Math.abs((hips[0] ?? 0) - (hips[1] ?? 0))).toBeLessThan(0.01);
      }
    }
  });

  it('lies within 1/32 in of the traced line from 7 in below the hip on, in the demo', () => {
    let count = 0;
    const { pieces } = lindenGarment({ newId: () => `${++count}`, today: '2026-01-01', photoId: 'p' });
    const piece = pieces[0] as Piece;
    const made = shaped(piece, inches(7.125), inches(8));
    expect(changesOfBend(outlineOf(made).edges[1] ?? [], 0.01)).toBe(0);
    expect(farthestOff(piece, made, 1, inches(8 + 7))).toBeLessThan(inches(1 / 32));
    expect(made.edges[1]?.shape.kind === 'curve' && made.edges[1].shape.through.length).toBeLessThanOrEqual(5);
  });

  it('bends no oftener for real bodies, on the fold and as a gore with two sides (ANSUR II, 2012)', () => {
    for (const [row, waist, hip, depth] of bodies) {
      const wanted = (waist + inches(0.5)) / 4;
      const hipWidth = (hip + inches(2)) / 4;
      for (const [piece, length, edges] of [
        [straightPanel(wanted, hipWidth, depth), wanted, [1]],
        [straightGore((wanted * 4) / 6, (hipWidth * 4) / 6, depth), (wanted * 4) / 6, [1, 3]],
      ] as const) {
        const made = shaped(piece, length, depth);
        for (const index of edges) {
          const [old, led] = [outlineOf(piece).edges[index] ?? [], outlineOf(made).edges[index] ?? []];
          expect(changesOfBend(led), `row ${row}: ${bowsOf(led)}`).toBeLessThanOrEqual(changesOfBend(old));
        }
      }
    }
  });

  it('is the same on both sides of a gore', () => {
    const gore = straightGore(150, 178, 163);
    const made = shaped(gore, 146, 163);
    const [right, left] = [outlineOf(made).edges[1] ?? [], outlineOf(made).edges[3] ?? []];
    expect(pathLength(right)).toBeCloseTo(pathLength(left), 6);
  });

  it('keeps its darts, and what it was where nothing has to move', () => {
    const plain = panel([
      [8.75, 4],
      [10, 8],
    ]);
    const waistId = plain.edges[0]?.id ?? '';
    const dart = {
      id: 'd',
      edgeId: waistId,
      along: inches(3.5),
      width: inches(0.75),
      point: at(inches(3.5), inches(4)),
    };
    const made = shaped({ ...plain, darts: [dart] }, inches(7.125), inches(8));
    expect(made.darts).toHaveLength(1);
    expect(changesOfBend(outlineOf(made).edges[1] ?? [])).toBe(0);
  });
});

describe('backOnCourse', () => {
  const places = (found: ReturnType<typeof backOnCourse>) => found.map(({ along }) => Math.round(along));

  it('runs to the far end of a straight course, with no point on the way', () => {
    expect(backOnCourse(linesThrough(at(0, 0), at(0, 500)), at(6, 40), [])).toEqual([]);
  });

  it('keeps the course from there on when the place lies on it', () => {
    const course = linesThrough(at(0, 0), at(0, 500));
    const own = [60, 200, 420].map((along) => ({ point: at(0, along), along }));
    expect(places(backOnCourse(course, at(0, 100), own))).toEqual([200, 310, 420]);
  });

  it('touches a bowed course where a straight edge from the place does', () => {
    // A circle of 1000 mm and a place 10 mm outside it: the tangent is as long as the root of 1010² - 1000².
    const piece = traced('disc', [
      [
        [0, 1000],
        'seam',
        Array.from({ length: 9 }, (_, i) => [1000 * Math.sin((i + 1) / 10), 1000 * Math.cos((i + 1) / 10)] as const),
      ],
      [[1000 * Math.sin(1), 1000 * Math.cos(1)], 'hem'],
      [[0, 0], 'fold'],
    ]);
    const course = outlineOf(piece).edges[0] ?? [];
    const outside = at(1010 * Math.sin(0.1), 1010 * Math.cos(0.1));
    const [first] = backOnCourse(course, outside, []);
    expect(Math.abs((first?.along ?? 0) - 1000 * (0.1 + Math.acos(1000 / 1010)))).toBeLessThan(2);
  });
});
