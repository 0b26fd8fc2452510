import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { broughtBack } from '../../core/garment/bring-back';
import type { Garment } from '../../core/garment/garment';
import { readGarment } from '../../core/garment/schema';
import { garmentOfVersion, nextVersion, type StoredVersion, versionNow } from '../../core/garment/version';
import { versionSaid } from '../../core/garment/version-said';
import { setMeasure } from '../../core/garment/wearer-edits';
import { randomEdit, seeded } from '../storage/random-edits';
import { linden } from './linden';

const head = { name: '', made: '2026-11-07', note: '' };

function keptAll(garments: readonly Garment[]): StoredVersion[] {
  return garments.map((garment, index) => {
    const before = garments[index - 1];
    return nextVersion(garment, head, before && { number: index, garment: before });
  });
}

describe('broughtBack', () => {
  it('is the draft of that version by its mark, whichever of many, and can be read again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 30 }), fc.integer({ min: 1, max: 30 }), (seed, number) => {
        const random = seeded(seed);
        const edit = () => randomEdit(random);
        const garments = [linden()];
        while (garments.length < 30) garments.push(edit()(garments.at(-1) as Garment));
        // As stored and read again, keys in whatever order that leaves them.
        const versions: StoredVersion[] = JSON.parse(JSON.stringify(keptAll(garments)));
        const version = garmentOfVersion(versions, number);
        expect(version).toEqual(garments[number - 1]);
        if (!version) throw new Error('that version is there');
        const back = broughtBack(garments.at(-1) as Garment, version, { number, newest: 30 });
        expect(versionNow(versions, back)?.mark).toBe(versions[number - 1]?.mark);
        expect(back.pieces).toEqual(garments[number - 1]?.pieces);
        expect(readGarment(back).kind).toBe('garment');
      }),
      { numRuns: 12 },
    );
  });

  it('forgets nothing that happened since: measures, what was printed and cut, fittings, notes', () => {
    const then = linden();
    const printing = { id: 'late', date: '2026-11-07', mark: 'ABCDE', pages: [] };
    const now: Garment = {
      ...setMeasure(then, 'waist', { length: 733 }),
      printings: [printing],
      cuttings: [{ id: 'cut', date: '2026-11-08', version: 1, from: 'cloth', pieces: [] }],
      remarks: 'later',
      diagrams: [...then.diagrams, ...then.diagrams.slice(0, 1).map((one) => ({ ...one, id: 'later' }))],
    };
    const back = broughtBack(now, then, { number: 1, newest: 3 });
    expect(back.wearer).toBe(now.wearer);
    expect(back).toMatchObject({ printings: [printing], cuttings: now.cuttings, remarks: 'later' });
    expect(back.diagrams.map(({ id }) => id)).toEqual([...then.diagrams.map(({ id }) => id), 'later']);
  });

  it('a change pinned at a fitting counts as carried over just when it was in that version', () => {
    const then = linden();
    const mockups = then.mockups ?? [];
    const state = (garment: Garment, id: string) =>
      garment.mockups?.flatMap(({ pinned }) => pinned).find((one) => one.id === id)?.state.kind;
    const carried = { kind: 'carried', date: '2026-11-09' } as const;
    const now: Garment = {
      ...then,
      mockups: mockups.map((mockup) => ({
        ...mockup,
        pinned: mockup.pinned.map((one) => ({
          ...one,
          state: one.id === 'pin-hem' ? ({ kind: 'noted' } as const) : one.id === 'pin-point' ? one.state : carried,
        })),
      })),
    };
    expect([state(then, 'pin-side'), state(then, 'pin-hem')]).toEqual(['noted', 'carried']);
    const back = broughtBack(now, then, { number: 1, newest: 1 });
    expect(['pin-side', 'pin-hem', 'pin-knee', 'pin-point'].map((id) => state(back, id))).toEqual([
      'noted',
      'carried',
      'noted',
      'declined',
    ]);
  });
});

describe('versionSaid', () => {
  const edited = (garment: Garment, remarks: string): Garment => ({
    ...garment,
    pieces: garment.pieces.map((piece) => ({ ...piece, remarks })),
  });
  const [one, two, three] = [linden(), edited(linden(), 'two'), edited(linden(), 'three')];
  const versions = keptAll([one, two, three]);

  it('names the version whose pieces these are, and otherwise the one they came from', () => {
    expect(versionSaid([], one)).toMatchObject({ kind: 'changed' });
    expect(versionSaid([], one)).not.toHaveProperty('since');
    expect(versionSaid(versions, two)).toMatchObject({ kind: 'kept', number: 2 });
    expect(versionSaid(versions, edited(one, 'other'))).toMatchObject({ kind: 'changed', since: 3 });
  });

  it('counts from a version brought back until a newer one is kept', () => {
    const back = edited(broughtBack(three, one, { number: 1, newest: 3 }), 'other');
    expect(versionSaid(versions, back)).toMatchObject({ kind: 'changed', since: 1 });
    const four = nextVersion(edited(one, 'four'), head, { number: 3, garment: three });
    expect(versionSaid([...versions, four], back)).toMatchObject({ kind: 'changed', since: 4 });
  });
});
