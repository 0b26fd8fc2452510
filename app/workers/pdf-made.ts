import { checkSheetPdf } from '../../core/paper/check-sheet';
import { labelPdf } from '../../core/paper/label-pdf';
import { layPdf } from '../../core/paper/lay-pdf';
import { listPdf } from '../../core/paper/list-pdf';
import { patternPdf } from '../../core/paper/pattern-pdf';
import type { PaperFonts } from '../../core/paper/pdf-document';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { listedWords } from '../words/check-page';
import { labelWords } from '../words/label';
import { paperSheetWords } from '../words/paper-sheet';
import { drawText } from './draw-text';
import type { FontAddresses, PdfCalls } from './pdf-calls';
import type { Doing } from './serve';

const fetched = new Map<string, Promise<Uint8Array>>();

/** The same bytes for the same address, fetched once; after a failure the next job tries again. */
function bytesAt(address: string): Promise<Uint8Array> {
  const known = fetched.get(address);
  if (known) return known;
  const bytes = fetchedFrom(address);
  fetched.set(address, bytes);
  bytes.catch(() => fetched.delete(address));
  return bytes;
}

async function fetchedFrom(address: string): Promise<Uint8Array> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the font at ${address} could not be read`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function paperFonts(addresses: FontAddresses): Promise<PaperFonts> {
  const [plain, bold] = await Promise.all([bytesAt(addresses.plain), bytesAt(addresses.bold)]);
  return { plain, bold, draw: drawText };
}

/** Every sheet that is printed, in the language spoken. */
export const pdfMade: Doing<PdfCalls> = {
  async lay({ pieces, paper, under }, tell) {
    return { answer: { kind: 'laid', ...tapedSheets(pieces, paper, { under, tell }) } };
  },
  async check({ paper, shownIn, today, fonts }) {
    const words = paperSheetWords(shownIn, shownIn === 'in' ? 'sixteenth' : 'millimetre');
    const bytes = await checkSheetPdf({ paper, shownIn, words, today, fonts: await paperFonts(fonts) });
    return { answer: { kind: 'made', bytes }, transfer: [bytes.buffer] };
  },
  async pattern({ fonts, ...wanted }, tell) {
    const { garment } = wanted;
    const answer = await patternPdf({
      ...wanted,
      fonts: await paperFonts(fonts),
      words: paperSheetWords(garment.shownIn, garment.paper.step),
      onProgress: tell,
    });
    return { answer, transfer: answer.kind === 'pdf' ? [answer.bytes.buffer] : [] };
  },
  async clothLay({ laid, said, garment, today, fonts, scale }) {
    const words = paperSheetWords(garment.shownIn, garment.paper.step);
    const foot = (page: number, of: number) =>
      [said.footer, words.date(today), words.pageOf(page, of)].filter((part) => part !== '').join(', ');
    const { bytes, pages } = await layPdf({
      laid,
      said: { ...said, foot },
      paper: garment.paper,
      fonts: await paperFonts(fonts),
      today,
      ...(scale === undefined ? {} : { scale }),
    });
    return { answer: { kind: 'made', bytes, pages }, transfer: [bytes.buffer] };
  },
  async list({ garment, version, today, fonts }) {
    const listed = listedWords(garment, version, today);
    const answer = await listPdf({ listed, paper: garment.paper, fonts: await paperFonts(fonts), today });
    return { answer, transfer: [answer.bytes.buffer] };
  },
  async label({ garment, version, today, fonts, picture }) {
    const answer = await labelPdf({
      garment,
      version,
      today,
      fonts: await paperFonts(fonts),
      words: labelWords(garment),
      ...(picture ? { picture } : {}),
    });
    return { answer, transfer: [answer.bytes.buffer] };
  },
};
