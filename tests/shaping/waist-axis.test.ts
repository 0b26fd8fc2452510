import { describe, expect, it } from 'vitest';
import { twoDartSkirtPieces } from '../../core/blocks/two-dart-skirt';
import type { EdgeRole } from '../../core/garment/piece';
import { waistAxis, waistCentre } from '../../core/shaping/waist-axis';
import { straightGore, traced } from './traced';

const panel = (left: EdgeRole, right: EdgeRole) =>
  traced('panel', [
    [[0, 0], 'waist'],
    [[210, 0], right],
    [[290, 650], 'hem'],
    [[-60, 650], left],
  ]);

describe('waistCentre', () => {
  it('is the fold, else the opening', () => {
    expect(waistCentre(panel('fold', 'seam'), 0)).toBe('before');
    expect(waistCentre(panel('seam', 'fold'), 0)).toBe('after');
    expect(waistCentre(panel('opening', 'fold'), 0)).toBe('after');
    expect(waistCentre(panel('opening', 'seam'), 0)).toBe('before');
  });

  it('is else the one straight edge square to the waist, or the middle', () => {
    expect(waistCentre(panel('seam', 'seam'), 0)).toBe('middle');
    expect(waistCentre(straightGore(150, 180, 160), 0)).toBe('middle');
    const grainEdge = traced('gore', [
      [[0, 0], 'waist'],
      [[110, 0], 'seam'],
      [[240, 690], 'hem'],
      [[0, 690], 'seam'],
    ]);
    expect(waistCentre(grainEdge, 0)).toBe('before');
    const block = twoDartSkirtPieces(
      { waist: 720, hip: 960, waistToHip: 200, length: 660 },
      { newId: () => 'x', names: { back: 'Back', front: 'Front' } },
    );
    if (!Array.isArray(block)) throw new Error(block.why);
    expect(block.map((piece) => waistCentre(piece, 0))).toEqual(['before', 'after']);
  });
});

describe('waistAxis', () => {
  it('stands on the corner of the centre line and runs down it', () => {
    const axis = waistAxis(panel('fold', 'seam'), 0, 'before', 170);
    expect(axis?.origin).toEqual({ x: 0, y: 0 });
    expect((axis?.down.dx ?? 0) / (axis?.down.dy ?? 1)).toBeCloseTo(-60 / 650, 9);
    expect(axis?.across.dx).toBeGreaterThan(0.9);
  });

  it('leans as a leaning gore leans', () => {
    const axis = waistAxis(panel('seam', 'seam'), 0, 'middle', 170);
    expect(axis?.origin).toEqual({ x: 105, y: 0 });
    // The middle of the level 170 down has moved by half of what both sides lean.
    expect((axis?.down.dx ?? 0) / (axis?.down.dy ?? 1)).toBeCloseTo((80 - 60) / 2 / 650, 6);
  });

  it('is nothing where the piece does not come down so far', () => {
    expect(waistAxis(panel('seam', 'seam'), 0, 'middle', 900)).toBeUndefined();
  });
});
