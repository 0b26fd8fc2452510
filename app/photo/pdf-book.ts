import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist';

/** A PDF whose pages can be looked at one by one. */
export interface PdfBook {
  readonly kind: 'book';
  readonly pages: number;
  /** A page, 1 for the first: how large it is on paper (mm), and ways to draw it. */
  page(number: number): Promise<PdfPage>;
  close(): void;
}

export interface PdfPage {
  readonly onPaper: { readonly across: number; readonly down: number };
  /** Draws the page into a canvas so that it has about so many pixels. */
  drawInto(canvas: HTMLCanvasElement | OffscreenCanvas, pixels: number): Promise<void>;
}

export type NoBook = { readonly kind: 'locked' | 'damaged' };

const MM_PER_POINT = 25.4 / 72;

/** The most a page is drawn at; a printed line is a dozen pixels wide then. */
const MOST_TO_THE_INCH = 600;

/** Opens a PDF. The reader is fetched when it is first needed, from the offline store if need be. */
export async function openPdfBook(file: Blob): Promise<PdfBook | NoBook> {
  const reader = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const { default: worker } = await import('pdfjs-dist/legacy/build/pdf.worker.min.mjs?url');
  reader.GlobalWorkerOptions.workerSrc = worker;
  const beside = (folder: string) => new URL(`pdf-reader/${folder}/`, document.baseURI).href;
  const loading = reader.getDocument({
    data: await file.arrayBuffer(),
    isEvalSupported: false,
    verbosity: reader.VerbosityLevel.ERRORS,
    wasmUrl: beside('wasm'),
    standardFontDataUrl: beside('standard_fonts'),
  });
  try {
    const pdf = await loading.promise;
    if (pdf.numPages < 1) return { kind: 'damaged' };
    return bookOf(pdf, () => void loading.destroy());
  } catch (error) {
    void loading.destroy();
    return { kind: error instanceof Error && error.name === 'PasswordException' ? 'locked' : 'damaged' };
  }
}

function bookOf(pdf: PDFDocumentProxy, close: () => void): PdfBook {
  return {
    kind: 'book',
    pages: pdf.numPages,
    page: async (number) => pageOf(await pdf.getPage(number)),
    close,
  };
}

function pageOf(page: PDFPageProxy): PdfPage {
  const whole = page.getViewport({ scale: 1 });
  return {
    onPaper: { across: whole.width * MM_PER_POINT, down: whole.height * MM_PER_POINT },
    async drawInto(canvas, pixels) {
      const fits = Math.sqrt(pixels / (whole.width * whole.height));
      const viewport = page.getViewport({ scale: Math.min(fits, MOST_TO_THE_INCH / 72) });
      canvas.width = Math.max(1, Math.floor(viewport.width));
      canvas.height = Math.max(1, Math.floor(viewport.height));
      await page.render({ canvas: canvas as HTMLCanvasElement, viewport, background: '#fff' }).promise;
    },
  };
}
