/**
 * Everything about the shapes of a lay that is worked out once: each piece in each of its stances as a shape, and for each
 * two shapes their no-fit area, made when it is first asked for and kept in plain numbers for the search.
 */
import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';
import { convexParts } from './convex-parts';
import type { LayTask, Stance, ToLay } from './lay-task';
import { matchPhase } from './matched-place';
import { noFit } from './no-fit';
import { type PackedNoFit, packedNoFit } from './no-fit-cells';
import { outlineInStance } from './stance-outline';

/** A piece in one of its stances, the top left of its box at the origin; or a place where nothing may lie. */
export interface LayShape {
  readonly ring: Ring;
  readonly parts: readonly Ring[];
  readonly wide: number;
  readonly high: number;
  readonly area: number;
  /** 1 where it must lie on the edge of the cloth at x = 0 or y = 0, else 0. */
  readonly heldX: 0 | 1;
  readonly heldY: 0 | 1;
  /** Its place must be this much beyond a multiple of the repeat. */
  readonly phaseX: number;
  readonly phaseY: number;
}

/** One thing that lies on the cloth, and the shapes it may take. */
export interface LayItem {
  readonly id: string;
  readonly copy: number;
  readonly shapes: readonly number[];
  /** It never moves: a pinned piece, or a place kept free. */
  readonly fixed?: { readonly shape: number; readonly at: Point };
  /** A place kept free is no piece of a lay. */
  readonly isKept: 0 | 1;
}

export interface LayTable {
  readonly across: number;
  readonly repeatX: number;
  readonly repeatY: number;
  readonly shapes: readonly LayShape[];
  /** The same sizes again by shape, in plain numbers. */
  readonly wide: Float64Array;
  readonly high: Float64Array;
  readonly items: readonly LayItem[];
  /** The area of all pieces, places kept free not counted. */
  readonly area: number;
  /** No-fit areas by `stays * shapes + moves`. */
  readonly noFits: (PackedNoFit | undefined)[];
  /** What has been worked out so far, in units of about a microsecond: by it a step knows when to end. */
  work: number;
}

/** A no-fit area costs so much for each corner of the two shapes. */
const WORK_A_CORNER = 15;

/** The table of a lay: shapes and items now, no-fit areas when asked for. Pieces come before the places kept free. */
export function layTable({ ground, toLay, pinned = [] }: LayTask): LayTable {
  const shapes: LayShape[] = [];
  const items: LayItem[] = [];
  for (const piece of toLay) {
    const numbers = piece.stances.map((stance) => shapes.push(shapeOf(piece, stance)) - 1);
    for (let copy = 0; copy < piece.count; copy++) {
      const pin = pinned.find((one) => one.id === piece.id && one.copy === copy);
      const shape = pin && numbers[pin.stance];
      const fixed = pin && shape !== undefined ? { fixed: { shape, at: pin.at } } : {};
      items.push({ id: piece.id, copy, shapes: numbers, isKept: 0, ...fixed });
    }
  }
  const area = items.reduce((sum, { shapes: [first] }) => sum + (shapes[first as number] as LayShape).area, 0);
  for (const ring of ground.kept) {
    const box = boxOfPoints(ring);
    if (!box || ringArea(ring) === 0) continue;
    const shape = shapes.push(shapeOf({ outline: ring }, { turn: 0 })) - 1;
    items.push({ id: '', copy: 0, shapes: [shape], isKept: 1, fixed: { shape, at: { x: box.minX, y: box.minY } } });
  }
  return {
    across: ground.across,
    repeatX: ground.repeat?.along ?? 0,
    repeatY: ground.repeat?.across ?? 0,
    shapes,
    wide: Float64Array.from(shapes, ({ wide }) => wide),
    high: Float64Array.from(shapes, ({ high }) => high),
    items,
    area,
    noFits: new Array<PackedNoFit | undefined>(shapes.length * shapes.length).fill(undefined),
    work: 0,
  };
}

function shapeOf(piece: Pick<ToLay, 'outline' | 'onFold' | 'match'>, stance: Stance): LayShape {
  const ring = outlineInStance(piece.outline, stance);
  const box = boxOfPoints(ring);
  const phase = matchPhase(piece, stance);
  return {
    ring,
    parts: convexParts(ring),
    wide: box?.maxX ?? 0,
    high: box?.maxY ?? 0,
    area: Math.abs(ringArea(ring)),
    heldX: piece.onFold === 'across' ? 1 : 0,
    heldY: piece.onFold === 'along' ? 1 : 0,
    phaseX: phase?.x ?? 0,
    phaseY: phase?.y ?? 0,
  };
}

/** The no-fit area of shape `stays` and shape `moves`, as moves of the one's box corner from the other's. */
export function noFitOf(table: LayTable, stays: number, moves: number): PackedNoFit {
  const count = table.shapes.length;
  const known = table.noFits[stays * count + moves];
  if (known) return known;
  const [one, other] = [table.shapes[stays] as LayShape, table.shapes[moves] as LayShape];
  const rings = noFit(one.ring, other.ring);
  const convex = one.parts.length * other.parts.length === 1 ? 1 : 0;
  table.work += WORK_A_CORNER * (one.ring.length + other.ring.length);
  const packed = packedNoFit(rings, convex);
  table.noFits[stays * count + moves] = packed;
  if (stays !== moves) table.noFits[moves * count + stays] = packedNoFit(rings.map(opposite), convex);
  return packed;
}

function opposite(ring: Ring): Point[] {
  return ring.map(({ x, y }) => ({ x: -x, y: -y }));
}
