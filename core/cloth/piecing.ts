/**
 * Piecing: where a piece does not fit, it is cut in two along the grain and joined by a seam, as narrow cloth has always
 * been made to do.
 */
import type { PieceJoin } from '../garment/garment-cloth';
import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';
import { commonAreas } from '../geometry/polygon-boolean';
import { laidFor } from './lay-search';
import { type Lay, type LayTask, otherHand, type ToLay } from './lay-task';
import type { Random } from './place-search';

/** A join along the grain of a piece, as the level `at` of its outline (grain along x), and both parts with allowance. */
export interface Piecing {
  readonly id: string;
  readonly at: number;
  /** The part above the join and the part below it; for a piece on the fold the first lies on the fold. */
  readonly parts: readonly [Ring, Ring];
}

/** A join that makes everything fit, and the lay that shows it. */
export interface PiecingFound {
  readonly piecing: Piecing;
  readonly task: LayTask;
  readonly lay: Lay;
}

/** Shares of a piece's width at which a join is tried, the narrowest piecing first: a corner at the hem, then more. */
const SHARES = [0.12, 0.88, 0.2, 0.8, 0.28, 0.72, 0.36, 0.64, 0.5];

/** The joins are gone through so often, with these shares of the steps: most that do show it at once. */
const ROUNDS = [0.04, 0.2];

/** Parts narrower than so many allowances are no piecing but a seam, and areas below this (mm²) are nothing. */
const LEAST_ALLOWANCES = 3;
const NOTHING = 1;

/** A piece joined at level `at`; `undefined` where the join would make more than two parts, or one no wider than its seam. */
export function piecedAt(
  { id, outline }: Pick<ToLay, 'id' | 'outline'>,
  at: number,
  allowance: number,
): Piecing | undefined {
  const box = boxOfPoints(outline);
  if (!box) return undefined;
  const least = LEAST_ALLOWANCES * allowance;
  if (at - box.minY + allowance < least || box.maxY - at + allowance < least) return undefined;
  const band = (from: number, to: number): Ring => [
    { x: box.minX - 1, y: from },
    { x: box.maxX + 1, y: from },
    { x: box.maxX + 1, y: to },
    { x: box.minX - 1, y: to },
  ];
  const above = partOf(outline, band(box.minY - 1, at + allowance));
  const below = partOf(outline, band(at - allowance, box.maxY + 1));
  return above && below && { id, at, parts: [above, below] };
}

/**
 * The joins that bring a piece too wide for the cloth onto it: the widest first part and the widest last part. First the
 * one that joins on less, as at the hem of a gore rather than at its waist.
 */
export function joinsForWidth(piece: Pick<ToLay, 'id' | 'outline'>, across: number, allowance: number): Piecing[] {
  const box = boxOfPoints(piece.outline);
  if (!box || box.maxY - box.minY <= across) return [];
  const levels = [box.minY + across - allowance, box.maxY - across + allowance];
  const joins = levels.flatMap((at) => {
    const piecing = piecedAt(piece, at, allowance);
    const fits = piecing?.parts.every((part) => heightOf(part) <= across + 1e-6);
    return piecing && fits ? [piecing] : [];
  });
  return joins.sort((a, b) => leastArea(a) - leastArea(b));
}

/**
 * The task with a piece laid as its two parts, and its other hand as well, joined at the other side of its grain. What was
 * pinned of them is free again.
 */
export function piecedTask(task: LayTask, join: PieceJoin): LayTask {
  const isOf = (id: string) => id === join.id || id === otherHand(join.id);
  const toLay = task.toLay.flatMap((piece) => joinedParts(piece, [join]));
  return { ...task, toLay, pinned: (task.pinned ?? []).filter((pin) => !isOf(pin.id)) };
}

/** A piece as its two parts where it is to be joined, else as it is. */
export function joinedParts(piece: ToLay, joins: readonly PieceJoin[]): readonly ToLay[] {
  const join = joins.find(({ id }) => piece.id === id || piece.id === otherHand(id));
  const at = join && (piece.id === join.id ? join.at : -join.at);
  const piecing = join && at !== undefined && piecedAt(piece, at, join.allowance);
  return piecing ? piecedParts(piece, piecing) : [piece];
}

/** What is laid of a piece that is joined: the part on the fold, or the larger one, as the piece itself, and the other free. */
function piecedParts(piece: ToLay, { parts: [first, second] }: Piecing): [ToLay, ToLay] {
  const { onFold, ...free } = piece;
  const isSecond = onFold === undefined && Math.abs(ringArea(second)) > Math.abs(ringArea(first));
  const [main, other] = isSecond ? [second, first] : [first, second];
  return [
    { ...piece, outline: main },
    { ...free, id: `${piece.id}/pieced`, outline: other },
  ];
}

/**
 * A join that makes a lay fit into the length at hand: pieces that lie beyond the end are tried first and large ones before
 * small ones, each joined at a few levels, the smallest part first, and all laid anew: for a few of the `steps`, then for more. `undefined`
 * where no single join will do.
 */
export function piecingToFit(
  task: LayTask,
  lay: Lay,
  options: {
    readonly lengthAtHand: number;
    readonly allowance: number;
    readonly steps: number;
    readonly random: Random;
  },
): PiecingFound | undefined {
  const { lengthAtHand, allowance, steps, random } = options;
  const beyond = new Set(lay.placed.filter(({ id, at }) => endOf(task, id, at.x) > lengthAtHand).map(({ id }) => id));
  const pieces = task.toLay.filter(({ id }) => !id.includes('/'));
  const isBeyond = ({ id }: ToLay) => Number(beyond.has(id) || beyond.has(otherHand(id)));
  const area = ({ outline }: ToLay) => Math.abs(ringArea(outline));
  pieces.sort((a, b) => isBeyond(b) - isBeyond(a) || area(b) - area(a));
  const joins = SHARES.flatMap((share) =>
    pieces.flatMap((piece) => {
      const box = boxOfPoints(piece.outline);
      const piecing = box && piecedAt(piece, box.minY + share * (box.maxY - box.minY), allowance);
      return piecing ? [{ piecing, pieced: piecedTask(task, { id: piece.id, at: piecing.at, allowance }) }] : [];
    }),
  );
  for (const share of ROUNDS) {
    for (const { piecing, pieced } of joins) {
      const found = laidFor(pieced, { steps: Math.ceil(share * steps), random, until: lengthAtHand });
      if (found && found.length <= lengthAtHand) return { piecing, task: pieced, lay: found };
    }
  }
  return undefined;
}

/** The furthest a piece may reach: its longest side from where its box begins. */
function endOf(task: LayTask, id: string, from: number): number {
  const box = boxOfPoints(task.toLay.find((piece) => piece.id === id)?.outline ?? []);
  return box ? from + Math.max(box.maxX - box.minX, box.maxY - box.minY) : from;
}

/**
 * The join as a line across a part of a piece, grain along x as the outline has it; `undefined` for what is no part of
 * that join.
 */
export function joinLine(part: Pick<ToLay, 'id' | 'outline'>, joins: readonly PieceJoin[]): [Point, Point] | undefined {
  const own = part.id.replace(/\/pieced$/, '');
  const join = joins.find(({ id }) => own === id || own === otherHand(id));
  if (!join) return undefined;
  const level = own === join.id ? join.at : -join.at;
  const crossed = part.outline.flatMap((from, i) => {
    const to = part.outline[(i + 1) % part.outline.length] as Point;
    if (from.y < level === to.y < level) return [];
    return [from.x + ((level - from.y) / (to.y - from.y)) * (to.x - from.x)];
  });
  if (crossed.length < 2) return undefined;
  return [
    { x: Math.min(...crossed), y: level },
    { x: Math.max(...crossed), y: level },
  ];
}

function leastArea({ parts }: Piecing): number {
  // To whole square millimetres: equal parts stay in their order.
  return Math.round(Math.min(...parts.map((part) => Math.abs(ringArea(part)))));
}

function partOf(outline: Ring, band: Ring): Ring | undefined {
  const parts = commonAreas([outline], [band]);
  if (parts.kind === 'unsure') return undefined;
  const rings = parts.rings.filter((ring) => Math.abs(ringArea(ring)) > NOTHING);
  return rings.length === 1 ? rings[0] : undefined;
}

function heightOf(ring: Ring): number {
  const box = boxOfPoints(ring);
  return box ? box.maxY - box.minY : 0;
}
