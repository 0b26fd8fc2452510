import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import type { Point } from '../core/geometry/point';
import { type Grey, greyOf } from '../core/picture/grey';
import { chromiumPath } from '../scripts/chromium-path';

/** Where real pictures are looked for unless another folder is named, beside the project. */
export const PICTURES_BESIDE = '../shared/data/diagrams';

/** A picture with the corners of something rectangular in it, read by eye. */
export interface MarkedPicture {
  readonly name: string;
  readonly grey: Grey;
  readonly corners: readonly Point[];
}

/**
 * The pictures of a folder in which something rectangular was marked by eye: in `photos.json` under a name that tells of
 * corners, in `diagrams.json` as the points TL, TR, BR and BL; in pixels as the file lies. Decoded by Chromium, and not
 * turned as the camera may have noted.
 */
export async function markedPictures(folder: string): Promise<MarkedPicture[]> {
  const marked = ['photos.json', 'diagrams.json'].flatMap((name) => {
    const path = join(folder, name);
    if (!existsSync(path)) return [];
    const list = JSON.parse(readFileSync(path, 'utf8')) as readonly Record<string, unknown>[];
    return list.flatMap((entry) => {
      const corners = cornersOf(entry);
      const file = join(folder, String(entry.file));
      return corners && existsSync(file) ? [{ name: String(entry.file), file, corners }] : [];
    });
  });
  const decoded = await greysOf(marked.map(({ file }) => file));
  return marked.map(({ name, corners }, k) => ({ name, corners, grey: decoded[k] as Grey }));
}

/** Picture files as Chromium decodes them, not turned. */
export async function greysOf(files: readonly string[]): Promise<Grey[]> {
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox'] });
  const page = await browser.newPage();
  const greys: Grey[] = [];
  for (const file of files) {
    const decoded = await page.evaluate(
      async (base64) => {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([bytes]));
        const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
        context?.drawImage(bitmap, 0, 0);
        const data = context?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? new Uint8ClampedArray();
        let text = '';
        for (let at = 0; at < data.length; at += 8192) text += String.fromCharCode(...data.subarray(at, at + 8192));
        return { width: bitmap.width, height: bitmap.height, text: btoa(text) };
      },
      withoutCameraData(readFileSync(file)).toString('base64'),
    );
    const rgba = new Uint8ClampedArray(Buffer.from(decoded.text, 'base64'));
    greys.push(greyOf(rgba, decoded.width, decoded.height));
  }
  await browser.close();
  return greys;
}

/** A JPEG file without its segments of the kind APP1, which hold what the camera noted; other files as they are. */
function withoutCameraData(file: Buffer): Buffer {
  if (file.readUInt16BE(0) !== 0xffd8) return file;
  const kept = [file.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= file.length && file[at] === 0xff && file[at + 1] !== 0xda) {
    const end = at + 2 + file.readUInt16BE(at + 2);
    if (file[at + 1] !== 0xe1) kept.push(file.subarray(at, end));
    at = end;
  }
  return Buffer.concat([...kept, file.subarray(at)]);
}

function cornersOf(entry: Record<string, unknown>): Point[] | undefined {
  const names = Object.keys(entry)
    .filter((name) => name.includes('corner') && isFour(entry[name]))
    .sort((a, b) => Number(b.startsWith('corners')) - Number(a.startsWith('corners')));
  const points = (entry.px_points ?? {}) as Record<string, unknown>;
  const four = names[0] === undefined ? ['TL', 'TR', 'BR', 'BL'].map((name) => points[name]) : entry[names[0]];
  return isFour(four) ? four.map(([x, y]) => ({ x, y })) : undefined;
}

function isFour(value: unknown): value is [number, number][] {
  return Array.isArray(value) && value.length === 4 && value.every((pair) => Array.isArray(pair) && pair.length === 2);
}
