import { beforeAll, describe, expect, it } from 'vitest';
import { MM_PER_PT } from '../../core/drawing/line-styles';
import { EVERY_KIND } from './every-kind';
import { checked, fontsNotEmbedded, type GreyPage, greyPages, hasReaders, pageTexts, unpacked } from './print-tools';

/** Every pen that draws a line: its width on paper (mm) and its grey. */
function pens(pdf: Uint8Array): { readonly width: number; readonly grey: number }[] {
  const found: { width: number; grey: number }[] = [];
  for (const [, content] of unpacked(pdf).matchAll(/stream\n(.*?)endstream/gs)) {
    // Stored drawings and pages are in millimetres; a page turns them into points in its very first line.
    let now = { scale: 1, width: 0, grey: 0 };
    const saved: (typeof now)[] = [];
    for (const line of (content ?? '').split('\n')) {
      const parts = line.split(' ');
      const operator = parts.at(-1);
      if (operator === 'q') saved.push(now);
      else if (operator === 'Q') now = saved.pop() ?? now;
      else if (operator === 'cm') now = { ...now, scale: now.scale * Math.hypot(Number(parts[0]), Number(parts[1])) };
      else if (operator === 'w') now = { ...now, width: Number(parts[0]) };
      else if (operator === 'G') now = { ...now, grey: Number(parts[0]) };
      else if (operator === 'S' || operator === 's') found.push({ width: now.width * now.scale, grey: now.grey });
    }
  }
  return found;
}

/** The darkest pixel nearer than 10 mm to an edge; a pixel's width is left to rounding. */
function darkestAtEdge({ width, height, pixels, dpi }: GreyPage): number {
  const clear = Math.floor((10 / 25.4) * dpi) - 1;
  let darkest = 255;
  for (let y = 0; y < height; y++) {
    const isEdge = y < clear || y >= height - clear;
    for (let x = 0; x < width; x += !isEdge && x === clear - 1 ? width - 2 * clear + 1 : 1) {
      darkest = Math.min(darkest, pixels[y * width + x] ?? 255);
    }
  }
  return darkest;
}

describe.skipIf(!hasReaders).each(Object.entries(EVERY_KIND))('%s', (kind, make) => {
  let pdf: Uint8Array;
  beforeAll(async () => {
    pdf = await make();
  });

  it('is a clean file with every font in it and words that can be found', () => {
    expect(checked(pdf)).toBe(0);
    expect(fontsNotEmbedded(pdf)).toBe(0);
    for (const text of pageTexts(pdf)) expect(text.trim().length).toBeGreaterThan(20);
  });

  // Half a point is the finest line that printers in draft mode do not lose (common practice).
  it('has no line finer than half a point, none so light that draft mode loses it, and no colour', () => {
    const all = pens(pdf);
    expect(all.length).toBeGreaterThan(4);
    // Numbers of the file are rounded to a thousandth.
    expect(Math.min(...all.map(({ width }) => width))).toBeGreaterThanOrEqual(0.5 * MM_PER_PT - 0.002);
    expect(Math.max(...all.map(({ grey }) => grey))).toBeLessThanOrEqual(0.6);
    expect(unpacked(pdf)).not.toMatch(/^[\d.]+ [\d.]+ [\d.]+ (rg|RG)$/m);
  });

  // The short lines of a check sheet stand in the margin to show what a printer loses there; and what is drawn larger for
  // a printer that shrinks is that near only in the file.
  it.skipIf(/^check sheet|is off$/.test(kind))('keeps all ink 10 mm from the edge', () => {
    for (const page of greyPages(pdf, 72)) expect(darkestAtEdge(page)).toBe(255);
  });
});
