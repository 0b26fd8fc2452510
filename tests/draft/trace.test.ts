import { describe, expect, it } from 'vitest';
import {
  canClose,
  closesAt,
  followsBackTo,
  lengthBeingDrawn,
  pathsOf,
  ringOf,
  type Trace,
  withFollowed,
  withoutLast,
  withPoint,
} from '../../app/draft/trace';

const a = { x: 0, y: 0 };
const b = { x: 300, y: 0 };
const c = { x: 300, y: 400 };
const bow = { x: 180, y: 330 };

function traced(...points: readonly (readonly [{ x: number; y: number }, 'corner' | 'curve'])[]): Trace {
  return points.reduce<Trace>((trace, [at, kind]) => withPoint(trace, at, kind), []);
}

describe('withPoint', () => {
  it('makes the first point a corner whatever was asked', () => {
    expect(traced([a, 'curve'])).toEqual([{ at: a, kind: 'corner' }]);
  });

  it('takes two taps on one spot for one', () => {
    const trace = traced([a, 'corner'], [b, 'corner']);
    expect(withPoint(trace, { x: 300.2, y: 0.2 }, 'curve')).toBe(trace);
    expect(withPoint(trace, { x: 300.5, y: 0.2 }, 'curve')).toHaveLength(3);
  });

  it('is undone by withoutLast', () => {
    const trace = traced([a, 'corner'], [b, 'corner']);
    expect(withoutLast(withPoint(trace, c, 'curve'))).toEqual(trace);
    expect(withoutLast([])).toEqual([]);
  });
});

describe('withFollowed', () => {
  const over = [
    { at: b, kind: 'corner' },
    { at: bow, kind: 'curve' },
  ] as const;

  it('puts what the line was followed over before the point, told from points put down', () => {
    expect(withFollowed(traced([a, 'corner']), over, c, 'curve')).toEqual([
      { at: a, kind: 'corner' },
      { at: b, kind: 'corner', followed: true },
      { at: bow, kind: 'curve', followed: true },
      { at: c, kind: 'curve' },
    ]);
  });

  it('follows nothing to the first point, nor from a point to itself', () => {
    expect(withFollowed([], over, c, 'curve')).toEqual([{ at: c, kind: 'corner' }]);
    const trace = traced([a, 'corner'], [b, 'corner']);
    expect(withFollowed(trace, over, { x: 300.2, y: 0.2 }, 'corner')).toBe(trace);
  });

  it('is undone by withoutLast, one press at a time', () => {
    const one = withFollowed(traced([a, 'corner']), over, c, 'corner');
    const two = withFollowed(one, [{ at: { x: 70, y: 350 }, kind: 'curve' }], { x: 11, y: 210 }, 'curve');
    expect(withoutLast(two)).toEqual(one);
    expect(withoutLast(one)).toEqual(traced([a, 'corner']));
    expect(withoutLast(traced([a, 'corner']))).toEqual([]);
  });
});

describe('followsBackTo', () => {
  it('is on the first point, within reach, from two points on: the line may bring the corners that lack', () => {
    const trace = traced([a, 'corner'], [b, 'corner']);
    expect(followsBackTo(trace, { x: 3, y: 4 }, 5)).toBe(true);
    expect(followsBackTo(trace, { x: 3, y: 4 }, 4.9)).toBe(false);
    expect(followsBackTo(trace, b, 5)).toBe(false);
    expect(followsBackTo(traced([a, 'corner']), a, 5)).toBe(false);
    expect(followsBackTo([], a, 5)).toBe(false);
  });
});

describe('canClose', () => {
  it('asks for three corners, or two with something curved between them', () => {
    expect(canClose(traced([a, 'corner'], [b, 'corner']))).toBe(false);
    expect(canClose(traced([a, 'corner'], [b, 'curve'], [c, 'curve']))).toBe(false);
    expect(canClose(traced([a, 'corner'], [b, 'corner'], [bow, 'curve']))).toBe(true);
    expect(canClose(traced([a, 'corner'], [b, 'corner'], [c, 'corner']))).toBe(true);
  });
});

describe('closesAt', () => {
  it('is on the first corner, within reach, and only once it can close', () => {
    const trace = traced([a, 'corner'], [b, 'corner'], [c, 'corner']);
    expect(closesAt(trace, { x: 3, y: 4 }, 5)).toBe(true);
    expect(closesAt(trace, { x: 3, y: 4 }, 4.9)).toBe(false);
    expect(closesAt(withoutLast(trace), a, 5)).toBe(false);
    expect(closesAt([], a, 5)).toBe(false);
  });
});

describe('ringOf', () => {
  it('gives each edge the curve points between its corners, the last edge those before closing', () => {
    const end = { x: 20, y: 210 };
    const trace = traced([a, 'corner'], [b, 'corner'], [c, 'corner'], [bow, 'curve'], [end, 'curve']);
    expect(ringOf(trace)).toEqual([
      { at: a, through: [] },
      { at: b, through: [] },
      { at: c, through: [bow, end] },
    ]);
  });

  it('gives nothing while it cannot close', () => {
    expect(ringOf(traced([a, 'corner'], [b, 'corner']))).toBeUndefined();
  });
});

describe('lengthBeingDrawn', () => {
  it('is the straight length from the last corner to the pointer: 3, 4, 5 (Euclid, Elements I.47)', () => {
    expect(lengthBeingDrawn(traced([a, 'corner']), { x: 300, y: 400 })).toBeCloseTo(500, 9);
    expect(lengthBeingDrawn(traced([a, 'corner'], [b, 'corner']), { x: 300, y: 70 })).toBeCloseTo(70, 9);
  });

  it('follows the curve through the points put down, within 0.1 % of a quarter circle of radius 100', () => {
    const on = (degrees: number) => ({
      x: 100 * Math.cos((degrees * Math.PI) / 180),
      y: 100 * Math.sin((degrees * Math.PI) / 180),
    });
    const trace = traced([on(0), 'corner'], [on(30), 'curve'], [on(60), 'curve']);
    const length = lengthBeingDrawn(trace, on(90)) ?? 0;
    expect(Math.abs(length - 50 * Math.PI)).toBeLessThan(0.001 * 50 * Math.PI);
  });

  it('is nothing before there is an edge', () => {
    expect(lengthBeingDrawn([], a)).toBeUndefined();
    expect(lengthBeingDrawn(traced([a, 'corner']), undefined)).toBeUndefined();
  });
});

describe('pathsOf', () => {
  it('gives one path an edge, straight ones exactly straight', () => {
    const paths = pathsOf(traced([a, 'corner'], [b, 'corner'], [bow, 'curve']), c);
    expect(paths).toHaveLength(2);
    expect(paths[0]).toEqual([{ kind: 'line', p0: a, p1: b }]);
    expect(paths[1]?.map((segment) => segment.kind)).toEqual(['cubic', 'cubic']);
  });
});
