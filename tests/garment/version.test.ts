import { describe, expect, it } from 'vitest';
import type { Garment } from '../../core/garment/garment';
import {
  garmentOfVersion,
  nextVersion,
  readableVersions,
  type StoredVersion,
  versionNow,
} from '../../core/garment/version';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from './linden';

/** The garment with its panel's remarks and first corner changed, as a day's work would. */
function worked(garment: Garment, day: number): Garment {
  return withPiece(garment, 'panel', (piece) => ({
    ...piece,
    remarks: `day ${day}`,
    corners: piece.corners.map((corner, index) =>
      index === 0 ? { ...corner, at: { x: corner.at.x + 0.125, y: corner.at.y - 0.375 } } : corner,
    ),
  }));
}

function history(count: number): { versions: StoredVersion[]; garments: Garment[] } {
  const versions: StoredVersion[] = [];
  const garments: Garment[] = [];
  for (let number = 1; number <= count; number++) {
    const last = garments.at(-1);
    const garment = last ? worked(last, number) : linden();
    const head = { name: `no ${number}`, made: '2026-11-07', note: '' };
    versions.push(nextVersion(garment, head, last && { number: number - 1, garment: last }));
    garments.push(garment);
  }
  return { versions, garments };
}

describe('versions', () => {
  it('gives every version of a long history back as it was', () => {
    const { versions, garments } = history(47);
    for (const number of [1, 2, 20, 21, 22, 46, 47]) {
      expect(garmentOfVersion(versions, number)).toEqual(garments[number - 1]);
    }
  });

  it('keeps what changed and not whole copies: 200 versions come to less than 30 whole garments', () => {
    const { versions, garments } = history(200);
    const whole = JSON.stringify(garments[0]).length;
    expect(JSON.stringify(versions).length / whole).toBeLessThan(30);
    expect(versions.filter(({ kept }) => kept.kind === 'whole')).toHaveLength(10);
  });

  it('answers nothing for a number that is not there', () => {
    expect(garmentOfVersion(history(3).versions, 4)).toBeUndefined();
    expect(garmentOfVersion([], 1)).toBeUndefined();
  });

  it('answers nothing for a version after a damaged row, and the others all the same', () => {
    const { versions, garments } = history(24);
    const damaged = versions.map((version) =>
      version.number === 5 ? { ...version, kept: { kind: 'change', change: [] } as const } : version,
    );
    expect(garmentOfVersion(damaged, 4)).toEqual(garments[3]);
    expect(garmentOfVersion(damaged, 6)).toBeUndefined();
    expect(garmentOfVersion(damaged, 23)).toEqual(garments[22]);
  });

  it('readableVersions are just those that can be opened one by one', () => {
    const { versions } = history(44);
    const broken = versions.map((version) =>
      version.number === 5 || version.number === 41
        ? { ...version, kept: { kind: 'change', change: [] } as const }
        : version,
    );
    const shuffled = [...broken.slice(30), ...broken.slice(0, 30)];
    const opened = broken.filter(({ number }) => garmentOfVersion(broken, number));
    expect(readableVersions(shuffled)).toEqual(opened);
    expect(opened.length).toBeLessThan(44);
  });

  it('knows the version by its pieces, and the newest of two that are alike', () => {
    const { versions, garments } = history(3);
    const again = nextVersion(garments[0] as Garment, { name: 'again', made: '2026-11-08', note: '' }, undefined);
    const all = [...versions, { ...again, number: 4 }];
    expect(versionNow(all, garments[1] as Garment)?.number).toBe(2);
    expect(versionNow(all, garments[0] as Garment)?.number).toBe(4);
    expect(versionNow(all, worked(garments[2] as Garment, 9))).toBeUndefined();
  });
});
