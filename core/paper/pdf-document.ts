import { PDFDocument, type PDFFont, PDFHexString, PDFName, type PDFRef, PrintScaling } from '@cantoo/pdf-lib';
import * as fontkit from 'fontkit';
import type { PrinterFactors } from '../garment/garment';
import type { Box } from '../geometry/bounds';
import type { Sheet } from './page-sizes';
import { Ink } from './pdf-ink';

/** The bytes of the two fonts on paper, TrueType. */
export interface PaperFonts {
  readonly plain: Uint8Array;
  readonly bold: Uint8Array;
}

export type Weight = 'plain' | 'bold';

export interface TextOptions {
  /** Height of the letters' square in mm. */
  readonly size: number;
  readonly weight?: Weight;
  readonly align?: 'start' | 'middle' | 'end';
  /** Clockwise to the eye. */
  readonly angle?: number;
  readonly grey?: number;
}

const POINTS_PER_MM = 72 / 25.4;

/** A drawing stored once in the document and shown on many pages. */
export type StoredDrawing = { readonly name: string; readonly ref: PDFRef };

/**
 * A PDF whose pages are measured in millimetres from the top left corner. It asks viewers not to scale when printing
 * (ISO 32000-1, table 150, PrintScaling) and to take the paper that fits the page.
 */
export class PdfDocument {
  private readonly doc: PDFDocument;
  private readonly fonts: Readonly<Record<Weight, LoadedFont>>;
  private readonly drawings: StoredDrawing[] = [];
  private readonly layers = new Map<string, StoredDrawing>();

  private readonly printer: PrinterFactors | undefined;

  private constructor(
    doc: PDFDocument,
    fonts: Readonly<Record<Weight, LoadedFont>>,
    printer: PrinterFactors | undefined,
  ) {
    this.doc = doc;
    this.fonts = fonts;
    this.printer = printer;
  }

  /**
   * An empty document. `made` is written into it, so that the same garment on the same day makes the same file. For a
   * `printer` that stretches or shrinks, pages are drawn the other way round their middle, and come out true.
   */
  static async begin(options: {
    readonly fonts: PaperFonts;
    readonly title: string;
    readonly made: Date;
    readonly printer?: PrinterFactors | undefined;
  }): Promise<PdfDocument> {
    const doc = await PDFDocument.create();
    doc.registerFontkit(fontkit as never);
    doc.setTitle(options.title, { showInWindowTitleBar: true });
    doc.setProducer('Inchsquare');
    doc.setCreator('Inchsquare');
    doc.setCreationDate(options.made);
    doc.setModificationDate(options.made);
    const preferences = doc.catalog.getOrCreateViewerPreferences();
    preferences.setPrintScaling(PrintScaling.None);
    preferences.setPickTrayByPDFSize(true);
    const fonts = {
      plain: await loadedFont(doc, options.fonts.plain),
      bold: await loadedFont(doc, options.fonts.bold),
    };
    return new PdfDocument(doc, fonts, options.printer);
  }

  /** The width of a text in mm. */
  textWidth(text: string, size: number, weight: Weight = 'plain'): number {
    const font = this.fonts[weight];
    return font.pdf.widthOfTextAtSize(font.printable(text), size);
  }

  /** Adds a text to a stream; characters the font lacks become boxes. `x`, `y` is the start of its base line. */
  text(ink: Ink, text: string, x: number, y: number, options: TextOptions): void {
    const { size, weight = 'plain', align = 'start', angle = 0, grey = 0 } = options;
    const font = this.fonts[weight];
    const plain = font.printable(text);
    if (plain === '') return;
    const width = align === 'start' ? 0 : font.pdf.widthOfTextAtSize(plain, size);
    const back = align === 'middle' ? width / 2 : align === 'end' ? width : 0;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    ink
      .ops('g', grey)
      .ops('BT')
      .raw(`/${weight} ${Ink.number(size)} Tf`);
    ink.ops('Tm', cos, sin, sin, -cos, x - back * cos, y - back * sin);
    ink
      .raw(`${font.pdf.encodeText(plain).toString()} Tj`)
      .ops('ET')
      .ops('g', 0);
  }

  /**
   * What is drawn until {@link endLayer} belongs to a layer, which viewers can hide (optional content, ISO 32000-1, 8.11).
   * The same name is the same layer.
   */
  beginLayer(ink: Ink, name: string): void {
    let layer = this.layers.get(name);
    if (!layer) {
      const ref = this.doc.context.register(this.doc.context.obj({ Type: 'OCG', Name: PDFHexString.fromText(name) }));
      layer = { name: `Layer${this.layers.size + 1}`, ref };
      this.layers.set(name, layer);
    }
    ink.raw(`/OC /${layer.name} BDC`);
  }

  endLayer(ink: Ink): void {
    ink.ops('EMC');
  }

  /** How many pages there are so far. */
  get pageCount(): number {
    return this.doc.getPageCount();
  }

  /** Stores a drawing once. `box` is its extent in mm; nothing outside it is shown. */
  store(ink: Ink, box: Box): StoredDrawing {
    const { context } = this.doc;
    const stream = context.flateStream(ink.toString(), {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [Math.floor(box.minX), Math.floor(box.minY), Math.ceil(box.maxX), Math.ceil(box.maxY)],
      Resources: { Font: this.fontResources(), Properties: this.layerResources() },
    });
    const drawing = { name: `Drawing${this.drawings.length + 1}`, ref: context.register(stream) };
    this.drawings.push(drawing);
    return drawing;
  }

  /** Adds a page from a stream in mm, y down. */
  addPage(sheet: Sheet, ink: Ink): void {
    const [width, height] = [sheet.width * POINTS_PER_MM, sheet.height * POINTS_PER_MM];
    const page = this.doc.addPage([width, height]);
    const { context } = this.doc;
    // The one place where millimetres become points, written to a millionth so that a long page stays true.
    const k = POINTS_PER_MM.toFixed(8);
    const content = `q ${k} 0 0 -${k} 0 ${height.toFixed(5)} cm ${this.corrected(sheet)}1 J 1 j\n${ink.toString()}\nQ`;
    page.node.set(PDFName.of('Contents'), context.register(context.flateStream(content)));
    page.node.set(
      PDFName.of('Resources'),
      context.obj({
        Font: this.fontResources(),
        XObject: Object.fromEntries(this.drawings.map(({ name, ref }) => [name, ref])),
      }),
    );
  }

  private corrected({ width, height }: Sheet): string {
    if (!this.printer) return '';
    const [x, y] = [1 / this.printer.across, 1 / this.printer.down];
    const shift = [(width * (1 - x)) / 2, (height * (1 - y)) / 2];
    return `${[x, 0, 0, y, ...shift].map((number) => number.toFixed(8)).join(' ')} cm `;
  }

  async finish(): Promise<Uint8Array> {
    const layers = [...this.layers.values()].map(({ ref }) => ref);
    if (layers.length > 0) {
      const { context, catalog } = this.doc;
      catalog.set(PDFName.of('OCProperties'), context.obj({ OCGs: layers, D: { Order: layers, ON: layers } }));
    }
    return this.doc.save();
  }

  private layerResources() {
    return Object.fromEntries([...this.layers.values()].map(({ name, ref }) => [name, ref]));
  }

  private fontResources() {
    return { plain: this.fonts.plain.pdf.ref, bold: this.fonts.bold.pdf.ref };
  }
}

interface LoadedFont {
  readonly pdf: PDFFont;
  /** The text with what the font cannot draw replaced, on one line. */
  printable(text: string): string;
}

async function loadedFont(doc: PDFDocument, bytes: Uint8Array): Promise<LoadedFont> {
  const pdf = await doc.embedFont(bytes, { subset: true });
  const face = fontkit.create(bytes as never) as unknown as { hasGlyphForCodePoint(point: number): boolean };
  return {
    pdf,
    printable: (text) =>
      [...text.normalize('NFC').replace(/[\s\p{Cc}]+/gu, ' ')]
        .map((character) => (face.hasGlyphForCodePoint(character.codePointAt(0) ?? 0) ? character : '□'))
        .join(''),
  };
}
