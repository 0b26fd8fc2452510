import { describe, expect, it } from 'vitest';
import { diagramFindings } from '../../core/diagram/diagram-findings';
import { type DiagramMap, diagramMap, photoToTable, tableToPhoto } from '../../core/diagram/diagram-map';
import { firstHalf, halvesOf, mayLeanOn } from '../../core/diagram/halves';
import { carryPieces } from '../../core/diagram/reseat';
import { waysAlike } from '../../core/diagram/shared-scale';
import { shownBox } from '../../core/diagram/squared-picture';
import { takeOff } from '../../core/diagram/take-off';
import type { Diagram, Quad } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import { newGarment } from '../../core/garment/new-garment';
import { pieceFromTrace } from '../../core/garment/new-piece';
import { rotationAbout, transformPoint } from '../../core/geometry/affine';
import { distance, type PhotoPoint, type TablePoint } from '../../core/geometry/point';
import { known, sampleDiagram, set } from './sample-diagram';

function mapOf(diagram: Diagram, among: readonly Diagram[]): DiagramMap {
  const map = diagramMap(diagram, set, among);
  if (map.kind !== 'map') throw new Error(map.why);
  return map;
}

const at = (map: DiagramMap, photo: PhotoPoint) => {
  const place = photoToTable(map, photo);
  if (!place) throw new Error('beyond the horizon');
  return place;
};

const kinds = (diagram: Diagram, among: readonly Diagram[]) =>
  diagramFindings(diagram, set, among).map(({ weight, kind }) => `${weight} ${kind}`);

/** 0.5 mm a pixel across, and 0.52 down. */
const first = sampleDiagram({
  id: 'one',
  knownLengths: [
    known('a', { x: 100, y: 300 }, { x: 1900, y: 300 }, 900),
    known('d', { x: 100, y: 300 }, { x: 100, y: 2300 }, 1040),
  ],
});

describe('a scale shared between pictures', () => {
  it('by pixels is the very same, and follows when the first is mended', () => {
    const second = sampleDiagram({ id: 'two', scaleFrom: { diagramId: 'one', by: 'pixel' } });
    expect(mapOf(second, [first, second])).toMatchObject({ across: 0.5, down: 0.52, scaleBy: 'shared' });
    const mended = { ...first, knownLengths: [known('a', { x: 100, y: 300 }, { x: 1900, y: 300 }, 945)] };
    expect(mapOf(second, [mended, second]).across).toBeCloseTo(0.525, 12);
    expect(kinds(second, [first, second])).toEqual([]);
  });

  it('by the paper allows for scans of another fineness: 300 to the inch beside 600', () => {
    const fine = { ...first, onPaper: { across: (2000 * 25.4) / 600, down: (2600 * 25.4) / 600 } };
    const coarse = sampleDiagram({
      id: 'two',
      onPaper: { across: (2000 * 25.4) / 300, down: (2600 * 25.4) / 300 },
      scaleFrom: { diagramId: 'one', by: 'paper' },
    });
    const map = mapOf(coarse, [fine, coarse]);
    expect(map.across).toBeCloseTo(1, 12);
    expect(map.down).toBeCloseTo(1.04, 12);
    expect(waysAlike(fine, coarse)).toEqual(['paper', 'pixel']);
  });

  it('by the page makes rectangles the same size, however large they are seen', () => {
    const page = (left: number, side: number): Quad => [
      { x: left, y: 200 },
      { x: left + side, y: 200 },
      { x: left + side, y: 200 + 1.3 * side },
      { x: left, y: 200 + 1.3 * side },
    ];
    const one = { ...sampleDiagram({ id: 'one', corners: page(150, 1200) }), knownLengths: first.knownLengths };
    const two = sampleDiagram({ id: 'two', corners: page(300, 900), scaleFrom: { diagramId: 'one', by: 'rectangle' } });
    const [a, b] = [mapOf(one, [one, two]), mapOf(two, [one, two])];
    expect(b.plane.across * b.across).toBeCloseTo(a.plane.across * a.across, 9);
    expect(b.plane.down * b.down).toBeCloseTo(a.plane.down * a.down, 9);
  });

  it('is held against the known lengths of its own, and the clash is told', () => {
    const own = [known('own', { x: 200, y: 900 }, { x: 1800, y: 900 }, 824)];
    const second = sampleDiagram({ id: 'two', knownLengths: own, scaleFrom: { diagramId: 'one', by: 'pixel' } });
    expect(diagramFindings(second, set, [first, second])).toMatchObject([
      { kind: 'known-length-disagrees', states: 824, measures: expect.closeTo(800, 9) },
    ]);
  });

  it('that is not there stops her: no such picture, no scale in it, not of one kind, or a ring of them', () => {
    const second = sampleDiagram({ id: 'two', scaleFrom: { diagramId: 'one', by: 'pixel' } });
    const missing = ['stop shared-scale-missing'];
    expect(kinds(second, [second])).toEqual(missing);
    expect(kinds(second, [{ ...first, knownLengths: [] }, second])).toEqual(missing);
    expect(kinds({ ...second, scaleFrom: { diagramId: 'one', by: 'paper' } }, [first, second])).toEqual(missing);
    const ring = { ...first, scaleFrom: { diagramId: 'two', by: 'pixel' } } as const;
    expect(kinds(second, [ring, second])).toEqual(missing);
    expect(mayLeanOn([ring, second], 'two', 'one')).toBe(false);
    expect(mayLeanOn([first, second], 'two', 'one')).toBe(true);
  });

  it('stays as known lengths of its own when the picture it came from is taken off', () => {
    const second = sampleDiagram({ id: 'two', scaleFrom: { diagramId: 'one', by: 'pixel' } });
    let last = 0;
    const left = takeOff(garmentWith([first, second]), 'one', () => `new-${++last}`);
    const [alone] = left.diagrams as [Diagram];
    expect(alone).not.toHaveProperty('scaleFrom');
    expect(mapOf(alone, left.diagrams)).toMatchObject({
      scaleBy: 'own',
      across: expect.closeTo(0.5, 9),
      down: expect.closeTo(0.52, 9),
    });
  });
});

/** One sheet at 0.5 mm a pixel, seen in two pictures; the second was taken at `size` of the first's and turned by `angle`. */
function halves(size: number, angle: number, slip = 0) {
  const one = sampleDiagram({ id: 'one', knownLengths: [known('a', { x: 100, y: 300 }, { x: 1900, y: 300 }, 900)] });
  const turn = rotationAbout({ x: 1000, y: 1300 }, angle);
  const inSecond = ({ x, y }: PhotoPoint): PhotoPoint => {
    const turned = transformPoint(turn, { x: x - 1700, y });
    return { x: turned.x * size, y: turned.y * size };
  };
  const seenInBoth = [
    { x: 1750, y: 240 },
    { x: 1820, y: 2400 },
    { x: 1900, y: 1300 },
  ];
  const pairs = seenInBoth.map((there, k) => {
    const here = inSecond(there);
    return { here: { x: here.x + (k === 2 ? slip : 0), y: here.y }, there };
  });
  return { one, inSecond, pairs };
}

describe('two halves joined over a gutter', () => {
  it.each([
    [1.31, 0.04],
    [0.7, -1.5],
    [1, Math.PI],
  ])('lie as one sheet when the second is %d as large and turned by %d', (size, angle) => {
    const { one, inSecond, pairs } = halves(size, angle);
    const two = sampleDiagram({ id: 'two', joined: { diagramId: 'one', pairs, size: 'fitted' } });
    const map = mapOf(two, [one, two]);
    const sheet = mapOf(one, [one, two]);
    for (const place of [
      { x: 1800, y: 500 },
      { x: 3300, y: 2100 },
    ]) {
      expect(distance(at(map, inSecond(place)), at(sheet, place))).toBeLessThan(1e-6);
    }
    const back = tableToPhoto(map, at(map, { x: 321, y: 654 }));
    expect(back).toEqual({ x: expect.closeTo(321, 6), y: expect.closeTo(654, 6) });
    expect(map.scaleBy).toBe('joined');
    expect(map.across).toBeCloseTo(0.5 / size, 9);
    expect(kinds(two, [one, two])).toEqual([]);
  });

  it('keeps its own scale when she wants that, and tells how far the places lie apart', () => {
    const { one, pairs } = halves(1, 0.02, 24);
    const own = { ...sampleDiagram({ id: 'two' }), scaleFrom: { diagramId: 'one', by: 'pixel' } } as const;
    const two: Diagram = { ...own, joined: { diagramId: 'one', pairs, size: 'own' } };
    const map = mapOf(two, [one, two]);
    expect(map.across).toBe(0.5);
    // 24 pixels are 12 mm; least squares share that among three places.
    const apart = Math.max(...(map.joint?.apart ?? []));
    expect(apart).toBeGreaterThan(5);
    expect(apart).toBeLessThan(12);
    expect(diagramFindings(two, set, [one, two])).toMatchObject([{ kind: 'halves-apart', weight: 'warn', apart }]);
  });

  it('stops her before there are two matching places, and lies where it was put', () => {
    const { one, pairs } = halves(1, 0.02);
    const joined = { diagramId: 'one', pairs: pairs.slice(0, 1), size: 'fitted' } as const;
    const two = sampleDiagram({ id: 'two', placedAt: { x: 700, y: 0 }, joined });
    expect(kinds(two, [one, two])).toEqual(['stop halves-not-joined']);
    expect(at(mapOf(two, [one, two]), { x: 0, y: 0 })).toEqual({ x: 700, y: 0 });
  });

  it('is shown as far as its own page, so that it does not cover the other half', () => {
    const { one, pairs } = halves(1, 0);
    const corners: Quad = [
      { x: 100, y: 100 },
      { x: 1900, y: 100 },
      { x: 1900, y: 2500 },
      { x: 100, y: 2500 },
    ];
    const two = sampleDiagram({ id: 'two', corners, joined: { diagramId: 'one', pairs, size: 'fitted' } });
    const box = shownBox(two, mapOf(two, [one, two]));
    expect(box?.minX).toBeCloseTo(at(mapOf(one, [one, two]), { x: 1800, y: 0 }).x, 0);
  });

  it('is one diagram with the other, which a piece that runs over both follows half by half', () => {
    const { one, inSecond, pairs } = halves(1.2, 0.1);
    const two = sampleDiagram({ id: 'two', joined: { diagramId: 'one', pairs, size: 'fitted' } });
    const diagrams = [one, two];
    expect(firstHalf(diagrams, 'two')).toBe(one);
    expect(halvesOf(diagrams, 'one')).toEqual([two, one]);
    const sheet = mapOf(one, diagrams);
    const printed = [
      { x: 900, y: 400 },
      { x: 2600, y: 500 },
      { x: 2500, y: 1900 },
      { x: 800, y: 1800 },
    ];
    const garment = garmentWith(
      diagrams,
      printed.map((place) => at(sheet, place)),
    );
    // A piece on the first half alone stays as it is when the second is laid otherwise.
    const alone = garmentWith(
      diagrams,
      [
        { x: 300, y: 400 },
        { x: 900, y: 500 },
        { x: 700, y: 900 },
      ].map((place) => at(sheet, place)),
    );
    const unjoined = { ...two, joined: { diagramId: 'one', pairs: [], size: 'fitted' } } as const;
    expect(carryPieces(alone, { ...alone, diagrams: [one, unjoined] }).pieces).toBe(alone.pieces);
    // The second half is moved on its own: its matching places were 40 pixels too high.
    const shifted = pairs.map(({ here, there }) => ({ here, there: { ...there, y: there.y + 40 } }));
    const mended = { ...two, joined: { diagramId: 'one', pairs: shifted, size: 'fitted' } } as const;
    const moved = carryPieces(garment, { ...garment, diagrams: [one, mended] });
    const now = mapOf(mended, [one, mended]);
    moved.pieces[0]?.corners.forEach((corner, k) => {
      const place = printed[k] as PhotoPoint;
      const wanted = place.x > 2000 ? at(now, inSecond(place)) : at(sheet, place);
      expect(distance(corner.at, wanted)).toBeLessThan(1e-6);
    });
  });
});

function garmentWith(diagrams: readonly Diagram[], ring: readonly TablePoint[] = []): Garment {
  let last = 0;
  const newId = () => `n${++last}`;
  const piece = pieceFromTrace(
    ring.map((place) => ({ at: place, through: [] })),
    { newId, name: 'Gore', diagramId: 'one' },
  );
  return {
    ...newGarment({ newId, today: '2026-01-02', name: 'G', shownIn: 'in' }),
    wearer: { name: '', sets: [set], currentSetId: set.id },
    diagrams,
    pieces: piece ? [piece] : [],
  };
}
