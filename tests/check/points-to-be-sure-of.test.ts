import { describe, expect, it } from 'vitest';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { pointsToBeSureOf } from '../../core/check/points-to-be-sure-of';
import type { Garment } from '../../core/garment/garment';
import { versionMark } from '../../core/garment/version-mark';
import { linden } from '../garment/linden';

/** The sample garment with nothing pinned and nothing printed. */
function bare(): Garment {
  const { mockups: _, printings: __, ...garment } = linden();
  return garment;
}

const pointIn = (garment: Garment, name: string) => {
  const point = pointsToBeSureOf(garment).find((one) => one.name === name);
  if (!point) throw new Error(`${name} is a point`);
  return point;
};

describe('pointsToBeSureOf', () => {
  it('has every finding under one point, once', () => {
    const { scaleProof: _, ...garment } = linden();
    const listed = pointsToBeSureOf({ ...garment, rings: [] }).flatMap(({ open, left }) => [
      ...open,
      ...left.map(({ finding }) => finding),
    ]);
    const all = beforeYouCut({ ...garment, rings: [] });
    expect(all.length).toBeGreaterThan(1);
    expect(listed).toHaveLength(all.length);
    expect(new Set(listed.map((one) => JSON.stringify(one)))).toEqual(new Set(all.map((one) => JSON.stringify(one))));
  });

  it('says that no lay has been made, whatever she wrote of her cloth', () => {
    expect(pointIn({ ...linden(), cloth: '7 yards of drill' }, 'lay-made')).toMatchObject({
      state: 'not-looked-at',
      figures: { said: '7 yards of drill' },
    });
  });

  it('holds a printing against the pieces as they are now', () => {
    const printed = (mark: string) => ({
      ...bare(),
      printings: [{ id: 'p', date: '2026-03-04', mark, pages: [] }],
    });
    expect(pointIn(bare(), 'print-current').state).toBe('not-looked-at');
    expect(pointIn(printed(versionMark(bare())), 'print-current').state).toBe('settled');
    expect(pointIn(printed('23456'), 'print-current').state).toBe('open');
  });

  it('is open while anything pinned is only noted', () => {
    const withState = (state: 'noted' | 'declined'): Garment => ({
      ...bare(),
      mockups: [
        {
          id: 'm',
          name: '',
          made: '2026-03-04',
          version: 1,
          mark: '23456',
          note: '',
          pinned: [
            {
              id: 'c',
              what: { kind: 'length', pieceIds: [], at: { kind: 'hem' }, by: 7 },
              side: 'both',
              note: '',
              state: state === 'noted' ? { kind: 'noted' } : { kind: 'declined', date: '2026-03-05', reason: 'x' },
            },
          ],
        },
      ],
    });
    expect(pointIn(bare(), 'pinned-settled').state).toBe('not-looked-at');
    expect(pointIn(withState('noted'), 'pinned-settled').state).toBe('open');
    expect(pointIn(withState('declined'), 'pinned-settled').state).toBe('settled');
  });
});
