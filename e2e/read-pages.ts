import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface ReadPages {
  readonly count: number;
  /** The test square of every page, in inches. */
  readonly squares: readonly { readonly across: number; readonly down: number }[];
}

const DPI = 300;

/** Reads a pattern PDF with poppler and measures the test square on every page from its ink. */
export function readPages(path: string): ReadPages | 'no-readers' {
  try {
    execFileSync('which', ['pdfinfo']);
  } catch {
    return 'no-readers';
  }
  const info = execFileSync('pdfinfo', [path]).toString();
  const count = Number(/Pages:\s+(\d+)/.exec(info)?.[1]);
  execFileSync('qpdf', ['--check', path]);
  const folder = mkdtempSync(join(tmpdir(), 'pages-'));
  execFileSync('pdftoppm', ['-r', String(DPI), '-gray', path, join(folder, 'page')]);
  const squares = readdirSync(folder)
    .sort()
    .map((name) => squareIn(readFileSync(join(folder, name))));
  return { count, squares };
}

/**
 * The test square in a grey picture: the pair of level lines and the pair of upright lines about four inches apart that
 * are inked from end to end.
 */
function squareIn(pgm: Buffer): { across: number; down: number } {
  const header = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(pgm.subarray(0, 40).toString('latin1'));
  const [width, height] = [Number(header?.[1]), Number(header?.[2])];
  const start = header?.[0].length ?? 0;
  const inked = (x: number, y: number) => (pgm[start + y * width + x] ?? 255) < 200;
  return {
    across: gapOf(width, height, (x, y) => inked(x, y)),
    down: gapOf(height, width, (y, x) => inked(x, y)),
  };
}

/** Four inches in pixels, and how much of a line must be inked at a stretch: a little less than its length. */
const FOUR = 4 * DPI;
const RUN = Math.round(FOUR * 0.98);

/** The distance in inches between the middles of two lines about four inches apart, each as long as that. */
function gapOf(across: number, along: number, inked: (across: number, along: number) => boolean): number {
  const lines: { at: number; from: number }[] = [];
  let strip: number[] = [];
  let stripFrom = 0;
  for (let i = 0; i <= across; i++) {
    let run = 0;
    let from = -1;
    for (let j = 0; i < across && j < along; j++) {
      run = inked(i, j) ? run + 1 : 0;
      // Longer lines are the frame of the page or the piece itself.
      if (run === RUN) from = j - run + 1;
      if (run > FOUR + 20) from = -1;
    }
    if (from >= 0) {
      if (strip.length === 0) stripFrom = from;
      strip.push(i);
    } else if (strip.length > 0) {
      lines.push({ at: strip.reduce((sum, at) => sum + at, 0) / strip.length, from: stripFrom });
      strip = [];
    }
  }
  for (const one of lines) {
    const other = lines.find((line) => Math.abs(line.at - one.at - FOUR) < 20 && Math.abs(line.from - one.from) < 20);
    if (other) return (other.at - one.at) / DPI;
  }
  return Number.NaN;
}
