/** Pages measured by two readers of PDF that know nothing of one another: poppler, and pdf.js on a canvas of its own. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Point } from '../../core/geometry/point';
import type { Page, PagePlan } from '../../core/paper/page-plan';
import { HEADER } from '../../core/paper/page-plan';
import { marginsOf } from '../../core/paper/page-sizes';
import { TEST_SQUARE } from '../../core/paper/paper-findings';
import { type GreyPage, greyPage, inkNear, median, withFile } from './print-tools';

/** A part of a page, in mm from its upper left corner. */
export interface Part {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export const READERS = ['poppler', 'pdf.js'] as const;
export type Reader = (typeof READERS)[number];

/** A part of a page as grey pixels, and where its first pixel begins on the page (mm). */
interface GreyPart extends GreyPage {
  readonly at: { readonly x: number; readonly y: number };
}

interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function pixelsOf({ left, top, width, height }: Part, dpi: number): PixelBox {
  const px = (mm: number) => Math.round((mm * dpi) / 25.4);
  return { x: px(left), y: px(top), width: px(width), height: px(height) };
}

async function partBy(reader: Reader, pdf: Uint8Array, number: number, part: Part, dpi: number): Promise<GreyPart> {
  const box = pixelsOf(part, dpi);
  const at = { x: (box.x * 25.4) / dpi, y: (box.y * 25.4) / dpi };
  const grey = reader === 'poppler' ? byPoppler(pdf, number, box, dpi) : await byPdfJs(pdf, number, box, dpi);
  return { ...grey, at };
}

function byPoppler(pdf: Uint8Array, number: number, { x, y, width, height }: PixelBox, dpi: number): GreyPage {
  return withFile(pdf, (file, folder) => {
    const where = ['-x', x, '-y', y, '-W', width, '-H', height, '-f', number, '-l', number, '-r', dpi].map(String);
    execFileSync('pdftoppm', [...where, '-gray', '-singlefile', file, join(folder, 'part')]);
    return greyPage(readFileSync(join(folder, 'part.pgm')), dpi);
  });
}

async function byPdfJs(pdf: Uint8Array, number: number, box: PixelBox, dpi: number): Promise<GreyPage> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const doc = await getDocument({ data: pdf.slice(), verbosity: 0 }).promise;
  const page = await doc.getPage(number);
  const viewport = page.getViewport({ scale: dpi / 72, offsetX: -box.x, offsetY: -box.y });
  const { canvas, context } = (doc.canvasFactory as CanvasFactory).create(box.width, box.height);
  await page.render({ canvas, canvasContext: context, viewport, background: 'white' }).promise;
  const { data } = context.getImageData(0, 0, box.width, box.height);
  const pixels = new Uint8Array(box.width * box.height);
  for (let i = 0; i < pixels.length; i++) pixels[i] = data[i * 4] ?? 255;
  await doc.loadingTask.destroy();
  return { width: box.width, height: box.height, pixels, dpi };
}

interface CanvasFactory {
  create(width: number, height: number): { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D };
}

/** From a place of the sheets' plane to the page that shows it (mm). */
export function onPage({ paper }: PagePlan, { window }: Page, { x, y }: { x: number; y: number }) {
  const { left, top } = marginsOf(paper);
  return { x: x - window.minX + left, y: y - window.minY + top + HEADER };
}

/** By how much the 4 in square of a page is off, the larger of across and down (mm). */
export async function squareOff(
  reader: Reader,
  pdf: Uint8Array,
  at: { readonly plan: PagePlan; readonly page: Page; readonly number: number; readonly square: Point },
  dpi: number,
): Promise<number> {
  const corner = onPage(at.plan, at.page, at.square);
  const part = { left: corner.x - 3, top: corner.y - 3, width: TEST_SQUARE + 6, height: TEST_SQUARE + 6 };
  const grey = await partBy(reader, pdf, at.number, part, dpi);
  const inside = { x: corner.x - grey.at.x, y: corner.y - grey.at.y };
  const off = (['x', 'y'] as const).map((along) => {
    const other = along === 'x' ? 'y' : 'x';
    const sides = Array.from({ length: 60 }, (_, k) => {
      const start = { ...inside, [other]: inside[other] + 8 + k * 1.4 };
      const near = inkNear(grey, start, along, 0.6);
      const far = inkNear(grey, { ...start, [along]: start[along] + TEST_SQUARE }, along, 0.6);
      return near === undefined || far === undefined ? Number.NaN : far - near;
    });
    return Math.abs(median(sides.filter((side) => !Number.isNaN(side))) - TEST_SQUARE);
  });
  return Math.max(...off);
}

/** Where an upright line of the drawing stands on a page, from the page's left edge (mm). */
export async function uprightAt(
  reader: Reader,
  pdf: Uint8Array,
  at: { readonly plan: PagePlan; readonly page: Page; readonly number: number; readonly x: number },
  dpi: number,
): Promise<number> {
  const { plan, page, number, x } = at;
  const middle = onPage(plan, page, { x, y: (page.window.minY + page.window.maxY) / 2 });
  const part = { left: middle.x - 3, top: middle.y - 20, width: 6, height: 40 };
  const grey = await partBy(reader, pdf, number, part, dpi);
  const found = Array.from({ length: 60 }, (_, k) =>
    inkNear(grey, { x: middle.x - grey.at.x, y: 2 + k * 0.6 }, 'x', 0.5),
  );
  return grey.at.x + median(found.filter((one) => one !== undefined));
}
