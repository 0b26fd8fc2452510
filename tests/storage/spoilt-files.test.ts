import { expect, it } from 'vitest';
import { paperFonts, soundProjects } from '../../scripts/soak/bases';
import { fuzzFiles } from '../../scripts/soak/fuzz-files';

/** `npm run soak -- fuzz` tries 20,000. Times are looked at there, and not here. */
it('spoilt project files are refused or can be worked with, and never break anything', async () => {
  const { accepted, faults } = await fuzzFiles(soundProjects(), paperFonts(), { from: 4001, count: 40 });
  expect(faults.filter((fault) => !/ took \d+ ms$/.test(fault))).toEqual([]);
  expect(accepted).toBeGreaterThan(5);
  expect(accepted).toBeLessThan(40);
}, 120_000);
