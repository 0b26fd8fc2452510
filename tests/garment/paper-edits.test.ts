import { expect, it } from 'vitest';
import { setPaper, setScaleProof } from '../../core/garment/paper-edits';
import { linden } from './linden';

it('setPaper to another size forgets the proof of scale, which was made on the old one', () => {
  const garment = setPaper(linden(), { size: 'letter' });
  expect(garment.paper).toEqual({ size: 'letter', turned: 'upright', margin: 10, overlap: 12.7, step: 'sixteenth' });
  expect(garment).not.toHaveProperty('scaleProof');
});

it('setPaper keeps the proof while the size stays', () => {
  const garment = setPaper(linden(), { turned: 'sideways', margin: 6, size: 'a4' });
  expect(garment.paper).toMatchObject({ turned: 'sideways', margin: 6, overlap: 12.7 });
  expect(garment.scaleProof).toEqual({ date: '2026-10-03', across: 100.5, down: 99.75 });
});

it('setScaleProof notes what the ruler said, or takes it away', () => {
  const proof = { date: '2026-11-04', across: 101.5, down: 101.75 };
  expect(setScaleProof(linden(), proof).scaleProof).toEqual(proof);
  expect(setScaleProof(linden(), undefined)).not.toHaveProperty('scaleProof');
});
