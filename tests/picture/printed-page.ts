import type { Point } from '../../core/geometry/point';

/** A printed page of our own: mm from its top left corner. */
export interface PrintedPage {
  readonly across: number;
  readonly down: number;
  /** The printed frame: its left, top, right and bottom, at the middle of the line. */
  readonly frame: Sides | undefined;
  /** Squares of so many mm inside the frame. */
  readonly squares: number | undefined;
  /** The corners of the piece drawn on it, its whole outline as a fine closed run, and everything that is inked. */
  readonly piece: readonly Point[];
  readonly outline: readonly Point[];
  readonly strokes: readonly Stroke[];
}

export interface Sides {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Stroke {
  readonly points: readonly Point[];
  readonly width: number;
  readonly ink: number;
}

/** Pixels of the texture a mm. */
const FINE = 10;

/** The piece is drawn at a fifth: 26 in long at full size. */
export const PIECE_26_IN = 5;

/** How far each edge of the piece bows out of the straight (mm, to the left of its way): waist, hip, side, hem, back, fold. */
const BOWS = [1.6, -2.5, 0.6, -3.2, 0, 1.2];

/** From one place to another along an arc of a circle, without its end. */
function bowed(from: Point, to: Point, bow: number): Point[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const long = Math.hypot(dx, dy);
  if (bow === 0) return [from];
  const radius = (long * long) / (8 * bow) + bow / 2;
  const half = Math.asin(long / (2 * Math.abs(radius)));
  const steps = 60;
  return Array.from({ length: steps }, (_, k) => {
    const angle = half * ((2 * k) / steps - 1);
    const along = 0.5 + (Math.abs(radius) * Math.sin(angle)) / long;
    const off = Math.sign(bow) * Math.abs(radius) * (Math.cos(angle) - Math.cos(half));
    return { x: from.x + dx * along + (dy / long) * off, y: from.y + dy * along - (dx / long) * off };
  });
}

export interface GorePage {
  readonly frame: boolean;
  readonly squares?: number;
  readonly turn?: number;
  /** The share of a square that the frame lies beyond the last lines; as the page's margins fall unless said. */
  readonly beyond?: number;
}

function frameOf(across: number, down: number, { squares, beyond }: GorePage): Sides {
  const frame = { left: 11, top: 13, right: across - 12, bottom: down - 14 };
  if (squares === undefined || beyond === undefined) return frame;
  const end = (from: number, to: number) => from + (Math.floor((to - from) / squares) + beyond) * squares;
  return { ...frame, right: end(frame.left, frame.right), bottom: end(frame.top, frame.bottom) };
}

/** A page with a skirt gore, half its waistband, dimension lines and rows of lettering below. */
export function gorePage(options: GorePage) {
  const [across, down] = options.turn ? [210, 152] : [152, 210];
  const frame = frameOf(across, down, options);
  const middle = { x: (frame.left + frame.right) / 2, y: (frame.top + frame.bottom) / 2 };
  const isWide = across > down;
  const gore: Point[] = [
    [-9, -66],
    [8, -67],
    [23, 52],
    [27, 65],
    [-33, 66],
    [-21, 20],
  ].map(([x = 0, y = 0]) => (isWide ? { x: middle.x + y, y: middle.y - x } : { x: middle.x + x, y: middle.y + y }));
  const outline = gore.flatMap((corner, k) => bowed(corner, gore[(k + 1) % gore.length] as Point, BOWS[k] as number));
  outline.push(gore[0] as Point);
  const strokes: Stroke[] = [{ points: outline, width: 0.45, ink: 0.88 }];
  strokes.push({ points: [gore[0] as Point, gore[3] as Point], width: 0.2, ink: 0.7 });
  // Rows of lettering: short upright and slanting strokes.
  for (let row = 0; row < 3; row++) {
    for (let letter = 0; letter < 22; letter++) {
      const x = frame.left + 6 + letter * 1.9 + (letter % 5 === 4 ? 0.9 : 0);
      const y = frame.top + 8 + row * 4;
      strokes.push({
        points: [
          { x, y },
          { x: x + ((letter * 7) % 3) * 0.4, y: y + 1.8 },
        ],
        width: 0.25,
        ink: 0.8,
      });
    }
  }
  if (options.squares) strokes.push(...squareLines(frame, options.squares));
  if (options.frame) {
    const { left, top, right, bottom } = frame;
    const ring = [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ];
    strokes.push({ points: [...ring, ring[0] as Point], width: 0.5, ink: 0.9 });
  }
  const page: PrintedPage = {
    across,
    down,
    frame: options.frame ? frame : undefined,
    squares: options.squares,
    piece: gore,
    outline,
    strokes,
  };
  return page;
}

function squareLines({ left, top, right, bottom }: Sides, every: number): Stroke[] {
  const lines: Stroke[] = [];
  const line = (a: Point, b: Point) => lines.push({ points: [a, b], width: 0.22, ink: 0.6 });
  for (let x = left; x <= right + 1e-6; x += every) line({ x, y: top }, { x, y: bottom });
  for (let y = top; y <= bottom + 1e-6; y += every) line({ x: left, y }, { x: right, y });
  return lines;
}

/** How light the page is, as a texture that is asked at places in mm: paper 0.92, ink darker, edges of lines soft. */
export function pageTexture({ across, down, strokes }: PrintedPage): (x: number, y: number) => number {
  const [width, height] = [Math.ceil(across * FINE) + 2, Math.ceil(down * FINE) + 2];
  const cover = new Float32Array(width * height);
  for (const { points, width: thick, ink } of strokes) {
    for (let k = 1; k < points.length; k++) {
      drawLine(cover, width, height, points[k - 1] as Point, points[k] as Point, thick, ink);
    }
  }
  return (x, y) => {
    const px = Math.min(Math.max(x * FINE, 0), width - 1.001);
    const py = Math.min(Math.max(y * FINE, 0), height - 1.001);
    const [x0, y0] = [px | 0, py | 0];
    const [fx, fy] = [px - x0, py - y0];
    const at = y0 * width + x0;
    const upper = (cover[at] as number) * (1 - fx) + (cover[at + 1] as number) * fx;
    const lower = (cover[at + width] as number) * (1 - fx) + (cover[at + width + 1] as number) * fx;
    return 0.92 * (1 - (upper * (1 - fy) + lower * fy));
  };
}

/** The texture's samples lie at whole multiples of 1 / FINE mm. */
function drawLine(
  cover: Float32Array,
  width: number,
  height: number,
  a: Point,
  b: Point,
  thick: number,
  ink: number,
): void {
  const reach = thick / 2 + 0.2;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const clamp = (value: number, most: number) => Math.min(Math.max(Math.floor(value * FINE), 0), most - 1);
  for (let y = clamp(Math.min(a.y, b.y) - reach, height); y <= clamp(Math.max(a.y, b.y) + reach + 0.1, height); y++) {
    for (let x = clamp(Math.min(a.x, b.x) - reach, width); x <= clamp(Math.max(a.x, b.x) + reach + 0.1, width); x++) {
      const [px, py] = [x / FINE - a.x, y / FINE - a.y];
      const t = Math.min(Math.max((px * dx + py * dy) / square, 0), 1);
      const away = Math.hypot(px - t * dx, py - t * dy);
      const share = Math.min(Math.max(0.5 + (thick / 2 - away) * FINE, 0), 1) * ink;
      const at = y * width + x;
      if (share > (cover[at] as number)) cover[at] = share;
    }
  }
}
