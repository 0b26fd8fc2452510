import type { Garment, Ring } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import { type EdgeRef, type Seam, seamOfEdge } from '../garment/seam';
import { withPiece } from '../garment/with-piece';
import { nearestOnPath, pathEnd, pathLength, pathStart } from '../geometry/path';
import type { Point } from '../geometry/point';
import { APART } from '../shaping/hold-course';
import { takeIn } from '../shaping/take-in';
import { girthsOf, ringPieces } from './round-body';
import { takeInSeam } from './take-in-seam';

/** Where and by how much a seam is let out so that a girth comes to what is wanted. */
export interface LetOut {
  readonly edge: EdgeRef;
  /** mm along the edge, where the level crosses it. */
  readonly along: number;
  /** How much there (mm): of this edge alone, or from both edges of its seam together. */
  readonly by: number;
  readonly of: 'edge' | 'seam';
}

/** A level line that ends within this of an edge (mm) ends on it. */
const ON_EDGE = 0.1;

/** Tried first (mm), to see what comes of it all the way round. */
const TRIED = 3;
const MOST_TRIES = 8;

/** A girth is as wanted within this (mm). */
const NEAR_ENOUGH = 0.05;

/** A whole number of steps is not added to for less than this share of one. */
const SPARE = 0.01;

/**
 * How the seam that is met most often at a level is let out there so that the pieces go round as wanted, in whole steps
 * (mm) of what can be marked. `undefined` where the girth is not short, or the level meets no seam an inch or more from
 * its ends.
 */
export function letOutAt(garment: Garment, ring: Ring, levelId: string, step: number): LetOut | undefined {
  const short = shortAt(garment, ring, levelId);
  const at = seamAt(garment, ring, levelId);
  if (short === undefined || short <= 0 || !at) return undefined;
  const { edge, along } = at;
  const seam = seamOfEdge(garment.seams, edge);
  const lacks = (by: number) => {
    const wider = letOutBy(garment, edge, { along, by, seam });
    return wider && shortAt(wider, ring, levelId);
  };
  // The level bends a little with the seam, so what one amount comes to foretells the next only nearly.
  let before = { by: 0, lacks: short };
  let by = TRIED;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const left = lacks(by);
    if (left === undefined || left >= before.lacks === by > before.by) return undefined;
    if (Math.abs(left) < NEAR_ENOUGH) break;
    const next = by + (left * (by - before.by)) / (before.lacks - left);
    before = { by, lacks: left };
    by = next;
  }
  return { edge, along, by: Math.ceil(by / step - SPARE) * step, of: seam ? 'seam' : 'edge' };
}

/** How much a girth lacks of what is wanted; `undefined` where it is not measured. */
function shortAt(garment: Garment, ring: Ring, levelId: string): number | undefined {
  const girth = girthsOf(garment, ring).find(({ level }) => level.id === levelId);
  return girth?.kind === 'measured' && girth.total > 0 ? girth.wanted - girth.total : undefined;
}

interface Wider {
  readonly along: number;
  readonly by: number;
  readonly seam: Seam | undefined;
}

function letOutBy(garment: Garment, edge: EdgeRef, { along, by, seam }: Wider): Garment | undefined {
  const pins = [{ along, by: -by }];
  if (seam) {
    const wider = takeInSeam(garment, seam, { pins });
    return 'why' in wider ? undefined : wider;
  }
  const piece = garment.pieces.find(({ id }) => id === edge.pieceId);
  const wider = piece && takeIn(piece, edge.edgeId, pins);
  return !wider || 'why' in wider ? undefined : withPiece(garment, edge.pieceId, () => wider);
}

/** The seam the level meets: that which comes most often round the body, of those the one met furthest from its ends. */
function seamAt(garment: Garment, ring: Ring, levelId: string) {
  const girth = girthsOf(garment, ring).find(({ level }) => level.id === levelId);
  const worn = ringPieces(garment, ring);
  const met = (girth?.pieces ?? []).flatMap(({ pieceId, times, line }) => {
    const piece = worn.find(({ piece: { id } }) => id === pieceId)?.piece;
    const [first, last] = [line?.runs[0], line?.runs.at(-1)];
    if (!piece || !first || !last) return [];
    const { edges } = outlineOf(piece);
    return [pathStart(first), pathEnd(last)].flatMap((end: Point) =>
      edges.flatMap((path, index) => {
        const edge = piece.edges[index];
        if (edge?.role !== 'seam') return [];
        const { along, distance } = nearestOnPath(path, end);
        const room = Math.min(along, pathLength(path) - along);
        return distance <= ON_EDGE && room >= APART ? [{ edge: { pieceId, edgeId: edge.id }, along, times, room }] : [];
      }),
    );
  });
  return met.toSorted((a, b) => b.times - a.times || b.room - a.room)[0];
}
