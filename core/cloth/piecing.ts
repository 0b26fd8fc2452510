/**
 * Piecing: where a piece does not fit, it is cut in two along the grain and joined by a seam, as narrow cloth has always
 * been made to do.
 */
import { boxOfPoints } from '../geometry/bounds';
import { type Ring, ringArea } from '../geometry/polygon';
import { commonAreas } from '../geometry/polygon-boolean';
import { laidFor } from './lay-search';
import type { Lay, LayTask, ToLay } from './lay-task';
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

/** Shares of a piece's width at which a join is tried, the narrowest piecing first. */
const SHARES = [0.2, 0.8, 0.35, 0.65, 0.5];

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

/** The joins that bring a piece too wide for the cloth onto it: the widest first part and the widest last part. */
export function joinsForWidth(piece: Pick<ToLay, 'id' | 'outline'>, across: number, allowance: number): Piecing[] {
  const box = boxOfPoints(piece.outline);
  if (!box || box.maxY - box.minY <= across) return [];
  const levels = [box.minY + across - allowance, box.maxY - across + allowance];
  return levels.flatMap((at) => {
    const piecing = piecedAt(piece, at, allowance);
    const fits = piecing?.parts.every((part) => heightOf(part) <= across + 1e-6);
    return piecing && fits ? [piecing] : [];
  });
}

/** The task with a piece laid as its two parts. What was pinned of that piece is free again. */
export function piecedTask(task: LayTask, piecing: Piecing): LayTask {
  const { id } = piecing;
  const toLay = task.toLay.flatMap((piece) => (piece.id === id ? piecedParts(piece, piecing) : [piece]));
  return { ...task, toLay, pinned: (task.pinned ?? []).filter((pin) => pin.id !== id) };
}

/** What is laid of a piece that is joined: the first part as the piece itself, on the fold if it was, and the second free. */
export function piecedParts(piece: ToLay, { parts: [first, second] }: Piecing): [ToLay, ToLay] {
  const { onFold: _, ...free } = piece;
  return [
    { ...piece, outline: first },
    { ...free, id: `${piece.id}/pieced`, outline: second },
  ];
}

/**
 * A join that makes a lay fit into the length at hand: pieces that lie beyond the end are tried, the largest first, each
 * joined at a few levels, and all laid anew for `steps` steps. `undefined` where none of these will do.
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
  const pieces = task.toLay.filter(({ id }) => beyond.has(id));
  pieces.sort((a, b) => Math.abs(ringArea(b.outline)) - Math.abs(ringArea(a.outline)));
  for (const piece of pieces) {
    const box = boxOfPoints(piece.outline);
    if (!box) continue;
    for (const share of SHARES) {
      const piecing = piecedAt(piece, box.minY + share * (box.maxY - box.minY), allowance);
      if (!piecing) continue;
      const pieced = piecedTask(task, piecing);
      const found = laidFor(pieced, { steps, random, until: lengthAtHand });
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
