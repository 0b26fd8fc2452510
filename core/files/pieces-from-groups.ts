/** Pieces of a garment from the lines of a file. */

import { pieceFromTrace } from '../garment/new-piece';
import type { EdgeShape, Piece } from '../garment/piece';
import { signedArea } from '../geometry/path';
import { type Point, SAME_POINT } from '../geometry/point';
import type { Path } from '../geometry/segment';
import type { DrawnGroup } from './drawn-line';
import { type FileFinding, type FileReading, MOST_OUTLINES, type ReadPiece } from './file-reading';
import { type GroupRing, groupRings } from './group-rings';
import { type OutlineEdge, outlineEdges } from './outline-edges';
import { placedMarks } from './placed-marks';
import { type PolylineMark, smoothPolyline } from './smooth-polyline';

export interface PiecesOptions {
  readonly newId: () => string;
  /** How closely the edges of a piece follow the lines of its file, in mm. */
  readonly followWithin: number;
  /** How far a curve may keep from straight sides that stand for it, in mm, where the file marks nothing. */
  readonly smoothWithin: number;
}

/** Less than this is no piece, in mm². */
const SMALLEST = 1;

/** Stretches of one outline at most. */
const MOST_STRETCHES = 5000;

/** As much as a stored piece may have. */
const MOST_CORNERS = 2000;
const FURTHEST = 1e6;
const LONGEST_NAME = 200;

/** The pieces of groups of lines, with what is to be said of them. */
export function piecesFromGroups(groups: readonly DrawnGroup[], options: PiecesOptions): FileReading {
  const pieces: ReadPiece[] = [];
  const findings: FileFinding[] = [];
  const found = groups.map((group) => ({ group, ...groupRings(group) }));
  if (found.reduce((sum, { rings }) => sum + rings.length, 0) > MOST_OUTLINES) {
    return { kind: 'too-many', what: 'outlines', limit: MOST_OUTLINES };
  }
  for (const { group, rings, findings: ofGroup } of found) {
    findings.push(...ofGroup);
    const made = rings.flatMap((ring) => {
      const outcome = pieceOfRing(ring, group, options);
      if (outcome.kind !== 'piece') findings.push(outcome);
      return outcome.kind === 'piece' ? [{ ...outcome, ring: ring.ring, layer: ring.line.layer }] : [];
    });
    findings.push(...made.flatMap(({ notFollowed }) => notFollowed));
    const placed = placedMarks(made, group, options.newId);
    findings.push(...placed.findings);
    pieces.push(...placed.pieces.map((piece, index) => ({ piece, layer: made[index]?.layer ?? '' })));
  }
  return { kind: 'read', pieces, findings };
}

interface PieceMade {
  readonly kind: 'piece';
  readonly piece: Piece;
  readonly notFollowed: readonly FileFinding[];
}

function pieceOfRing(
  ring: GroupRing,
  group: DrawnGroup,
  { newId, followWithin, smoothWithin }: PiecesOptions,
): PieceMade | FileFinding {
  const name = (ring.line.name || group.name).slice(0, LONGEST_NAME);
  const nothing: FileFinding = { kind: 'encloses-nothing', name, layer: ring.line.layer };
  if (Math.abs(signedArea(ring.path)) < SMALLEST) return nothing;
  if (ring.path.length > MOST_STRETCHES) return { kind: 'too-much-for-a-piece', name };
  // A place marked as both is of a curve: the turn is that of another line, a dart's leg, which ends there.
  const bends = placesOf(group.bends);
  const turns = group.turns.filter((turn) => !isAmong(bends, turn));
  const marks = { turns: placesOf(turns), bends };
  const edges = outlineEdges(smoothed(ring.path, marks, smoothWithin), followWithin, turns);
  const isTooMuch =
    edges.length > MOST_CORNERS ||
    edges.some(({ at, through }) => through.length > MOST_CORNERS || [at, ...through].some(isTooFar));
  if (isTooMuch) return { kind: 'too-much-for-a-piece', name };
  const traced = pieceFromTrace(edges, { newId, name });
  if (!traced || traced.edges.length !== edges.length) return nothing;
  const piece: Piece = {
    ...traced,
    drawnAs: ring.drawnAs,
    cut: { how: 'single', count: group.count ?? 1 },
    edges: traced.edges.map((edge, i) => ({ ...edge, shape: shapeOf(edges[i] as OutlineEdge) })),
  };
  const notFollowed = piece.edges.flatMap((edge, i): FileFinding[] => {
    const { off } = edges[i] as OutlineEdge;
    return off > followWithin ? [{ kind: 'not-followed', pieceId: piece.id, edgeId: edge.id, off }] : [];
  });
  return { kind: 'piece', piece, notFollowed };
}

function shapeOf({ through, leaves, meets }: OutlineEdge): EdgeShape {
  const isStraight = through.length === 0 && leaves === 'free' && meets === 'free';
  return isStraight ? { kind: 'straight' } : { kind: 'curve', through, leaves, meets };
}

function isTooFar({ x, y }: Point): boolean {
  return !(Math.abs(x) <= FURTHEST && Math.abs(y) <= FURTHEST);
}

interface Marks {
  readonly turns: ReadonlySet<string>;
  readonly bends: ReadonlySet<string>;
}

/** An outline all of straight sides, with the curves they stand for put back; any other as it is. */
function smoothed(path: Path, { turns, bends }: Marks, within: number): Path {
  if (path.length < 4 || path.some(({ kind }) => kind !== 'line')) return path;
  const points = [...path.map(({ p0 }) => p0), (path[0] as Path[number]).p0];
  const marks = points.map((point): PolylineMark => {
    if (isAmong(turns, point)) return 'turn';
    return isAmong(bends, point) ? 'curve' : 'unmarked';
  });
  return smoothPolyline(points, marks, { within, closed: true });
}

/** Marks are written with the same figures as the line they mark; cells of a hundredth of a mm, and their neighbours. */
const CELL = 100 * SAME_POINT;

function placesOf(points: readonly Point[]): ReadonlySet<string> {
  return new Set(points.map(({ x, y }) => `${Math.round(x / CELL)} ${Math.round(y / CELL)}`));
}

function isAmong(places: ReadonlySet<string>, { x, y }: Point): boolean {
  const [column, row] = [Math.round(x / CELL), Math.round(y / CELL)];
  return [-1, 0, 1].some((dx) => [-1, 0, 1].some((dy) => places.has(`${column + dx} ${row + dy}`)));
}
