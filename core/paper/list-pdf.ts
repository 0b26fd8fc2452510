import type { PaperChoice } from '../garment/garment';
import { homeMargin, homeSheet } from './page-sizes';
import { type PaperFonts, PdfDocument, type Weight } from './pdf-document';
import { Ink } from './pdf-ink';
import { fittedText, textLines } from './text-lines';

/** One line of the list, with a box to tick; `under` stands below it in smaller letters. */
export interface ListedLine {
  /** `none` for a line that is not to be ticked. */
  readonly box: 'empty' | 'ticked' | 'none';
  readonly text: string;
  readonly under: readonly string[];
}

/** A page of lines to tick, every word of it given. */
export interface ListedPage {
  readonly title: string;
  readonly head: readonly string[];
  readonly parts: readonly { readonly heading: string; readonly lines: readonly ListedLine[] }[];
  /** At the foot of every page. */
  readonly foot: (page: number, of: number) => string;
}

/** Letters, and from line to line; mm. */
const TEXT = 3.1;
const LEADING = 4.3;
const UNDER = 2.7;
const UNDER_LEADING = 3.7;
const BOX = 3.2;
const INDENT = 6;
const FOOT = 6;

/** One thing on the page, kept whole: its height, and how it is drawn from `top` down. */
interface Block {
  readonly height: number;
  /** Not the last on a page: a heading goes where the first of its lines goes. */
  readonly leads: boolean;
  readonly draw: (ink: Ink, top: number) => void;
}

/** A list to tick as a PDF, on as many sheets as it needs. The same list on the same day makes the same bytes. */
export async function listPdf(options: {
  readonly listed: ListedPage;
  readonly paper: PaperChoice;
  readonly fonts: PaperFonts;
  /** YYYY-MM-DD */
  readonly today: string;
}): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const { listed, paper, fonts, today } = options;
  const document = await PdfDocument.begin({ fonts, title: listed.title, made: new Date(`${today}T12:00:00Z`) });
  const sheet = homeSheet(paper);
  const margin = Math.max(homeMargin(paper), 12);
  const width = sheet.width - 2 * margin;
  const bottom = sheet.height - margin - FOOT;
  const pages: Ink[] = [];
  let ink = new Ink();
  let top = margin;
  const all = blocks(document, listed, margin, width);
  for (const [index, block] of all.entries()) {
    const needs = block.height + (block.leads ? (all[index + 1]?.height ?? 0) : 0);
    if (top + needs > bottom && top > margin) {
      pages.push(ink);
      ink = new Ink();
      top = margin;
    }
    block.draw(ink, top);
    top += block.height;
  }
  pages.push(ink);
  for (const [index, page] of pages.entries()) {
    const foot = fittedText(document, listed.foot(index + 1, pages.length), {
      width,
      size: 2.4,
      least: 1.9,
      weight: 'plain',
    });
    document.text(page, foot.text, margin, sheet.height - margin, { size: foot.size, grey: 0.25 });
    document.addPage(sheet, page);
  }
  return { bytes: await document.finish(), pages: pages.length };
}

function blocks(document: PdfDocument, listed: ListedPage, left: number, width: number): Block[] {
  const title = fittedText(document, listed.title, { width, size: 7, least: 4, weight: 'bold' });
  const say = (text: string, at: number, size: number, weight: Weight, grey = 0) =>
    textLines(document, text, width - at, size, weight).map((line) => ({ line, at, size, weight, grey }));
  const all: Block[] = [
    {
      height: 10,
      leads: true,
      draw: (ink, top) => document.text(ink, title.text, left, top + 7, { size: title.size, weight: 'bold' }),
    },
  ];
  const lined = (texts: ReturnType<typeof say>, box: ListedLine['box'], after: number): Block => {
    const leading = (size: number) => (size === TEXT ? LEADING : UNDER_LEADING);
    return {
      height: texts.reduce((sum, { size }) => sum + leading(size), after),
      leads: false,
      draw: (ink, top) => {
        if (box !== 'none') tickBox(ink, left, top + 0.4, box === 'ticked');
        let y = top;
        for (const { line, at, size, weight, grey } of texts) {
          document.text(ink, line, left + at, y + TEXT, { size, weight, grey });
          y += leading(size);
        }
      },
    };
  };
  all.push(...listed.head.map((text) => lined(say(text, 0, TEXT, 'plain'), 'none', 0)));
  for (const { heading, lines } of listed.parts) {
    all.push({
      height: 10.5,
      leads: true,
      draw: (ink, top) => {
        document.text(ink, heading, left, top + 6.6, { size: 4.2, weight: 'bold' });
        ink.pen(0.2, [], 0.4).line(left, top + 8.2, left + width, top + 8.2);
      },
    });
    for (const { box, text, under } of lines) {
      const texts = [
        ...say(text, INDENT, TEXT, box === 'none' ? 'plain' : 'bold'),
        ...under.flatMap((each) => say(each, INDENT, UNDER, 'plain', 0.15)),
      ];
      all.push(lined(texts, box, 1.4));
    }
  }
  return all;
}

function tickBox(ink: Ink, x: number, y: number, isTicked: boolean): void {
  ink.pen(0.3).rectangle(x, y, BOX, BOX);
  if (!isTicked) return;
  ink.pen(0.5);
  ink.line(x + 0.6, y + 1.7, x + 1.4, y + 2.6).line(x + 1.4, y + 2.6, x + 2.8, y + 0.6);
}
