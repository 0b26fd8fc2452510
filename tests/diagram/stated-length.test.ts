import { describe, expect, it } from 'vitest';
import { diagramMap } from '../../core/diagram/diagram-map';
import { fullSizeLength } from '../../core/diagram/stated-length';
import type { StatedLength } from '../../core/garment/diagram';
import { readLength } from '../../core/units/read-length';
import { sampleDiagram, set } from './sample-diagram';

describe('fullSizeLength', () => {
  it('of a scale bar is its intervals put together: six nails of 2 1/4 in are 13 1/2 in', () => {
    expect(fullSizeLength({ kind: 'bar', intervals: 6, each: 57.15 }, set)).toEqual({
      kind: 'full-size',
      length: expect.closeTo(13.5 * 25.4, 9),
    });
  });

  it('a quarter of a waist of 28 in and half an inch is 7 1/2 in', () => {
    const says = { kind: 'share', measure: 'waist', parts: 1, of: 4, ease: 12.7 } as const;
    expect(fullSizeLength(says, set)).toEqual({ kind: 'full-size', length: expect.closeTo(190.5, 9) });
  });

  it('names the measure that is missing, and refuses a length that comes to nothing or less', () => {
    expect(fullSizeLength({ kind: 'share', measure: 'neck', parts: 1, of: 6, ease: 0 }, set)).toEqual({
      kind: 'measure-missing',
      measure: 'neck',
    });
    expect(fullSizeLength({ kind: 'share', measure: 'waist', parts: 1, of: 8, ease: -120 }, set)).toEqual({
      kind: 'not-positive',
    });
    expect(fullSizeLength({ kind: 'length', length: 0 }, set)).toEqual({ kind: 'not-positive' });
  });

  it('four ways of saying one scale give the same scale to the last of nine figures', () => {
    const run = { from: { x: 90, y: 100 }, to: { x: 502, y: 100 } };
    const written = (text: string): StatedLength => {
      const read = readLength(text, { bare: 'in' });
      if (read.kind === 'refused') throw new Error(read.why);
      return { kind: 'length', length: read.length };
    };
    // A quarter of 28 in is 7 in.
    const quarter = { kind: 'share', measure: 'waist', parts: 1, of: 4, ease: 0 } as const;
    for (const says of [written('7'), written('17.78 cm'), written('7/12 ft'), quarter]) {
      const map = diagramMap(sampleDiagram({ knownLengths: [{ id: 'k', ...run, says }] }), set);
      if (map.kind !== 'map') throw new Error(map.why);
      // 412 px that are 7 in: 58.857… px an inch (arithmetic).
      expect(Math.abs(25.4 / map.across - 412 / 7)).toBeLessThan(1e-9);
    }
  });
});
