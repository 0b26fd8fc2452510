/** Seams nobody has named yet, proposed from the names and lengths of edges; she takes what is right. */
import { cutPieces, isGuide } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import { neighbourIndex } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { type EdgeRef, isSameEdge, type Seam, type SeamEdge } from '../garment/seam';
import { edgeIndex, pieceOf } from '../garment/with-piece';
import { inches } from '../units/inch';
import { netEdgeLength } from './edge-length';
import { proposeSeamPairs, type SeamPair } from './seam-pairs';
import { lapEnd } from './seam-sides';
import { isWithinMatch } from './walk';

/** A seam proposed, and why. `difference` is first less second, over every coming of the edges and without a lap (mm). */
export interface ProposedSeam {
  readonly seam: Seam;
  readonly by: SeamPair['by'] | 'own-mirror' | 'next-copy' | 'band';
  readonly difference: number;
}

/** A piece of a ring, and how many of its drawn widths go round. */
export interface RoundPiece {
  readonly piece: Piece;
  readonly times: number;
}

/** A band may be this much shorter than the waist it is sewn to, which is then eased in (common practice: 1/2 to 1 in). */
const EASED_IN = inches(1);

/** And this much longer: its laps (common practice: up to 2 in). */
const LAPS = inches(2);

/**
 * The seams that can be seen in a garment and are not in it yet: edges of one name or one length (see
 * `proposeSeamPairs`); on a piece cut in mirrored pairs an edge left over with its own mirror image, as at a centre back,
 * and on one cut more than once on the fold with the same edge of the next of its copies, which lies mirrored beside it;
 * and the waist edges of each ring with the long edge of a band outside it, the lap being what the band has over. Ease is 0; nothing of a guide is proposed.
 */
export function proposedSeams(
  garment: Garment,
  options: { readonly newId: () => string; readonly rings: readonly (readonly RoundPiece[])[] },
): readonly ProposedSeam[] {
  const { newId, rings } = options;
  const pieces = cutPieces(garment);
  const taken: EdgeRef[] = (garment.seams ?? []).flatMap(({ one, other }) => [...one, ...other]);
  const isTaken = (edge: EdgeRef) => taken.some((each) => isSameEdge(each, edge));
  const found: ProposedSeam[] = [];
  const propose = (one: readonly SeamEdge[], other: readonly SeamEdge[], by: ProposedSeam['by']) => {
    const way = wayOf(garment, one[0], other[0]);
    const difference = lengthOf(garment, one) - lengthOf(garment, other);
    const seam: Seam = { id: newId(), name: nameOf(garment, one[0]), one, other, ease: 0, way };
    // A band that is longer than its waist laps over.
    if (by === 'band' && difference < 0 && !isWithinMatch(difference)) {
      const lap = { side: 'other', length: -difference, at: lapEnd(garment, seam, 'other') } as const;
      found.push({ seam: { ...seam, lap }, by, difference: 0 });
    } else found.push({ seam, by, difference });
    taken.push(...one, ...other);
  };
  // A band's long edge is as good as a seam of its own length, so waists come first.
  for (const ring of rings) {
    const band = bandFor(ring, pieces, isTaken);
    if (band) propose(band.waist, [band.edge], 'band');
  }
  const pairs = proposeSeamPairs(pieces, { leaveOut: isTaken });
  const ofTwo = ({ one, other, by }: SeamPair) => by === 'name' || one.pieceId !== other.pieceId;
  for (const { one, other, by } of pairs.filter(ofTwo)) propose([one], [other], by);
  for (const piece of pieces) {
    const by = likeOf(piece);
    if (!by) continue;
    for (const { id, role } of piece.edges) {
      const edge = { pieceId: piece.id, edgeId: id };
      if (role === 'seam' && !isTaken(edge)) propose([edge], [edge], by);
    }
  }
  for (const { one, other, by } of pairs) if (!isTaken(one) && !isTaken(other)) propose([one], [other], by);
  return found;
}

/** Whether an edge of a piece may be sewn to its own like on another of the pieces cut from the same drawing. */
function likeOf({ cut }: Piece): 'own-mirror' | 'next-copy' | undefined {
  if (cut.how === 'pair') return 'own-mirror';
  return cut.how === 'fold' && cut.count > 1 ? 'next-copy' : undefined;
}

/** The waist edges of a ring not in a seam yet, and the edge of another piece that comes nearest to them in length. */
function bandFor(ring: readonly RoundPiece[], pieces: readonly Piece[], isTaken: (edge: EdgeRef) => boolean) {
  const waist = ring.flatMap(({ piece, times }) =>
    isGuide(piece) || !(times > 0)
      ? []
      : piece.edges
          .filter(({ role }) => role === 'waist')
          .map(({ id }): SeamEdge => ({ pieceId: piece.id, edgeId: id, ...(times === 1 ? {} : { times }) })),
  );
  if (waist.length === 0 || waist.some(isTaken)) return undefined;
  const round = waist.reduce((sum, edge) => sum + lengthIn(pieces, edge), 0);
  let best: { readonly edge: SeamEdge; readonly off: number } | undefined;
  for (const piece of pieces.filter(({ id }) => ring.every((member) => member.piece.id !== id))) {
    const most = piece.cut.how === 'fold' ? 2 * piece.cut.count : piece.cut.count;
    for (const { id, role } of piece.edges) {
      const plain = { pieceId: piece.id, edgeId: id };
      const length = lengthIn(pieces, plain);
      if ((role !== 'seam' && role !== 'waist') || !(length > 0) || isTaken(plain)) continue;
      const times = Math.min(most, Math.max(1, Math.round(round / length)));
      const off = times * length - round;
      if (off < -EASED_IN || off > LAPS || (best && Math.abs(off) >= Math.abs(best.off))) continue;
      best = { edge: times === 1 ? plain : { ...plain, times }, off };
    }
  }
  return best && { waist, edge: best.edge };
}

function lengthOf(garment: Garment, edges: readonly SeamEdge[]): number {
  return edges.reduce((sum, edge) => sum + lengthIn(garment.pieces, edge), 0);
}

function lengthIn(pieces: readonly Piece[], { pieceId, edgeId, times = 1 }: SeamEdge): number {
  const piece = pieces.find(({ id }) => id === pieceId);
  return times * ((piece && netEdgeLength(piece, edgeId)) ?? 0);
}

/**
 * Which way partners run: the same when both begin beside an edge of one kind, and end so (waist to hem, fold to side),
 * or when an edge is sewn to its own mirror image; else opposite.
 */
function wayOf(garment: Garment, one: EdgeRef | undefined, other: EdgeRef | undefined): Seam['way'] {
  if (!one || !other) return 'opposite';
  if (isSameEdge(one, other)) return 'same';
  const [a, b] = [rolesBeside(garment, one), rolesBeside(garment, other)];
  const score = (x: readonly string[], y: readonly string[]) =>
    x.filter((role, i) => role !== '' && role !== 'seam' && role === y[i]).length;
  return score(a, b) > score(a, b.toReversed()) ? 'same' : 'opposite';
}

function rolesBeside(garment: Garment, { pieceId, edgeId }: EdgeRef): readonly string[] {
  const piece = pieceOf(garment, pieceId);
  const index = piece ? edgeIndex(piece, edgeId) : -1;
  if (!piece || index < 0) return ['', ''];
  return ([-1, 1] as const).map((step) => piece.edges[neighbourIndex(piece, index, step)]?.role ?? '');
}

function nameOf(garment: Garment, ref: EdgeRef | undefined): string {
  const edge = ref && pieceOf(garment, ref.pieceId)?.edges.find(({ id }) => id === ref.edgeId);
  return edge?.name.trim() ?? '';
}
