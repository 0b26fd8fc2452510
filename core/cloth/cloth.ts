import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';
import { areasWithout, commonAreas } from '../geometry/polygon-boolean';
import type { LayGround } from './lay-task';

/** How cloth lies on the table: opened out, selvedges together, or cut ends together. */
export type ClothFold = 'open' | 'lengthwise' | 'crosswise';

/** A length of cloth. Places on it are measured opened out: x from its cut end, y from the inside of one selvedge. */
export interface Cloth {
  readonly id: string;
  readonly name: string;
  /** From selvedge to selvedge, both counted. */
  readonly width: number;
  /** Lost on each side to the selvedge. */
  readonly selvedge: number;
  /** How much of it there is, if that is settled. */
  readonly atHand?: number;
  readonly folded: ClothFold;
  readonly nap: 'none' | 'one-way';
  /** Stripes or figures to match; 0 where it does not repeat. */
  readonly repeat?: { readonly along: number; readonly across: number };
  /** Places to keep clear of. */
  readonly flaws: readonly Ring[];
  /** A remnant or an opened seam's odd shape in place of a straight length; it is laid opened out. */
  readonly shape?: Ring;
}

/** Where pieces can be laid on a cloth, or why they cannot. */
export type ClothGround =
  | { readonly kind: 'ground'; readonly ground: LayGround; readonly lengthAtHand: number | undefined }
  /** On cloth folded crosswise the nap of one layer runs against the other's. */
  | { readonly kind: 'nap-against-itself' }
  | { readonly kind: 'no-width' }
  /** The areas of the remnant or the flaws could not be made out. */
  | { readonly kind: 'unsure-shape' };

/**
 * The ground of a cloth as it lies folded, and how long it is there (half the cloth, folded crosswise). The fold is at
 * y = 0 (lengthwise) or x = 0 (crosswise); a flaw counts on whichever layer it is. Folded crosswise without a length at
 * hand, a flaw is measured from the fold.
 */
export function groundOf(cloth: Cloth): ClothGround {
  const usable = cloth.width - 2 * cloth.selvedge;
  if (cloth.shape) return remnantGround(cloth, cloth.shape);
  if (!(usable > 0)) return { kind: 'no-width' };
  if (cloth.folded === 'crosswise' && cloth.nap === 'one-way') return { kind: 'nap-against-itself' };
  const repeat = cloth.repeat ? { repeat: cloth.repeat } : {};
  if (cloth.folded === 'open') {
    return { kind: 'ground', ground: { across: usable, kept: cloth.flaws, ...repeat }, lengthAtHand: cloth.atHand };
  }
  const lengthwise = cloth.folded === 'lengthwise';
  const at = lengthwise ? usable / 2 : (cloth.atHand ?? 0) / 2;
  const kept = foldedFlaws(cloth.flaws, lengthwise ? 'y' : 'x', at);
  if (!kept) return { kind: 'unsure-shape' };
  return {
    kind: 'ground',
    ground: { across: lengthwise ? usable / 2 : usable, kept, ...repeat },
    lengthAtHand: lengthwise || cloth.atHand === undefined ? cloth.atHand : cloth.atHand / 2,
  };
}

/** The length of opened-out cloth that a lay of this length takes. */
export function openedLength({ folded, shape }: Pick<Cloth, 'folded' | 'shape'>, length: number): number {
  return folded === 'crosswise' && !shape ? 2 * length : length;
}

/** The same flaws on cloth folded at `at`: those before the fold are turned over onto the rest. */
function foldedFlaws(flaws: readonly Ring[], axis: 'x' | 'y', at: number): Ring[] | undefined {
  const kept: Ring[] = [];
  for (const flaw of flaws) {
    const box = boxOfPoints(flaw);
    if (!box) continue;
    const [from, to] = [
      { x: box.minX - 1, y: box.minY - 1 },
      { x: box.maxX + 1, y: box.maxY + 1 },
    ];
    const before = axis === 'x' ? rectangle(from, { x: at, y: to.y }) : rectangle(from, { x: to.x, y: at });
    const after = axis === 'x' ? rectangle({ x: at, y: from.y }, to) : rectangle({ x: from.x, y: at }, to);
    for (const side of [before, after]) {
      // Of a flaw on one side of the fold nothing is left on the other.
      if (side === before ? from[axis] + 1 >= at : to[axis] - 1 <= at) continue;
      const part = commonAreas([flaw], [side]);
      if (part.kind === 'unsure') return undefined;
      const folded = (v: number) => (side === before ? at - v : v - at);
      const onto = ({ x, y }: Point) => (axis === 'x' ? { x: folded(x), y } : { x, y: folded(y) });
      kept.push(...part.rings.map((ring) => ring.map(onto)));
    }
  }
  return kept;
}

/** A remnant lies in the box round it; what it lacks of that box is kept free. */
function remnantGround(cloth: Cloth, shape: Ring): ClothGround {
  const box = boxOfPoints(shape);
  if (!box || box.maxY - box.minY <= 0) return { kind: 'no-width' };
  const corner = ({ x, y }: Point) => ({ x: x - box.minX, y: y - box.minY });
  const size = { x: box.maxX - box.minX, y: box.maxY - box.minY };
  const lacking = areasWithout([rectangle({ x: 0, y: 0 }, size)], [shape.map(corner)]);
  if (lacking.kind === 'unsure') return { kind: 'unsure-shape' };
  const kept = [...lacking.rings, ...cloth.flaws.map((flaw) => flaw.map(corner))];
  const repeat = cloth.repeat ? { repeat: cloth.repeat } : {};
  return { kind: 'ground', ground: { across: size.y, kept, ...repeat }, lengthAtHand: size.x };
}

function rectangle(from: Point, to: Point): Ring {
  return [from, { x: to.x, y: from.y }, to, { x: from.x, y: to.y }];
}
