import { describe, expect, it } from 'vitest';
import { SEAM_FAULT, seamFindings } from '../../core/seams/seam-findings';
import { at, pieceOf } from './pieces';
import { edge, garmentWith, seamOf, withNotches } from './seam-garment';

const strip = (id: string, length: number) => ({
  ...pieceOf([at(0, 0), at(length, 0), at(length, 70)], [{}, { role: 'hem' }, { role: 'fold' }]),
  id,
});
const seam = seamOf([edge('a', 'e0')], [edge('b', 'e0')]);
const foundFor = (by: number, ease = 0) =>
  seamFindings(garmentWith([strip('a', 400 + by), strip('b', 400)], [{ ...seam, ease }]));

describe('seamFindings(garment)', () => {
  it('warns beyond a sixteenth of an inch (Threads, 2020) and stops at a quarter (The Fashion Incubator)', () => {
    expect(SEAM_FAULT).toBeCloseTo(6.35, 12);
    expect(foundFor(1.58)).toEqual([]);
    expect(foundFor(-1.7)).toMatchObject([{ kind: 'seam-off', weight: 'warn' }]);
    expect(foundFor(6.36)).toMatchObject([{ kind: 'seam-off', weight: 'stop' }]);
    expect(foundFor(12.7, 12.7)).toEqual([]);
  });

  it('says which notches do not meet and how many are alone', () => {
    const pieces = [
      withNotches(strip('a', 400), 'e0', [
        [120, 1],
        [310, 3],
      ]),
      withNotches(strip('b', 400), 'e0', [[271, 1]]),
    ];
    const [found] = seamFindings(garmentWith(pieces, [seam]));
    expect(found).toMatchObject({ kind: 'seam-notches-off', weight: 'warn', off: 1, alone: 1 });
    expect(found?.kind === 'seam-notches-off' && found.most).toBeCloseTo(9, 9);
  });

  it('lists seam edges with no partner once there is a seam, and never those of a guide', () => {
    const lone = strip('c', 300);
    expect(seamFindings(garmentWith([lone]))).toEqual([]);
    const pieces = [strip('a', 400), strip('b', 400), lone];
    expect(seamFindings(garmentWith(pieces, [seam]))).toMatchObject([
      { kind: 'edge-unpaired', weight: 'warn', edges: [edge('c', 'e0')] },
    ]);
    expect(seamFindings(garmentWith([...pieces.slice(0, 2), { ...lone, use: 'guide' }], [seam]))).toEqual([]);
  });
});
