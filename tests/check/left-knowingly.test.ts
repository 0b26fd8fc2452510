import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../core/check/before-you-cut';
import { findingKey, mayBeLeft, partKnowingly } from '../../core/check/left-knowingly';
import { leaveKnowingly, takeUpAgain } from '../../core/garment/knowingly-edits';
import { linden } from '../garment/linden';

const straight = (curved: number, ringId = 'r'): Finding => ({
  kind: 'straight-waist',
  weight: 'stop',
  place: { kind: 'ring', ringId },
  straight: 317,
  curved,
  rise: 11,
  dip: 0,
});
const offBy = (beyondEase: number, seamId: string): Finding => ({
  kind: 'seam-off',
  weight: 'warn',
  place: { kind: 'edge', pieceId: 'p', edgeId: 'e' },
  seamId,
  one: 300,
  other: 300 - beyondEase,
  ease: 0,
  beyondEase,
});
const leaving = (finding: Finding) =>
  leaveKnowingly(linden(), { finding: findingKey(finding), date: '2026-03-04', why: 'as the plate has it' });

describe('partKnowingly', () => {
  it('leaves a straight waist, and takes it up again', () => {
    const garment = leaving(straight(325));
    const { open, left } = partKnowingly(garment, [straight(325), straight(325, 's')]);
    expect(open).toEqual([straight(325, 's')]);
    expect(left).toMatchObject([{ left: { why: 'as the plate has it' } }]);
    const [one] = left;
    if (!one) throw new Error('it is left');
    expect(partKnowingly(takeUpAgain(garment, one.left), [straight(325)]).left).toEqual([]);
  });

  it('returns when a number has changed by more than a sixteenth of an inch, whichever number', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 250, max: 900, noNaN: true }),
        fc.double({ min: -9, max: 9, noNaN: true }),
        (at, by) => {
          fc.pre(Math.abs(Math.abs(by) - 1.5875) > 0.01);
          const { left } = partKnowingly(leaving(straight(at)), [straight(at + by)]);
          expect(left).toHaveLength(Math.abs(by) < 1.5875 ? 1 : 0);
        },
      ),
    );
  });

  it('never hides another: of two seams at one place only the one that was left is', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.6, max: 6, noNaN: true }), fc.boolean(), (by, first) => {
        const both = [offBy(by, 'a'), offBy(by, 'b')] as const;
        const chosen = both[first ? 0 : 1];
        const { open, left } = partKnowingly(leaving(chosen), both);
        expect(left.map(({ finding }) => finding)).toEqual([chosen]);
        expect(open).toEqual([both[first ? 1 : 0]]);
      }),
    );
  });

  it('returns as soon as a warning has become a stop', () => {
    const grave: Finding = { ...offBy(5, 'a'), weight: 'stop' };
    expect(partKnowingly(leaving(offBy(5, 'a')), [grave]).open).toEqual([grave]);
  });

  it('does not let an unsolved scale be left, nor a file say that it is', () => {
    const unsolved: Finding = { kind: 'no-known-length', weight: 'stop', place: { kind: 'diagram', diagramId: 'd' } };
    expect(mayBeLeft(unsolved)).toBe(false);
    expect(partKnowingly(leaving(unsolved), [unsolved]).open).toEqual([unsolved]);
    for (const finding of ['', 'null', '[]', '[1,2,null]', '["straight-waist","[]",{}]', '{']) {
      const garment = leaveKnowingly(linden(), { finding, date: '2026-03-04', why: 'x' });
      expect(partKnowingly(garment, [straight(325)]).open).toHaveLength(1);
    }
  });
});
