// A drawn page of lines to follow: hems, a bow, an arc, a straight edge, a corner; crossed and lettered over.
import type { Point } from '../../core/geometry/point';
import { curveRun, lettering, type Page } from './drawn-page';
import type { Shot } from './drawn-photo';

/** The lines by name, in mm on the page. */
export const INK_LINES: Readonly<Record<string, readonly Point[]>> = {
  hem: curveRun((t) => ({ x: 15 + 120 * t, y: 20 + 10 * Math.sin(Math.PI * t) })),
  ess: curveRun((t) => ({ x: 15 + 120 * t, y: 50 + 6 * Math.sin(2 * Math.PI * t) })),
  arc: curveRun((t) => ({ x: 75 + 22 * Math.cos(Math.PI * (1 + t)), y: 92 + 22 * Math.sin(Math.PI * (1 + t)) })),
  straight: [
    { x: 15, y: 98 },
    { x: 140, y: 106 },
  ],
  corner: [
    { x: 105, y: 92 },
    { x: 120, y: 64 },
    { x: 145, y: 90 },
  ],
};

/** Lengths of dashes and gaps in mm, by the manner of the line. */
export const INK_STYLES: Readonly<Record<string, readonly number[] | undefined>> = {
  solid: undefined,
  dashed: [4, 2],
  dotted: [0.6, 1.2],
  broken: [8, 0.8, 3, 1.2],
};

/** The page with all its lines in one manner. */
export function inkPage(style: string): Page {
  const dashes = INK_STYLES[style];
  const drawn = Object.values(INK_LINES).map((points) => ({ points, width: 0.5, ...(dashes ? { dashes } : {}) }));
  const crossing = {
    points: [
      { x: 60, y: 10 },
      { x: 80, y: 115 },
    ],
    width: 0.3,
  };
  return {
    across: 160,
    down: 120,
    paper: 228,
    ink: 45,
    strokes: [...drawn, crossing, ...lettering(95, 46, 5, 4), ...lettering(30, 26, 4, 3)],
  };
}

/** A tilted photo of it, shadowed, a little blurred, noisy, through JPEG; `width` pixels wide. */
export function inkShot(width: number): Shot {
  return {
    width,
    height: width * 0.75,
    focalPx: width * 0.9,
    tilt: [12, -8, 3],
    distance: 190,
    shadow: 0.35,
    blurPx: width / 1600,
    noise: 5,
    jpeg: 75,
    seed: 11,
  };
}
