import { describe, expect, it } from 'vitest';
import { type Bodice, type BodiceMeasures, bodice } from '../../core/blocks/bodice';
import { distance } from '../../core/geometry/point';
import { inches, MM_PER_INCH } from '../../core/units/inch';

/**
 * The 36 figure of I. Rosenfeld, The Practical Designer (1918): bust 39, waist 25, back waist length 15 1/2, back depth 7.
 * The measures the lesson does not give are set beside them.
 */
const figure36: BodiceMeasures = {
  bust: inches(39),
  waist: inches(25),
  backWaistLength: inches(15.5),
  frontWaistLength: inches(17.75),
  shoulder: inches(5),
  acrossBack: inches(13),
  acrossFront: inches(12.5),
  neck: inches(14),
  bustDepth: inches(10.25),
  bustSpan: inches(7.5),
};
const ease = { bust: inches(2), waist: inches(1) };

function drawn(changed: Partial<BodiceMeasures> = {}): Bodice {
  const made = bodice({ ...figure36, ...changed }, ease);
  if (made.kind !== 'bodice') throw new Error(made.why);
  return made;
}

describe('bodice', () => {
  it('has the underarm 7 in below the nape on the side of 8 1/2 (Rosenfeld 1918)', () => {
    expect(drawn().side / MM_PER_INCH).toBeCloseTo(8.5, 9);
  });

  it('takes what the front has more than the back into a side dart', () => {
    const { back, front } = drawn();
    const longer = figure36.frontWaistLength - (figure36.backWaistLength - back.sideNeck.y);
    const [upper, lower] = front.sideDart?.mouth ?? [];
    expect(upper && lower && distance(upper, lower)).toBeCloseTo(longer, 9);
  });

  it('ends its darts an inch short of the bust point, the side dart at its level', () => {
    const { front } = drawn();
    const { bustPoint, sideDart, waistDart } = front;
    expect(bustPoint.x).toBeCloseTo(inches(3.75), 9);
    expect((sideDart?.dartPoint.x ?? 0) - bustPoint.x).toBeCloseTo(inches(1), 6);
    expect(sideDart?.dartPoint.y).toBeCloseTo(bustPoint.y, 3);
    expect((waistDart?.point.y ?? 0) - bustPoint.y).toBeGreaterThan(inches(0.99));
    expect(Math.abs((waistDart?.point.x ?? 0) - bustPoint.x)).toBeLessThan(inches(0.25));
  });

  it('comes to waist and ease once its darts are sewn', () => {
    const { back, front } = drawn();
    const net = [back, front].map(({ waist, waistDart }) => waist.length - (waistDart?.width ?? 0));
    expect(2 * ((net[0] ?? 0) + (net[1] ?? 0))).toBeCloseTo(inches(26), 9);
  });

  it('has no waist darts on a body as wide at the waist as at the bust', () => {
    const { back, front } = drawn({ waist: inches(42) });
    expect([back.waistDart, front.waistDart]).toEqual([undefined, undefined]);
  });

  it('asks about a front that is not longer than the back, and has no side dart', () => {
    const { front, questions } = drawn({ frontWaistLength: inches(16) });
    expect(front.sideDart).toBeUndefined();
    const [question] = questions;
    if (question?.kind !== 'no-bust-dart') throw new Error('no question');
    expect(question.front).toBe(inches(16));
    expect(question.back).toBeGreaterThan(inches(16) - inches(1 / 4));
  });

  it('asks about a bust too near the underarm for its dart', () => {
    const { questions } = drawn({ bustDepth: inches(6) });
    expect(questions.map(({ kind }) => kind)).toEqual(['bust-dart-off']);
  });

  it.each([
    [{ acrossBack: inches(20.5) }, 'across-too-wide'],
    [{ bustDepth: inches(18) }, 'bust-below-waist'],
    [{ shoulder: inches(22) }, 'armhole-too-shallow'],
    [{ neck: 0 }, 'not-positive'],
    [{ bustSpan: inches(19) }, 'dart-too-wide'],
  ] as const)('refuses %o: %s', (changed, why) => {
    expect(bodice({ ...figure36, ...changed }, ease)).toEqual({ kind: 'no-bodice', why });
  });
});
