import { inches } from '../units/inch';
import type { Furniture } from './page-furniture';
import { HEADER } from './page-plan';
import type { Ink } from './pdf-ink';
import { fittedText } from './text-lines';

/** Letters of 18 points and more can be read on the floor. */
const NAME_LEAST = inches(18 / 72);
const NAME = inches(20 / 72);

/** The strip above the window: which piece, how it is cut, which way is up, and which page this is. */
export function inkHeader(ink: Ink, furniture: Furniture): void {
  const { document, words, sheet, paper, page, number, of, pieceName, garmentLine, cutLine } = furniture;
  const [left, right] = [paper.margin, sheet.width - paper.margin];
  const first = paper.margin + 6;
  const second = paper.margin + HEADER - 2.4;

  const label = { size: 10, weight: 'bold' } as const;
  document.text(ink, page.label, right, first + 1.2, { ...label, align: 'end' });
  const beside = right - document.textWidth(page.label, label.size, label.weight) - 2.6;
  document.text(ink, words.pageOf(number, of), beside, first - 2.2, { size: 3, weight: 'bold', align: 'end' });
  const place = words.rowColumn(page.label.replace(/\d+$/, ''), page.column + 1);
  document.text(ink, place, beside, first + 1.2, { size: 2.5, align: 'end' });

  const arrow = beside - Math.max(24, document.textWidth(place, 2.5)) - 7;
  upArrow(ink, arrow, paper.margin + 0.4);
  document.text(ink, words.thisWayUp, arrow, first + 1.2, { size: 2.1, align: 'middle' });

  const nameRoom = { width: arrow - 9 - left, size: NAME, least: NAME_LEAST, weight: 'bold' } as const;
  const name = fittedText(document, pieceName, nameRoom);
  document.text(ink, name.text, left, first, { size: name.size, weight: 'bold' });

  const line = fittedText(document, `${garmentLine} · ${words.fullSize}`, {
    width: 84,
    size: 2.3,
    least: 1.9,
    weight: 'plain',
  });
  document.text(ink, line.text, right, second, { size: line.size, align: 'end', grey: 0.25 });
  const cut = fittedText(document, cutLine, { width: right - left - 88, size: 3, least: 2.3, weight: 'plain' });
  document.text(ink, cut.text, left, second, { size: cut.size });
}

function upArrow(ink: Ink, x: number, top: number): void {
  const head = [
    { x, y: top },
    { x: x + 1.6, y: top + 2.6 },
    { x: x - 1.6, y: top + 2.6 },
  ];
  ink
    .fill(head, 0)
    .pen(0.5)
    .line(x, top + 2.4, x, top + 4.4);
}
