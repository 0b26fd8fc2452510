import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import { lineStyles, MM_PER_PT } from '../../core/drawing/line-styles';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { fonts } from './fonts';
import { A4, garmentOf, rectangle } from './pieces';
import { checked, hasReaders, pageTexts, unpacked } from './print-tools';

const older = rectangle(0, 0, 150, 190, { name: 'Yoke' });
const wide = rectangle(0, 0, 160, 190, { name: 'Yoke' });
const now = rectangle(0, 0, 150, 200, { name: 'Yoke' });

async function made(): Promise<Uint8Array> {
  const answer = await patternPdf({
    garment: garmentOf([now], { ...A4, squaresOver: 'inch' }),
    what: 'pages',
    words: paperSheetWords('in', 'sixteenth'),
    under: [
      { said: 'version 1, Gefüttert', pieces: [older] },
      { said: 'version 2, wide', pieces: [wide] },
      { said: 'version 3, elsewhere', pieces: [rectangle(0, 0, 90, 90, { id: 'other' })] },
    ],
    fonts,
    today: '2026-03-04',
  });
  if (answer.kind !== 'pdf') throw new Error('it is made');
  return answer.bytes;
}

describe('layers', () => {
  it('are read by pdf.js under their names, all of them shown', async () => {
    const doc = await getDocument({ data: await made(), verbosity: 0 }).promise;
    const config = await doc.getOptionalContentConfig();
    const groups = [...config].map(([, group]) => group as { name: string; visible: boolean });
    expect(groups.map(({ name }) => name).sort()).toEqual(
      ['Fine squares', 'Older: version 1, Gefüttert', 'Older: version 2, wide', 'Cut line', 'Marks and words'].sort(),
    );
    expect(groups.every(({ visible }) => visible)).toBe(true);
    await doc.loadingTask.destroy();
  });
});

describe.skipIf(!hasReaders)('lines', () => {
  it('of older versions differ from one another, and each page names those it has', async () => {
    const bytes = await made();
    const page = pageTexts(bytes)[1] ?? '';
    expect(page).toContain('single dots: version 1, Gefüttert');
    expect(page).toContain('dots in twos: version 2, wide');
    expect(page).not.toContain('version 3');
    const dashes = new Set([...unpacked(bytes).matchAll(/^\[([\d. ]+)\] 0 d$/gm)].map(([, dash]) => dash));
    expect(dashes).toContain('0.4 2');
    expect(dashes).toContain('0.4 1.2 0.4 3.6');
  });

  it('are none of them finer than half a point, which draft mode loses, and the cut line is wider', async () => {
    const bytes = await made();
    expect(checked(bytes)).toBe(0);
    const widths = [...unpacked(bytes).matchAll(/^([\d.]+) w$/gm)].map(([, width]) => Number(width));
    expect(widths.length).toBeGreaterThan(20);
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(0.5 * MM_PER_PT);
    expect(lineStyles.cut.width).toBeGreaterThanOrEqual(0.75 * MM_PER_PT);
  });

  it('are grey no lighter than can be read, and nothing is in colour', async () => {
    const text = unpacked(await made());
    // The pale ground of a test square that lines run over is nothing to be read, and far lighter.
    const grounds = /^(0\.\d+) g\n[-\d. ]+ re\nf$/gm;
    for (const [, ground] of text.matchAll(grounds)) expect(Number(ground)).toBeGreaterThan(0.9);
    const greys = [...text.replace(grounds, '').matchAll(/^([\d.]+) [gG]$/gm)]
      .map(([, grey]) => Number(grey))
      .filter((grey) => grey < 1);
    expect(Math.max(...greys)).toBeLessThanOrEqual(0.55);
    expect(text).not.toMatch(/^[\d.]+ [\d.]+ [\d.]+ (rg|RG)$/m);
  });
});
