import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../core/cloth/seeded-random';
import { distance, type Point } from '../../core/geometry/point';
import type { QuadCorners } from '../../core/geometry/rectangle-aspect';
import { proposedCorners } from '../../core/picture/corners';
import { refinedCorners } from '../../core/picture/corners-refined';
import type { Grey } from '../../core/picture/grey';
import { foundGrid } from '../../core/picture/grid';
import { photoToSquares, squaresToPhoto } from '../../core/picture/grid-map';
import { flattenedPage, photoToPage } from '../../core/picture/page-map';
import { drawnPage } from './drawn-page';
import { type GeneratedPhoto, generatedPhoto, settingsOf } from './generated-photo';
import { gorePage } from './printed-page';

const photoOf = (index: number, width: number) => {
  return generatedPhoto(settingsOf(index, { width, height: (width * 4) / 3 }));
};
const framed = photoOf(0, 450);
const bare = photoOf(13, 450);
const bent = photoOf(6, 600);
const squared = photoOf(10, 600);

/** Half a busy machine may take some seconds for a photo. */
const PATIENCE = 30_000;

function truth({ page, seen }: GeneratedPhoto, kind: 'page' | 'frame'): QuadCorners {
  const { left, top, right, bottom } =
    kind === 'frame' && page.frame ? page.frame : { left: 0, top: 0, right: page.across, bottom: page.down };
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ].map(([x = 0, y = 0]) => seen.toPhoto({ x, y })) as unknown as QuadCorners;
}

function off(corners: readonly Point[], wanted: readonly Point[]): number {
  return Math.max(...wanted.map((corner) => Math.min(...corners.map((other) => distance(corner, other)))));
}

function mirrored({ width, height, data }: Grey): Grey {
  const out = data.map((_, at) => data[at - (at % width) + width - 1 - (at % width)] as number);
  return { width, height, data: out };
}

describe('proposedCorners', () => {
  it.each([
    ['a flat page with a frame', framed, ['page', 'frame'] as const],
    ['a bare bent page', bare, ['page'] as const],
  ])('finds %s, each corner within half a hundredth of the picture', { timeout: PATIENCE }, (_, photo, kinds) => {
    const proposed = proposedCorners(photo.grey).slice(0, 3);
    for (const kind of kinds) {
      const found = proposed.find((each) => each.kind === kind);
      expect(off(found?.corners ?? [], truth(photo, kind))).toBeLessThan(0.005 * photo.grey.height);
    }
  });

  it('finds the mirrored page in the mirrored picture', { timeout: PATIENCE }, () => {
    const [there] = proposedCorners(framed.grey);
    const [here] = proposedCorners(mirrored(framed.grey));
    expect(here?.kind).toBe(there?.kind);
    const wanted = (there?.corners ?? []).map(({ x, y }) => ({ x: framed.grey.width - x, y }));
    expect(off(here?.corners ?? [], wanted)).toBeLessThan(0.5);
  });

  it('finds a frame of thin lines in a picture no larger than a thumbnail', () => {
    const [width, height] = [250, 340];
    const run = [
      { x: 31, y: 45 },
      { x: 212, y: 44 },
      { x: 213, y: 308 },
      { x: 32, y: 309 },
    ] as const;
    const lines = [{ run: [...run, run[0]], width: 1.4 }];
    const [found] = proposedCorners(drawnPage({ width, height, lines }));
    expect(found?.kind).toBe('frame');
    expect(off(found?.corners ?? [], run)).toBeLessThan(1);
  });

  it('proposes nothing in blank paper and in noise', () => {
    const random = seededRandom(5);
    const [width, height] = [240, 310];
    expect(proposedCorners({ width, height, data: new Float32Array(width * height).fill(0.8) })).toEqual([]);
    const data = Float32Array.from({ length: width * height }, () => 0.6 + 0.2 * random());
    expect(proposedCorners({ width, height, data })).toEqual([]);
  });
});

describe('refinedCorners', () => {
  const placed = (corners: QuadCorners) =>
    corners.map(({ x, y }, k) => ({ x: x + ([5, -6, 4, -7][k] ?? 0), y: y + ([-5, 6, -7, 4][k] ?? 0) })) as never;

  it('brings corners placed some pixels off to a fraction of one', () => {
    for (const kind of ['page', 'frame'] as const) {
      const mark = kind === 'frame' ? 'line' : 'light-ends';
      const found = refinedCorners(framed.grey, placed(truth(framed, kind)), { mark, sides: 'straight' });
      if ('kind' in found) throw new Error(found.why);
      expect(off(found.corners, truth(framed, kind))).toBeLessThan(0.3);
    }
  });

  it('follows bowed sides, told nothing of what they are, and the page comes flat', () => {
    const found = refinedCorners(bent.grey, placed(truth(bent, 'frame')), { sides: 'bowed' });
    if ('kind' in found) throw new Error(found.why);
    expect(found.mark).toBe('line');
    expect(off(found.corners, truth(bent, 'frame'))).toBeLessThan(0.8);
    const map = flattenedPage(found.sides, { centre: { x: 300, y: 400 }, longSide: 800 });
    if (map.kind !== 'page-map' || !bent.page.frame) throw new Error('no map');
    // The piece is 132 mm long, and stands for 26 in (660.4 mm) at five times the size: 1/8 in is 0.635 mm of the page.
    const { left, top, right, bottom } = bent.page.frame;
    const errors = bent.page.piece.map((corner) => {
      const flat = photoToPage(map, bent.seen.toPhoto(corner)) as Point;
      return Math.hypot(
        left + (flat.x / map.across) * (right - left) - corner.x,
        top + (flat.y / map.down) * (bottom - top) - corner.y,
      );
    });
    expect(Math.max(...errors)).toBeLessThan(0.635 / 2);
  });

  it('says which side is not seen', () => {
    const blank = { ...framed.grey, data: framed.grey.data.slice() };
    const [, , c, d] = truth(framed, 'page');
    const from = Math.floor(Math.min(c.y, d.y)) - 40;
    blank.data.fill(0.5, from * framed.grey.width);
    const found = refinedCorners(blank, truth(framed, 'page'), { mark: 'light-ends', sides: 'straight' });
    expect(found).toMatchObject({ kind: 'not-refined' });
  });
});

describe('foundGrid', () => {
  it.each([
    ['flat', squared, 140],
    ['bent', bent, 270],
  ])(
    'numbers the crossings of %s squares, to a third of a pixel nearly all',
    { timeout: PATIENCE },
    (_, photo, least) => {
      const found = foundGrid(photo.grey, truth(photo, 'frame'));
      if (found.kind !== 'grid') throw new Error(found.why);
      const { frame, squares } = photo.page;
      if (!frame || !squares) throw new Error('this page has squares');
      expect(found.crossings.length).toBeGreaterThan(least);
      // A column or row that the frame runs into is lost: numbers are compared from where the first crossing lies.
      const [first] = found.crossings;
      const place = { u: 0, v: 0, slope: 0 };
      if (first) photo.seen.toPage(first.at.x, first.at.y, place);
      const left = frame.left + (Math.round((place.u - frame.left) / squares) - (first?.column ?? 0)) * squares;
      const top = frame.top + (Math.round((place.v - frame.top) / squares) - (first?.row ?? 0)) * squares;
      const errors = found.crossings
        .map(({ column, row, at }) => {
          return distance(at, photo.seen.toPhoto({ x: left + column * squares, y: top + row * squares }));
        })
        .sort((a, b) => a - b);
      expect(errors.at(-1)).toBeLessThan(2);
      expect(errors[Math.floor(errors.length * 0.9)]).toBeLessThan(0.34);
      expect(found.map.rms).toBeLessThan(0.4);
      for (const corner of photo.page.piece) {
        const at = photoToSquares(found.map, photo.seen.toPhoto(corner)) as Point;
        expect(Math.abs(left + at.x * squares - corner.x)).toBeLessThan(0.15);
        expect(Math.abs(top + at.y * squares - corner.y)).toBeLessThan(0.15);
        expect(distance(squaresToPhoto(found.map, at), photo.seen.toPhoto(corner))).toBeLessThan(1e-6);
      }
    },
  );

  it.each([
    ['a tenth of a square beyond the last lines', 0.1],
    ['nearly a whole square beyond them', 0.95],
  ])('loses no lines to a frame %s, and takes it for none', { timeout: PATIENCE }, (_, beyond) => {
    const page = gorePage({ frame: true, squares: 8, beyond });
    const photo = generatedPhoto({ ...settingsOf(6, { width: 1200, height: 1600 }), page });
    const found = foundGrid(photo.grey, truth(photo, 'frame'));
    if (found.kind !== 'grid') throw new Error(found.why);
    expect([found.map.columns, found.map.rows]).toEqual([16, 22]);
    const last = photo.seen.toPhoto({ x: 11 + 16 * 8, y: 13 + 22 * 8 });
    expect(distance(squaresToPhoto(found.map, { x: 16, y: 22 }), last)).toBeLessThan(0.5);
  });

  it('finds none on a page without squares', { timeout: PATIENCE }, () => {
    expect(foundGrid(bare.grey, truth(bare, 'page'))).toMatchObject({ kind: 'no-grid' });
  });
});
