/** The frame round a printed grid, which is not always a whole square away from its last lines. */
import type { Grey } from './grey';
import { crossingSeen } from './grid-crossing';
import type { Crossing } from './grid-lattice';
import { type SquaresMap, squaresToPhoto } from './grid-map';

/** Columns or rows at the border that lie off the others by more than this share of a square are a frame beside the grid. */
const FRAME_OFF = 0.03;

/** Without a border column or row whose steps are not of a size with those beside it. */
export function withoutFrame(crossings: readonly Crossing[]): Crossing[] {
  let kept = [...crossings];
  for (let round = 0; round < 4; round++) {
    const before = kept.length;
    for (const border of bordersOf(kept)) {
      if (border.last >= 4 && isOff(kept, border)) kept = kept.filter((each) => each[border.side] !== border.at);
    }
    if (kept.length === before) break;
    kept = renumbered(kept);
  }
  return kept;
}

/**
 * With the border columns and rows that a frame close beside them had drawn to itself: looked for where the map says they
 * lie, and taken where most of such a line is seen and its steps are of a size with the others.
 */
export function withLinesByFrame(grey: Grey, crossings: readonly Crossing[], map: SquaresMap): Crossing[] {
  let kept = [...crossings];
  for (const { side, at, inward, last } of bordersOf(crossings)) {
    const other = side === 'column' ? 'row' : 'column';
    const border = at - inward;
    const found = crossings
      .filter((each) => each[side] === at)
      .flatMap((each) => {
        const place = { [side]: border, [other]: each[other] } as Record<'column' | 'row', number>;
        const crossing = { ...place, at: squaresToPhoto(map, { x: place.column, y: place.row }) };
        return crossingSeen(grey, crossing, map, 'fine') ?? [];
      });
    const grown = [...kept, ...found];
    const most = found.length > 0.5 * (other === 'row' ? map.rows : map.columns);
    if (most && last >= 4 && !isOff(grown, { side, at: border, inward })) kept = grown;
  }
  return renumbered(kept);
}

interface Border {
  readonly side: 'column' | 'row';
  /** The number of the border column or row, and the step from it inwards. */
  readonly at: number;
  readonly inward: 1 | -1;
}

function bordersOf(crossings: readonly Crossing[]): (Border & { readonly last: number })[] {
  return (['column', 'row'] as const).flatMap((side) => {
    const last = Math.max(...crossings.map((each) => each[side]));
    return [{ side, at: 0, inward: 1, last } as const, { side, at: last, inward: -1, last } as const];
  });
}

/** Whether the step to the border differs from what the three steps after it foretell, by their second differences. */
function isOff(crossings: readonly Crossing[], { side, at: border, inward }: Border): boolean {
  const other = side === 'column' ? 'row' : 'column';
  const places = new Map(crossings.map((each) => [`${each[side]} ${each[other]}`, each.at]));
  const offs: number[] = [];
  for (const { at, [other]: line } of crossings.filter((each) => each[side] === border)) {
    const inner = [1, 2, 3, 4].map((k) => places.get(`${border + k * inward} ${line}`));
    const steps = inner.map((q, k) => {
      const p = k === 0 ? at : inner[k - 1];
      return p && q ? Math.hypot(q.x - p.x, q.y - p.y) : Number.NaN;
    }) as [number, number, number, number];
    const off = steps[0] / (3 * steps[1] - 3 * steps[2] + steps[3]) - 1;
    if (Number.isFinite(off)) offs.push(off);
  }
  offs.sort((p, q) => p - q);
  return offs.length >= 3 && Math.abs(offs[offs.length >> 1] as number) > FRAME_OFF;
}

/** The same crossings with columns and rows from 0. */
export function renumbered(crossings: readonly Crossing[]): Crossing[] {
  const column = Math.min(...crossings.map((each) => each.column));
  const row = Math.min(...crossings.map((each) => each.row));
  return crossings.map((each) => ({ ...each, column: each.column - column, row: each.row - row }));
}
