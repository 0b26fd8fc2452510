import type { Mark } from '../drawing/drawing';
import type { Piece } from '../garment/piece';
import type { Motion } from '../garment/printed';
import { distance, type TablePoint } from '../geometry/point';
import { movedPoint, STAYS_PUT } from './moved-marks';
import { drawnBox } from './page-plan';

/** What the taped pages of a piece must measure (mm). */
export interface AssembledTotals {
  readonly grain: number | undefined;
  /** Between the outermost places of its lines. */
  readonly across: number;
  readonly down: number;
  /** Between the two corners of the stitch line that are furthest apart. */
  readonly diagonal: CornerToCorner;
}

export interface CornerToCorner {
  /** The numbers of the corners in the order of drawing, from 1. */
  readonly from: number;
  readonly to: number;
  readonly fromAt: TablePoint;
  readonly toAt: TablePoint;
  readonly length: number;
}

/** Lines that bound a piece; arrows and brackets do not. */
const BOUNDS = ['cut', 'stitch', 'fold'];

/**
 * The grain line, the whole width and height, and one diagonal: three different ways in which slips add up. `marks`
 * are its drawing as it lies on its sheets, turned and moved there by `motion`.
 */
export function assembledTotals(piece: Piece, marks: readonly Mark[], motion: Motion = STAYS_PUT): AssembledTotals {
  const box = drawnBox(marks.filter((mark) => mark.kind === 'stroke' && BOUNDS.includes(mark.line)));
  const [diagonal] = longestBetweenCorners(piece);
  if (!diagonal) throw new Error(`piece ${piece.id} has no corners`);
  return {
    grain: piece.grain ? distance(piece.grain.from, piece.grain.to) : undefined,
    across: box ? box.maxX - box.minX : 0,
    down: box ? box.maxY - box.minY : 0,
    diagonal: {
      ...diagonal,
      fromAt: movedPoint(motion, diagonal.fromAt),
      toAt: movedPoint(motion, diagonal.toAt),
    },
  };
}

/** Distances between corners, longest first; those that no edge joins come before the others. */
export function longestBetweenCorners({ corners }: Piece): CornerToCorner[] {
  const loose: CornerToCorner[] = [];
  const joined: CornerToCorner[] = [];
  corners.forEach((a, i) => {
    corners.slice(i + 1).forEach((b, k) => {
      const j = i + 1 + k;
      const isEdge = j === i + 1 || (i === 0 && j === corners.length - 1);
      (isEdge ? joined : loose).push({
        from: i + 1,
        to: j + 1,
        fromAt: a.at,
        toAt: b.at,
        length: distance(a.at, b.at),
      });
    });
  });
  const longestFirst = (a: CornerToCorner, b: CornerToCorner) => b.length - a.length;
  return [...loose.sort(longestFirst), ...joined.sort(longestFirst)];
}
