import { MM_PER_CENTIMETRE, MM_PER_INCH } from '../units/inch';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';

/** The size of the part of a sheet along whose sides the rulers run (mm). */
export interface RulerSize {
  readonly width: number;
  readonly height: number;
}

/** No line is finer than half a point of a printer (0.176 mm), which vanishes in draft mode. */
const FINE = 0.2;

/** From the edge of the window to the middle of a line along it, so that none of it lies in the margin. */
const INSET = FINE / 2;

const GREY = 0.3;
const TEXT = 1.9;

/** A figure this near to a cross gives way to it (mm). */
const GIVES_WAY = 4.5;

/** Nor does one stand so near to the corner where two rulers end (mm). */
const CORNER = 6;

/** The frame and the ticks of all four rulers from the window's corner, the same on every page. */
export function rulerTicks({ width, height }: RulerSize): Ink {
  const ink = new Ink();
  ink.pen(FINE, [], GREY).rectangle(INSET, INSET, width - 2 * INSET, height - 2 * INSET);
  for (const { at, reach } of ticks(width, MM_PER_INCH)) ink.line(at, INSET, at, reach);
  for (const { at, reach } of ticks(height, MM_PER_INCH)) ink.line(INSET, at, reach, at);
  for (const { at, reach } of ticks(width, MM_PER_CENTIMETRE)) ink.line(at, height - INSET, at, height - reach);
  for (const { at, reach } of ticks(height, MM_PER_CENTIMETRE)) ink.line(width - INSET, at, width - reach, at);
  return ink;
}

/** Where the crosses of a page are along its sides (mm from the window's corner). */
export interface Crosses {
  readonly across: readonly number[];
  readonly down: readonly number[];
}

/** The figures of the rulers: inches along the top and left, centimetres along the bottom and right. */
export function inkRulerFigures(
  ink: Ink,
  document: PdfDocument,
  words: PaperWords,
  { width, height }: RulerSize,
  crosses: Crosses,
): void {
  const along = (length: number, unit: number, name: string, near: readonly number[], write: Write) => {
    for (const { at, reach, count } of ticks(length, unit)) {
      // The unit is named half way to the second figure.
      if (at > length - CORNER) continue;
      const text = count === 1.5 ? name : Number.isInteger(count) ? String(count) : '';
      if (text === '' || near.some((cross) => Math.abs(cross - at) < GIVES_WAY)) continue;
      const [x, y, align] = write(at, reach);
      document.text(ink, text, x, y, { size: TEXT, align, grey: GREY });
    }
  };
  const { inch, centimetre } = words;
  along(width, MM_PER_INCH, inch, crosses.across, (at, reach) => [at, reach + 1.8, 'middle']);
  along(height, MM_PER_INCH, inch, crosses.down, (at, reach) => [reach + 0.4, at + 0.7, 'start']);
  along(width, MM_PER_CENTIMETRE, centimetre, crosses.across, (at, reach) => [at, height - reach - 0.5, 'middle']);
  along(height, MM_PER_CENTIMETRE, centimetre, crosses.down, (at, reach) => [width - reach - 0.4, at + 0.7, 'end']);
}

type Write = (at: number, reach: number) => [x: number, y: number, align: 'start' | 'middle' | 'end'];

interface Tick {
  readonly at: number;
  readonly reach: number;
  /** In units of the ruler. */
  readonly count: number;
}

/** The ticks of a ruler, inches in eighths and centimetres in halves: whole units the longest, halves shorter. */
function ticks(length: number, unit: number): Tick[] {
  const parts = unit === MM_PER_INCH ? 8 : 2;
  const all: Tick[] = [];
  for (let i = 1; (i * unit) / parts < length - 3; i++) {
    const reach = i % parts === 0 ? 2 : i % (parts / 2) === 0 ? 1.4 : 0.8;
    all.push({ at: (i * unit) / parts, reach, count: i / parts });
  }
  return all;
}
