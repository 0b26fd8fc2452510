import type { Point } from '../../core/geometry/point';

/** How a page bends: a book's page rises from its spine at the left and sinks to the right, or a sheet rolls from the top. */
export interface Curl {
  /** Which way the straight lines on the bent sheet run. */
  readonly rulings: 'down' | 'across';
  /** How steeply it rises at its beginning and falls at its end, in radians. */
  readonly rises: number;
  readonly falls: number;
}

/** How a page is photographed. Tilts in degrees; the page fills `share` of the picture. */
export interface View {
  readonly width: number;
  readonly height: number;
  readonly focalPx: number;
  readonly tilt: readonly [x: number, y: number, z: number];
  readonly share: number;
  readonly curl: Curl;
}

/** A page of so many mm as it is seen: where each of its places lies in the photo, and what each pixel shows of it. */
export interface SeenPage {
  readonly toPhoto: (page: Point) => Point;
  /** Also beyond the edges of the page; its slope, for the light that falls on it. */
  readonly toPage: (x: number, y: number, out: { u: number; v: number; slope: number }) => void;
}

export const FLAT: Curl = { rulings: 'down', rises: 0, falls: 0 };

const STEPS = 2048;

/** The cross section by arc length: its slope falls off from the spine within a fifth of the width. */
function crossSection(length: number, { rises, falls }: Curl) {
  const step = length / STEPS;
  const [along, height] = [new Float64Array(STEPS + 1), new Float64Array(STEPS + 1)];
  const slopeAt = (s: number) => rises * Math.exp((-5 * s) / length) - (falls * s) / length;
  for (let k = 0; k < STEPS; k++) {
    const slope = slopeAt((k + 0.5) * step);
    along[k + 1] = (along[k] as number) + step * Math.cos(slope);
    height[k + 1] = (height[k] as number) + step * Math.sin(slope);
  }
  const at = (s: number) => {
    const t = Math.min(Math.max(s / step, 0), STEPS - 1e-9);
    const k = Math.floor(t);
    const part = s / step - k;
    const mix = (list: Float64Array) => (list[k] as number) * (1 - part) + (list[k + 1] as number) * part;
    return { along: mix(along), height: mix(height) };
  };
  return { at, slopeAt };
}

/** A page `across` by `down` mm seen by a pinhole camera whose axis meets the middle of the picture. */
export function seenPage(across: number, down: number, view: View): SeenPage {
  const isDown = view.curl.rulings === 'down';
  const section = crossSection(isDown ? across : down, view.curl);
  const turn = rotation(view.tilt);
  const surface = ({ x, y }: Point): readonly [number, number, number] => {
    const { along, height } = section.at(isDown ? x : y);
    return isDown ? [along - across / 2, y - down / 2, -height] : [x - across / 2, along - down / 2, -height];
  };
  const shift = { x: 0, y: 0, z: (view.focalPx * Math.max(across, down)) / Math.min(view.width, view.height) };
  const centre = { x: view.width / 2, y: view.height / 2 };
  const toPhoto = (page: Point): Point => {
    const [x, y, z] = apply(turn, surface(page));
    const depth = z + shift.z;
    return {
      x: centre.x + (view.focalPx * (x + shift.x)) / depth,
      y: centre.y + (view.focalPx * (y + shift.y)) / depth,
    };
  };
  for (let round = 0; round < 12; round++) fitIn(view, shift, outlineOf(across, down).map(toPhoto));
  const back = (p: readonly [number, number, number]) =>
    [0, 1, 2].map((k) => turn[0][k as 0] * p[0] + turn[1][k as 0] * p[1] + turn[2][k as 0] * p[2]);
  const [ox, oy, oz] = back([-shift.x, -shift.y, -shift.z]) as [number, number, number];
  let arc = 0;
  const toPage: SeenPage['toPage'] = (px, py, out) => {
    const [dx, dy, dz] = back([(px - centre.x) / view.focalPx, (py - centre.y) / view.focalPx, 1]) as [
      number,
      number,
      number,
    ];
    // Newton along the cross section from where the last pixel lay: the ray must pass through the sheet.
    const [o, d, half] = isDown ? [ox, dx, across / 2] : [oy, dy, down / 2];
    let s = arc;
    for (let round = 0; round < 8; round++) {
      const { along, height } = section.at(s);
      const t = (-height - oz) / dz;
      const miss = o + t * d - (along - half);
      const slope = section.slopeAt(Math.min(Math.max(s, 0), half * 2));
      const step = miss / (Math.cos(slope) + (Math.sin(slope) * d) / dz);
      s += step;
      if (Math.abs(step) < 1e-4) break;
    }
    arc = Math.min(Math.max(s, 0), half * 2);
    const t = (-section.at(s).height - oz) / dz;
    out.u = isDown ? s : ox + t * dx + across / 2;
    out.v = isDown ? oy + t * dy + down / 2 : s;
    out.slope = section.slopeAt(arc);
  };
  return { toPhoto, toPage };
}

function fitIn(view: View, shift: { x: number; y: number; z: number }, seen: readonly Point[]): void {
  const [xs, ys] = [seen.map(({ x }) => x), seen.map(({ y }) => y)];
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const room = Math.max((maxX - minX) / view.width, (maxY - minY) / view.height);
  shift.x -= (((minX + maxX) / 2 - view.width / 2) * shift.z) / view.focalPx;
  shift.y -= (((minY + maxY) / 2 - view.height / 2) * shift.z) / view.focalPx;
  shift.z *= room / view.share;
}

function outlineOf(across: number, down: number): Point[] {
  const shares = Array.from({ length: 9 }, (_, k) => k / 8);
  return shares.flatMap((t) => [
    { x: t * across, y: 0 },
    { x: t * across, y: down },
    { x: 0, y: t * down },
    { x: across, y: t * down },
  ]);
}

type Row = readonly [number, number, number];
type Turn = readonly [Row, Row, Row];

function rotation(tilt: View['tilt']): Turn {
  const [a, b, c] = tilt.map((degrees) => (degrees * Math.PI) / 180) as [number, number, number];
  const [ca, sa, cb, sb, cc, sc] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b), Math.cos(c), Math.sin(c)];
  return [
    [cc * cb, cc * sb * sa - sc * ca, cc * sb * ca + sc * sa],
    [sc * cb, sc * sb * sa + cc * ca, sc * sb * ca - cc * sa],
    [-sb, cb * sa, cb * ca],
  ];
}

function apply(turn: Turn, p: readonly [number, number, number]): [number, number, number] {
  return turn.map((row) => row[0] * p[0] + row[1] * p[1] + row[2] * p[2]) as [number, number, number];
}
