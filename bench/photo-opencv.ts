import { seededRandom } from '../core/cloth/seeded-random';
import type { Point } from '../core/geometry/point';
import { applyHomography, type Homography, homographyFrom, type PointPair } from '../core/geometry/projective';
import { bestHomography } from '../core/picture/page-homography';
import { flatRows } from '../core/picture/page-warp';
import type { Figure } from './figure';
import { quantile, timesOf } from './timing';

type OpenCv = typeof import('@techstark/opencv-js');

/** Squaring up and warping beside OpenCV's own, on the same points and pixels in the same run. */
export async function openCvFigures(): Promise<Figure[]> {
  const { cv } = await openCv();
  return [...squareUpFigures(cv), ...warpFigures(cv)];
}

/** In a box of its own: the library answers to `then`, and waiting for it would never end. */
async function openCv(): Promise<{ readonly cv: OpenCv }> {
  const { default: made } = (await import('@techstark/opencv-js')) as unknown as { default: OpenCv | Promise<OpenCv> };
  const cv = made instanceof Promise ? await made : made;
  if (!cv.Mat) {
    await new Promise<void>((ready) => {
      (cv as unknown as { onRuntimeInitialized: () => void }).onRuntimeInitialized = ready;
    });
  }
  return { cv };
}

const PAGE = { across: 2100, down: 2970 };
const ROUNDS = 200;

function squareUpFigures(cv: OpenCv): Figure[] {
  const random = seededRandom(11);
  const slip = (size: number) => (random() - 0.5) * 2 * size;
  let [worstFour, worstMany] = [0, 0];
  const misses = { ours: [] as number[], theirs: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    // OpenCV keeps points in 32 bits; both get the same.
    const corners = [
      [300, 400],
      [2700, 380],
      [2680, 3500],
      [320, 3600],
    ].map(([x = 0, y = 0]) => ({ x: Math.fround(x + slip(250)), y: Math.fround(y + slip(250)) }));
    const flat = [at(0, 0), at(PAGE.across, 0), at(PAGE.across, PAGE.down), at(0, PAGE.down)];
    const four = pairsOf(corners, flat);
    const ours = homographyFrom(four) as Homography;
    worstFour = Math.max(worstFour, apart(ours, throughOpenCv(cv, four, 'getPerspectiveTransform'), corners));
    const back = homographyFrom(pairsOf(flat, corners)) as Homography;
    const many = Array.from({ length: 40 }, () => {
      const from = at(Math.fround(random() * PAGE.across), Math.fround(random() * PAGE.down));
      const seen = applyHomography(back, from) as Point;
      return { from, to: at(Math.fround(seen.x + slip(1.5)), Math.fround(seen.y + slip(1.5))) };
    });
    const [fitted, theirs] = [bestHomography(many) as Homography, throughOpenCv(cv, many, 'findHomography')];
    worstMany = Math.max(worstMany, apart(fitted, theirs, flat));
    misses.ours.push(apart(fitted, back, flat));
    misses.theirs.push(apart(theirs, back, flat));
  }
  const [own, other] = [quantile(misses.ours, 0.95), quantile(misses.theirs, 0.95)];
  return [
    { name: 'square_up_error_px_max', value: worstFour, unit: 'px' },
    { name: 'square_up_40_points_apart_px_max', value: worstMany, unit: 'px' },
    { name: 'square_up_40_points_error_px_p95', value: own, unit: 'px', baseline: other, ratio: own / other },
  ];
}

function at(x: number, y: number): Point {
  return { x, y };
}

function pairsOf(from: readonly Point[], to: readonly Point[]): PointPair[] {
  return from.map((each, k) => ({ from: each, to: to[k] as Point }));
}

function throughOpenCv(cv: OpenCv, pairs: readonly PointPair[], how: 'getPerspectiveTransform' | 'findHomography') {
  const mat = (points: readonly Point[]) => {
    return cv.matFromArray(
      points.length,
      1,
      cv.CV_32FC2,
      points.flatMap(({ x, y }) => [x, y]),
    );
  };
  const [from, to] = [mat(pairs.map((pair) => pair.from)), mat(pairs.map((pair) => pair.to))];
  const map = how === 'findHomography' ? cv.findHomography(from, to) : cv.getPerspectiveTransform(from, to);
  const numbers = Array.from(map.data64F) as unknown as Homography;
  for (const each of [from, to, map]) each.delete();
  return numbers;
}

/** How far two maps part, at most, over a net of 21 by 21 places between four corners. */
function apart(one: Homography, other: Homography, [a, b, c, d]: readonly Point[]): number {
  let most = 0;
  for (let i = 0; i <= 20; i++) {
    for (let k = 0; k <= 20; k++) {
      const mix = (axis: 'x' | 'y') => {
        const upper = (a as Point)[axis] + (((b as Point)[axis] - (a as Point)[axis]) * i) / 20;
        const lower = (d as Point)[axis] + (((c as Point)[axis] - (d as Point)[axis]) * i) / 20;
        return upper + ((lower - upper) * k) / 20;
      };
      const place = { x: mix('x'), y: mix('y') };
      const [p, q] = [applyHomography(one, place) as Point, applyHomography(other, place) as Point];
      most = Math.max(most, Math.hypot(p.x - q.x, p.y - q.y));
    }
  }
  return most;
}

/** 12 million pixels through a slanted view, between pixels by two straight mixes. */
function warpFigures(cv: OpenCv): Figure[] {
  const [width, height] = [4000, 3000];
  const pixels = new Uint8ClampedArray(width * height * 4);
  const random = seededRandom(3);
  for (let i = 0; i < pixels.length; i++) pixels[i] = (i % 4 === 3 ? 1 : random()) * 255;
  const source = { pixels, width, height };
  const corners = [at(310, 190), at(3720, 260), at(3610, 2820), at(260, 2700)];
  const box = [at(0, 0), at(width, 0), at(width, height), at(0, height)];
  const toSource = homographyFrom(pairsOf(box, corners)) as Homography;
  const toFlat = homographyFrom(pairsOf(corners, box)) as Homography;
  const [from, to] = [cv.matFromImageData({ data: pixels, width, height } as ImageData), new cv.Mat()];
  const map = cv.matFromArray(3, 3, cv.CV_64F, [...toFlat]);
  const runs = { times: 5, warm: 1 };
  const toPhoto = (flat: Point) => applyHomography(toSource, flat) as Point;
  const meshed = quantile(
    timesOf(() => flatRows(source, { width, height, toPhoto }, { from: 0, to: height }), runs),
    0.5,
  );
  const theirs = quantile(
    timesOf(() => cv.warpPerspective(from, to, map, new cv.Size(width, height), cv.INTER_LINEAR), runs),
    0.5,
  );
  for (const each of [from, to, map]) each.delete();
  return [{ name: 'warp_12mp_ms', value: meshed, unit: 'ms', baseline: theirs, ratio: meshed / theirs }];
}
