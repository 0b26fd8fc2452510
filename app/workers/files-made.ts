import { dxfFile } from '../../core/files/dxf-file';
import { type FileReading, LARGEST_FILE } from '../../core/files/file-reading';
import { readDxf } from '../../core/files/read-dxf';
import { readSvg } from '../../core/files/read-svg';
import { svgFile } from '../../core/files/svg-file';
import { newId } from '../state/new-id';
import { fileWords } from '../words/files';
import type { FilesCalls } from './files-calls';
import type { Doing } from './serve';

/** How far the straight sides of a DXF that stand for a curve may be from it (mm). */
const FLATNESS = 0.01;

/** Drawing files written and read, in the language spoken. */
export const filesMade: Doing<FilesCalls> = {
  async write({ garment, kind, units, today }) {
    const said = { words: fileWords(garment), date: today };
    const text =
      kind === 'svg'
        ? svgFile(garment, said)
        : dxfFile(garment, { ...said, units, size: garment.wearer.name, flatness: FLATNESS });
    return { answer: { kind: 'written', text } };
  },

  async read({ file, unit }) {
    const options = { newId, ...(unit ? { unit } : {}) };
    return { answer: await readDrawing(file, options) };
  },
};

/** What a file is, it says by how it begins: an SVG with a sign of its own, everything else is tried as a DXF. */
async function readDrawing(file: Blob, options: Parameters<typeof readSvg>[1]): Promise<FileReading> {
  if (file.size > LARGEST_FILE) return { kind: 'too-large', limit: LARGEST_FILE };
  const text = await file.text();
  return /^\uFEFF?\s*</.test(text) ? readSvg(text, options) : readDxf(text, options);
}
