import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const DPI = 300;

/** A printed lay as poppler reads it, in inches on paper. */
export interface ReadLay {
  readonly pages: number;
  readonly text: string;
  /** Where the middle of each number of the rule over the cloth stands on the first page. */
  readonly rule: ReadonlyMap<number, number>;
  /** How long each unbroken level line of the first page is that is longer than three inches. */
  readonly levels: readonly number[];
}

/** Reads a printed lay: its words and where they stand, and its level lines from the ink. */
export function readLay(path: string): ReadLay {
  const folder = mkdtempSync(join(tmpdir(), 'lay-'));
  execFileSync('pdftoppm', ['-r', String(DPI), '-gray', '-f', '1', '-l', '1', path, join(folder, 'page')]);
  const [name] = readdirSync(folder);
  const boxes = execFileSync('pdftotext', ['-bbox', '-l', '1', path, '-']).toString();
  const words = [...boxes.matchAll(/xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" [^>]*>(\d+)</g)].map(
    ([, left, top, right, said]) => ({
      at: (Number(left) + Number(right)) / 2 / 72,
      top: Number(top),
      number: Number(said),
    }),
  );
  // The rule's numbers stand on the line of its nought.
  const nought = words.find(({ number }) => number === 0);
  const rule = new Map(
    words.filter(({ top }) => nought && Math.abs(top - nought.top) < 1).map(({ number, at }) => [number, at]),
  );
  return {
    pages: Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [path]).toString())?.[1]),
    text: execFileSync('pdftotext', [path, '-']).toString(),
    rule,
    levels: levelLines(readFileSync(join(folder, name ?? ''))),
  };
}

function levelLines(pgm: Buffer): number[] {
  const header = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(pgm.subarray(0, 40).toString('latin1'));
  const [width, height] = [Number(header?.[1]), Number(header?.[2])];
  const start = header?.[0].length ?? 0;
  const lines: { row: number; from: number; run: number }[] = [];
  for (let row = 0; row < height; row++) {
    let run = 0;
    for (let x = 0; x <= width; x++) {
      if (x < width && (pgm[start + row * width + x] ?? 255) < 140) run++;
      else {
        if (run > 3 * DPI) {
          const from = x - run;
          const same = lines.find((line) => row - line.row < 6 && Math.abs(line.from - from) < 12);
          if (same) Object.assign(same, { row, run: Math.max(run, same.run) });
          else lines.push({ row, from, run });
        }
        run = 0;
      }
    }
  }
  return lines.map(({ run }) => run / DPI);
}
