import { expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { readGarment } from '../../core/garment/schema';
import { idsInOrder, linden } from './linden';

/** The sample with what stands at a place, as in `pieces.1.edges`, exchanged for something else. */
function spoilt(place: string, value: unknown): unknown {
  const garment = structuredClone(linden());
  const keys = place.split('.');
  const last = keys.pop() as string;
  let inner = garment as unknown as Record<string, unknown>;
  for (const key of keys) inner = inner[key] as Record<string, unknown>;
  inner[last] = value;
  return garment;
}

it('readGarment accepts the demo garment as it is made', () => {
  const garment = lindenGarment({ newId: idsInOrder(), today: '2026-11-25', photoId: 'plate' });
  expect(readGarment(garment)).toEqual({ kind: 'garment', garment });
});

it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e6 + 1, '12', null])(
  'readGarment refuses %s as a coordinate and says where',
  (x) => {
    const where = 'pieces.0.corners.2.at.x';
    expect(readGarment(spoilt(where, x))).toEqual({ kind: 'not-a-garment', where, why: 'value' });
  },
);

it('readGarment refuses the infinity that JSON can smuggle in', () => {
  const text = JSON.stringify(linden()).replace('"ease":12.7', '"ease":1e999');
  expect(readGarment(JSON.parse(text))).toMatchObject({ kind: 'not-a-garment', why: 'value' });
});

it.each([
  ['a field set to nothing', 'pieces.0.grain', undefined],
  ['a role that is none', 'pieces.0.edges.2.role', 'lining'],
  ['no such day', 'made', '2026-02-30'],
  ['a measure of no length', 'wearer.sets.0.measures.waist.length', 0],
  ['words beyond any use', 'remarks', 'x'.repeat(10_001)],
])('readGarment refuses %s and says where', (_, where, value) => {
  expect(readGarment(spoilt(where, value))).toMatchObject({ kind: 'not-a-garment', where, why: 'value' });
});

it('readGarment refuses a field it does not know', () => {
  const unknown = { kind: 'not-a-garment', why: 'unknown-field' };
  expect(readGarment(spoilt('colour', 'green'))).toMatchObject(unknown);
  const tail = spoilt('wearer.sets.0.measures', { tail: { length: 90 } });
  expect(readGarment(tail)).toMatchObject({ ...unknown, where: 'wearer.sets.0.measures' });
});

it.each([
  ['two sets', 'wearer.sets.0.id', 'set-autumn', 'wearer.sets'],
  ['two pieces', 'pieces.1.id', 'panel', 'pieces'],
  ['two corners', 'pieces.1.corners.3.id', 'b0', 'pieces.1.corners'],
  ['two edges', 'pieces.1.edges.2.id', 'be0', 'pieces.1.edges'],
  ['a dart and a notch', 'pieces.0.darts.0.id', 'notch-hip', 'pieces.0.marks'],
  ['two known lengths', 'diagrams.0.knownLengths.1.id', 'known-front', 'diagrams.0.knownLengths'],
  ['two levels', 'rings.0.levels.1.id', 'l-waist', 'rings.0.levels'],
  ['two members', 'rings.0.members.0.pieceId', 'band', 'rings.0.members'],
])('readGarment refuses %s of one id', (_, place, id, where) => {
  expect(readGarment(spoilt(place, id))).toEqual({ kind: 'not-a-garment', where, why: 'same-id' });
});

it.each([
  ['a set in use', 'wearer.currentSetId', 'wearer.currentSetId'],
  ['the edge of a notch', 'pieces.0.notches.0.edgeId', 'pieces.0.notches'],
  ['the edge of a dart', 'pieces.0.darts.0.edgeId', 'pieces.0.darts'],
  ['the diagram of a piece', 'pieces.0.diagramId', 'pieces.0.diagramId'],
  ['the piece of a ring', 'rings.0.members.1.pieceId', 'rings.0.members'],
])('readGarment refuses %s that is not there', (_, place, where) => {
  expect(readGarment(spoilt(place, 'gone'))).toEqual({ kind: 'not-a-garment', where, why: 'loose-end' });
});

it('readGarment refuses corners without their edges, and two corners with straight edges only', () => {
  const { edges, corners } = linden().pieces[1] as ReturnType<typeof linden>['pieces'][number];
  expect(readGarment(spoilt('pieces.1.edges', edges.slice(1)))).toMatchObject({
    where: 'pieces.1.edges',
    why: 'value',
  });
  const two = spoilt('pieces.1.edges', edges.slice(2)) as { pieces: { corners: unknown }[] };
  Object.assign(two.pieces[1] as object, { corners: corners.slice(2) });
  expect(readGarment(two)).toMatchObject({ where: 'pieces.1.corners', why: 'value' });
});

it('readGarment refuses a step of a time that no calendar can write', () => {
  const steps = (time: number) => readGarment({ ...linden(), steps: [{ label: 'move', time, pieceIds: [] }] });
  expect(steps(1e14).kind).toBe('garment');
  expect(new Date(1e14).getUTCFullYear()).toBe(5138);
  for (const time of [1e14 + 1, Number.MAX_SAFE_INTEGER, -1]) {
    expect(steps(time)).toMatchObject({ where: 'steps.0.time', why: 'value' });
  }
});

it('readGarment allows 2,000 points on a piece and refuses one more', () => {
  const points = (count: number) => Array.from({ length: count }, (_, index) => ({ x: index, y: 2 * index }));
  const where = 'pieces.0.edges.1.shape.through';
  // Four corners and the one point of the hem belong to the piece too.
  expect(readGarment(spoilt(where, points(1995))).kind).toBe('garment');
  expect(readGarment(spoilt(where, points(1996)))).toMatchObject({ where: 'pieces.0.corners', why: 'value' });
});
