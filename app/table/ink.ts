import type { Point } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import { canvasColours } from '../ui/canvas-colours';

/** The lettering of the canvas, for a size in CSS pixels. */
export function lettering(sizePx: number, weight: 400 | 700 = 400): string {
  return `${weight} ${sizePx}px "Alegreya Sans", "Gill Sans", Candara, Calibri, sans-serif`;
}

/** Adds a path to what is being drawn. */
export function layPath(ink: CanvasRenderingContext2D, path: Path): void {
  const first = path[0];
  if (!first) return;
  ink.moveTo(first.p0.x, first.p0.y);
  for (const segment of path) {
    if (segment.kind === 'line') ink.lineTo(segment.p1.x, segment.p1.y);
    else ink.bezierCurveTo(segment.p1.x, segment.p1.y, segment.p2.x, segment.p2.y, segment.p3.x, segment.p3.y);
  }
}

interface WordsAt {
  readonly at: Point;
  /** World units in a CSS pixel. */
  readonly px: number;
  readonly sizePx?: number;
  readonly weight?: 400 | 700;
  readonly colour?: string;
  readonly align?: CanvasTextAlign;
  readonly baseline?: CanvasTextBaseline;
  /** Clockwise to the eye. */
  readonly angle?: number;
  /** CSS pixels away from the place, after turning. */
  readonly offset?: Point;
}

/** Words of a fixed size on the screen, with a pale edge round the letters so that they read on any ground. */
export function writeWords(ink: CanvasRenderingContext2D, words: string, where: WordsAt): void {
  const {
    at,
    px,
    sizePx = 14,
    weight = 700,
    colour = canvasColours.ink,
    align = 'center',
    baseline = 'middle',
  } = where;
  ink.save();
  ink.translate(at.x, at.y);
  if (where.angle) ink.rotate(where.angle);
  ink.scale(px, px);
  ink.font = lettering(sizePx, weight);
  // Keeps 7 1/8 from reading as 71/8; a browser that cannot do it leaves it be.
  ink.wordSpacing = '2px';
  ink.textAlign = align;
  ink.textBaseline = baseline;
  ink.lineJoin = 'round';
  ink.lineWidth = 4;
  ink.setLineDash([]);
  ink.strokeStyle = canvasColours.sheet;
  const { x, y } = where.offset ?? { x: 0, y: 0 };
  ink.strokeText(words, x, y);
  ink.fillStyle = colour;
  ink.fillText(words, x, y);
  ink.restore();
}

/** How wide words of that size come out, in CSS pixels. */
export function wordsWide(
  ink: CanvasRenderingContext2D,
  words: string,
  sizePx: number,
  weight: 400 | 700 = 700,
): number {
  ink.save();
  ink.font = lettering(sizePx, weight);
  ink.wordSpacing = '2px';
  const { width } = ink.measureText(words);
  ink.restore();
  return width;
}
