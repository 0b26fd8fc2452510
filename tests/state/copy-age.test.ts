import { describe, expect, it } from 'vitest';
import { copyAge, isOld } from '../../app/state/copy-age';

const DAY = 86_400_000;
const now = Date.UTC(2026, 2, 20, 9);

describe('copyAge(copied, seq, now)', () => {
  it('counts whole days and the entries since', () => {
    expect(copyAge({ at: now - 9.7 * DAY, seq: 41 }, 58, now)).toEqual({ kind: 'copied', days: 9, changes: 17 });
  });

  it('never counts backwards, as where a clock was set back', () => {
    expect(copyAge({ at: now + 3 * DAY, seq: 12 }, 5, now)).toEqual({ kind: 'copied', days: 0, changes: 0 });
  });

  it('counts everything where there is no copy', () => {
    expect(copyAge(undefined, 23, now)).toEqual({ kind: 'none', changes: 23 });
  });
});

describe('isOld(age)', () => {
  it.each([
    [{ kind: 'none', changes: 29 }, false],
    [{ kind: 'none', changes: 30 }, true],
    [{ kind: 'copied', days: 400, changes: 0 }, false],
    [{ kind: 'copied', days: 6, changes: 99 }, false],
    [{ kind: 'copied', days: 7, changes: 1 }, true],
    [{ kind: 'copied', days: 0, changes: 100 }, true],
  ] as const)('%o: %s', (age, old) => {
    expect(isOld(age)).toBe(old);
  });
});
