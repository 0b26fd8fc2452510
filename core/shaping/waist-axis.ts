import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { endTangent, pathAtLength, pathEnd, pathLength, pathStart, startTangent } from '../geometry/path';
import { dot, quarterTurn, scaleVector, type TablePoint, unit, type Vector, vectorBetween } from '../geometry/point';
import { levelLine } from './level-line';
import type { WaistEnd } from './side-of-waist';

/** What the shape of a waist is built about: the edge at one end of it as centre line, or its own middle. */
export type WaistCentre = WaistEnd | 'middle';

/** Where the shape is built from: a point of the waist, straight down the piece, and across it. */
export interface WaistAxis {
  readonly origin: TablePoint;
  readonly down: Vector;
  /** From the waist's start towards its end. */
  readonly across: Vector;
}

/** How far from a right angle (its cosine) a grain edge may stand to the waist: about a degree and a half of tracing. */
const NEARLY_SQUARE = Math.sin((1.5 * Math.PI) / 180);

/**
 * The centre line of a piece beside its waist: a fold, else an opening, else the one neighbour that is straight and
 * stands square to the waist (a centre seam, or the straight-grain edge of a gore); where neither or both do, the middle.
 */
export function waistCentre(piece: Piece, waistIndex: number): WaistCentre {
  for (const role of ['fold', 'opening'] as const) {
    for (const end of ['before', 'after'] as const) {
      if (beside(piece, waistIndex, end)?.role === role) return end;
    }
  }
  const before = isGrainEdge(piece, waistIndex, 'before');
  const after = isGrainEdge(piece, waistIndex, 'after');
  if (before === after) return 'middle';
  return before ? 'before' : 'after';
}

function beside(piece: Piece, waistIndex: number, end: WaistEnd) {
  return piece.edges[neighbourIndex(piece, waistIndex, end === 'before' ? -1 : 1)];
}

function isGrainEdge(piece: Piece, waistIndex: number, end: WaistEnd): boolean {
  if (beside(piece, waistIndex, end)?.shape.kind !== 'straight') return false;
  const { edges } = outlineOf(piece);
  const waist = edges[waistIndex];
  const side = edges[neighbourIndex(piece, waistIndex, end === 'before' ? -1 : 1)];
  if (!waist || !side) return false;
  const [one, other] =
    end === 'before' ? [startTangent(waist), endTangent(side)] : [endTangent(waist), startTangent(side)];
  return Math.abs(dot(one, other)) < NEARLY_SQUARE;
}

/**
 * The axis of a waist. By a centre line it stands on the corner there; in the middle it runs from the middle of the waist
 * to the middle of the level at `hipDepth`, so that a leaning gore is shaped about its own lean. `undefined` when the
 * waist or the centre line has no length.
 */
export function waistAxis(
  piece: Piece,
  waistIndex: number,
  centre: WaistCentre,
  hipDepth: number,
): WaistAxis | undefined {
  const { edges } = outlineOf(piece);
  const waist = edges[waistIndex];
  if (!waist) return undefined;
  const along = vectorBetween(pathStart(waist), pathEnd(waist));
  if (centre === 'middle') return axis(pathAtLength(waist, pathLength(waist) / 2).point, along, piece, hipDepth);
  const line = edges[neighbourIndex(piece, waistIndex, centre === 'before' ? -1 : 1)];
  if (!line || pathLength(line) === 0) return undefined;
  const down = centre === 'before' ? scaleVector(endTangent(line), -1) : startTangent(line);
  return {
    origin: centre === 'before' ? pathStart(waist) : pathEnd(waist),
    down,
    across: sameWay(quarterTurn(down), along),
  };
}

function axis(origin: TablePoint, along: Vector, piece: Piece, hipDepth: number): WaistAxis | undefined {
  const level = levelLine(piece, hipDepth)?.runs[0];
  const hipMiddle = level && pathAtLength(level, pathLength(level) / 2).point;
  const down = hipMiddle && unit(vectorBetween(origin, hipMiddle));
  return down && { origin, down, across: sameWay(quarterTurn(down), along) };
}

function sameWay(vector: Vector, as: Vector): Vector {
  return dot(vector, as) < 0 ? scaleVector(vector, -1) : vector;
}
