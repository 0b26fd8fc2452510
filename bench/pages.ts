import { readFileSync } from 'node:fs';
import { paperSheetWords } from '../app/words/paper-sheet';
import { patternPdf } from '../core/paper/pattern-pdf';
import type { Figure } from './figure';
import { sampleGarment } from './sample-garment';
import { quantile } from './timing';

/** Time and size of a PDF of 60 pages or a little more, fonts included. */
export async function pagesFigures(): Promise<Figure[]> {
  const fonts = {
    plain: readFileSync('public/fonts/dejavu-sans.ttf'),
    bold: readFileSync('public/fonts/dejavu-sans-bold.ttf'),
  };
  const garment = sampleGarment(10);
  const times: number[] = [];
  let bytes = 0;
  let pages = 0;
  for (let round = 0; round < 5; round++) {
    const began = performance.now();
    const made = await patternPdf({
      garment,
      what: 'pages',
      words: paperSheetWords('in', 'sixteenth'),
      fonts,
      today: '2026-01-02',
    });
    times.push(performance.now() - began);
    if (made.kind !== 'pdf') throw new Error('the sample garment has pages');
    bytes = made.bytes.length;
    pages = made.pages;
  }
  return [
    { name: 'pages_count', value: pages, unit: 'pages' },
    { name: 'pages_60_ms', value: (quantile(times, 0.5) * 60) / pages, unit: 'ms' },
    { name: 'pages_60_kb', value: (bytes / 1024) * (60 / pages), unit: 'kB' },
  ];
}
