import type { Garment, Ring } from '../garment/garment';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { isSameEdge } from '../garment/seam';
import { pathLength } from '../geometry/path';
import { levelLine } from '../shaping/level-line';
import { waistCentre } from '../shaping/waist-axis';
import { ringPieces } from './round-body';

/**
 * A panel of a ring by its place round the body. Places are shares of the way round from centre front over the right side
 * (0.25) and centre back (0.5); a panel of both sides is placed on the right.
 */
export interface PanelRound {
  readonly pieceId: string;
  readonly waistEdgeId: string;
  readonly half: 'right' | 'left' | 'both';
  /** Where its front and its back edge lie. */
  readonly from: number;
  readonly to: number;
  /** Which end of the waist edge, as drawn, lies to the front. */
  readonly front: 'start' | 'end';
}

export interface NoPanelsRound {
  readonly kind: 'no-panels-round';
  /** `comes-again`: one drawing serves several places, so it cannot differ between them. */
  readonly why: 'no-waist-edge' | 'comes-again' | 'which-way' | 'sides-not-alike';
  readonly pieceId?: string;
}

export interface PanelsRoundOptions {
  /** Where the side lies, as a share of the waist from centre front to centre back; the middle unless said. */
  readonly sideAt?: number;
  /** Which end of the waist of a piece lies to the front, where she has said so. */
  readonly fronts?: Readonly<Record<string, PanelRound['front']>>;
}

/**
 * The panels of a ring in their order from centre front to centre back, which is the order of its members; those for one
 * side of the body make that half, the others both. The front of a panel is told by its fold or opening at a centre, by
 * the seam to the panel before it, or by its straight-grain edge, which lies to the front (Carrie Crane Ingalls, Text-Book
 * on Domestic Art, 1911); a panel that is the only one of its half lies as it is drawn. What she says goes before all of these.
 */
export function panelsRound(
  garment: Garment,
  ring: Ring,
  { sideAt = 0.5, fronts = {} }: PanelsRoundOptions = {},
): readonly PanelRound[] | NoPanelsRound {
  const worn = ringPieces(garment, ring);
  const again = worn.find(({ piece, times }) => times > (piece.side ? 1 : 2));
  if (again) return refuse('comes-again', again.piece);
  const found: PanelRound[] = [];
  for (const half of halvesOf(worn.map(({ piece }) => piece))) {
    const side = half === 'both' ? undefined : half;
    const panels = worn.map(({ piece }) => piece).filter((piece) => piece.side === side || piece.side === undefined);
    const total = panels.reduce((sum, piece) => sum + waistLength(piece), 0);
    let past = 0;
    for (const [i, piece] of panels.entries()) {
      const waist = piece.edges.find(({ role }) => role === 'waist');
      if (!waist || total === 0) return refuse('no-waist-edge', piece);
      const front =
        fronts[piece.id] ??
        frontOf(garment, piece, waist, panels[i - 1], { isFirst: i === 0, isLast: i === panels.length - 1 });
      if (!front) return refuse('which-way', piece);
      const [from, to] = [past / total, (past + waistLength(piece)) / total].map((share) =>
        placeOf(share, half, sideAt),
      );
      past += waistLength(piece);
      found.push({ pieceId: piece.id, waistEdgeId: waist.id, half, from: from ?? 0, to: to ?? 0, front });
    }
  }
  const twice = found.find((one, i) => found.findIndex(({ pieceId }) => pieceId === one.pieceId) < i);
  return twice ? { kind: 'no-panels-round', why: 'sides-not-alike', pieceId: twice.pieceId } : found;
}

/** The sewn length of the waist of a piece as drawn. */
function waistLength(piece: Piece): number {
  return levelLine(piece, 0)?.length ?? 0;
}

function refuse(why: NoPanelsRound['why'], { id }: Piece): NoPanelsRound {
  return { kind: 'no-panels-round', why, pieceId: id };
}

function halvesOf(pieces: readonly Piece[]): readonly PanelRound['half'][] {
  return pieces.some(({ side }) => side) ? ['right', 'left'] : ['both'];
}

/** A share of the half waist as a place round the body, with the side where it is said to lie. */
function placeOf(share: number, half: PanelRound['half'], sideAt: number): number {
  const at = share <= sideAt ? (0.25 * share) / sideAt : 0.25 + (0.25 * (share - sideAt)) / (1 - sideAt);
  return half === 'left' ? 1 - at : at;
}

/** Which end of the waist of a piece lies to the front; `undefined` where nothing tells. */
export function frontOf(
  garment: Garment,
  piece: Piece,
  waist: Edge,
  before: Piece | undefined,
  { isFirst, isLast }: { readonly isFirst: boolean; readonly isLast: boolean },
): PanelRound['front'] | undefined {
  const index = piece.edges.indexOf(waist);
  const beside = {
    start: piece.edges[neighbourIndex(piece, index, -1)],
    end: piece.edges[neighbourIndex(piece, index, 1)],
  };
  const ends = ['start', 'end'] as const;
  const atCentre = ends.filter((end) => beside[end]?.role === 'fold');
  const [centre] = atCentre.length === 1 ? atCentre : ends.filter((end) => beside[end]?.role === 'opening');
  if (centre && isFirst !== isLast) return isFirst ? centre : otherEnd(centre);
  const joined = ends.find((end) => {
    const edge = beside[end];
    return before && edge && isSewn(garment, piece, edge, before);
  });
  if (joined) return joined;
  const axis = waistCentre(piece, index);
  if (axis !== 'middle') return axis === 'before' ? 'start' : 'end';
  if (isFirst && isLast) return 'start';
  // A panel whose two sides are alike lies either way.
  const [one, other] = [neighbourIndex(piece, index, -1), neighbourIndex(piece, index, 1)].map((i) =>
    pathLength(outlineOf(piece).edges[i] ?? []),
  );
  return Math.abs((one ?? 0) - (other ?? 9)) < ALIKE ? 'start' : undefined;
}

/** Sides nearer in length than this (mm) are alike: a sixty-fourth of an inch. */
const ALIKE = 25.4 / 64;

function otherEnd(end: PanelRound['front']): PanelRound['front'] {
  return end === 'start' ? 'end' : 'start';
}

function isSewn(garment: Garment, piece: Piece, edge: Edge, before: Piece): boolean {
  const ref = { pieceId: piece.id, edgeId: edge.id };
  return (garment.seams ?? []).some(({ one, other }) =>
    [
      [one, other],
      [other, one],
    ].some(
      ([here, there]) =>
        here?.some((each) => isSameEdge(each, ref)) && there?.some(({ pieceId }) => pieceId === before.id),
    ),
  );
}
