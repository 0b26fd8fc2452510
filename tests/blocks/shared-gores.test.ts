import { describe, expect, it } from 'vitest';
import { type SharedGoreSizes, sharedGores } from '../../core/blocks/shared-gores';
import { outlineOf } from '../../core/garment/outline';
import { pathLength } from '../../core/geometry/path';
import { proposeSeamPairs } from '../../core/seams/seam-pairs';
import { inches } from '../../core/units/inch';
import { plainNames } from './body-checks';
import { expectInches } from './in-inches';

/** Ella A. Bennett, The Perfect Dressmaking System (1914): her practice figures. */
const bennett: SharedGoreSizes = {
  waist: inches(25),
  hip: inches(40),
  hipDepth: inches(7),
  hem: inches(81),
  lengths: { front: inches(38), side: inches(38.75), back: inches(39.5) },
};

function pieces(hem?: 'as-printed') {
  const made = sharedGores('five-equal', bennett, { ...plainNames(), ...(hem ? { hem } : {}) });
  if (made.kind !== 'shared-gores') throw new Error(made.why);
  return made;
}

describe('sharedGores', () => {
  it('draws the five gores of Bennett 1914 half an inch longer at each back edge', () => {
    const lengths = pieces().pieces.map((piece) => outlineOf(piece).edges.map((path) => pathLength(path)));
    // Waist, back edge, hem, front edge.
    const wanted = [
      [2.5, 38.5, 5, 38],
      [5, 39, 17.75, 38.5],
      [5, 39.5, 17.75, 39],
    ];
    wanted.forEach((edges, i) => {
      edges.forEach((length, j) => {
        expectInches(lengths[i]?.[j], length, 0.001);
      });
    });
  });

  it('carries the question of the printed hem', () => {
    expect(pieces('as-printed').questions).toHaveLength(1);
  });

  it('gives seams that find their partners by name, with notches that meet', () => {
    const made = pieces().pieces;
    const pairs = proposeSeamPairs(made).filter(({ by }) => by === 'name');
    expect(pairs).toHaveLength(2);
    for (const { difference } of pairs) expect(Math.abs(difference)).toBeLessThan(0.02);
    const [front, side] = made;
    const [down] = front?.notches ?? [];
    const up = side?.notches.find(({ count }) => count === 1);
    // Down the one edge and up the other they make the whole seam.
    expectInches((down?.along ?? 0) + (up?.along ?? 0), 38.5, 1e-6);
  });

  it('refuses lengths that end above the hip', () => {
    const short = { ...bennett, lengths: { front: 150, side: 160, back: 170 } };
    expect(sharedGores('nine', short, plainNames())).toEqual({ kind: 'no-gore', why: 'hip-below-hem' });
    expect(sharedGores('nine', { ...bennett, hip: inches(28) }, plainNames())).toEqual({
      kind: 'no-gore-shares',
      why: 'share-left-over',
    });
  });
});
