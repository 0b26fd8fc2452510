import { describe, expect, it } from 'vitest';
import { type SlipSizes, slip } from '../../core/blocks/slip';
import { plainNames, sewnRound } from './body-checks';
import { upperBody } from './upper-body';

const sizes: SlipSizes = {
  ...upperBody,
  hip: 981,
  hipDepth: 204,
  length: 690,
  hem: 1810,
  gores: 4,
  ease: { bust: 68, waist: 27, hip: 55 },
  joined: { at: 'waist' },
  opens: 'back',
};

/** The foot of the bodice and the top of the skirt, sewn, all the way round. */
function joint(changed: Partial<SlipSizes>) {
  const made = slip({ ...sizes, ...changed }, plainNames());
  if (made.kind !== 'slip') throw new Error(made.why);
  return [
    sewnRound(made.pieces, ({ name }) => name === 'waist-seam'),
    sewnRound(made.pieces, ({ role }) => role === 'waist'),
  ] as const;
}

describe('slip', () => {
  it('joined at the waist has bodice and skirt of the waist and its ease', () => {
    for (const length of joint({})) expect(Math.abs(length - 730)).toBeLessThan(0.05);
  });

  it('joined below the bust has bodice and skirt of that girth, and the skirt is longer', () => {
    const joined = { at: 'underbust', underbust: 781 } as const;
    for (const length of joint({ joined })) expect(Math.abs(length - 808)).toBeLessThan(0.05);
    const made = slip({ ...sizes, joined }, plainNames());
    const gore = made.kind === 'slip' ? made.pieces.at(-1) : undefined;
    // 467 - 262 - 3 in above the waist, and 690 below it.
    const straight = gore?.grain && gore.grain.to.y - gore.grain.from.y;
    expect(straight).toBeCloseTo((690 + 467 - 262 - 76.2) * 0.6, 6);
  });

  it('passes the refusal of its bodice and of its skirt on', () => {
    expect(slip({ ...sizes, neck: 0 }, plainNames())).toEqual({ kind: 'no-bodice', why: 'not-positive' });
    expect(slip({ ...sizes, length: 150 }, plainNames())).toEqual({ kind: 'no-gore', why: 'hip-below-hem' });
  });
});
