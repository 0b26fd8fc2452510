import { describe, expect, it } from 'vitest';
import { differenceWords, seamName, sideName } from '../../app/seams/seam-names';
import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import { isOwnMirror } from '../../core/garment/seam';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { inches } from '../../core/units/inch';
import { bandSeam, centreBackSeam, sideSeam, skirtAndBand } from './skirt-and-band';

const garment = skirtAndBand();
/** What is said, the spaces that hold a length together written as plain ones. */
const said = (seam: Seam, of: Garment = garment) =>
  differenceWords(of, { seam, walk: walkOfSeam(of, seam), isOwnMirror: isOwnMirror(seam) }).replaceAll('\u00a0', ' ');
const bare: Garment = { ...garment, pieces: garment.pieces.map((piece) => ({ ...piece, notches: [] })) };

describe('differenceWords(garment, line)', () => {
  it('says which side is the longer, by how much, and that a notch misses', () => {
    expect(said(sideSeam)).toBe('Back: side is 1/4 in longer than Front: side; 1 notch misses');
  });

  it('says what is beyond the ease meant, or short of it', () => {
    expect(said({ ...sideSeam, ease: inches(-1 / 8) }, bare)).toBe(
      'Back: side is 1/4 in longer than Front: side, 1/8 in beyond its ease',
    );
    expect(said({ ...sideSeam, ease: inches(-3 / 8) }, bare)).toBe(
      'Back: side is 1/4 in longer than Front: side, 1/8 in short of the ease meant',
    );
    expect(said({ ...sideSeam, ease: inches(1 / 4) }, bare)).toBe(
      'Back: side is 1/4 in longer than Front: side, 1/2 in short of the ease meant',
    );
  });

  it('agrees with ease in one case and with a lap in the other', () => {
    expect(said({ ...sideSeam, ease: inches(-1 / 4) }, bare)).toBe('agree, with Back: side eased in by 1/4 in');
    expect(said({ ...bandSeam, ease: inches(-1) })).toBe('agree, with a lap of 1 in');
    expect(said({ ...bandSeam, ease: inches(-5 / 8) })).toBe(
      'Band: lower edge is 1 in longer than Front: waist and 1 more, 3/8 in beyond its lap',
    );
  });

  it('keeps a lap apart from the ease', () => {
    const lap = { side: 'other', length: inches(1), at: 'end' } as const;
    expect(said({ ...bandSeam, lap })).toBe('agree, with a lap of 1 in');
    expect(said({ ...bandSeam, lap: { ...lap, length: inches(3 / 4) } })).toBe(
      'Band: lower edge is 1/4 in longer than Front: waist and 1 more, beside a lap of 3/4 in',
    );
    expect(said({ ...bandSeam, ease: inches(1 / 2), lap: { ...lap, length: inches(1.5) } })).toBe(
      'agree, with Front: waist and 1 more eased in by 1/2 in, beside a lap of 1 1/2 in',
    );
  });

  it('does not measure an edge against itself, nor one that is gone', () => {
    expect(said(centreBackSeam)).toBe('agrees with its mirror image');
    expect(said({ ...sideSeam, other: [{ pieceId: 'back', edgeId: 'no-such-edge' }] })).toBe(
      'one of its edges is no longer there',
    );
  });
});

it('a seam without a name of its own is called by its sides', () => {
  expect(seamName(garment, { ...sideSeam, name: '  ' })).toBe('Front: side to Back: side');
  expect(seamName(garment, centreBackSeam)).toBe('Back: centre back to its mirror image');
  expect(sideName(garment, bandSeam.one)).toBe('Front: waist and 1 more');
});
