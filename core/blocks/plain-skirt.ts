import type { Dart, Piece } from '../garment/piece';
import type { Point } from '../geometry/point';
import { move, quarterTurn } from '../geometry/point';
import { type ArcRun, arcPlace, reverseRun, squareEndedShape } from './arc-run';
import type { DraftOptions } from './draft-names';
import { draftedPiece } from './drafted-piece';
import { type Gore, gore, goreSide, type NoGore } from './gored-skirt';
import { laidBeside } from './lay-beside';

/** Girths are all the way round, ease included; lengths are down the centre (mm). */
export interface PlainSkirtSizes {
  readonly waist: number;
  readonly hip: number;
  readonly hipDepth: number;
  /** The hem all the way round; as wide as the hip unless said. */
  readonly hem?: number;
  readonly length: number;
}

/** A quarter of the skirt, its centre line from (0, 0) straight down, its side to the right. */
export interface PlainSkirtQuarter extends Omit<Gore, 'kind'> {
  /** With their places along the waist from the centre. */
  readonly darts: readonly Omit<Dart, 'id' | 'edgeId'>[];
}

export interface PlainSkirt {
  readonly kind: 'plain-skirt';
  readonly front: PlainSkirtQuarter;
  readonly back: PlainSkirtQuarter;
}

/** Of what a quarter narrows from hip to waist the side seam takes a third, the darts the rest (common practice). */
const SIDE_SHARE = 1 / 3;

/** The back takes three parts of the darts to the front's two: the seat is rounder than the front (common practice). */
const BACK_SHARE = 3 / 5;

/** A dart narrower than a quarter of an inch is left to the side seam; none is wider than 1 1/4 in (common practice). */
const NARROWEST_DART = 25.4 / 4;
const WIDEST_DART = 25.4 * 1.25;

/** Darts 12 cm long behind and 10 cm before (WikiEducator, Handout for drafting skirt block), on a short hip less. */
const BACK_DART = { long: 120, most: 0.75 };
const FRONT_DART = { long: 100, most: 0.6 };

/**
 * A plain skirt of two quarters on a cone from waist to hip, which meets the centre and the side squarely. The side seam
 * and one or two darts a quarter take up what the hip has more than the waist; a waist larger than the hip has no darts
 * and a side that slopes the other way. The two sides are one line. The waist is one even curve with the darts open.
 */
export function plainSkirt({ waist, hip, hipDepth, hem = hip, length }: PlainSkirtSizes): PlainSkirt | NoGore {
  if (!(waist > 0 && hip > 0 && hipDepth > 0 && hem > 0)) return { kind: 'no-gore', why: 'not-positive' };
  const narrowing = (hip - waist) / 4;
  const inDarts = narrowing * (1 - SIDE_SHARE) * 2;
  const shares = [inDarts * (1 - BACK_SHARE), inDarts * BACK_SHARE] as const;
  const [frontDarts, backDarts] = shares[0] < NARROWEST_DART ? [0, 0] : shares;
  const widest = waist + 2 * (frontDarts + backDarts);
  const drawn = gore({ waist: widest, hip, hipDepth, hem, length, gores: 2 });
  if (drawn.kind === 'no-gore') return drawn;
  const { kind: _, ...quarter } = drawn;
  const withDarts = (takeUp: number, { long, most }: typeof BACK_DART) => ({
    ...quarter,
    darts: dartsOn(quarter.waist, takeUp, Math.min(long, hipDepth * most)),
  });
  return { kind: 'plain-skirt', front: withDarts(frontDarts, FRONT_DART), back: withDarts(backDarts, BACK_DART) };
}

/** Darts that share a take-up evenly along a run, each straight down from the middle of its mouth. */
function dartsOn(run: ArcRun, takeUp: number, long: number): Omit<Dart, 'id' | 'edgeId'>[] {
  const count = Math.ceil(takeUp / WIDEST_DART);
  return Array.from({ length: count }, (_, i) => {
    const along = (run.length * (i + 1)) / (count + 1);
    return { along, width: takeUp / count, point: below(run, along, long) };
  });
}

function below(run: ArcRun, along: number, deep: number): Point {
  const { point, direction } = arcPlace(run, along);
  return move(point, quarterTurn(direction), deep);
}

/** Front on the fold and back as a pair with a seam down its centre, notched at the hip: once before, twice behind. */
export function plainSkirtPieces(sizes: PlainSkirtSizes, { newId, nameOf }: DraftOptions): Piece[] | NoGore {
  const draft = plainSkirt(sizes);
  if (draft.kind === 'no-gore') return draft;
  const { hipDepth, length } = sizes;
  const piece = (quarter: PlainSkirtQuarter, which: 'front' | 'back') => {
    const notches = [{ along: hipDepth, count: 1 as const }];
    const centre =
      which === 'front'
        ? ({ role: 'fold' } as const)
        : ({
            role: 'seam',
            name: nameOf('centre-back-seam'),
            notches: [{ along: length - hipDepth, count: 2 }],
          } as const);
    return draftedPiece({
      newId,
      name: nameOf(which),
      cut: which === 'front' ? { how: 'fold', count: 1 } : { how: 'pair', count: 2 },
      grain: {
        from: { x: quarter.hipPoint.x / 2, y: hipDepth },
        to: { x: quarter.hipPoint.x / 2, y: hipDepth + (length - hipDepth) * 0.8 },
      },
      edges: [
        { from: quarter.waist.start, role: 'waist', shape: squareEndedShape(quarter.waist), darts: quarter.darts },
        {
          from: quarter.waistCorner,
          role: 'seam',
          name: nameOf('side-seam'),
          shape: goreSide({ kind: 'gore', ...quarter }, hipDepth),
          notches,
        },
        { from: quarter.hemCorner, role: 'hem', shape: squareEndedShape(reverseRun(quarter.hem)) },
        { from: quarter.hem.start, ...centre },
      ],
    });
  };
  return laidBeside([piece(draft.front, 'front'), piece(draft.back, 'back')]);
}
