import { outlineOf } from '../garment/outline';
import type { EdgeShape, Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import { move, type Point, unit, vectorBetween } from '../geometry/point';
import { selfCrossings } from '../geometry/self-crossing';
import { bothHalves, reverseRun, squareEndedShape } from './arc-run';
import type { DraftOptions } from './draft-names';
import type { DraftQuestion } from './draft-question';
import { type DraftedEdge, draftedPiece } from './drafted-piece';
import {
  type GoreGirths,
  type GoreRule,
  type GoreShare,
  goreShares,
  type HemAnswer,
  type NoGoreShares,
} from './gore-shares';
import { gore, goreSide, type NoGore } from './gored-skirt';
import { laidBeside } from './lay-beside';

/** Girths all the way round with their ease, and the lengths the body asks for from waist to hem (mm). */
export interface SharedGoreSizes extends GoreGirths {
  readonly hipDepth: number;
  readonly lengths: { readonly front: number; readonly side: number; readonly back: number };
}

export interface SharedGores {
  readonly kind: 'shared-gores';
  readonly pieces: readonly Piece[];
  readonly questions: readonly DraftQuestion[];
}

/** Lengths of edges come out right to this many mm. */
const RIGHT = 0.005;
const MOST_TRIES = 60;

/**
 * A gored skirt by one of the printed rules: each gore on two cones about its own middle, its waist rising by the
 * difference of its two lengths and square to both its edges; the correction is made at the top only (Ella A. Bennett,
 * The Perfect Dressmaking System, 1914). The lengths go in even steps from front to side and on to back. Notches at the
 * hip: one on the first seam from the front, two on the next, three on those behind.
 */
export function sharedGores(
  rule: GoreRule,
  sizes: SharedGoreSizes,
  options: DraftOptions & { readonly hem?: HemAnswer },
): SharedGores | NoGore | NoGoreShares {
  const { lengths, hipDepth } = sizes;
  if (!(hipDepth > 0)) return { kind: 'no-gore', why: 'not-positive' };
  if (!(Math.min(lengths.front, lengths.side, lengths.back) > hipDepth))
    return { kind: 'no-gore', why: 'hip-below-hem' };
  const shares = goreShares(rule, sizes, options.hem);
  if (shares.kind === 'no-gore-shares') return shares;
  const { gores } = shares;
  const pieces: Piece[] = [];
  for (const [index, share] of gores.entries()) {
    const [front, back] = [lengthAt(lengths, index / gores.length), lengthAt(lengths, (index + 1) / gores.length)];
    const isLast = index === gores.length - 1;
    // A back panel has its fold behind, and is drawn from there.
    const wanted = isLast && share.drawn === 'half' ? { left: back, right: front } : { left: front, right: back };
    // The hip is level over the floor, so that the notches of two gores meet.
    const hipUp = lengths.front - hipDepth;
    const notches = { left: hipUp, right: wanted.right - hipUp };
    const place = { share, hipDepth: wanted.left - hipUp, notches, index, isLast };
    const made = goreOfLengths(place, { ...wanted, waist: share.waist, hem: share.hem }, options);
    if (!made || selfCrossings(outlineOf(made).whole).length > 0) {
      return { kind: 'no-gore-shares', why: 'share-left-over' };
    }
    pieces.push(made);
  }
  return { kind: 'shared-gores', pieces: laidBeside(pieces), questions: shares.questions };
}

/** The length at a share of the way from centre front to centre back. */
function lengthAt({ front, side, back }: SharedGoreSizes['lengths'], share: number): number {
  return share <= 0.5 ? front + (side - front) * 2 * share : side + (back - side) * (2 * share - 1);
}

interface GorePlace {
  readonly share: GoreShare;
  readonly hipDepth: number;
  /** The hip notches along the edges as they are drawn, the left one upwards. */
  readonly notches: { readonly left: number; readonly right: number };
  /** Counted from the front. */
  readonly index: number;
  readonly isLast: boolean;
}

interface EdgeLengths {
  readonly waist: number;
  readonly left: number;
  readonly right: number;
  readonly hem: number;
}

/** The gore with edges of those lengths: drawn, measured, and drawn again until the bends of its edges are allowed for. */
function goreOfLengths(place: GorePlace, wanted: EdgeLengths, options: DraftOptions): Piece | undefined {
  let aim = wanted;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const made = drawnGore(place, aim, { newId: () => '', nameOf: () => '' });
    if (!made) return undefined;
    const [waist = 0, right = 0, hem = 0, left = 0] = outlineOf(made).edges.map((path) => pathLength(path));
    const off = {
      waist: wanted.waist - waist,
      left: wanted.left - left,
      right: wanted.right - right,
      hem: wanted.hem - hem,
    };
    if (Math.max(...Object.values(off).map(Math.abs)) < RIGHT) return drawnGore(place, aim, options);
    aim = {
      waist: aim.waist + off.waist,
      left: aim.left + off.left,
      right: aim.right + off.right,
      hem: aim.hem + off.hem,
    };
  }
  return undefined;
}

function drawnGore(
  { share, hipDepth, notches, index, isLast }: GorePlace,
  aim: EdgeLengths,
  options: DraftOptions,
): Piece | undefined {
  const { newId, nameOf } = options;
  const isHalf = share.drawn === 'half';
  const times = isHalf ? 2 : 1;
  const girths = { waist: aim.waist * times, hip: share.hip * times, hem: aim.hem * times };
  const drawn = gore({ ...girths, hipDepth, length: aim.left, gores: 1 });
  if (drawn.kind === 'no-gore') return undefined;
  const upwards = unit(vectorBetween(drawn.hipPoint, drawn.waistCorner)) ?? { dx: 0, dy: -1 };
  const raised = move(drawn.waistCorner, upwards, aim.right - aim.left);
  const side = goreSide(drawn, hipDepth);
  const seam = (number: number, along: number) => ({
    role: 'seam' as const,
    name: number > index && isLast && !isHalf ? nameOf('centre-back-seam') : nameOf('gore-seam', number),
    notches: [{ along, count: Math.min(number, 3) as 1 | 2 | 3 }],
  });
  const before = index;
  const after = index + 1;
  const rightEdge: DraftedEdge = {
    from: raised,
    shape: side,
    ...seam(isHalf && isLast ? before : after, notches.right),
  };
  const leftEdge: DraftedEdge = isHalf
    ? { from: drawn.hem.start, role: 'fold' }
    : { from: mirrored(drawn.hemCorner), shape: mirroredUpwards(side), ...seam(before, notches.left) };
  const grainAt = isHalf ? drawn.hipPoint.x / 2 : 0;
  return draftedPiece({
    newId,
    name: share.place === 'side' ? nameOf('side-gore', index) : nameOf(share.place),
    cut: isHalf ? { how: 'fold', count: 1 } : { how: 'pair', count: 2 },
    grain: { from: { x: grainAt, y: hipDepth }, to: { x: grainAt, y: hipDepth + (aim.left - hipDepth) * 0.8 } },
    edges: [
      {
        from: isHalf ? drawn.waist.start : mirrored(drawn.waistCorner),
        role: 'waist',
        shape: { kind: 'curve', through: [], leaves: 'square', meets: 'square' },
      },
      rightEdge,
      {
        from: drawn.hemCorner,
        role: 'hem',
        shape: squareEndedShape(reverseRun(isHalf ? drawn.hem : bothHalves(drawn.hem))),
      },
      leftEdge,
    ],
  });
}

function mirrored({ x, y }: Point): Point {
  return { x: -x, y };
}

function mirroredUpwards(shape: EdgeShape): EdgeShape {
  return shape.kind === 'curve' ? { ...shape, through: shape.through.map(mirrored).reverse() } : shape;
}
