// npm run bench -- photo [--photos 16] [--pictures folder]: finding and flattening the page, following its ink.
import { existsSync } from 'node:fs';
import { MOST_SMALL_PX } from '../app/workers/photo-calls';
import { type ScaledLine, solveScale } from '../core/diagram/solve-scale';
import { distance, type Point, vectorBetween } from '../core/geometry/point';
import { type ProposedCorners, proposedCorners } from '../core/picture/corners';
import { refinedCorners, refinedSides } from '../core/picture/corners-refined';
import { type Grey, halved } from '../core/picture/grey';
import { foundGrid } from '../core/picture/grid';
import { photoToSquares } from '../core/picture/grid-map';
import { flattenedPage, photoToPage } from '../core/picture/page-map';
import { type GeneratedPhoto, generatedPhoto, SET_SIZE, settingsOf } from '../tests/picture/generated-photo';
import { PIECE_26_IN } from '../tests/picture/printed-page';
import { tracedTruth } from '../tests/picture/traced-truth';
import type { Figure } from './figure';
import { inkFigures } from './ink';
import { openCvFigures } from './photo-opencv';
import { markedPictures, PICTURES_BESIDE } from './photo-pictures';
import { quantile, timesOf } from './timing';

const SIZE = { width: 1200, height: 1600 };

/** Corners proposed farther off than this share of the longer side are not found. */
const FOUND_WITHIN = 0.005;

/** Corners read by eye, often at the outside of a thick line, are good to so many pixels or such a share of the longer side. */
const READ_WITHIN = { px: 10, share: 0.01 };

export async function photoFigures(args: readonly string[]): Promise<Figure[]> {
  const after = (name: string) => (args.includes(name) ? args[args.indexOf(name) + 1] : undefined);
  const count = Number(after('--photos') ?? SET_SIZE);
  const folder = after('--pictures') ?? process.env.PHOTO_PICTURES ?? PICTURES_BESIDE;
  return [
    ...(await openCvFigures()),
    ...setFigures(Array.from({ length: count }, (_, k) => Math.floor((k * SET_SIZE) / count))),
    ...timeFigures(),
    ...(await pictureFigures(folder)),
    ...(await inkFigures()),
  ];
}

/** The worst of some photos, and how many there are. */
interface Errors {
  readonly flat: number[];
  readonly curled: number[];
  readonly squares: number[];
  readonly corners: number[];
  /** Of the outline traced by its ink, with the first proposal taken as it is. */
  readonly traced: { readonly flat: number[]; readonly curled: number[] };
}

function setFigures(indices: readonly number[]): Figure[] {
  const errors: Errors = { flat: [], curled: [], squares: [], corners: [], traced: { flat: [], curled: [] } };
  let [first, found] = [0, 0];
  for (const index of indices) {
    const photo = generatedPhoto(settingsOf(index, SIZE));
    const proposed = proposedCorners(photo.grey).slice(0, 3);
    const right = proposed.map((each) => isRight(photo, each));
    if (right[0]) first++;
    if (right.some((each) => each)) found++;
    measure(
      photo,
      proposed.filter((_, k) => right[k]),
      errors,
    );
    const traced = tracedTruth(photo);
    if (traced) errors.traced[photo.view.curl.rises === 0 ? 'flat' : 'curled'].push(traced.off / 25.4);
  }
  const worst = (list: readonly number[]) => (list.length > 0 ? Math.max(...list) : Number.NaN);
  const inches = (name: string, list: readonly number[], goal: number): Figure => {
    return { name, value: worst(list), unit: 'in', baseline: goal, ratio: worst(list) / goal };
  };
  return [
    { name: 'corners_found_rate', value: found / indices.length, unit: '' },
    { name: 'corners_found_first_rate', value: first / indices.length, unit: '' },
    { name: 'corners_refined_px_p50', value: quantile(errors.corners, 0.5), unit: 'px' },
    { name: 'corners_refined_px_p95', value: quantile(errors.corners, 0.95), unit: 'px' },
    inches('flat_page_26in_error_max', errors.flat, 1 / 16),
    inches('curled_page_26in_error_max', errors.curled, 1 / 8),
    inches('squares_26in_error_max', errors.squares, 1 / 8),
    inches('traced_flat_26in_error_max', errors.traced.flat, 1 / 16),
    inches('traced_curled_26in_error_max', errors.traced.curled, 1 / 8),
    { name: 'traced_flat_26in_error_p50', value: quantile(errors.traced.flat, 0.5), unit: 'in' },
    { name: 'traced_curled_26in_error_p50', value: quantile(errors.traced.curled, 0.5), unit: 'in' },
    { name: 'outlines_traced', value: errors.traced.flat.length + errors.traced.curled.length, unit: '' },
    { name: 'photos', value: indices.length, unit: '' },
    { name: 'outlines_flattened', value: errors.flat.length + errors.curled.length, unit: '' },
    { name: 'grids_followed', value: errors.squares.length, unit: '' },
  ];
}

function trueCorners({ page, seen }: GeneratedPhoto, kind: 'page' | 'frame'): Point[] | undefined {
  const sides = kind === 'page' ? { left: 0, top: 0, right: page.across, bottom: page.down } : page.frame;
  return (
    sides &&
    [
      { x: sides.left, y: sides.top },
      { x: sides.right, y: sides.top },
      { x: sides.right, y: sides.bottom },
      { x: sides.left, y: sides.bottom },
    ].map(seen.toPhoto)
  );
}

/** How far corners lie from those of the same thing, whichever of them is called the first. */
function cornersOff(corners: readonly Point[], truth: readonly Point[]): number {
  return Math.max(...truth.map((corner) => Math.min(...corners.map((other) => distance(corner, other)))));
}

function isRight(photo: GeneratedPhoto, { kind, corners }: ProposedCorners): boolean {
  const truth = trueCorners(photo, kind);
  return truth !== undefined && cornersOff(corners, truth) < FOUND_WITHIN * Math.max(SIZE.width, SIZE.height);
}

/** Each right proposal refined and laid flat, without being told the lens. */
function measure(photo: GeneratedPhoto, proposed: readonly ProposedCorners[], errors: Errors): void {
  const { width, height, curl } = photo.view;
  for (const each of proposed) {
    const { kind } = each;
    const outline = refinedSides(photo.grey, each);
    if (!outline) continue;
    errors.corners.push(cornersOff(outline.corners, trueCorners(photo, kind) ?? []));
    const options = { centre: { x: width / 2, y: height / 2 }, longSide: Math.max(width, height) };
    const map = flattenedPage(outline.sides, options);
    if (map.kind === 'page-map') {
      const error = fullSizeError(photo, (place) => photoToPage(map, place));
      (curl.rises === 0 ? errors.flat : errors.curled).push(error);
    }
    if (photo.page.squares === undefined || kind !== 'frame') continue;
    const grid = foundGrid(photo.grey, outline.corners);
    if (grid.kind === 'grid') errors.squares.push(fullSizeError(photo, (place) => photoToSquares(grid.map, place)));
  }
}

/**
 * How wrong, in inches at full size, the distances between the corners of the piece come out, with the scale solved from
 * two known lengths elsewhere on the page. Corners are clicked where they are seen.
 */
function fullSizeError({ page, seen }: GeneratedPhoto, toFlat: (photo: Point) => Point | undefined): number {
  const flat = (place: Point) => toFlat(seen.toPhoto(place)) ?? { x: Number.NaN, y: Number.NaN };
  const line = (id: string, from: Point, to: Point): ScaledLine => {
    return { id, run: vectorBetween(flat(from), flat(to)), length: PIECE_26_IN * distance(from, to) };
  };
  const [right, bottom] = [page.across - 17, page.down - 19];
  const scale = solveScale([
    line('across', { x: 16, y: bottom }, { x: right, y: bottom }),
    line('down', { x: right, y: 18 }, { x: right, y: bottom }),
  ]);
  if (!scale) throw new Error('two known lengths, one each way, have a scale');
  const placed = page.piece.map((corner) => {
    const { x, y } = flat(corner);
    return { corner, at: { x: x * scale.across, y: y * scale.down } };
  });
  const errors = placed.flatMap((a) =>
    placed.map((b) => distance(a.at, b.at) - PIECE_26_IN * distance(a.corner, b.corner)),
  );
  return Math.max(...errors.map(Math.abs)) / 25.4;
}

/** Time on photos: looking for corners as it is done when a picture comes in, and each step on 12 million pixels. */
function timeFigures(): Figure[] {
  const usual = generatedPhoto(settingsOf(6, SIZE)).grey;
  const photo = generatedPhoto(settingsOf(6, { width: 3000, height: 4000 }));
  const frame = proposedCorners(photo.grey).find(({ kind }) => kind === 'frame');
  if (!frame) throw new Error('the large photo shows its frame');
  const ms = (name: string, run: () => unknown): Figure => {
    return { name, value: quantile(timesOf(run, { times: 5, warm: 1 }), 0.5), unit: 'ms' };
  };
  return [
    ms('corners_ms', () => everyCornerRefined(usual)),
    ms('corners_12mp_ms', () => everyCornerRefined(photo.grey)),
    ms('refine_12mp_ms', () => refinedCorners(photo.grey, frame.corners, { mark: 'line', sides: 'bowed' })),
    ms('grid_12mp_ms', () => foundGrid(photo.grey, frame.corners)),
  ];
}

/** Every proposal with its sides, from a copy of at most a million pixels, as the photo worker makes them. */
function everyCornerRefined(grey: Grey): unknown {
  let copy = grey;
  while (copy.width * copy.height > MOST_SMALL_PX) copy = halved(copy);
  return proposedCorners(copy).map((each) => refinedSides(copy, each));
}

/** The share of pictures with corners read by eye that are among the first three proposals, with their sides followed. */
async function pictureFigures(folder: string): Promise<Figure[]> {
  if (!existsSync(folder)) {
    console.error(
      `corners_found_pictures_rate is not measured: there is no folder ${folder} (name one by --pictures).`,
    );
    return [];
  }
  const pictures = await markedPictures(folder);
  const missed = pictures.filter(({ grey, corners }) => {
    const within = Math.max(READ_WITHIN.px, READ_WITHIN.share * Math.max(grey.width, grey.height));
    const proposed = proposedCorners(grey).slice(0, 3);
    return !proposed.some((each) => cornersOff((refinedSides(grey, each) ?? each).corners, corners) < within);
  });
  for (const { name } of missed) console.error(`corners not found: ${name}`);
  return [
    { name: 'corners_found_pictures_rate', value: 1 - missed.length / pictures.length, unit: '' },
    { name: 'pictures', value: pictures.length, unit: '' },
  ];
}
