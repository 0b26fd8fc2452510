import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { pathLength } from '../../core/geometry/path';
import { netEdgeLength } from '../../core/seams/edge-length';
import { walkedEdge } from '../../core/seams/walk';
import { addGathers, gatherEdge, gatherSums } from '../../core/shaping/gathers';
import { levelLine } from '../../core/shaping/level-line';
import { spread } from '../../core/shaping/spread';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from './traced';

const panel = traced('panel', [
  [[0, 0], 'waist'],
  [[inches(36), 0], 'seam'],
  [[inches(36), inches(25)], 'hem'],
  [[0, inches(25)], 'fold'],
]);
const [waist, , hem] = panel.edges.map(({ id }) => id) as [string, string, string];

describe('gatherSums({ cut, into })', () => {
  it('draws up 22 in when 36 go into 14', () => {
    const sums = gatherSums({ cut: inches(36), into: inches(14) });
    expect((sums?.takes ?? 0) / MM_PER_INCH).toBeCloseTo(22, 9);
    expect(sums?.ratio).toBeCloseTo(18 / 7, 9);
    expect(gatherSums({ cut: 30, into: 40 })).toBeUndefined();
    expect(gatherSums({ cut: 30, into: 0 })).toBeUndefined();
  });
});

describe('gatherEdge(piece, wish)', () => {
  it('puts a 36 in waist into 14: the seam, the girth and the notches on it are as sewn, the hip below stays', () => {
    const notched = { ...panel, notches: [{ id: 'n', edgeId: waist, along: inches(9), count: 1 as const }] };
    const made = gatherEdge(notched, { id: 'g', edgeId: waist, into: inches(14) });
    if ('why' in made) throw new Error(made.why);
    const walked = walkedEdge(made, waist, 'forwards');
    expect((walked?.length ?? 0) / MM_PER_INCH).toBeCloseTo(14, 9);
    expect((walked?.notches[0]?.along ?? 0) / MM_PER_INCH).toBeCloseTo(3.5, 6);
    expect((levelLine(made, 0)?.length ?? 0) / MM_PER_INCH).toBeCloseTo(14, 9);
    expect((levelLine(made, inches(8))?.length ?? 0) / MM_PER_INCH).toBeCloseTo(36, 6);
  });

  it('gathers a stretch beside a dart, and the same id again in its place', () => {
    const dart = {
      id: 'd',
      edgeId: waist,
      along: inches(30),
      width: inches(1),
      point: { x: inches(30), y: inches(5) },
    };
    const wish = { id: 'g', edgeId: waist, from: inches(3), to: inches(13), into: inches(4) };
    const once = gatherEdge({ ...panel, darts: [dart] }, wish);
    if ('why' in once) throw new Error(once.why);
    const again = gatherEdge(once, { ...wish, into: inches(7) });
    if ('why' in again) throw new Error(again.why);
    expect(again.fullness).toHaveLength(1);
    expect((netEdgeLength(again, waist) ?? 0) / MM_PER_INCH).toBeCloseTo(36 - 1 - 3, 9);
  });

  it('goes along when the piece is slashed through it: the waist is cut longer and sewn no longer', () => {
    const made = gatherEdge(panel, { id: 'g', edgeId: waist, into: inches(14) });
    if ('why' in made) throw new Error(made.why);
    const wider = spread(made, {
      hinge: { edgeId: hem, along: inches(20) },
      open: { edgeId: waist, along: inches(16) },
      by: { kind: 'opening', opening: inches(2) },
    });
    if ('why' in wider) throw new Error(wider.why);
    expect(pathLength(outlineOf(wider).edges[0] ?? [])).toBeGreaterThan(inches(37.9));
    expect(netEdgeLength(wider, waist)).toBeCloseTo(inches(14), 3);
  });

  it('refuses a stretch that is not there, and nothing to draw up', () => {
    expect(gatherEdge(panel, { id: 'g', edgeId: 'x', into: 5 })).toEqual({
      kind: 'not-gathered',
      why: 'no-such-stretch',
    });
    expect(gatherEdge(panel, { id: 'g', edgeId: waist, to: 9999, into: 5 })).toEqual({
      kind: 'not-gathered',
      why: 'no-such-stretch',
    });
    expect(gatherEdge(panel, { id: 'g', edgeId: waist, into: inches(36) })).toEqual({
      kind: 'not-gathered',
      why: 'not-longer',
    });
  });
});

describe('addGathers(piece, wish)', () => {
  it('widens first: 18 in more over six slashes, sewn into the 36 it was', () => {
    const made = addGathers(panel, { id: 'g', open: waist, far: hem, hinge: 'none', places: 6, more: inches(18) });
    if ('why' in made) throw new Error(made.why);
    expect(pathLength(outlineOf(made).edges[0] ?? [])).toBeCloseTo(inches(54), 1);
    expect(netEdgeLength(made, waist)).toBeCloseTo(inches(36), 6);
  });
});
