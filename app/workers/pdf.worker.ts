import { checkSheetPdf } from '../../core/paper/check-sheet';
import { layPdf } from '../../core/paper/lay-pdf';
import { listPdf } from '../../core/paper/list-pdf';
import { patternPdf } from '../../core/paper/pattern-pdf';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { listedWords } from '../words/check-page';
import { paperSheetWords } from '../words/paper-sheet';
import type { PdfCalls } from './pdf-calls';
import { serve, type WorkerPort } from './serve';

async function bytesAt(address: string): Promise<Uint8Array> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`the font at ${address} could not be read`);
  return new Uint8Array(await answer.arrayBuffer());
}

// The compiler takes `self` for a window; in a worker it is the port itself.
serve<PdfCalls>(self as unknown as WorkerPort, {
  async lay({ pieces, paper, under }, tell) {
    return { answer: { kind: 'laid', ...tapedSheets(pieces, paper, { under, tell }) } };
  },
  async check({ paper, shownIn, today, fonts }) {
    const [plain, bold] = await Promise.all([bytesAt(fonts.plain), bytesAt(fonts.bold)]);
    const words = paperSheetWords(shownIn, shownIn === 'in' ? 'sixteenth' : 'millimetre');
    const bytes = await checkSheetPdf({ paper, shownIn, words, today, fonts: { plain, bold } });
    return { answer: { kind: 'made', bytes }, transfer: [bytes.buffer] };
  },
  async pattern({ fonts, ...wanted }, tell) {
    const [plain, bold] = await Promise.all([bytesAt(fonts.plain), bytesAt(fonts.bold)]);
    const { garment } = wanted;
    const answer = await patternPdf({
      ...wanted,
      fonts: { plain, bold },
      words: paperSheetWords(garment.shownIn, garment.paper.step),
      onProgress: tell,
    });
    return { answer, transfer: answer.kind === 'pdf' ? [answer.bytes.buffer] : [] };
  },
  async clothLay({ laid, said, garment, today, fonts, scale }) {
    const [plain, bold] = await Promise.all([bytesAt(fonts.plain), bytesAt(fonts.bold)]);
    const words = paperSheetWords(garment.shownIn, garment.paper.step);
    const foot = (page: number, of: number) =>
      [said.footer, words.date(today), words.pageOf(page, of)].filter((part) => part !== '').join(', ');
    const { bytes, pages } = await layPdf({
      laid,
      said: { ...said, foot },
      paper: garment.paper,
      fonts: { plain, bold },
      today,
      ...(scale === undefined ? {} : { scale }),
    });
    return { answer: { kind: 'made', bytes, pages }, transfer: [bytes.buffer] };
  },
  async list({ garment, version, today, fonts }) {
    const [plain, bold] = await Promise.all([bytesAt(fonts.plain), bytesAt(fonts.bold)]);
    const listed = listedWords(garment, version, today);
    const answer = await listPdf({ listed, paper: garment.paper, fonts: { plain, bold }, today });
    return { answer, transfer: [answer.bytes.buffer] };
  },
});
