import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fullness } from '../../core/garment/fullness';
import type { Piece } from '../../core/garment/piece';
import { netAlong, takenUp } from '../../core/garment/taken-up';
import { at, pieceOf } from '../seams/pieces';

const plain = pieceOf([at(0, 0), at(240, 0), at(300, 510), at(0, 510)], []);
const dart = (along: number, width: number) => ({ id: `d${along}`, edgeId: 'e0', along, width, point: at(along, 100) });
const gathers = (from: number, to: number, into: number): Fullness => ({
  kind: 'gathers',
  id: `g${from}`,
  edgeId: 'e0',
  from,
  to,
  into,
});
const pleat = (from: number, takes: number): Fullness => ({
  kind: 'pleat',
  id: `p${from}`,
  edgeId: 'e0',
  from,
  takes,
  laid: 'to-start',
});
const withMarks = (fullness: readonly Fullness[], darts: Piece['darts'] = []): Piece => ({ ...plain, darts, fullness });
const sewn = (piece: Piece, along = 240) => netAlong(takenUp(piece, 'e0', 240), along);

describe('takenUp(piece, edge, length) and netAlong', () => {
  it('draw gathers up evenly: half way along the gathers is half way along what is left', () => {
    const piece = withMarks([gathers(40, 200, 70)]);
    expect(sewn(piece)).toBeCloseTo(40 + 70 + 40, 9);
    expect(sewn(piece, 120)).toBeCloseTo(40 + 35, 9);
  });

  it('close pleats like darts, once where they overlap', () => {
    expect(sewn(withMarks([pleat(30, 50), pleat(150, 20)], [dart(90, 30)]))).toBeCloseTo(240 - 75 - 20, 9);
  });

  it('close darts first and then gather what is free of the stretch', () => {
    expect(sewn(withMarks([gathers(20, 220, 90)], [dart(60, 24)]))).toBeCloseTo(20 + 90 + 20, 9);
  });

  it('never stretch an edge, nor reach beyond it', () => {
    expect(sewn(withMarks([gathers(10, 60, 80)]))).toBeCloseTo(240, 9);
    expect(sewn(withMarks([gathers(140, 400, 30)]))).toBeCloseTo(140 + 30, 9);
  });

  it('never shrink along the edge and never grow faster than it, whatever is on it', () => {
    const place = fc.double({ min: -20, max: 260, noNaN: true });
    const any = fc.array(
      fc.oneof(
        fc.tuple(place, place, fc.double({ min: 0, max: 200, noNaN: true })).map(([a, b, into]) => gathers(a, b, into)),
        fc.tuple(place, fc.double({ min: 0, max: 90, noNaN: true })).map(([a, takes]) => pleat(a, takes)),
      ),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(any, place, place, (fullness, a, b) => {
        const [low, high] = [Math.max(0, Math.min(a, b)), Math.min(240, Math.max(a, b, 0))];
        if (high < low) return;
        const grown = sewn(withMarks(fullness), high) - sewn(withMarks(fullness), low);
        expect(grown).toBeGreaterThanOrEqual(-1e-9);
        expect(grown).toBeLessThanOrEqual(high - low + 1e-9);
      }),
      { seed: 7 },
    );
  });
});
