import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withCorner, withEdge } from '../garment/with-piece';
import { pathAtLength, pathEnd, pathLength, pathStart, startTangent } from '../geometry/path';
import { dot, move, type Point, scaleVector, type TablePoint, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { selfCrossings } from '../geometry/self-crossing';
import { carryMarks, scaleMarks } from './carry-marks';
import { rootBetween } from './root';
import { cornerIndexAt, sideDownwards, sideIndexAt, type WaistEnd } from './side-of-waist';
import { type WaistCentre, waistAxis, waistCentre } from './waist-axis';

export interface RaisedWaist {
  readonly kind: 'raised-waist';
  /** The piece as it would be. */
  readonly piece: Piece;
  /** Stitch lengths of the waist edge, darts included, as it is and as it would be (mm). */
  readonly straightLength: number;
  readonly length: number;
}

export interface NoRaisedWaist {
  readonly kind: 'no-raised-waist';
  /** `off-the-side`: the side never comes to that height. */
  readonly why: 'no-waist-edge' | 'off-the-side' | 'crosses';
}

export interface RaisedWaistWish {
  readonly waistEdgeId: string;
  /** How far the seam corners stand above the line square to the centre through the waist as it is (mm). */
  readonly rise: number;
  /** How far the waist is lowered at the centre (mm); 0 unless said. */
  readonly centreDip?: number;
  readonly centre?: WaistCentre;
}

/** The axis of a waist without a centre line is taken over its first two inches. */
const AXIS_DEPTH = 50.8;

/** A side that leans more than this (its cosine, 75 degrees) cannot be followed up. */
const STEEPEST = Math.cos((75 * Math.PI) / 180);

/**
 * The waist drawn by a rise she types, as old books give it (1/4, 1/2, 3/4 in by the gore): the side runs on upwards in
 * its own direction, or is cut off, to that height, and the waist is curved square to centre and side. Its length is
 * what comes of it; nothing below the waist changes.
 */
export function raisedWaist(piece: Piece, wish: RaisedWaistWish): RaisedWaist | NoRaisedWaist {
  const index = edgeIndex(piece, wish.waistEdgeId);
  const waist = outlineOf(piece).edges[index];
  if (!waist || piece.edges[index]?.role !== 'waist') return { kind: 'no-raised-waist', why: 'no-waist-edge' };
  const centre = wish.centre ?? waistCentre(piece, index);
  const axis = waistAxis(piece, index, centre, AXIS_DEPTH);
  if (!axis) return { kind: 'no-raised-waist', why: 'no-waist-edge' };
  const heightOf = (point: Point) => -dot(vectorBetween(axis.origin, point), axis.down);
  let raised = piece;
  for (const end of centre === 'middle' ? (['before', 'after'] as const) : [otherEnd(centre)]) {
    const next = withRaisedSide(raised, index, end, { heightOf, rise: wish.rise });
    if (!next) return { kind: 'no-raised-waist', why: 'off-the-side' };
    raised = next;
  }
  const lowered = move(axis.origin, axis.down, wish.centreDip ?? 0);
  if (centre !== 'middle') {
    const cornerId = piece.corners[cornerIndexAt(piece, index, centre)]?.id ?? '';
    raised = withCorner(raised, cornerId, (corner) => ({ ...corner, at: lowered }));
  }
  const through = centre === 'middle' ? [lowered] : [];
  const shape = { kind: 'curve', through, leaves: 'square', meets: 'square' } as const;
  raised = withEdge(raised, wish.waistEdgeId, (edge) => ({ ...edge, shape }));
  const { edges, whole } = outlineOf(raised);
  if (selfCrossings(whole).length > 0) return { kind: 'no-raised-waist', why: 'crosses' };
  const [straightLength, length] = [pathLength(waist), pathLength(edges[index] ?? [])];
  return {
    kind: 'raised-waist',
    piece: scaleMarks(raised, wish.waistEdgeId, straightLength, length),
    straightLength,
    length,
  };
}

function otherEnd(end: WaistEnd): WaistEnd {
  return end === 'before' ? 'after' : 'before';
}

interface Height {
  readonly heightOf: (point: Point) => number;
  readonly rise: number;
}

function withRaisedSide(piece: Piece, index: number, end: WaistEnd, height: Height): Piece | undefined {
  const side = sideDownwards(piece, index, end);
  const edge = piece.edges[sideIndexAt(piece, index, end)];
  const corner = piece.corners[cornerIndexAt(piece, index, end)];
  if (!side || !edge || !corner) return undefined;
  const found = cornerAtHeight(side, height);
  if (!found) return undefined;
  const moved = withCorner(piece, corner.id, (before) => ({ ...before, at: found.at }));
  const shape =
    edge.shape.kind === 'straight' ? edge.shape : { ...edge.shape, through: throughFrom(edge.shape.through) };
  const led = withEdge(moved, edge.id, (before) => ({ ...before, shape }));
  return end === 'after' ? carryMarks(led, edge.id, (along) => along - found.cut) : led;

  /** A curve runs straight on from its old corner, which it still passes; cut short, it loses what lies above. */
  function throughFrom(through: readonly TablePoint[]): readonly TablePoint[] {
    const old = corner?.at;
    if (!found || !old || found.cut === 0) return through;
    if (found.cut > 0) return through.filter((point) => height.heightOf(point) < height.rise);
    return end === 'after' ? [old, ...through] : [...through, old];
  }
}

/** Where a side, run on upwards, stands at a height, and how much of it that cuts off; less than 0 is added. */
function cornerAtHeight(
  side: Path,
  { heightOf, rise }: Height,
): { readonly at: TablePoint; readonly cut: number } | undefined {
  const top = pathStart(side);
  const more = rise - heightOf(top);
  if (more >= 0) {
    const up = scaleVector(startTangent(side), -1);
    const climb = heightOf(move(top, up)) - heightOf(top);
    if (climb < STEEPEST) return more === 0 ? { at: top, cut: 0 } : undefined;
    return { at: move(top, up, more / climb), cut: -more / climb };
  }
  if (heightOf(pathEnd(side)) >= rise) return undefined;
  const cut = rootBetween((along) => heightOf(pathAtLength(side, along).point) - rise, 0, pathLength(side), 1e-6);
  return cut === undefined ? undefined : { at: pathAtLength(side, cut).point, cut };
}
