import { PDFDocument, PDFHexString, PDFName, type PDFRef, PrintScaling } from '@cantoo/pdf-lib';
import type { PrinterFactors } from '../garment/garment';
import type { Box } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { faceOf } from './font-face';
import type { Sheet } from './page-sizes';
import { Ink } from './pdf-ink';
import { boxes, oneLine, type TextRun, textRuns } from './text-runs';

/** The bytes of the two fonts on paper, TrueType. */
export interface PaperFonts {
  readonly plain: Uint8Array;
  readonly bold: Uint8Array;
  /** Draws letters that the two lack, in whatever the device shows them with; without it they become boxes. */
  readonly draw?: DrawText;
}

export type DrawText = (text: string, weight: Weight) => DrawnText | undefined;

/** A text drawn in black, in pixels of which `em` are the height of its letters' square. */
export interface DrawnText {
  readonly em: number;
  /** How far the next letter stands from the first. */
  readonly advance: number;
  /** The picture: from its left edge to the start of the text, from its upper edge to the base line, and its size. */
  readonly left: number;
  readonly base: number;
  readonly width: number;
  readonly height: number;
  /** One bit a pixel, 1 is ink, each row filled up to whole bytes. */
  readonly bits: Uint8Array;
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

/** A photo in the document; `name` shows it on the square from (0, 0) to (1, 1), which is then stretched. */
export type StoredPicture = StoredDrawing & { readonly width: number; readonly height: number };

/** A run of letters as one picture. */
type StoredText = StoredDrawing & { readonly drawn: DrawnText };

/**
 * A PDF whose pages are measured in millimetres from the top left corner. It asks viewers not to scale when printing
 * (ISO 32000-1, table 150, PrintScaling) and to take the paper that fits the page.
 */
export class PdfDocument {
  private readonly doc: PDFDocument;
  private readonly fonts: Readonly<Record<Weight, LoadedFont>>;
  private readonly drawings: StoredDrawing[] = [];
  /** By weight and text; `undefined` where nothing can draw it. */
  private readonly drawnTexts = new Map<string, StoredText | undefined>();
  private readonly draw: DrawText | undefined;
  private readonly layers = new Map<string, StoredDrawing>();

  private readonly printer: PrinterFactors | undefined;

  private constructor(
    doc: PDFDocument,
    fonts: Readonly<Record<Weight, LoadedFont>>,
    printer: PrinterFactors | undefined,
    draw: DrawText | undefined,
  ) {
    this.doc = doc;
    this.draw = draw;
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
    doc.registerFontkit({ create: faceOf } as never);
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
    return new PdfDocument(doc, fonts, options.printer, options.fonts.draw);
  }

  /** The width of a text in mm. */
  textWidth(text: string, size: number, weight: Weight = 'plain'): number {
    return this.runs(text, weight).reduce((sum, run) => sum + this.runWidth(run, size, weight), 0);
  }

  /**
   * Adds a text to a stream; `x`, `y` is the start of its base line. Letters the fonts lack are drawn as pictures, or
   * become boxes where nothing can draw them; either way the text can still be searched for and copied.
   */
  text(ink: Ink, text: string, x: number, y: number, options: TextOptions): void {
    const { size, weight = 'plain', align = 'start', angle = 0, grey = 0 } = options;
    const runs = this.runs(text, weight);
    if (runs.length === 0) return;
    const width = align === 'start' ? 0 : this.textWidth(text, size, weight);
    const back = align === 'middle' ? width / 2 : align === 'end' ? width : 0;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const hasDrawn = runs.some(({ kind }) => kind === 'drawn');
    // ISO 32000-1, 14.9.4: what is shown in between stands for this text.
    if (hasDrawn) ink.raw(`/Span <</ActualText ${PDFHexString.fromText(oneLine(text)).toString()}>> BDC`);
    ink.ops('g', grey);
    let along = -back;
    for (const run of runs) {
      const at = { x: x + along * cos, y: y + along * sin };
      const stored = run.kind === 'drawn' ? this.drawnText(run.text, weight) : undefined;
      if (stored) inkDrawn(ink, stored, at, { size, cos, sin });
      ink.ops('BT').raw(`/${weight} ${Ink.number(size)} Tf`);
      // Where a picture is seen, boxes lie under it unseen: readers find a text only where letters are set.
      if (stored) ink.raw('3 Tr');
      ink.ops('Tm', cos, sin, sin, -cos, at.x, at.y);
      ink.raw(`${this.fonts[weight].codes(settable(run))} Tj`);
      if (stored) ink.raw('0 Tr');
      ink.ops('ET');
      along += this.runWidth(run, size, weight);
    }
    ink.ops('g', 0);
    if (hasDrawn) ink.raw('EMC');
  }

  /** Puts a photo into the document, from the bytes of a JPEG. */
  async picture(jpeg: Uint8Array): Promise<StoredPicture> {
    const { ref, width, height } = await this.doc.embedJpg(jpeg);
    const picture = { name: `Drawing${this.drawings.length + 1}`, ref, width, height };
    this.drawings.push(picture);
    return picture;
  }

  private runs(text: string, weight: Weight): TextRun[] {
    return textRuns(text, this.fonts[weight].has);
  }

  private runWidth(run: TextRun, size: number, weight: Weight): number {
    const stored = run.kind === 'drawn' ? this.drawnText(run.text, weight) : undefined;
    if (stored) return (stored.drawn.advance / stored.drawn.em) * size;
    return this.fonts[weight].width(settable(run)) * size;
  }

  private drawnText(text: string, weight: Weight): StoredText | undefined {
    const key = `${weight} ${text}`;
    if (this.drawnTexts.has(key)) return this.drawnTexts.get(key);
    const drawn = this.draw?.(text, weight);
    const stored = drawn && { name: `Text${this.drawnTexts.size + 1}`, ref: this.stencil(drawn), drawn };
    this.drawnTexts.set(key, stored);
    return stored;
  }

  /** A picture through which the colour in hand is painted (ISO 32000-1, 8.9.6.2). */
  private stencil({ width, height, bits }: DrawnText): PDFRef {
    const { context } = this.doc;
    return context.register(
      context.flateStream(bits, {
        Type: 'XObject',
        Subtype: 'Image',
        Width: width,
        Height: height,
        ImageMask: true,
        BitsPerComponent: 1,
        Decode: [1, 0],
      }),
    );
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
      Resources: {
        Font: this.fontResources(),
        XObject: this.textResources(),
        Properties: this.layerResources(),
      },
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
        XObject: {
          ...Object.fromEntries(this.drawings.map(({ name, ref }) => [name, ref])),
          ...this.textResources(),
        },
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

  private textResources(): Record<string, PDFRef> {
    const stored = [...this.drawnTexts.values()].filter((one) => one !== undefined);
    return Object.fromEntries(stored.map(({ name, ref }) => [name, ref]));
  }

  private layerResources() {
    return Object.fromEntries([...this.layers.values()].map(({ name, ref }) => [name, ref]));
  }

  private fontResources() {
    return { plain: this.fonts.plain.ref, bold: this.fonts.bold.ref };
  }
}

/** What the font sets of a run: its letters, or boxes in their place. */
function settable({ kind, text }: TextRun): string {
  return kind === 'set' ? text : boxes(text);
}

interface Set {
  readonly size: number;
  readonly cos: number;
  readonly sin: number;
}

/** Paints a text's picture with its base line through `at`; y runs down. */
function inkDrawn(ink: Ink, { name, drawn }: StoredText, at: Point, { size, cos, sin }: Set): void {
  const mm = size / drawn.em;
  const [width, height] = [drawn.width * mm, drawn.height * mm];
  const [left, below] = [-drawn.left * mm, (drawn.height - drawn.base) * mm];
  ink.save();
  ink.ops(
    'cm',
    width * cos,
    width * sin,
    height * sin,
    -height * cos,
    at.x + left * cos - below * sin,
    at.y + left * sin + below * cos,
  );
  ink.show(name).restore();
}

interface LoadedFont {
  readonly has: (codePoint: number) => boolean;
  readonly ref: PDFRef;
  /** The width of letters that are 1 high. */
  readonly width: (text: string) => number;
  /** Letters as the document numbers them, ready to be shown. */
  readonly codes: (text: string) => string;
}

async function loadedFont(doc: PDFDocument, bytes: Uint8Array): Promise<LoadedFont> {
  const pdf = await doc.embedFont(bytes, { subset: true });
  const face = faceOf(bytes);
  return {
    has: (codePoint) => face.hasGlyphForCodePoint(codePoint),
    ref: pdf.ref,
    width: (text) => pdf.widthOfTextAtSize(text, 1),
    codes: (text) => pdf.encodeText(text).toString(),
  };
}
