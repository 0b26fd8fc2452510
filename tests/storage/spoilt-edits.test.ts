import { expect, it } from 'vitest';
import { paperFonts, soundProjects } from '../../scripts/soak/bases';
import { fuzzEdits } from '../../scripts/soak/fuzz-edits';

/** `npm run soak -- edits` tries 5,000. Times are looked at there, and not here. */
it('spoilt edits are taken only where the garment stays sound, and never break anything', async () => {
  const garments = soundProjects().map(({ garment }) => garment);
  const { edits, taken, refused, faults } = await fuzzEdits(garments, paperFonts(), { from: 6001, count: 40 });
  expect(faults.filter((fault) => !/ took \d+ ms$/.test(fault))).toEqual([]);
  expect(taken).toBeGreaterThan(edits / 5);
  expect(refused).toBeGreaterThan(5);
}, 120_000);
