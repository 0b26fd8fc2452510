/**
 * The `d` of an SVG path element as runs of lines and cubics. See: W3C, SVG 2, section 9.3 (the grammar of path data)
 * and 9.5 (after an error, what came before it stands).
 */
import { move, type Point, vectorBetween } from '../geometry/point';
import { cubic, line, type Path, type Segment } from '../geometry/segment';
import { arcBetween } from './elliptical-arc';

export interface PathData {
  /** From each M to the next or to Z, which ends a run where it began. */
  readonly runs: readonly Path[];
  /** The data broke off at something that is no path. */
  readonly isBroken: boolean;
}

/** How many numbers each command takes. */
const COUNTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };

const NUMBER = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)/y;
const FLAG = /[\s,]*([01])/y;
const COMMAND = /[\s,]*([a-zA-Z])/y;

/** Numbers beyond this are no drawing. */
const FAR = 1e12;

/** The runs of a path. Quadratic curves are raised to cubics, which is exact; arcs follow {@link arcBetween}. */
export function readPathData(data: string): PathData {
  const pen = new Pen();
  let at = 0;
  const take = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    const match = pattern.exec(data);
    if (match) at = pattern.lastIndex;
    return match?.[1];
  };
  let letter = take(COMMAND);
  while (letter !== undefined) {
    const count = COUNTS[letter.toUpperCase()];
    if (count === undefined || (!pen.hasBegun && letter.toUpperCase() !== 'M')) return pen.runs('broken');
    let isFirst = true;
    for (;;) {
      const numbers = takeNumbers(take, letter, count);
      if (!numbers) return pen.runs('broken');
      if (numbers.length === 0 && count > 0) {
        if (isFirst) return pen.runs('broken');
        break;
      }
      pen.draw(letter === 'M' && !isFirst ? 'L' : letter === 'm' && !isFirst ? 'l' : letter, numbers);
      isFirst = false;
      if (count === 0) break;
    }
    letter = take(COMMAND);
  }
  return pen.runs(/\S/.test(data.slice(at).replace(/,/g, ' ')) ? 'broken' : 'whole');
}

/** The numbers of one step; none when another command follows, `undefined` when they break off. */
function takeNumbers(
  take: (pattern: RegExp) => string | undefined,
  letter: string,
  count: number,
): readonly number[] | undefined {
  const numbers: number[] = [];
  for (let i = 0; i < count; i++) {
    const text = take(letter.toUpperCase() === 'A' && (i === 3 || i === 4) ? FLAG : NUMBER);
    if (text === undefined) return i === 0 ? [] : undefined;
    const value = Number(text);
    if (!(Math.abs(value) <= FAR)) return undefined;
    numbers.push(value);
  }
  return numbers;
}

/** Follows the commands and collects what they draw. */
class Pen {
  hasBegun = false;
  private readonly done: Path[] = [];
  private run: Segment[] = [];
  private at: Point = { x: 0, y: 0 };
  private start: Point = { x: 0, y: 0 };
  /** The handle that a smooth command mirrors, and of which kind of curve. */
  private handle: { readonly kind: 'C' | 'Q'; readonly at: Point } | undefined;

  draw(letter: string, numbers: readonly number[]): void {
    const kind = letter.toUpperCase();
    const origin = letter === kind ? { x: 0, y: 0 } : this.at;
    const point = (i: number): Point => ({
      x: origin.x + (numbers[i] as number),
      y: origin.y + (numbers[i + 1] as number),
    });
    const handle = this.handle;
    this.handle = undefined;
    switch (kind) {
      case 'M':
        this.lift();
        this.at = point(0);
        this.start = this.at;
        this.hasBegun = true;
        break;
      case 'Z':
        if (this.at.x !== this.start.x || this.at.y !== this.start.y) this.add([line(this.at, this.start)]);
        this.lift();
        this.at = this.start;
        break;
      case 'H':
        this.add([line(this.at, { x: origin.x + (numbers[0] as number), y: this.at.y })]);
        break;
      case 'V':
        this.add([line(this.at, { x: this.at.x, y: origin.y + (numbers[0] as number) })]);
        break;
      case 'L':
        this.add([line(this.at, point(0))]);
        break;
      case 'C':
      case 'S': {
        const first = kind === 'C' ? point(0) : this.mirrored(handle, 'C');
        const second = point(kind === 'C' ? 2 : 0);
        this.add([cubic(this.at, first, second, point(kind === 'C' ? 4 : 2))]);
        this.handle = { kind: 'C', at: second };
        break;
      }
      case 'Q':
      case 'T': {
        const bend = kind === 'Q' ? point(0) : this.mirrored(handle, 'Q');
        const end = point(kind === 'Q' ? 2 : 0);
        const towards = (from: Point) => move(from, vectorBetween(from, bend), 2 / 3);
        this.add([cubic(this.at, towards(this.at), towards(end), end)]);
        this.handle = { kind: 'Q', at: bend };
        break;
      }
      case 'A': {
        const [rx, ry, degrees, large, clockwise] = numbers as unknown as [number, number, number, number, number];
        const turn = (degrees * Math.PI) / 180;
        const end = point(5);
        this.add(arcBetween(this.at, end, { rx, ry, turn, isLarge: large === 1, isClockwise: clockwise === 1 }));
        this.at = end;
        break;
      }
    }
  }

  runs(state: 'whole' | 'broken'): PathData {
    this.lift();
    return { runs: this.done, isBroken: state === 'broken' };
  }

  private add(segments: readonly Segment[]): void {
    for (const segment of segments) {
      this.run.push(segment);
      this.at = segment.kind === 'line' ? segment.p1 : segment.p3;
    }
  }

  private lift(): void {
    if (this.run.length > 0) this.done.push(this.run);
    this.run = [];
  }

  private mirrored(handle: Pen['handle'], kind: 'C' | 'Q'): Point {
    return handle?.kind === kind ? move(this.at, vectorBetween(handle.at, this.at)) : this.at;
  }
}
