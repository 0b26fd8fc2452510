import { describe, expect, it } from 'vitest';
import { SCHEMA } from '../../core/garment/garment';
import { knownParts } from '../../core/garment/known-parts';
import { readGarment } from '../../core/garment/schema';
import { linden } from './linden';

/** The garment as a newer program might have written it: what is below is invented for the purpose. */
// biome-ignore lint/suspicious/noExplicitAny: of a shape that nobody knows yet
function newer(change: (garment: Record<string, any>) => void): unknown {
  const garment = JSON.parse(JSON.stringify({ ...linden(), schema: SCHEMA + 1 }));
  change(garment);
  return garment;
}

describe('knownParts(value)', () => {
  it('gives a garment of this shape back as it is', () => {
    expect(knownParts(linden())).toEqual({ garment: linden(), leftOut: 0 });
  });

  it('leaves out fields it does not know, and nothing else', () => {
    const value = newer((garment) => {
      garment.dye = { recipe: 'walnut', days: 3 };
      garment.pieces[0].edges[1].stitch = 'felled';
      garment.wearer.posture = 'upright';
    });
    expect(knownParts(value)).toEqual({ garment: linden(), leftOut: 3 });
  });

  it('draws an edge of an unknown shape straight', () => {
    const value = newer((garment) => {
      garment.pieces[0].edges[0].shape = { kind: 'arc', radius: 314 };
    });
    const known = knownParts(value);
    expect(known?.garment.pieces[0]?.edges[0]?.shape).toEqual({ kind: 'straight' });
    expect(known?.garment.pieces[0]?.corners).toEqual(linden().pieces[0]?.corners);
    expect(known && readGarment(known.garment).kind).toBe('garment');
  });

  it('leaves out a piece it cannot understand, and what speaks of it', () => {
    const value = newer((garment) => {
      garment.pieces[0].cut.how = 'on the bias fold';
      garment.pieces.push({ ...JSON.parse(JSON.stringify(linden().pieces[0])), id: 'second', name: 'Second' });
    });
    const known = knownParts(value);
    expect(known?.garment.pieces.map(({ id }) => id)).toEqual(['band', 'second']);
    expect(JSON.stringify(known?.garment.rings)).not.toContain('"panel"');
    expect(known && readGarment(known.garment).kind).toBe('garment');
  });

  it('takes the usual paper for a size it does not know', () => {
    const value = newer((garment) => {
      garment.paper.size = 'a-minus-1';
    });
    expect(knownParts(value)?.garment.paper.size).toBe('a4');
    expect(knownParts(value)?.garment.pieces).toEqual(linden().pieces);
  });

  it.each([undefined, null, 7, 'a garment', [], {}, { schema: 9, pieces: 'all' }])('is nothing of %o', (value) => {
    expect(knownParts(value)).toBeUndefined();
  });
});
