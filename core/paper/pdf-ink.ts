import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';

/**
 * Writes a PDF content stream in millimetres with y down; the page turns it into points once, at its start. Numbers
 * never take an exponent, which PDF does not know (ISO 32000-1, 7.3.3).
 */
export class Ink {
  private readonly parts: string[] = [];

  /** A number to a thousandth of a millimetre: finer than any printer, and short. */
  static number(value: number): string {
    const text = value.toFixed(3).replace(/\.?0+$/, '');
    return text === '-0' ? '0' : text;
  }

  raw(text: string): this {
    this.parts.push(text);
    return this;
  }

  ops(operator: string, ...numbers: readonly number[]): this {
    this.parts.push(`${numbers.map(Ink.number).join(' ')}${numbers.length > 0 ? ' ' : ''}${operator}`);
    return this;
  }

  /** Everything until the matching `restore` leaves the pen, clip and place of what follows as they were. */
  save(): this {
    return this.ops('q');
  }

  restore(): this {
    return this.ops('Q');
  }

  shift(x: number, y: number): this {
    return this.ops('cm', 1, 0, 0, 1, x, y);
  }

  scale(factor: number): this {
    return this.ops('cm', factor, 0, 0, factor, 0, 0);
  }

  /** Width in mm, dash in mm, and grey from 0 black to 1 white. */
  pen(width: number, dash: readonly number[] = [], grey = 0): this {
    this.parts.push(`[${dash.map(Ink.number).join(' ')}] 0 d`);
    return this.ops('w', width).ops('G', grey);
  }

  line(x0: number, y0: number, x1: number, y1: number): this {
    return this.ops('m', x0, y0).ops('l', x1, y1).ops('S');
  }

  rectangle(x: number, y: number, width: number, height: number): this {
    return this.ops('re', x, y, width, height).ops('S');
  }

  fillRectangle(x: number, y: number, width: number, height: number, grey: number): this {
    return this.ops('g', grey).ops('re', x, y, width, height).ops('f').ops('g', 0);
  }

  clip(x: number, y: number, width: number, height: number): this {
    return this.ops('re', x, y, width, height).ops('W').ops('n');
  }

  /** Shows a stored drawing by its name. */
  show(name: string): this {
    return this.raw(`/${name} Do`);
  }

  /** A filled shape through the corners. */
  fill(corners: readonly Point[], grey: number): this {
    this.ops('g', grey);
    corners.forEach(({ x, y }, index) => {
      this.ops(index === 0 ? 'm' : 'l', x, y);
    });
    return this.ops('f').ops('g', 0);
  }

  path(path: Path): this {
    return this.run(path).ops('S');
  }

  /** What a closed path goes round, filled. */
  fillPath(path: Path, grey: number): this {
    return this.ops('g', grey).run(path).ops('f').ops('g', 0);
  }

  private run(path: Path): this {
    const first = path[0];
    if (!first) return this;
    this.ops('m', first.p0.x, first.p0.y);
    for (const segment of path) {
      if (segment.kind === 'line') this.ops('l', segment.p1.x, segment.p1.y);
      else {
        const { p1, p2, p3 } = segment;
        this.ops('c', p1.x, p1.y, p2.x, p2.y, p3.x, p3.y);
      }
    }
    return this;
  }

  toString(): string {
    return this.parts.join('\n');
  }
}
