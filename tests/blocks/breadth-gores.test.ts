import { describe, expect, it } from 'vitest';
import {
  evenGore,
  fourGoredPetticoat,
  goresFromBreadth,
  heightFromSlant,
  roundOfBreadths,
} from '../../core/blocks/breadth-gores';
import { inches, MM_PER_NAIL } from '../../core/units/inch';
import { expectInches } from './in-inches';

const nails = (count: number) => count * MM_PER_NAIL;

/** The Workwoman's Guide (1838), plate 3, figures 5 and 6: an infant's flannel gown; in nails of 2 1/4 in. */
describe('goresFromBreadth', () => {
  it('cuts a breadth of 14 by 16 nails into gores of 3 1/2 and 10 1/2 along 39.295 in', () => {
    const made = goresFromBreadth({ width: nails(14), length: nails(16), narrow: nails(3.5) });
    expectInches(made?.top, 7.875);
    expectInches(made?.bottom, 23.625);
    expectInches(made?.slant, 39.295);
    const shorter = goresFromBreadth({ width: nails(14), length: nails(14), narrow: nails(3.5) });
    expectInches(shorter?.slant, 35.218);
  });

  it('has no gores where the narrow end is more than half the breadth', () => {
    expect(goresFromBreadth({ width: 300, length: 900, narrow: 170 })).toBeUndefined();
  });
});

/** Houston and Hornblower, Ancient Egyptian, Assyrian and Persian Costumes and Decorations (1920), figure 4A. */
describe('heightFromSlant', () => {
  it('is 50.7783 in for a tunic of 12 1/2 and 22 with sides of 51', () => {
    const height = heightFromSlant({ top: inches(12.5), bottom: inches(22), slant: inches(51) });
    expectInches(height, 50.7783, 1e-4);
    expectInches(evenGore({ top: inches(12.5), bottom: inches(22), height: height ?? 0 }).slant, 51, 1e-9);
    expect(heightFromSlant({ top: 100, bottom: 300, slant: 90 })).toBeUndefined();
  });
});

/** The Workwoman's Guide (1838), flannel petticoats; the round at hem and top in nails, no seams allowed for. */
describe('roundOfBreadths', () => {
  const whole = (times: number) => ({ times, top: nails(14), bottom: nails(14) });
  const half = { times: 1, top: nails(7), bottom: nails(7) };
  const gores = { times: 2, top: nails(2), bottom: nails(5) };
  const turned = { times: 1, top: nails(-4), bottom: nails(4) };
  it.each([
    ['a grown woman', [whole(3)], 94.5, 94.5],
    ['a middle woman', [whole(2), gores], 85.5, 72],
    ['a girl of 14 to 16, a gore turned to the other side', [whole(2), turned], 72, 54],
    ['one whole breadth, two gores, a half', [whole(1), gores, half], 69.75, 56.25],
    ['a girl of 8 to 10, where the gore is taken as 5 nails', [half, half, gores], 54, 40.5],
  ])('%s', (_, parts, hem, top) => {
    const round = roundOfBreadths(parts);
    expectInches(round.bottom, hem);
    expectInches(round.top, top);
  });

  it('makes the skirt of the infant’s gown 31 1/2 in at the top and 63 at the hem', () => {
    const gore = { times: 2, top: nails(3.5), bottom: nails(10.5) };
    const round = roundOfBreadths([gore, half]);
    expectInches(round.top, 31.5);
    expectInches(round.bottom, 63);
  });
});

/** Garments for Girls (1910s), chapters 11 and 12: a four-gored petticoat for a girl of 15, cloth 27 wide in 22 1/2 lengths. */
describe('fourGoredPetticoat', () => {
  const cloth = { width: inches(27), length: inches(22.5) };

  it('has a front of 7 and 10 with edges of 22.550, and asks about its side gores', () => {
    const made = fourGoredPetticoat(cloth);
    expectInches(made?.front.slant, 22.55);
    expectInches(made?.round.bottom, 25);
    expect(made?.questions).toEqual([{ kind: 'figure-missing', what: 'side-gores' }]);
  });

  it('is 38 in at the top and 63 at the hem once the second length is cut into gores of 8 and 19', () => {
    const made = fourGoredPetticoat({ ...cloth, side: { narrow: inches(8) } });
    expectInches(made?.side?.bottom, 19);
    expectInches(made?.round.top, 38);
    expectInches(made?.round.bottom, 63);
    expect(made?.questions).toEqual([]);
    expect(fourGoredPetticoat({ ...cloth, side: { narrow: inches(20) } })).toBeUndefined();
  });
});
