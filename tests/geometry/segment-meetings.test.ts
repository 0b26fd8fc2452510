import { describe, expect, it } from 'vitest';
import { splitSegment } from '../../core/geometry/cubic-curve';
import { line } from '../../core/geometry/segment';
import { segmentMeetings } from '../../core/geometry/segment-meetings';
import { cubicOf } from './shapes';

const ARCH = cubicOf([0, 0], [0, 100], [100, 100], [100, 0]);

describe('segmentMeetings', () => {
  it('gives the parameters on both, in order along the first', () => {
    const found = segmentMeetings(line({ x: -20, y: 48 }, { x: 130, y: 48 }), ARCH);
    expect(found.map((meeting) => (meeting.kind === 'place' ? meeting.tb : -1))).toEqual([
      expect.closeTo(0.2, 12),
      expect.closeTo(0.8, 12),
    ]);
    expect(found[0]).toMatchObject({ kind: 'place', ta: expect.closeTo(30.4 / 150, 12), touching: false });
  });

  it('is the same the other way about', () => {
    const found = segmentMeetings(ARCH, line({ x: -20, y: 48 }, { x: 130, y: 48 }));
    expect(found[1]).toMatchObject({ ta: expect.closeTo(0.8, 12), tb: expect.closeTo(109.6 / 150, 12) });
  });

  it('counts an end that rests on the other stretch, smoothly or at an angle', () => {
    const [head, tail] = splitSegment(ARCH, 0.37);
    expect(segmentMeetings(head, tail)).toMatchObject([{ ta: 1, tb: 0, touching: true }]);
    expect(segmentMeetings(ARCH, line({ x: 50, y: 75 }, { x: 50, y: 140 }))).toMatchObject([
      { ta: expect.closeTo(0.5, 9), tb: 0, touching: false },
    ]);
  });

  it('names a straight cubic that lies along a line as a stretch', () => {
    const along = cubicOf([30, 40], [36, 48], [60, 80], [90, 120]);
    const found = segmentMeetings(line({ x: 0, y: 0 }, { x: 60, y: 80 }), along);
    expect(found).toMatchObject([{ kind: 'stretch', from: { ta: 0.5, tb: 0 }, to: { ta: 1 } }]);
  });

  it('finds nothing between stretches whose boxes are apart', () => {
    expect(segmentMeetings(ARCH, line({ x: 0, y: 76 }, { x: 90, y: 99 }))).toEqual([]);
  });
});
