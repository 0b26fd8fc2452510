import { describe, expect, it } from 'vitest';
import { readDxf } from '../../core/files/read-dxf';
import { outlineOf } from '../../core/garment/outline';
import { pathBounds, pathLength, signedArea } from '../../core/geometry/path';
import { onlyPiece, reading } from './files';

type Pair = readonly [number, string | number];

function file(
  entities: readonly Pair[],
  header: readonly Pair[] = [
    [9, '$INSUNITS'],
    [70, 4],
  ],
  blocks: readonly Pair[] = [],
) {
  const section = (name: string, pairs: readonly Pair[]): Pair[] => [
    [0, 'SECTION'],
    [2, name],
    ...pairs,
    [0, 'ENDSEC'],
  ];
  const pairs = [
    ...section('HEADER', header),
    ...section('BLOCKS', blocks),
    ...section('ENTITIES', entities),
    [0, 'EOF'] as Pair,
  ];
  return `${pairs.map(([code, value]) => `${code}\n${value}`).join('\n')}\n`;
}

function light(points: readonly (readonly [number, number, number?])[], layer = '0'): Pair[] {
  const vertices = points.flatMap(([x, y, bulge]): Pair[] => [
    [10, x],
    [20, y],
    ...(bulge ? [[42, bulge] as Pair] : []),
  ]);
  return [[0, 'LWPOLYLINE'], [8, layer], [90, points.length], [70, 1], ...vertices];
}

const rectangle = light([
  [10, 20],
  [70, 20],
  [70, 50],
  [10, 50],
]);

function areaOf(text: string): number {
  return Math.abs(signedArea(outlineOf(onlyPiece(readDxf(text, reading))).whole));
}

describe('readDxf, what is drawn', () => {
  it('turns y over, so that up stays up', () => {
    const box = pathBounds(outlineOf(onlyPiece(readDxf(file(rectangle), reading))).whole);
    expect(box).toEqual({ minX: 10, maxX: 70, minY: -50, maxY: -20 });
  });

  // A bulge is the tangent of a quarter of the arc's angle: 1 is half a circle. Area of the stadium: w·d + π(d/2)².
  it('reads bulges as arcs on the outer side', () => {
    const stadium = light([
      [0, 0],
      [60, 0, 1],
      [60, 28],
      [0, 28, 1],
    ]);
    expect(Math.abs(areaOf(file(stadium)) - (60 * 28 + Math.PI * 14 * 14))).toBeLessThan(0.02 * 210);
    const hollow = light([
      [0, 0],
      [60, 0, -1],
      [60, 28],
      [0, 28],
    ]);
    expect(Math.abs(areaOf(file(hollow)) - (60 * 28 - (Math.PI * 14 * 14) / 2))).toBeLessThan(0.02 * 210);
  });

  it('reads circles, ellipses by axis and ratio, and arcs joined to lines', () => {
    expect(
      Math.abs(
        areaOf(
          file([
            [0, 'CIRCLE'],
            [8, '0'],
            [10, 5],
            [20, 6],
            [40, 30],
          ]),
        ) -
          Math.PI * 900,
      ),
    ).toBeLessThan(4);
    const ellipse: Pair[] = [
      [0, 'ELLIPSE'],
      [8, '0'],
      [10, 5],
      [20, 6],
      [11, 30],
      [21, 40],
      [40, 0.5],
      [41, 0],
      [42, 2 * Math.PI],
    ];
    expect(Math.abs(areaOf(file(ellipse)) - Math.PI * 50 * 25)).toBeLessThan(0.02 * 250);
    const arc: Pair[] = [
      [0, 'ARC'],
      [8, '0'],
      [10, 0],
      [20, 0],
      [40, 36],
      [50, 270],
      [51, 90],
    ];
    const chord: Pair[] = [
      [0, 'LINE'],
      [8, '0'],
      [10, 0],
      [20, 36],
      [11, 0],
      [21, -36],
    ];
    expect(Math.abs(areaOf(file([...arc, ...chord])) - (Math.PI * 36 * 36) / 2)).toBeLessThan(0.02 * 190);
  });

  // L. Piegl, W. Tiller, The NURBS Book (1997), example 7.3: a full circle of nine points, degree 2, weights 1 and √2/2.
  it('reads a rational spline: the circle of nine points', () => {
    const [r, w] = [40, Math.SQRT1_2];
    const points = [
      [r, 0, 1],
      [r, r, w],
      [0, r, 1],
      [-r, r, w],
      [-r, 0, 1],
      [-r, -r, w],
      [0, -r, 1],
      [r, -r, w],
      [r, 0, 1],
    ];
    const knots = [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4];
    const spline: Pair[] = [
      [0, 'SPLINE'],
      [8, '0'],
      [71, 2],
      ...knots.map((knot): Pair => [40, knot]),
      ...points.map(([, , weight]): Pair => [41, weight as number]),
      ...points.flatMap(([x, y]): Pair[] => [
        [10, x as number],
        [20, y as number],
      ]),
    ];
    expect(Math.abs(areaOf(file(spline)) - Math.PI * r * r)).toBeLessThan(0.02 * 2 * Math.PI * r);
  });

  it('puts curves back where a fine polyline stands for them, and keeps the corners of a coarse one', () => {
    const arc = Array.from(
      { length: 41 },
      (_, i) => [90 * Math.cos((i * Math.PI) / 40), 90 * Math.sin((i * Math.PI) / 40)] as const,
    );
    const half = onlyPiece(readDxf(file(light(arc)), reading));
    expect(half.edges.map(({ shape }) => shape.kind).toSorted()).toEqual(['curve', 'straight']);
    expect(Math.abs(pathLength(outlineOf(half).whole) - 90 * (Math.PI + 2))).toBeLessThan(0.1);
    const coarse = light(
      [0, 1, 2, 3, 4, 5].map((i) => [90 * Math.cos((i * Math.PI) / 5), 90 * Math.sin((i * Math.PI) / 5)]),
    );
    expect(onlyPiece(readDxf(file(coarse), reading)).edges.every(({ shape }) => shape.kind === 'straight')).toBe(true);
  });

  it('lays a block where it is inserted: turned by 90 degrees and moved', () => {
    const block: Pair[] = [[0, 'BLOCK'], [8, '0'], [2, 'YOKE'], [70, 0], [10, 0], [20, 0], ...rectangle, [0, 'ENDBLK']];
    const insert: Pair[] = [
      [0, 'INSERT'],
      [8, '0'],
      [2, 'YOKE'],
      [10, 100],
      [20, 7],
      [50, 90],
    ];
    const piece = onlyPiece(readDxf(file(insert, undefined, block), reading));
    expect(piece.name).toBe('YOKE');
    expect(pathBounds(outlineOf(piece).whole)).toEqual({
      minX: expect.closeTo(50, 9),
      maxX: expect.closeTo(80, 9),
      minY: expect.closeTo(-77, 9),
      maxY: expect.closeTo(-17, 9),
    });
  });
});

describe('readDxf, units', () => {
  it.each([
    [1, 25.4],
    [4, 1],
    [5, 10],
  ])('$INSUNITS %i (from memory)', (number, mm) => {
    expect(
      areaOf(
        file(rectangle, [
          [9, '$INSUNITS'],
          [70, number],
        ]),
      ),
    ).toBeCloseTo(60 * 30 * mm * mm, 6);
  });

  it('asks when the file says nothing, and believes the answer', () => {
    expect(readDxf(file(rectangle, []), reading)).toEqual({ kind: 'units-not-known', across: 60, down: 30 });
    const piece = onlyPiece(readDxf(file(rectangle, []), { ...reading, unit: 'cm' }));
    expect(pathLength(outlineOf(piece).whole)).toBeCloseTo(1800, 9);
  });
});

describe('readDxf, files that are broken or too much', () => {
  it('names the line of a broken number', () => {
    for (const bad of ['12.3.4', 'NaN', 'Infinity', '', '1e999', '0x10', '9'.repeat(5000)]) {
      const text = file(light([[10, 20]])).replace('10\n10\n', `10\n${bad}\n`);
      expect(readDxf(text, reading)).toEqual({ kind: 'broken-number', line: text.split('\n').indexOf(bad, 20) + 1 });
    }
  });

  it('names a binary file as such, and refuses what is none', () => {
    expect(readDxf('AutoCAD Binary DXF\r\n\u001a\u0000', reading)).toEqual({ kind: 'binary-dxf' });
    expect(readDxf('<svg/>', reading)).toEqual({ kind: 'not-this-kind' });
    expect(readDxf('', reading)).toEqual({ kind: 'not-this-kind' });
  });

  it('refuses a million entities', () => {
    const text = file([]).replace('0\nEOF', `${'0\nPOINT\n'.repeat(1_000_000)}0\nEOF`);
    expect(readDxf(text, reading)).toEqual({ kind: 'too-many', what: 'entities', limit: 300_000 });
  });

  it('refuses a file broken off at any place, and never throws', () => {
    const whole = file(rectangle);
    for (let end = 0; end < whole.length - 5; end++) {
      expect(['broken-off', 'not-this-kind', 'broken-number']).toContain(readDxf(whole.slice(0, end), reading).kind);
    }
  });

  it('tells of what it does not read', () => {
    const odd: Pair[] = [
      [0, 'HATCH'],
      [8, '0'],
      [0, '3DFACE'],
      [8, '0'],
    ];
    expect(readDxf(file([...odd, ...rectangle]), reading)).toMatchObject({
      findings: [
        { kind: 'not-read', what: 'HATCH', count: 1 },
        { kind: 'not-read', what: '3DFACE', count: 1 },
      ],
    });
  });
});
