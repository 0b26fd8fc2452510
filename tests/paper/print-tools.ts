/** Independent readers of PDF, where they are installed: poppler (pdftoppm, pdftotext, pdfinfo) and qpdf. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const hasReaders = ['pdftoppm', 'pdftotext', 'qpdf'].every(
  (tool) => spawnSync(tool, [tool === 'qpdf' ? '--version' : '-v']).status === 0,
);
if (!hasReaders) console.log('Skipped: poppler-utils and qpdf are not installed, so printed pages cannot be measured.');

/** A page as grey pixels, 0 black to 255 white. */
export interface GreyPage {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
  readonly dpi: number;
}

/** Lets `use` work with the PDF as a file, in a folder that is taken away again. */
export function withFile<T>(pdf: Uint8Array, use: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'pages-'));
  try {
    const file = join(folder, 'pages.pdf');
    writeFileSync(file, pdf);
    return use(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Every page, or one, as poppler draws it. */
export function greyPages(pdf: Uint8Array, dpi: number, only?: number): GreyPage[] {
  return withFile(pdf, (file, folder) => {
    const which = only === undefined ? [] : ['-f', String(only), '-l', String(only)];
    execFileSync('pdftoppm', ['-r', String(dpi), '-gray', ...which, file, join(folder, 'page')]);
    const list = readdirSync(folder).filter((name) => name.endsWith('.pgm'));
    return list.sort().map((name) => greyPage(readFileSync(join(folder, name)), dpi));
  });
}

/** A binary PGM file: P5, width, height, 255, then one byte a pixel. */
export function greyPage(file: Buffer, dpi: number): GreyPage {
  const head = /^P5\s(\d+)\s(\d+)\s255\s/.exec(file.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('not a PGM file');
  return { width: Number(head[1]), height: Number(head[2]), pixels: file.subarray(head[0].length), dpi };
}

/** The text of each page, as another program gets it out. */
export function pageTexts(pdf: Uint8Array): string[] {
  return withFile(pdf, (file) =>
    execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1),
  );
}

/** The whole file as plain text, streams unpacked. */
export function unpacked(pdf: Uint8Array): string {
  return withFile(pdf, (file) =>
    execFileSync('qpdf', ['--qdf', '--object-streams=disable', file, '-'], { maxBuffer: 1e9 }).toString('latin1'),
  );
}

/** The exit code of qpdf's check: 0 means clean. */
export function checked(pdf: Uint8Array): number | null {
  return withFile(pdf, (file) => spawnSync('qpdf', ['--check', file]).status);
}

/** How many fonts are not in the file: lines of pdffonts that do not say yes under "emb". */
export function fontsNotEmbedded(pdf: Uint8Array): number {
  const listed = execFileSync('pdffonts', ['-'], { input: pdf, encoding: 'utf8' }).trim().split('\n');
  const at = listed[0]?.indexOf('emb') ?? 0;
  return listed.slice(2).filter((line) => line.slice(at, at + 3) !== 'yes').length;
}

/** Where the darkest ink lies within `reach` mm of a place along a row or column of pixels, in mm; nothing where it is white. */
export function inkNear(
  page: GreyPage,
  place: { readonly x: number; readonly y: number },
  along: 'x' | 'y',
  reach: number,
): number | undefined {
  const perMm = page.dpi / 25.4;
  const [px, py] = [Math.floor(place.x * perMm), Math.floor(place.y * perMm)];
  const middle = along === 'x' ? px : py;
  let [sum, weight] = [0, 0];
  for (let i = middle - Math.round(reach * perMm); i <= middle + reach * perMm; i++) {
    const index = along === 'x' ? py * page.width + i : i * page.width + px;
    const dark = 255 - (page.pixels[index] ?? 255);
    sum += dark * (i + 0.5);
    weight += dark;
  }
  return weight < 60 ? undefined : sum / weight / perMm;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
