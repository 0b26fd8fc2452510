import type { Garment } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Corner, Edge, Piece } from '../garment/piece';
import { isSameEdge, type Seam, type SeamEdge } from '../garment/seam';
import { pieceOf } from '../garment/with-piece';
import { type Affine, reflectionIn, transformPath, transformPoint } from '../geometry/affine';
import { flattenPath } from '../geometry/flatten';
import { nearestOnPath, pathLength } from '../geometry/path';
import { distance } from '../geometry/point';
import type { Path } from '../geometry/segment';

export interface NotFolded {
  readonly kind: 'not-folded';
  /** `not-single`: it is not cut as drawn. `unlike`: no line through two corners makes both halves alike. */
  readonly why: 'no-piece' | 'not-single' | 'unlike';
}

/** Halves are alike when no part of their lines and no mark lies further off than this (mm): a fifth of a pencil line. */
const ALIKE = 0.1;

/** How closely lines are followed for that (mm). */
const FOLLOW = 0.02;

/**
 * The garment with a whole piece drawn again as half of it, on the fold: the way back from opening it, when both halves
 * are alike within a tenth of a millimetre, marks included. Rings and seams follow.
 */
export function onTheFold(
  garment: Garment,
  pieceId: string,
  { newId }: { readonly newId: () => string },
): Garment | NotFolded {
  const piece = pieceOf(garment, pieceId);
  if (!piece) return { kind: 'not-folded', why: 'no-piece' };
  if (piece.cut.how !== 'single') return { kind: 'not-folded', why: 'not-single' };
  const half = halfOf(piece);
  if (!half) return { kind: 'not-folded', why: 'unlike' };
  const { kept, twins } = half;
  const edges = kept.map((index) => piece.edges[index] as Edge);
  const ids = new Set(edges.map(({ id }) => id));
  const isOn = ({ edgeId }: { readonly edgeId: string }) => ids.has(edgeId);
  const { fullness, ...rest } = piece;
  const shared = fullness?.filter(isOn) ?? [];
  const first = kept[0] as number;
  const corners = [...kept, first + kept.length].map((i) => piece.corners[i % piece.corners.length] as Corner);
  const folded: Piece = {
    ...rest,
    cut: { how: 'fold', count: piece.cut.count },
    corners,
    edges: [...edges, { id: newId(), name: '', role: 'fold', shape: { kind: 'straight' }, allowance: 0 }],
    darts: piece.darts.filter(isOn),
    notches: piece.notches.filter(isOn),
    labels: piece.labels.filter(({ at }) => half.liesIn(at)),
    ...(shared.length > 0 && { fullness: shared }),
  };
  const pieces = garment.pieces.map((each) => (each === piece ? folded : each));
  const rings = garment.rings.map((ring) => ({
    ...ring,
    members: ring.members.map((member) =>
      member.pieceId === pieceId && member.times !== undefined ? { ...member, times: 2 * member.times } : member,
    ),
  }));
  const seams = garment.seams && foldedSeams(garment.seams, pieceId, twins);
  return { ...garment, pieces, rings, ...(seams && { seams }) };
}

interface Half {
  /** The edges that stay, in order. */
  readonly kept: readonly number[];
  /** Of every edge that goes, the one it is the mirror image of. */
  readonly twins: ReadonlyMap<string, string>;
  readonly liesIn: (at: { readonly x: number; readonly y: number }) => boolean;
}

/** A half of the piece that, mirrored in the line between its ends, is the other half. */
function halfOf(piece: Piece): Half | undefined {
  const count = piece.edges.length;
  if (count % 2 !== 0) return undefined;
  for (let start = 0; start < count / 2; start++) {
    const kept = Array.from({ length: count / 2 }, (_, i) => start + i);
    const [from, to] = [piece.corners[start], piece.corners[start + count / 2]];
    const mirror = from && to && reflectionIn(from.at, to.at);
    if (!mirror || !from || !to) continue;
    const pairs = kept.map((index, i) => [index, (start + count - 1 - i) % count] as const);
    if (!pairs.every(([index, twin]) => areAlike(piece, index, twin, mirror))) continue;
    const middle = piece.corners[start + 1]?.at ?? from.at;
    const sideOf = ({ x, y }: { readonly x: number; readonly y: number }) =>
      (to.at.x - from.at.x) * (y - from.at.y) - (to.at.y - from.at.y) * (x - from.at.x);
    const half = Math.sign(sideOf(middle));
    const reach = distance(from.at, to.at) * ALIKE;
    return {
      kept,
      twins: new Map(pairs.map(([index, twin]) => [(piece.edges[twin] as Edge).id, (piece.edges[index] as Edge).id])),
      liesIn: (at) => sideOf(at) * half >= -reach,
    };
  }
  return undefined;
}

/** Whether one edge mirrored lies on another that runs the other way, with all its marks. */
function areAlike(piece: Piece, index: number, twin: number, mirror: Affine): boolean {
  const { edges } = outlineOf(piece);
  const [path, other] = [edges[index] as Path, edges[twin] as Path];
  const [edge, like] = [piece.edges[index] as Edge, piece.edges[twin] as Edge];
  if (edge.role !== like.role || edge.allowance !== like.allowance) return false;
  const mirrored = transformPath(mirror, path);
  const lies = (a: Path, b: Path) => flattenPath(a, FOLLOW).every((point) => nearestOnPath(b, point).distance <= ALIKE);
  if (!lies(mirrored, other) || !lies(other, mirrored)) return false;
  const length = pathLength(other);
  const marks = (id: string, turned: (along: number) => number) => [
    piece.darts
      .filter(({ edgeId }) => edgeId === id)
      .flatMap(({ along, width }) => [turned(along - width / 2), turned(along + width / 2)]),
    piece.notches
      .filter(({ edgeId }) => edgeId === id)
      .flatMap(({ along, count }) => Array.from({ length: count }, () => turned(along))),
    (piece.fullness ?? [])
      .filter(({ edgeId }) => edgeId === id)
      .flatMap((one) => (one.kind === 'gathers' ? [one.from, one.to] : [one.from, one.from + one.takes]).map(turned)),
    (piece.fullness ?? []).filter(({ edgeId }) => edgeId === id).map((one) => (one.kind === 'gathers' ? one.into : -1)),
  ];
  const mine = marks(edge.id, (along) => along);
  const theirs = marks(like.id, (along) => length - along);
  const points = (id: string) => piece.darts.filter(({ edgeId }) => edgeId === id).map(({ point }) => point);
  const others = points(like.id);
  return (
    mine.every((list, i) => isSameList(list, theirs[i] ?? [])) &&
    points(edge.id).every((point) => others.some((each) => distance(transformPoint(mirror, point), each) <= ALIKE))
  );
}

function isSameList(one: readonly number[], other: readonly number[]): boolean {
  const sorted = other.toSorted((a, b) => a - b);
  return (
    one.length === other.length &&
    one.toSorted((a, b) => a - b).every((value, i) => Math.abs(value - (sorted[i] as number)) <= ALIKE)
  );
}

/** Seams of both halves become one: an edge sewn twice where both were in it, a seam left out where it was said twice. */
function foldedSeams(seams: readonly Seam[], pieceId: string, twins: ReadonlyMap<string, string>): readonly Seam[] {
  const isHere = ({ one, other }: Seam) => [...one, ...other].some((edge) => edge.pieceId === pieceId);
  const folded = seams.map((seam) =>
    isHere(seam) ? { ...seam, one: merged(seam.one, pieceId, twins), other: merged(seam.other, pieceId, twins) } : seam,
  );
  const told = ({ one, other }: Seam) => JSON.stringify([one, other]);
  return folded.filter((seam, i) => !isHere(seam) || folded.findIndex((each) => told(each) === told(seam)) === i);
}

function merged(side: readonly SeamEdge[], pieceId: string, twins: ReadonlyMap<string, string>): readonly SeamEdge[] {
  const edges: SeamEdge[] = [];
  for (const edge of side) {
    const edgeId = (edge.pieceId === pieceId && twins.get(edge.edgeId)) || edge.edgeId;
    const at = edges.findIndex((each) => isSameEdge(each, { ...edge, edgeId }));
    const before = edges[at];
    if (before) edges[at] = { ...before, times: (before.times ?? 1) + (edge.times ?? 1) };
    else edges.push({ ...edge, edgeId });
  }
  return edges;
}
