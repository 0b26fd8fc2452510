/** A lay on paper: a plan on one page, or a sheet to scale on as many pages as its length needs. */
import type { PaperChoice } from '../garment/garment';
import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { homeMargin, homeSheet } from './page-sizes';
import { type PaperFonts, PdfDocument } from './pdf-document';
import { Ink } from './pdf-ink';
import { fittedText, textLines } from './text-lines';

/** A piece on the cloth, with its name at a place inside it and its grain turned clockwise to the eye. */
interface LaidPiece {
  readonly ring: readonly Point[];
  readonly middle: Point;
  readonly turn: number;
  readonly name: string;
  /** Where it is joined to its other part. */
  readonly join?: readonly [Point, Point] | undefined;
}

/** The cloth along x as it lies, what is on it, and what its sides are called. */
export interface LaidCloth {
  readonly across: number;
  readonly length: number;
  readonly pieces: readonly LaidPiece[];
  /** Places to keep clear of, or what a remnant lacks of its box. */
  readonly kept: readonly (readonly Point[])[];
  /** Whether the side at y = 0, or the end at x = 0, is a fold. */
  readonly fold: 'none' | 'side' | 'end';
  readonly sides: { readonly near: string; readonly far: string; readonly end: string };
}

/** What is said beside the lay, every word of it given. */
export interface LaySaid {
  readonly title: string;
  readonly lines: readonly string[];
  /** The place of each piece. */
  readonly places: readonly string[];
  readonly foot: (page: number, of: number) => string;
  /** The rule along the cloth: one step of it at full size (mm), and what is written at each step. */
  readonly rule: { readonly step: number; readonly written: readonly string[] };
  readonly scaleCheck: string;
}

interface LayPdfOptions {
  readonly laid: LaidCloth;
  readonly said: LaySaid;
  readonly paper: PaperChoice;
  readonly fonts: PaperFonts;
  /** YYYY-MM-DD */
  readonly today: string;
  /** So many times smaller than the cloth; as large as one page allows unless said. */
  readonly scale?: number;
}

const TEXT = 3;
const LEADING = 4.2;
const RULE = 7;

/** The last figure of the rule reaches so far past its end. */
const PAST_END = 3;

const HEAD = 12;
const FOOT = 6;

/** A grain line less than twice this long (mm) could not be read and is left away. */
const LEAST_ARROW = 3;

/** Beside a sheet to scale stands a line so long on paper, to be measured (mm): 4 in. */
const CHECK = 101.6;

/** The lay as a PDF, sideways. The same lay on the same day makes the same bytes. */
export async function layPdf(options: LayPdfOptions): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const { laid, said, paper, fonts, today, scale } = options;
  const { printer } = paper;
  const document = await PdfDocument.begin({ fonts, title: said.title, made: new Date(`${today}T12:00:00Z`), printer });
  const upright = homeSheet({ ...paper, turned: 'upright' });
  const sheet = { width: upright.height, height: upright.width };
  const margin = homeMargin(paper);
  const room = {
    width: sheet.width - 2 * margin - RULE - PAST_END,
    height: sheet.height - 2 * margin - HEAD - FOOT - RULE,
  };
  const head = said.lines.flatMap((line) => textLines(document, line, sheet.width - 2 * margin, TEXT, 'plain'));
  const columns = scale === undefined ? 2 : 0;
  const below = head.length * LEADING + 13 + (columns > 0 ? Math.ceil(said.places.length / columns) * LEADING : 8);
  // A long list of places goes on in smaller room rather than push the lay off the page.
  const high = Math.max(room.height * 0.4, room.height - below);
  const factor = scale === undefined ? Math.min(room.width / laid.length, high / laid.across) : 1 / scale;
  const each = scale === undefined ? laid.length : Math.floor((room.width * scale) / said.rule.step) * said.rule.step;
  const wide = scale === undefined ? laid.across : Math.floor((high * scale) / said.rule.step) * said.rule.step;
  const [along, down] = [Math.ceil(laid.length / each - 1e-9), Math.ceil(laid.across / wide - 1e-9)];
  const count = along * down;
  for (let page = 0; page < count; page++) {
    const from = { x: (page % along) * each, y: Math.floor(page / along) * wide };
    const part = { from, long: Math.min(each, laid.length - from.x), wide: Math.min(wide, laid.across - from.y) };
    const ink = new Ink();
    const title = fittedText(document, said.title, {
      width: sheet.width - 2 * margin,
      size: 6,
      least: 3.6,
      weight: 'bold',
    });
    document.text(ink, title.text, margin, margin + 6, { size: title.size, weight: 'bold' });
    const at = { x: margin + RULE, y: margin + HEAD + RULE };
    inkPart(document, ink, { laid, said, part, at, factor });
    let y = at.y + part.wide * factor + 9;
    if (scale !== undefined) {
      ink.pen(0.5).line(margin, y, margin + CHECK, y);
      for (const x of [margin, margin + CHECK]) ink.line(x, y - 1.5, x, y + 1.5);
      document.text(ink, said.scaleCheck, margin + CHECK + 3, y + 1, { size: TEXT });
      y += 7;
    }
    const bottom = sheet.height - margin - FOOT;
    for (const line of head) {
      if (y > bottom) break;
      document.text(ink, line, margin, y, { size: TEXT });
      y += LEADING;
    }
    if (columns > 0) inkPlaces(document, ink, { places: said.places, top: y, bottom, margin, width: sheet.width });
    const foot = said.foot(page + 1, count);
    document.text(ink, foot, margin, sheet.height - margin, { size: 2.4, grey: 0.25 });
    document.addPage(sheet, ink);
  }
  return { bytes: await document.finish(), pages: count };
}

interface Part {
  readonly laid: LaidCloth;
  readonly said: LaySaid;
  readonly part: { readonly from: Point; readonly long: number; readonly wide: number };
  /** Where the part begins on the page, and paper millimetres to one of the cloth. */
  readonly at: Point;
  readonly factor: number;
}

/** The part of the cloth that a page shows, with its rule along it. */
function inkPart(document: PdfDocument, ink: Ink, { laid, said, part, at, factor }: Part): void {
  const { from, long, wide } = part;
  const onPage = ({ x, y }: Point) => ({ x: at.x + (x - from.x) * factor, y: at.y + (y - from.y) * factor });
  const [width, height] = [long * factor, wide * factor];
  ink.save().clip(at.x - 0.5, at.y - 0.5, width + 1, height + 1);
  for (const ring of laid.kept) inkHatched(ink, ring.map(onPage));
  for (const { ring, join } of laid.pieces) {
    ink.fill(ring.map(onPage), 0.92);
    inkRing(ink, ring.map(onPage), 0.5);
    if (!join) continue;
    const [a, b] = [onPage(join[0]), onPage(join[1])];
    ink.pen(0.25, [3, 1.5]).line(a.x, a.y, b.x, b.y);
  }
  for (const { ring, middle, turn, name } of laid.pieces) {
    const box = boxOfPoints(ring.map(onPage));
    if (!box) continue;
    const [w, h] = [box.maxX - box.minX, box.maxY - box.minY];
    const place = onPage(middle);
    const half = Math.min(7, 0.3 * Math.min(w, h));
    if (half >= LEAST_ARROW) inkGrain(ink, place, turn, half);
    const text = fittedText(document, name, { width: Math.max(w, h) - 2, size: TEXT, least: 1.7, weight: 'bold' });
    const isUpright = h > w;
    const over = half >= LEAST_ARROW ? 1.4 + half * Math.abs(Math.sin(turn)) : -text.size / 3;
    document.text(ink, text.text, place.x, place.y - over, {
      size: text.size,
      weight: 'bold',
      align: 'middle',
      ...(isUpright && half < LEAST_ARROW ? { angle: -Math.PI / 2 } : {}),
    });
  }
  ink.restore();
  const foldDash = [8, 2, 1, 2];
  const isFold = (side: LaidCloth['fold']) => laid.fold === side;
  const side = (x0: number, y0: number, x1: number, y1: number, fold: boolean) =>
    ink.pen(fold ? 0.7 : 0.35, fold ? foldDash : []).line(x0, y0, x1, y1);
  if (from.y === 0) side(at.x, at.y, at.x + width, at.y, isFold('side'));
  if (from.y + wide >= laid.across - 1e-6) side(at.x, at.y + height, at.x + width, at.y + height, false);
  if (from.x === 0) side(at.x, at.y, at.x, at.y + height, isFold('end'));
  ink.pen(0.35, [3, 1.5]).line(at.x + width, at.y, at.x + width, at.y + height);
  const small = { size: 2.5, grey: 0.15 };
  if (from.y + wide >= laid.across - 1e-6) {
    document.text(ink, laid.sides.far, at.x + width / 2, at.y + height + 3.4, { ...small, align: 'middle' });
  }
  if (from.y === 0) document.text(ink, laid.sides.near, at.x + width, at.y - 5, { ...small, align: 'end' });
  document.text(ink, laid.sides.end, at.x - 3, at.y + height / 2, { ...small, align: 'middle', angle: -Math.PI / 2 });
  const { step, written } = said.rule;
  for (let i = Math.ceil(from.x / step - 1e-9); i * step <= from.x + long + 1e-6; i++) {
    const x = at.x + (i * step - from.x) * factor;
    ink.pen(0.25, [], 0.2).line(x, at.y - 1.5, x, at.y);
    document.text(ink, written[i] ?? '', x, at.y - 2, { size: 2.2, grey: 0.2, align: 'middle' });
  }
}

/** The straight of the grain, an arrow at both ends. */
function inkGrain(ink: Ink, place: Point, turn: number, half: number): void {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  ink.pen(0.25).line(place.x - half * cos, place.y - half * sin, place.x + half * cos, place.y + half * sin);
  for (const end of [-1, 1]) {
    const tip = { x: place.x + half * end * cos, y: place.y + half * end * sin };
    for (const side of [-1, 1]) {
      const back = { x: -1.6 * end, y: 0.8 * side };
      ink.line(tip.x, tip.y, tip.x + back.x * cos - back.y * sin, tip.y + back.x * sin + back.y * cos);
    }
  }
}

function inkRing(ink: Ink, ring: readonly Point[], width: number): void {
  ink.pen(width);
  for (const [i, { x, y }] of ring.entries()) ink.ops(i === 0 ? 'm' : 'l', x, y);
  ink.raw('s');
}

/** A place to keep clear of: hatched, so that it reads without colour. */
function inkHatched(ink: Ink, ring: readonly Point[]): void {
  const [minX, maxX] = [Math.min(...ring.map(({ x }) => x)), Math.max(...ring.map(({ x }) => x))];
  const [minY, maxY] = [Math.min(...ring.map(({ y }) => y)), Math.max(...ring.map(({ y }) => y))];
  ink.save();
  for (const [i, { x, y }] of ring.entries()) ink.ops(i === 0 ? 'm' : 'l', x, y);
  ink.raw('h W n').pen(0.2, [], 0.35);
  for (let x = minX - (maxY - minY); x < maxX; x += 2) ink.line(x, maxY, x + maxY - minY, minY);
  ink.restore();
  inkRing(ink, ring, 0.3);
}

function inkPlaces(
  document: PdfDocument,
  ink: Ink,
  list: {
    readonly places: readonly string[];
    readonly top: number;
    readonly bottom: number;
    readonly margin: number;
    readonly width: number;
  },
): void {
  const { places, top, bottom, margin, width } = list;
  const column = (width - 2 * margin) / 2;
  const rows = Math.max(1, Math.ceil(places.length / 2));
  const leading = Math.min(LEADING, (bottom - top) / rows);
  places.forEach((place, i) => {
    const text = fittedText(document, place, {
      width: column - 4,
      size: Math.min(2.7, leading * 0.8),
      least: 1.6,
      weight: 'plain',
    });
    const x = margin + (i < rows ? 0 : column);
    document.text(ink, text.text, x, top + (i % rows) * leading + 2, { size: text.size });
  });
}
