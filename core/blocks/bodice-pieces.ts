import { outlineOf } from '../garment/outline';
import type { EdgeShape, Piece } from '../garment/piece';
import { nearestOnPath } from '../geometry/path';
import { distance, move, type Point, unit, vectorBetween } from '../geometry/point';
import { reverseRun, squareEndedShape } from './arc-run';
import type { Bodice, BodiceHalf } from './bodice';
import type { DartedSide } from './bodice-lines';
import type { DraftOptions } from './draft-names';
import { type DraftedEdge, draftedPiece } from './drafted-piece';
import { laidBeside } from './lay-beside';

/** Where a bodice opens: down the middle of its back or of its front; the other is on the fold. */
export interface BodiceOpening {
  readonly opens: 'back' | 'front';
}

/** Points that hold a side straight on both sides of a dart, so far from its mouth (mm). */
const HELD = [3, 12] as const;

/**
 * The bodice as pieces, back and front beside one another. Their lower edges are seams, so that a skirt can be sewn to
 * them; notches where the bust girth crosses the sides and half way up the armholes: one before, two behind.
 */
export function bodicePieces(draft: Bodice, { opens }: BodiceOpening, options: DraftOptions): Piece[] {
  const { front, back } = draft;
  const sideNotch = front.sideDart ? undefined : draft.side - draft.bustUpSide;
  const backPiece = half(back, { draft, which: 'back', opens: opens === 'back', sideNotch }, options);
  const frontPiece = half(front, { draft, which: 'front', opens: opens === 'front', sideNotch }, options);
  return laidBeside([backPiece, front.sideDart ? withSideDart(frontPiece, front.sideDart, options.newId) : frontPiece]);
}

interface HalfMaking {
  readonly draft: Bodice;
  readonly which: 'back' | 'front';
  readonly opens: boolean;
  readonly sideNotch: number | undefined;
}

function half(
  lines: BodiceHalf,
  { draft, which, opens, sideNotch }: HalfMaking,
  { newId, nameOf }: DraftOptions,
): Piece {
  const { centreNeck, sideNeck, shoulderTip, acrossPoint, underarm, waist, sideWaist, waistDart } = lines;
  const dart = waistDart && { ...waistDart, along: waist.length - waistDart.along };
  const sideDart = which === 'front' ? draft.front.sideDart : undefined;
  const edges: DraftedEdge[] = [
    { from: centreNeck, role: 'finished', shape: squareCurve([]) },
    { from: sideNeck, role: 'seam', name: nameOf('shoulder-seam') },
    { from: shoulderTip, role: 'finished', shape: squareCurve([acrossPoint]) },
    {
      from: underarm,
      role: 'seam',
      name: nameOf('side-seam'),
      ...(sideDart ? { shape: heldSide(underarm, sideDart, sideWaist) } : {}),
      ...(sideNotch === undefined ? {} : { notches: [{ along: sideNotch, count: 1 as const }] }),
    },
    {
      from: sideWaist,
      role: 'seam',
      name: nameOf('waist-seam'),
      shape: squareEndedShape(reverseRun(waist)),
      ...(dart ? { darts: [dart] } : {}),
    },
    { from: waist.start, role: opens ? 'opening' : 'fold' },
  ];
  const grainAt = acrossPoint.x / 2;
  return draftedPiece({
    newId,
    name: nameOf(which === 'back' ? 'bodice-back' : 'bodice-front'),
    cut: opens ? { how: 'pair', count: 2 } : { how: 'fold', count: 1 },
    grain: {
      from: { x: grainAt, y: acrossPoint.y },
      to: { x: grainAt, y: waist.start.y - (waist.start.y - acrossPoint.y) * 0.2 },
    },
    edges,
  });
}

function squareCurve(through: readonly Point[]): EdgeShape {
  return { kind: 'curve', through, leaves: 'square', meets: 'square' };
}

/** The side with its dart open: three straight stretches, held straight up to the ends of the mouth. */
function heldSide(underarm: Point, { mouth: [upper, lower] }: DartedSide, foot: Point): EdgeShape {
  const from = (end: Point, towards: Point, most: number) => {
    const way = unit(vectorBetween(end, towards)) ?? { dx: 0, dy: 0 };
    return HELD.filter((by) => by < most).map((by) => move(end, way, by));
  };
  const mouthHalf = distance(upper, lower) / 2;
  return {
    kind: 'curve',
    through: [
      ...from(upper, underarm, distance(upper, underarm)).reverse(),
      upper,
      ...from(upper, lower, mouthHalf),
      ...from(lower, upper, mouthHalf).reverse(),
      lower,
      ...from(lower, foot, distance(lower, foot)),
    ],
    leaves: 'free',
    meets: 'free',
  };
}

/** The dart put where the drawn side really passes the ends of its mouth. */
function withSideDart(piece: Piece, { mouth, dartPoint }: DartedSide, newId: () => string): Piece {
  const index = 3;
  const path = outlineOf(piece).edges[index] ?? [];
  const [upper, lower] = mouth.map((end) => nearestOnPath(path, end).along) as [number, number];
  const dart = {
    id: newId(),
    edgeId: piece.edges[index]?.id ?? '',
    along: (upper + lower) / 2,
    width: lower - upper,
    point: dartPoint,
  };
  return { ...piece, darts: [...piece.darts, dart] };
}
