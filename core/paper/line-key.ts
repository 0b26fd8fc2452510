import { arrow, stroke } from '../drawing/arrows';
import type { LineKind, Mark, Stroke } from '../drawing/drawing';
import { arcOfCircle } from '../geometry/arc';
import type { Point } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import { KEY_LINES, type KeyLine } from './key-lines';
import type { Area } from './page-map';
import type { PaperWords } from './paper-words';
import type { PdfDocument } from './pdf-document';
import type { Ink } from './pdf-ink';
import { inkMark } from './piece-ink';
import { fittedText } from './text-lines';

/** A sample is so long, and rows stand so far apart or nearer (mm). */
const SAMPLE = 19;
const ROW = 6;
const HEADING = 9;
const TEXT = 2.9;

/** What the lines on the pages mean: of each kind that is drawn a sample by the same pen, and its meaning. */
export function inkLineKey(
  ink: Ink,
  document: PdfDocument,
  drawn: ReadonlySet<LineKind>,
  words: PaperWords,
  { left, top, width, height }: Area,
): void {
  const kinds = KEY_LINES.filter((kind) => drawn.has(kind));
  const row = Math.min(ROW, (height - HEADING) / kinds.length);
  document.text(ink, words.first.keyTitle, left, top + 3.6, { size: 3.6, weight: 'bold' });
  kinds.forEach((kind, index) => {
    const y = top + HEADING + index * row;
    for (const mark of sample(kind, { x: left, y })) inkMark(ink, document, mark, words);
    const text = left + SAMPLE + 3;
    const fits = { width: left + width - text, size: TEXT, least: 2, weight: 'plain' } as const;
    const said = fittedText(document, words.first.key[kind], fits);
    document.text(ink, said.text, text, y + TEXT * 0.36, { size: said.size });
  });
}

/** A short piece of a line as it is drawn on the pages, from a place to the right. */
function sample(kind: KeyLine, { x, y }: Point): Mark[] {
  const at = (dx: number, dy: number): Point => ({ x: x + dx, y: y + dy });
  const level = (line: LineKind) => stroke(line, at(0, 0), at(SAMPLE, 0));
  switch (kind) {
    case 'grain':
      return arrow('grain', at(0, 0), at(SAMPLE, 0), 'both');
    case 'notch':
      return [stroke('cut', at(0, -1.6), at(SAMPLE, -1.6)), stroke('notch', at(SAMPLE / 2, -1.6), at(SAMPLE / 2, 1.9))];
    case 'opening':
      return [level('stitch'), stroke('opening', at(SAMPLE / 2, -2.2), at(SAMPLE / 2, 2.2))];
    case 'dart':
      return [drawnAs('dart', [line(at(0, -1.8), at(SAMPLE, 0)), line(at(SAMPLE, 0), at(0, 1.8))])];
    case 'gathers':
      return [
        drawnAs(
          'gathers',
          splineThrough(Array.from({ length: 9 }, (_, k) => at((k * SAMPLE) / 8, k % 2 ? -1.2 : 1.2))),
        ),
      ];
    case 'drill':
      return [
        ring('drill', at(SAMPLE / 2, 0), 2),
        stroke('drill', at(SAMPLE / 2 - 2, 0), at(SAMPLE / 2 + 2, 0)),
        stroke('drill', at(SAMPLE / 2, -2), at(SAMPLE / 2, 2)),
      ];
    case 'corner':
      return [
        ring('corner', at(SAMPLE / 2, 0), 2.3),
        {
          kind: 'words',
          role: 'edge',
          content: { kind: 'corner', number: 1 },
          weight: 'bold',
          at: at(SAMPLE / 2, 0),
          size: 3,
          angle: 0,
        },
      ];
    case 'upright':
      return arrow('upright', at(SAMPLE / 2, 2.4), at(SAMPLE / 2, -2.4), 'one');
    default:
      return [level(kind)];
  }
}

function drawnAs(kind: LineKind, path: Path): Stroke {
  return { kind: 'stroke', line: kind, path };
}

function ring(kind: LineKind, middle: Point, radius: number): Stroke {
  return drawnAs(kind, arcOfCircle(middle, { x: middle.x + radius, y: middle.y }, 2 * Math.PI, 0.01));
}
