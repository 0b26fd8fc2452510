import { describe, expect, it } from 'vitest';
import { goredSkirtPieces } from '../../core/blocks/gored-skirt';
import type { Piece } from '../../core/garment/piece';
import { pathAtLength, pathEnd, pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { type JoinedPanels, joinedPanels } from '../../core/seams/joined-panels';
import { inches } from '../../core/units/inch';
import { numberedIds } from '../blocks/in-inches';
import { at, pieceOf } from './pieces';
import { edge, foldPanel, garmentWith, seamOf } from './seam-garment';

const joined = (
  garment: Parameters<typeof joinedPanels>[0],
  ring: Parameters<typeof joinedPanels>[1],
): JoinedPanels => {
  const made = joinedPanels(garment, ring, { over: inches(7) });
  if (made.kind !== 'joined-panels') throw new Error(made.why);
  return made;
};

/** The six gores of a slip skirt from two cones, 28 in waist and 38 in hip 7 in down (Baldt 1916 for the rule). */
const gores = goredSkirtPieces(
  { waist: inches(28), hip: inches(38), hipDepth: inches(7), hem: inches(66), length: inches(26), gores: 6 },
  { newId: numberedIds(), name: 'Gore' },
) as Piece[];

describe('joinedPanels(garment, ring)', () => {
  it('lays six gores into one circle of the radius waist times depth over the difference, within 0.05 mm', () => {
    const { line, length, repeats, panels } = joined(garmentWith(gores), [{ piece: gores[0] as Piece, times: 6 }]);
    expect([repeats, panels.length]).toEqual([1, 6]);
    expect(Math.abs(length - inches(28))).toBeLessThan(0.01);
    // Laid together down to the hip, where both cones meet; it begins at (0, 0) with the side straight down.
    const centre = at(0, -inches(19.6));
    for (let i = 0; i <= 60; i++) {
      const { point } = pathAtLength(line, (length * i) / 60);
      expect(Math.abs(distance(point, centre) - inches(19.6))).toBeLessThan(0.05);
    }
  });

  it('joins front and back, both drawn from the centre, at the side into half a skirt from fold to fold', () => {
    const [front, back] = [foldPanel('front', 170, [200, 610]), foldPanel('back', 190, [200, 610])];
    const ring = [
      { piece: front, times: 2 },
      { piece: back, times: 2 },
    ];
    const side = seamOf([edge('front', 'e1')], [edge('back', 'e1')], { way: 'same' });
    const half = joined(garmentWith([front, back], [side]), ring);
    expect(half).toMatchObject({ repeats: 2, startsOn: 'fold', endsOn: 'fold' });
    expect(half.length).toBeCloseTo(360, 9);
    expect(half.panels.map(({ pieceId }) => pieceId)).toEqual(['front', 'back']);
  });

  it('closes a dart: the halves of the waist meet, the rest turned by the angle of the dart', () => {
    const plain = foldPanel('front', 200, [200, 610], 200);
    const dart = { id: 'd', edgeId: 'e0', along: 110, width: 30, point: at(110, 120) };
    const { line, length, panels } = joined(garmentWith([]), [{ piece: { ...plain, darts: [dart] }, times: 2 }]);
    expect(length).toBeCloseTo(170, 9);
    expect(pathLength(line)).toBeCloseTo(170, 6);
    expect(panels[0]?.waist).toHaveLength(2);
    // Beyond the dart the waist runs on at the whole angle of the dart, 2 atan(15 / 120), round its point.
    const turn = 2 * Math.atan(15 / 120);
    const end = pathEnd(line);
    expect(end.x).toBeCloseTo(95 + 75 * Math.cos(turn), 6);
    expect(Math.abs(end.y)).toBeCloseTo(75 * Math.sin(turn), 6);
  });

  it('has nothing to join without a panel or without a waist, and leaves guides out', () => {
    const strip = pieceOf([at(0, 0), at(90, 0), at(90, 40)], []);
    expect(joinedPanels(garmentWith([]), [], { over: 50 })).toMatchObject({ why: 'no-panel' });
    expect(joinedPanels(garmentWith([]), [{ piece: strip, times: 1 }], { over: 50 })).toMatchObject({
      why: 'no-waist',
    });
    const guide = { ...foldPanel('g', 170, [200, 610]), use: 'guide' as const };
    expect(joinedPanels(garmentWith([]), [{ piece: guide, times: 2 }], { over: 50 })).toMatchObject({
      why: 'no-panel',
    });
  });
});
