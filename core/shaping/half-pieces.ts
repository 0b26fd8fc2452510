import type { Fullness, Pleat } from '../garment/fullness';
import type { Garment, RingMember } from '../garment/garment';
import { mirrorPiece } from '../garment/move-piece';
import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { withFreshIds } from '../garment/piece-list';
import { type EdgeRef, isOwnMirror, isSameEdge, type Seam, type SeamEdge } from '../garment/seam';
import { pieceOf } from '../garment/with-piece';
import { nearestOnPath, pathBounds, pathLength, reversePath } from '../geometry/path';
import type { Path } from '../geometry/segment';
import { heldFrom } from './hold-course';

/** How the sides are told apart. */
export interface SidesWish {
  readonly newId: () => string;
  /** What the two pieces of a pair are called, by the wearer's left and right; an opened piece keeps its name. */
  readonly names: { readonly left: string; readonly right: string };
  /** Which side of a pair the piece as it is drawn is for; the wearer's right unless said. */
  readonly drawn?: 'left' | 'right';
}

export interface NotTwoSides {
  readonly kind: 'not-two-sides';
  /** `one-side`: it is cut as drawn. `folds`: on the fold, but not just one straight edge is its fold. */
  readonly why: 'no-piece' | 'one-side' | 'folds';
}

/** The mirrored half of a pair is laid beside the drawn one at this distance (mm). */
const BESIDE = 50;

/**
 * The garment with the sides of a piece drawn apart, so that they may differ. A mirrored pair becomes two pieces cut as
 * drawn, left and right; a piece on the fold is opened into one whole piece, its fold gone, a corner where it was. Rings
 * and seams follow: what was sewn for both sides at once is now sewn for each.
 */
export function leftAndRight(garment: Garment, pieceId: string, wish: SidesWish): Garment | NotTwoSides {
  const piece = pieceOf(garment, pieceId);
  if (!piece) return { kind: 'not-two-sides', why: 'no-piece' };
  if (piece.cut.how === 'single') return { kind: 'not-two-sides', why: 'one-side' };
  if (piece.cut.how === 'pair') return pairApart(garment, piece, wish);
  const folds = piece.edges.filter(({ role }) => role === 'fold');
  if (folds.length !== 1) return { kind: 'not-two-sides', why: 'folds' };
  return opened(garment, piece, wish);
}

function pairApart(garment: Garment, piece: Piece, { newId, names, drawn = 'right' }: SidesWish): Garment {
  const { maxX } = pathBounds(outlineOf(piece).whole);
  const [top, foot] = [
    { x: maxX + BESIDE / 2, y: 0 },
    { x: maxX + BESIDE / 2, y: 1 },
  ];
  const cut = { how: 'single', count: Math.max(1, Math.round(piece.cut.count / 2)) } as const;
  const side = drawn === 'left' ? 'right' : 'left';
  const twin = withFreshIds({ ...mirrorPiece(piece, top, foot), cut, side }, { newId, name: names[side] });
  const own: Piece = { ...piece, name: names[drawn], cut, side: drawn };
  const twins = new Map(piece.edges.map(({ id }, i) => [id, { pieceId: twin.id, edgeId: (twin.edges[i] as Edge).id }]));
  const twinEdge = (edgeId: string) => twins.get(edgeId)?.edgeId ?? edgeId;
  const members = (member: RingMember): RingMember[] => {
    const half = member.times === undefined ? {} : { times: member.times / 2 };
    return [
      { ...member, ...half },
      {
        pieceId: twin.id,
        ...half,
        ...(member.from && { from: { ...member.from, edgeId: twinEdge(member.from.edgeId) } }),
      },
    ];
  };
  const pieces = garment.pieces.flatMap((each) => (each.id === piece.id ? [own, twin] : [each]));
  return followed({ ...garment, pieces }, piece, { twins, members, newId, twinsFirst: () => false, drawn });
}

function opened(garment: Garment, piece: Piece, { newId }: SidesWish): Garment {
  const count = piece.edges.length;
  const fold = piece.edges.findIndex(({ role }) => role === 'fold');
  const half = withFreeFoldEnds(piece, fold);
  const lengths = outlineOf(half).edges.map((path) => pathLength(path));
  const [from, to] = [half.corners[fold], half.corners[(fold + 1) % count]];
  if (!from || !to) return garment;
  // From the end of the fold all the way round to its start, and back again mirrored.
  const order = Array.from({ length: count - 1 }, (_, i) => (fold + 1 + i) % count);
  const mirrored = withFreshIds(mirrorPiece(half, from.at, to.at), { newId, name: half.name });
  const back = order.toReversed();
  const corners = [
    ...order.map((index) => half.corners[index] as Piece['corners'][number]),
    from,
    ...back.slice(0, -1).map((index) => mirrored.corners[index] as Piece['corners'][number]),
  ];
  const edges = [
    ...order.map((index) => half.edges[index] as Edge),
    ...back.map((index) => reversed(mirrored.edges[index] as Edge)),
  ];
  const backwards = (edgeId: string) => lengths[mirrored.edges.findIndex(({ id }) => id === edgeId)] ?? 0;
  const turned = <Mark extends { readonly edgeId: string; readonly along: number }>(mark: Mark): Mark => ({
    ...mark,
    along: backwards(mark.edgeId) - mark.along,
  });
  const fullness = [
    ...(half.fullness ?? []),
    ...(mirrored.fullness ?? []).map((one) => backwardsFullness(one, backwards(one.edgeId))),
  ];
  const { side: _, fullness: __, ...rest } = half;
  const whole: Piece = {
    ...rest,
    cut: { how: 'single', count: piece.cut.count },
    corners,
    edges,
    darts: [...half.darts, ...mirrored.darts.map(turned)],
    notches: [...half.notches, ...mirrored.notches.map(turned)],
    labels: [...half.labels, ...mirrored.labels.filter(({ text }) => text.trim() === '')],
    ...(fullness.length > 0 && { fullness }),
  };
  const twins = new Map(
    order.map((index) => [
      (half.edges[index] as Edge).id,
      { pieceId: piece.id, edgeId: (mirrored.edges[index] as Edge).id },
    ]),
  );
  const first = edges[0]?.id;
  const members = (member: RingMember): RingMember[] => [
    member.times === undefined ? member : { ...member, times: member.times / 2 },
  ];
  const pieces = garment.pieces.map((each) => (each.id === piece.id ? whole : each));
  // Where a run begins at the end of the fold, its mirror image leads up to it.
  const twinsFirst = (edgeId: string) => edgeId === first;
  return followed({ ...garment, pieces }, piece, { twins, members, newId, twinsFirst });
}

/** The piece with the edges beside its fold held where they are by points instead of by how they stand to the fold. */
function withFreeFoldEnds(piece: Piece, fold: number): Piece {
  const count = piece.edges.length;
  const paths = outlineOf(piece).edges;
  const edges = piece.edges.map((edge, index): Edge => {
    const { shape } = edge;
    if (shape.kind === 'straight') return edge;
    const path = paths[index] as Path;
    const own = shape.through.map((point) => ({ point, along: nearestOnPath(path, point).along }));
    const leaves = index === (fold + 1) % count && shape.leaves !== 'free';
    const meets = index === (fold + count - 1) % count && shape.meets !== 'free';
    if (!leaves && !meets) return edge;
    const total = pathLength(path);
    const flipped = (places: typeof own) =>
      places.map(({ point, along }) => ({ point, along: total - along })).reverse();
    let held = leaves ? heldFrom(path, 0, own).filter(({ along }) => along > 1) : own;
    if (meets) held = flipped(heldFrom(reversePath(path), 0, flipped(held)).filter(({ along }) => along > 1));
    return {
      ...edge,
      shape: {
        kind: 'curve',
        through: held.map(({ point }) => point),
        leaves: leaves ? 'free' : shape.leaves,
        meets: meets ? 'free' : shape.meets,
      },
    };
  });
  return { ...piece, edges };
}

function reversed(edge: Edge): Edge {
  if (edge.shape.kind === 'straight') return edge;
  const { through, leaves, meets } = edge.shape;
  return { ...edge, shape: { kind: 'curve', through: through.toReversed(), leaves: meets, meets: leaves } };
}

function backwardsFullness(one: Fullness, length: number): Fullness {
  if (one.kind === 'gathers') return { ...one, from: length - one.to, to: length - one.from };
  const laid: Readonly<Record<Pleat['laid'], Pleat['laid']>> = {
    'to-start': 'to-end',
    'to-end': 'to-start',
    inverted: 'inverted',
    box: 'box',
  };
  return { ...one, from: length - one.from - one.takes, laid: laid[one.laid] };
}

interface Following {
  /** The mirror image of each edge of the piece. */
  readonly twins: ReadonlyMap<string, EdgeRef>;
  readonly members: (member: RingMember) => readonly RingMember[];
  readonly newId: () => string;
  readonly twinsFirst: (edgeId: string) => boolean;
  /** Which side of the body the piece itself is for now, and its twin for the other; neither where both are one piece. */
  readonly drawn?: 'left' | 'right';
}

/** The garment with rings and seams led after a piece whose sides are apart. */
function followed(garment: Garment, { id }: Piece, following: Following): Garment {
  const rings = garment.rings.map((ring) =>
    ring.members.some(({ pieceId }) => pieceId === id)
      ? { ...ring, members: ring.members.flatMap((one) => (one.pieceId === id ? following.members(one) : [one])) }
      : ring,
  );
  const seams = garment.seams?.flatMap((seam) => seamApart(seam, id, following, sideSewnTo(garment, seam, id)));
  return { ...garment, rings, ...(seams && { seams }) };
}

/** Which side of the body the pieces are for that a piece is sewn to, where they have been drawn apart already. */
function sideSewnTo(garment: Garment, { one, other }: Seam, pieceId: string): 'left' | 'right' | undefined {
  const sides = [...one, ...other].flatMap((edge) =>
    edge.pieceId === pieceId ? [] : (pieceOf(garment, edge.pieceId)?.side ?? []),
  );
  return sides.every((side) => side === sides[0]) ? sides[0] : undefined;
}

function seamApart(
  seam: Seam,
  pieceId: string,
  { twins, newId, twinsFirst, drawn }: Following,
  sewnTo: 'left' | 'right' | undefined,
): readonly Seam[] {
  const twinOf = (edge: SeamEdge): SeamEdge => {
    const twin = edge.pieceId === pieceId ? twins.get(edge.edgeId) : undefined;
    return twin ? { ...edge, ...twin } : edge;
  };
  const own = [...seam.one, ...seam.other].filter((edge) => edge.pieceId === pieceId);
  if (own.length === 0) return [seam];
  if (isOwnMirror(seam)) {
    const isMirror = (edge: SeamEdge) => seam.one.some((each) => isSameEdge(each, edge));
    return [{ ...seam, other: seam.other.map((edge) => (isMirror(edge) ? twinOf(edge) : edge)) }];
  }
  // What it is sewn to is for one side already, so the seam goes to the half for that side.
  if (drawn && sewnTo) {
    return sewnTo === drawn ? [seam] : [{ ...seam, one: seam.one.map(twinOf), other: seam.other.map(twinOf) }];
  }
  if (own.some(({ times = 1 }) => times % 2 !== 0)) {
    return [seam, { ...seam, id: newId(), one: seam.one.map(twinOf), other: seam.other.map(twinOf) }];
  }
  const both = (side: readonly SeamEdge[]): readonly SeamEdge[] => {
    const mine = side.filter((edge) => edge.pieceId === pieceId).map(halved);
    if (mine.length === 0) return side;
    const mirrored = mine.map(twinOf).reverse();
    const run = mine.some(({ edgeId }) => twinsFirst(edgeId)) ? [...mirrored, ...mine] : [...mine, ...mirrored];
    const at = side.findIndex((edge) => edge.pieceId === pieceId);
    const others = side.filter((edge) => edge.pieceId !== pieceId);
    return others.toSpliced(at, 0, ...run);
  };
  return [{ ...seam, one: both(seam.one), other: both(seam.other) }];
}

function halved({ times = 1, ...edge }: SeamEdge): SeamEdge {
  return times / 2 === 1 ? edge : { ...edge, times: times / 2 };
}
