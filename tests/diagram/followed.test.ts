import { describe, expect, it } from 'vitest';
import { seenIn } from '../../app/diagram/found-sides';
import { cornersOnEdges, cornersProposed, squaresWithin } from '../../app/workers/find-corners';
import type { SidesFound } from '../../app/workers/photo-calls';
import { diagramMap, photoToTable, tableToPhoto } from '../../core/diagram/diagram-map';
import { cornersOfSquares } from '../../core/diagram/followed-plane';
import { pageCheck } from '../../core/diagram/page-check';
import type { Diagram, SquareUp } from '../../core/garment/diagram';
import { distance, type Point } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';
import { type GeneratedPhoto, generatedPhoto, settingsOf } from '../picture/generated-photo';
import { known, sampleDiagram, set } from './sample-diagram';

const SIZE = { width: 1200, height: 1600 };

/** The generated page is drawn at a fifth of full size: its piece is 26 in long. */
const FULL_SIZE = 5;

/** A photo as the worker holds it: rows of pixels. */
function copyOf({ grey: { width, height, data } }: GeneratedPhoto) {
  const pixels = new Uint8ClampedArray(width * height * 4).fill(255);
  for (const [k, light] of data.entries()) pixels.fill(Math.round(light * 255), 4 * k, 4 * k + 3);
  return { raster: { pixels, width, height }, pxToPx: { across: 1, down: 1 } };
}

/** The picture as a diagram with two known lengths, one each way, clicked where their ends are seen. */
function diagramOf({ page, seen }: GeneratedPhoto, squareUp: SquareUp): Diagram {
  const [right, bottom] = [page.across - 17, page.down - 19];
  const line = (id: string, from: Point, to: Point) =>
    known(id, seen.toPhoto(from), seen.toPhoto(to), FULL_SIZE * distance(from, to));
  return sampleDiagram({
    widthPx: SIZE.width,
    heightPx: SIZE.height,
    squareUp,
    knownLengths: [
      line('across', { x: 16, y: bottom }, { x: right, y: bottom }),
      line('down', { x: right, y: 18 }, { x: right, y: bottom }),
    ],
  });
}

function mapOf(diagram: Diagram) {
  const map = diagramMap(diagram, set);
  if (map.kind !== 'map') throw new Error(map.why);
  return map;
}

/** How wrong distances between corners of the piece are at full size, in mm. */
function worstError({ page, seen }: GeneratedPhoto, diagram: Diagram): number {
  const map = mapOf(diagram);
  const placed = page.piece.map((corner) => ({
    corner,
    at: photoToTable(map, seen.toPhoto(corner)) ?? { x: Number.NaN, y: Number.NaN },
  }));
  return Math.max(
    ...placed.flatMap((a) =>
      placed.map((b) => Math.abs(distance(a.at, b.at) - FULL_SIZE * distance(a.corner, b.corner))),
    ),
  );
}

function rectangle({ corners, through }: SidesFound, curved: boolean): SquareUp {
  const followed = curved ? { followed: { kind: 'sides', through } as const } : {};
  return { kind: 'rectangle', corners, sides: { kind: 'not-known' }, ...followed };
}

/** Made once for all tests that look at it. */
const made = new Map<
  number,
  GeneratedPhoto & { readonly proposals: ReturnType<typeof cornersProposed>['proposals'] }
>();

function photoOf(index: number) {
  const photo = made.get(index);
  if (photo) return photo;
  const fresh = generatedPhoto(settingsOf(index, SIZE));
  const withProposals = { ...fresh, proposals: cornersProposed(copyOf(fresh)).proposals };
  made.set(index, withProposals);
  return withProposals;
}

const indices = Array.from({ length: 64 }, (_, k) => k);
const curls = indices.filter((k) => settingsOf(k, SIZE).view.curl.rises !== 0);
const flats = indices.filter((k) => settingsOf(k, SIZE).view.curl.rises === 0);
const gridded = indices.filter((k) => settingsOf(k, SIZE).page.squares !== undefined);

describe('a page that bends', () => {
  it.each(curls.slice(0, 2))('is proposed with curved sides and is within 1/8 in over 26 in: photo %d', (index) => {
    const photo = photoOf(index);
    const [best] = photo.proposals;
    if (!best) throw new Error('nothing is proposed');
    expect(best.bowed).toBe(true);
    const curved = diagramOf(photo, rectangle(best, true));
    expect(mapOf(curved).plane.laid.kind).toBe('bent');
    const error = worstError(photo, curved);
    expect(error).toBeLessThan(inches(1 / 8));
    // By four corners alone it is far off, so that it is the curves that do it.
    expect(worstError(photo, diagramOf(photo, rectangle(best, false)))).toBeGreaterThan(4 * error);
  });

  it('has each place where the photo shows it, there and back, turned too', () => {
    const photo = photoOf(curls[0] as number);
    const [best] = photo.proposals;
    if (!best) throw new Error('nothing is proposed');
    for (const quarterTurns of [0, 1, 2, 3] as const) {
      const map = mapOf({ ...diagramOf(photo, rectangle(best, true)), quarterTurns, placedAt: { x: 31, y: -17 } });
      for (const place of photo.page.piece) {
        const at = photo.seen.toPhoto(place);
        const there = photoToTable(map, at) ?? { x: 0, y: 0 };
        expect(distance(tableToPhoto(map, there) ?? { x: 0, y: 0 }, at)).toBeLessThan(0.01);
      }
    }
  });

  it('refuses a side whose places run back', () => {
    const photo = photoOf(curls[0] as number);
    const [best] = photo.proposals;
    if (!best) throw new Error('nothing is proposed');
    const [top, ...rest] = best.through;
    const through = [[...top].reverse(), ...rest] as unknown as typeof best.through;
    const map = diagramMap(diagramOf(photo, rectangle({ ...best, through }, true)), set);
    expect(map).toEqual({ kind: 'not-squared', why: 'side-runs-back' });
  });
});

describe('a flat page', () => {
  it.each(flats.slice(0, 2))('is within 1/16 in over 26 in, and not taken for bent: photo %d', (index) => {
    const photo = photoOf(index);
    const [best] = photo.proposals;
    if (!best) throw new Error('nothing is proposed');
    expect(best.bowed).toBe(false);
    const drawn = cornersOnEdges(copyOf(photo), best.corners);
    if (drawn.kind !== 'refined') throw new Error(drawn.why);
    expect(worstError(photo, diagramOf(photo, rectangle(drawn, false)))).toBeLessThan(inches(1 / 16));
  });
});

describe('printed squares', () => {
  it.each(gridded.slice(0, 2))('lay the page within 1/8 in over 26 in: photo %d', (index) => {
    const photo = photoOf(index);
    const copy = copyOf(photo);
    const frame = photo.proposals.find(({ kind }) => kind === 'frame');
    const found = frame && squaresWithin(copy, frame.corners);
    if (found?.kind !== 'squares') throw new Error('no squares are seen');
    const squareUp: SquareUp = {
      kind: 'rectangle',
      corners: cornersOfSquares(found.map),
      sides: { kind: 'not-known' },
      followed: { kind: 'squares', map: found.map },
    };
    const diagram = diagramOf(photo, squareUp);
    const error = worstError(photo, diagram);
    expect(error).toBeLessThan(inches(1 / 8));
    // And says so itself, by its crossings, with nothing else seen.
    const check = pageCheck(diagram, mapOf(diagram));
    expect(check?.checks.map(({ kind }) => kind)).toEqual(['crossings']);
    expect(check?.worst.off).toBeGreaterThan(error / 8);
    expect(check?.worst.off).toBeLessThan(inches(1 / 8));
  });
});

describe('pageCheck', () => {
  it('tells a bent page taken for flat from the same page followed', () => {
    const photo = photoOf(curls[0] as number);
    const { proposals } = photo;
    const [best] = proposals;
    if (!best || proposals.length < 2) throw new Error('the page and its frame are seen');
    const seen = seenIn(proposals);
    const worst = (curved: boolean) => {
      const diagram = { ...diagramOf(photo, rectangle(best, curved)), seen };
      return pageCheck(diagram, mapOf(diagram))?.worst;
    };
    const [followed, straight] = [worst(true), worst(false)];
    if (!followed || !straight) throw new Error('something is checked');
    expect(followed.off / followed.over).toBeLessThan(1 / 8 / 26);
    expect(straight.off).toBeGreaterThan(4 * followed.off);
  });
});
