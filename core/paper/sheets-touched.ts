import type { Point } from '../geometry/point';

/** A place this near to the edge of a window (mm) does not count as shown there, for lines have width; less than drawings keep clear. */
const EDGE = 0.99;

/** Many shifts are tried over the same places: their coordinates lie together. */
export interface Coordinates {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export function coordinates(places: readonly Point[]): Coordinates {
  return { x: Float64Array.from(places, ({ x }) => x), y: Float64Array.from(places, ({ y }) => y) };
}

/** A grid in one direction. */
export interface Strips {
  readonly count: number;
  readonly step: number;
  readonly size: number;
}

/** Where a grid starts in one direction, and to which of its columns or rows each place belongs. */
export interface PlacesInStrips extends Strips {
  readonly start: number;
  readonly of: Int32Array;
  /** 1 where no other column or row shows the place. */
  readonly alone: Uint8Array;
}

/** Each place belongs to one sheet: the one on whose side of the joins, in the middle of the overlaps, it lies. */
export function stripsOf(at: Float64Array, start: number, strips: Strips): PlacesInStrips {
  const { count, step, size } = strips;
  const first = start + (size - step) / 2;
  const of = new Int32Array(at.length);
  const alone = new Uint8Array(at.length);
  for (let i = 0; i < at.length; i++) {
    const place = at[i] as number;
    const own = Math.min(count - 1, Math.max(0, Math.floor((place - first) / step)));
    const from = start + own * step;
    of[i] = own;
    // What a column further off shows, the one beside shows too.
    const isOnNext = own < count - 1 && place >= from + step + EDGE;
    alone[i] = isOnNext || (own > 0 && place <= from - step + size - EDGE) ? 0 : 1;
  }
  return { ...strips, start, of, alone };
}

/**
 * The places of every sheet that another may show as well: how many, the first one, the last one, and after each the next
 * one on the same sheet.
 */
export interface Lists {
  readonly count: Int32Array;
  readonly first: Int32Array;
  readonly last: Int32Array;
  readonly next: Int32Array;
  /** 1 for a sheet that alone shows some place, and so stays whatever others do. */
  readonly needed: Uint8Array;
}

/** Room for the lists, used again for every shift. */
export function emptyLists(places: number, sheets: number): Lists {
  const ofSheets = () => new Int32Array(sheets);
  return {
    count: ofSheets(),
    first: ofSheets(),
    last: ofSheets(),
    next: new Int32Array(places),
    needed: new Uint8Array(sheets),
  };
}

/** Of so many places one is enough to see, of most shifts, that they save nothing. */
const ONE_OF = 12;

/** Whether a few of the places show already that at least so many sheets stay. */
function areCertain(least: number, strips: PlacesInStrips, bands: PlacesInStrips, needed: Uint8Array): boolean {
  const [columnOf, rowOf, aloneAcross, aloneDown] = [strips.of, bands.of, strips.alone, bands.alone];
  let certain = 0;
  needed.fill(0);
  for (let i = 0; i < columnOf.length && certain < least; i += ONE_OF) {
    if (aloneAcross[i] === 0 || aloneDown[i] === 0) continue;
    const cell = (rowOf[i] as number) * strips.count + (columnOf[i] as number);
    if (needed[cell] === 0) certain += 1;
    needed[cell] = 1;
  }
  return certain >= least;
}

/** Fills the lists; the sheets that any place touches, and how many of them alone show one. */
function touchedBy(strips: PlacesInStrips, bands: PlacesInStrips, lists: Lists) {
  const { count, first, last, next, needed } = lists;
  const cells: number[] = [];
  let certain = 0;
  count.fill(0);
  needed.fill(0);
  for (let i = 0; i < next.length; i++) {
    const cell = (bands.of[i] as number) * strips.count + (strips.of[i] as number);
    const before = count[cell] as number;
    const isNeeded = needed[cell] === 1;
    if (before === 0 && !isNeeded) cells.push(cell);
    if (strips.alone[i] === 1 && bands.alone[i] === 1) {
      if (!isNeeded) certain += 1;
      needed[cell] = 1;
      continue;
    }
    if (before === 0) first[cell] = i;
    else next[last[cell] as number] = i;
    last[cell] = i;
    count[cell] = before + 1;
  }
  return { cells, certain };
}

/**
 * The sheets without those whose every place stands in the overlaps of others that stay; `undefined` as soon as it is
 * known that they will not be fewer than `fewerThan`.
 */
export function withoutDoubled(
  at: Coordinates,
  [strips, bands]: readonly [PlacesInStrips, PlacesInStrips],
  lists: Lists,
  fewerThan = Number.POSITIVE_INFINITY,
): number[] | undefined {
  const { count, first, last, next, needed } = lists;
  if (areCertain(fewerThan, strips, bands, needed)) return undefined;
  const { cells, certain } = touchedBy(strips, bands, lists);
  if (certain >= fewerThan) return undefined;
  let staying = certain;
  const kept = new Uint8Array(strips.count * bands.count);
  for (const cell of cells) kept[cell] = 1;
  const shownOn = (place: number) => {
    const [x, y] = [at.x[place] as number, at.y[place] as number];
    const [left, right] = mayShow(x, strips);
    const [top, bottom] = mayShow(y, bands);
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) {
        const isKept = kept[row * strips.count + column] === 1;
        if (isKept && isInside(x, column, strips) && isInside(y, row, bands)) return row * strips.count + column;
      }
    }
    return -1;
  };
  for (const cell of cells.toSorted((a, b) => (count[a] as number) - (count[b] as number))) {
    if (needed[cell] === 1) continue;
    kept[cell] = 0;
    let place = first[cell] as number;
    while (shownOn(place) >= 0 && place !== last[cell]) place = next[place] as number;
    if (shownOn(place) < 0) {
      kept[cell] = 1;
      staying += 1;
      if (staying >= fewerThan) return undefined;
      continue;
    }
    // What others show in its stead they must go on showing: it is theirs from now on.
    const end = last[cell] as number;
    for (let given = first[cell] as number, after = given; ; given = after) {
      after = next[given] as number;
      const taker = shownOn(given);
      // What stays anyhow need not be told what it shows.
      if (needed[taker] === 0) {
        next[last[taker] as number] = given;
        last[taker] = given;
      }
      if (given === end) break;
    }
  }
  return cells.filter((cell) => kept[cell] === 1).sort((a, b) => a - b);
}

/** From which column or row to which there can be one that shows what lies at a coordinate. */
function mayShow(at: number, { start, step, size, count }: PlacesInStrips): [number, number] {
  const from = Math.floor((at - size - start) / step);
  const to = Math.ceil((at - start) / step);
  return [Math.max(0, from), Math.min(count - 1, to)];
}

/** Whether a column or row of windows shows what lies at a coordinate. */
function isInside(at: number, index: number, { start, step, size }: PlacesInStrips): boolean {
  const from = start + index * step;
  return at >= from + EDGE && at <= from + size - EDGE;
}
