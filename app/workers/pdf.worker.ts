import { listPdf } from '../../core/paper/list-pdf';
import { patternPdf } from '../../core/paper/pattern-pdf';
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
  async pattern({ garment, pieceIds, what, version, today, fonts }, tell) {
    const [plain, bold] = await Promise.all([bytesAt(fonts.plain), bytesAt(fonts.bold)]);
    const answer = await patternPdf({
      garment,
      pieceIds,
      what,
      version,
      today,
      fonts: { plain, bold },
      words: paperSheetWords(garment.shownIn, garment.paper.step),
      onProgress: tell,
    });
    return { answer, transfer: answer.kind === 'pdf' ? [answer.bytes.buffer] : [] };
  },
  async list({ garment, version, today, fonts }) {
    const [plain, bold] = await Promise.all([bytesAt(fonts.plain), bytesAt(fonts.bold)]);
    const listed = listedWords(garment, version, today);
    const answer = await listPdf({ listed, paper: garment.paper, fonts: { plain, bold }, today });
    return { answer, transfer: [answer.bytes.buffer] };
  },
});
