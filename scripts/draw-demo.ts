// Draws the demo's picture, public/demo/linden-plate.jpg: a page of a booklet of our own making, photographed askew.
// Run with: node scripts/run.mjs scripts/draw-demo.ts (needs a Chromium; the picture itself is in the repository).

import { writeFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import {
  lindenCorners,
  lindenFrame,
  lindenFrameInPhoto,
  lindenHemThrough,
  lindenPhotoSize,
  lindenSideThrough,
} from '../app/demo/linden-panel';
import type { Point } from '../core/geometry/point';
import { homographyFrom } from '../core/geometry/projective';
import type { Cubic } from '../core/geometry/segment';
import { splineThrough } from '../core/geometry/spline';
import { inches } from '../core/units/inch';
import { chromiumPath } from './chromium-path';

/** CSS pixels of the flat page to one full-size inch; near the scale of the photo, so that nothing is blurred twice. */
const PX_PER_INCH = 50;
const px = (mm: number) => (mm / inches(1)) * PX_PER_INCH;
const at = (p: Point) => `${px(p.x)} ${px(p.y)}`;
const curve = (cubics: readonly Cubic[]) => cubics.map((c) => `C${at(c.p1)} ${at(c.p2)} ${at(c.p3)}`).join('');

export async function main(): Promise<number> {
  const [waistAtFold, waistAtSide, hemAtSide, hemAtFold] = lindenCorners;
  const side = splineThrough([waistAtSide, ...lindenSideThrough, hemAtSide]);
  const hem = splineThrough([hemAtSide, ...lindenHemThrough, hemAtFold], {
    directions: [undefined, undefined, { dx: -1, dy: 0 }],
  });
  const outline = `M${at(waistAtFold)}L${at(waistAtSide)}${curve(side)}${curve(hem)}Z`;
  const words = (x: number, y: number, text: string, more = '') =>
    `<text x="${x * PX_PER_INCH}" y="${y * PX_PER_INCH}" ${more}>${text}</text>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1400" height="2000" viewBox="-300 -300 1400 2000">
    <rect x="-300" y="-300" width="1400" height="2000" fill="#e9dec3"/>
    <rect x="-200" y="-200" width="1200" height="1800" fill="none" stroke="#2c241b" stroke-width="4"/>
    <g fill="none" stroke="#2c241b" stroke-width="4" stroke-linejoin="round"><path d="${outline}"/>
    <path stroke-width="2" d="M-60 0v1400M-72 0h24M-72 1400h24M0-60h350M0-72v24M350-72v24"/>
    <path stroke-width="2" d="M250 500v500M240 520l10-20 10 20M240 980l10 20 10-20"/></g>
    <g font-family="DejaVu Serif, Georgia, serif" fill="#2c241b" font-size="34">
    ${words(1.6, -1.45, '¼ of waist', 'font-size="30"')}
    ${words(0, 0, '28', `transform="translate(-78 ${14 * PX_PER_INCH}) rotate(-90)" font-size="32"`)}
    ${words(0, 0, 'fold', `transform="translate(34 ${18 * PX_PER_INCH}) rotate(-90)" font-size="28"`)}
    ${words(13, 3, 'Linden')}${words(13, 3.9, 'petticoat')}
    ${words(13, 5.2, 'Half of front.', 'font-size="26" font-style="italic"')}
    ${words(13, 5.9, 'No turnings', 'font-size="26" font-style="italic"')}
    ${words(13, 6.6, 'allowed.', 'font-size="26" font-style="italic"')}
    ${words(16.2, 31, 'Plate 14', 'font-size="26"')}</g></svg>`;

  const map = homographyFrom(
    lindenFrame.map((p, i) => ({
      from: { x: px(p.x) + 300, y: px(p.y) + 300 },
      to: lindenFrameInPhoto[i] ?? { x: 0, y: 0 },
    })),
  );
  if ('kind' in map) throw new Error(`the frame in the photo is ${map.kind}`);
  const [a, b, c, d, e, f, g, h, i] = map;
  const matrix = [a, d, 0, g, b, e, 0, h, 0, 0, 1, 0, c, f, 0, i].join(',');
  const { widthPx, heightPx } = lindenPhotoSize;
  const page = `<body style="margin:0;background:#7d6a4d;width:${widthPx}px;height:${heightPx}px;overflow:hidden">
    <div style="position:absolute;transform-origin:0 0;transform:matrix3d(${matrix});box-shadow:0 0 60px #2c241b">${svg}</div>
    <div style="position:absolute;inset:0;background:radial-gradient(circle at 25% 20%,#fff6 0,#fff0 45%,#2c1c0a55 100%)"></div></body>`;

  const browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: ['--no-sandbox', '--disable-gpu'],
  });
  const tab = await browser.newPage({ viewport: { width: widthPx, height: heightPx } });
  await tab.setContent(page);
  writeFileSync('public/demo/linden-plate.jpg', await tab.screenshot({ type: 'jpeg', quality: 82 }));
  await browser.close();
  return 0;
}
