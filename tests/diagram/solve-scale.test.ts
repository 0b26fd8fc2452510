import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveScale } from '../../core/diagram/solve-scale';

const line = (id: string, degrees: number, run: number, length: number) => {
  const angle = (degrees * Math.PI) / 180;
  return { id, run: { dx: run * Math.cos(angle), dy: run * Math.sin(angle) }, length };
};

describe('solveScale', () => {
  it('finds the two scales that lines were made with, from a level and an upright line and any others', () => {
    const scale = fc.double({ min: 0.2, max: 5, noNaN: true });
    const others = fc.array(
      fc.record({ degrees: fc.double({ min: 0, max: 180, noNaN: true }), run: fc.integer({ min: 80, max: 3000 }) }),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(scale, scale, others, (across, down, more) => {
        const drawn = [{ degrees: 0, run: 910 }, { degrees: 90, run: 1340 }, ...more];
        const solved = solveScale(
          drawn.map(({ degrees, run }, i) => {
            const bare = line(`${i}`, degrees, run, 1);
            return { ...bare, length: Math.hypot(bare.run.dx * across, bare.run.dy * down) };
          }),
        );
        return (
          solved !== undefined &&
          Math.abs(solved.across / across - 1) < 1e-9 &&
          Math.abs(solved.down / down - 1) < 1e-9 &&
          solved.lines.every(({ states, measures }) => Math.abs(measures / states - 1) < 1e-9)
        );
      }),
      { seed: 7 },
    );
  });

  it('keeps one scale where the lines are too alike in direction to tell two apart', () => {
    expect(solveScale([line('a', 0, 900, 450), line('b', 35, 700, 356)])?.split).toBe(false);
    expect(solveScale([line('a', 0, 900, 450), line('b', 36, 700, 356)])?.split).toBe(true);
    const diagonals = solveScale([line('a', 45, 800, 420), line('b', -45, 600, 315)]);
    expect(diagonals).toMatchObject({ split: false });
    expect(diagonals?.across).toBe(diagonals?.down);
  });

  it('weighs a long line more than a short one', () => {
    const solved = solveScale([line('long', 0, 2000, 1000), line('short', 3, 100, 60)]);
    // One scale k by least squares of run × misfit²: k = Σ run² length / Σ run³.
    expect(solved?.across).toBeCloseTo((2000 ** 2 * 1000 + 100 ** 2 * 60) / (2000 ** 3 + 100 ** 3), 12);
  });

  it('of two at right angles nothing checks either: each fits by the making, and the other knows nothing of its way', () => {
    const lines = solveScale([line('a', 0, 1000, 500), line('b', 90, 1500, 765)])?.lines;
    expect(lines?.map(({ states, measures }) => measures - states)).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(0, 9),
    ]);
    expect(lines?.map(({ byOthers }) => byOthers)).toEqual([undefined, undefined]);
  });

  it('leaves out what says nothing, and gives nothing when nothing is left', () => {
    const useless = [line('dot', 20, 0, 300), line('nought', 0, 700, 0), line('less', 90, 650, -20)];
    expect(solveScale(useless)).toBeUndefined();
    expect(solveScale([...useless, line('a', 0, 800, 400)])?.lines.map(({ id }) => id)).toEqual(['a']);
  });
});
