/** From a garment's pieces and a cloth to what is laid on what, for one cloth or for several widths and grains side by side. */
import type { Piece } from '../garment/piece';
import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';
import { type Cloth, type ClothGround, groundOf } from './cloth';
import type { LayTask, Placed, ToLay } from './lay-task';
import { type LaidGrain, type LayingChoice, type PieceToLay, pieceToLay } from './piece-to-lay';
import { joinedParts } from './piecing';
import { outlineInStance } from './stance-outline';
import { type Strip, stripToLay } from './strip-to-lay';

/** Everything that is cut from one cloth. */
export interface FromCloth {
  readonly pieces: readonly Piece[];
  readonly strips: readonly Strip[];
}

/** A piece that goes across the cloth in no stance it may take. */
export interface TooWide {
  readonly kind: 'too-wide';
  readonly id: string;
  /** The least it takes across the cloth, and what there is. */
  readonly needs: number;
  readonly across: number;
}

export type ClothRefusal = Exclude<ClothGround, { kind: 'ground' }> | Exclude<PieceToLay, { kind: 'to-lay' }> | TooWide;

/** What is laid on a cloth, or everything that stands against it. */
export type ClothTask =
  | {
      readonly kind: 'task';
      readonly task: LayTask;
      /** The length at hand as the cloth lies. */
      readonly lengthAtHand: number | undefined;
      /** Pieces and strips cut more than wanted because cloth lies double, by id. */
      readonly spare: ReadonlyMap<string, number>;
    }
  | { readonly kind: 'cannot-lay'; readonly reasons: readonly ClothRefusal[] };

/** What is beyond the width by less than this still goes: it is rounding, in mm. */
const ROUNDING = 1e-6;

/** Makes the laying of pieces and strips on a cloth; guide pieces are left out. */
export function clothTask(
  { pieces, strips }: FromCloth,
  cloth: Cloth,
  choice: LayingChoice,
  pinned: readonly Placed[] = [],
): ClothTask {
  const made = groundOf(cloth);
  if (made.kind !== 'ground') return { kind: 'cannot-lay', reasons: [made] };
  const reasons: ClothRefusal[] = [];
  const toLay: ToLay[] = [];
  const spare = new Map<string, number>();
  for (const piece of pieces) {
    if (piece.use === 'guide') continue;
    const entry = pieceToLay(piece, cloth, choice);
    if (entry.kind !== 'to-lay') reasons.push(entry);
    else {
      toLay.push(...entry.entries);
      if (entry.spare > 0) spare.set(piece.id, entry.spare);
    }
  }
  const layers = cloth.folded === 'open' || cloth.shape ? 1 : 2;
  // Each piece is matched at the end its grain runs to; of its other hand and its other copies that is the same place.
  if (made.ground.repeat) {
    toLay.push(...toLay.splice(0).map((piece) => ({ ...piece, match: endOfGrain(piece.outline) })));
  }
  for (const strip of strips) {
    const entry = stripToLay(strip, layers);
    toLay.push(entry);
    if (entry.count * layers > strip.count) spare.set(strip.id, entry.count * layers - strip.count);
  }
  const { pieced = [] } = choice;
  if (pieced.length > 0) toLay.push(...toLay.splice(0).flatMap((one) => joinedParts(one, pieced)));
  const { across } = made.ground;
  reasons.push(...toLay.flatMap((piece) => tooWide(piece, across)));
  if (reasons.length > 0) return { kind: 'cannot-lay', reasons };
  return { kind: 'task', task: { ground: made.ground, toLay, pinned }, lengthAtHand: made.lengthAtHand, spare };
}

function endOfGrain(outline: Ring): Point {
  return outline.reduce((end, point) => (point.x > end.x ? point : end));
}

function tooWide({ id, outline, stances }: ToLay, across: number): TooWide[] {
  const needs = Math.min(...stances.map((stance) => boxOfPoints(outlineInStance(outline, stance))?.maxY ?? 0));
  return needs > across + ROUNDING ? [{ kind: 'too-wide', id, needs, across }] : [];
}

/** One of several ways to lay the same things. */
export interface ClothVariant {
  readonly width: number;
  readonly grain: LaidGrain;
  readonly made: ClothTask;
}

/** The same pieces on each width and each grain, to be laid and compared. Flaws and remnants are left out of account. */
export function clothVariants(
  from: FromCloth,
  cloth: Cloth,
  choice: LayingChoice,
  { widths, grains }: { readonly widths: readonly number[]; readonly grains: readonly LaidGrain[] },
): ClothVariant[] {
  const { shape: _, ...straight } = cloth;
  return widths.flatMap((width) =>
    grains.map((grain) => ({
      width,
      grain,
      made: clothTask(from, { ...straight, width, flaws: [] }, { ...choice, grain }),
    })),
  );
}
