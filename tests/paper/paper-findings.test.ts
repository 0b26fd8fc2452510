import { describe, expect, it } from 'vitest';
import { paperFindings } from '../../core/paper/paper-findings';
import { inches } from '../../core/units/inch';
import { garmentOf, rectangle } from './pieces';

function measured(across: number, down: number) {
  const scaleProof = { date: '2026-03-02', across: inches(across), down: inches(down) };
  return paperFindings({ ...garmentOf([rectangle(0, 0, 300, 200)]), scaleProof });
}

describe('paperFindings', () => {
  it('warns while nobody has measured, and says nothing of a garment without pieces', () => {
    expect(paperFindings(garmentOf([rectangle(0, 0, 300, 200)]))).toMatchObject([
      { kind: 'scale-not-proved', weight: 'warn' },
    ]);
    expect(paperFindings(garmentOf([]))).toEqual([]);
  });

  it('is content within a thirty-second of an inch', () => {
    expect(measured(4, 4)).toEqual([]);
    expect(measured(4 + 1 / 32, 4 - 1 / 32)).toEqual([]);
  });

  // From the sizes of ISO 216 and ANSI: 210 / 215.9 = 97.3 % is 3.89 in of four, 279.4 / 297 = 94.1 % is 3.76 in.
  it.each([
    [3.89, 3.89, 'letter-fit-to-a4'],
    [3.875, 3.875, 'letter-fit-to-a4'],
    [3.76, 3.77, 'a4-fit-to-letter'],
    [3.9, 4, 'uneven'],
    [3.5, 3.5, 'unknown'],
  ])('stops at %f by %f in: %s', (across, down, cause) => {
    expect(measured(across, down)).toMatchObject([{ kind: 'scale-off', weight: 'stop', cause, wanted: inches(4) }]);
  });
});
