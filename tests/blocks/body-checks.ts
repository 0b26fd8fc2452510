/** Blocks drafted for a body and measured: what is wrong with them, as numbers. */
import { type Block, type BodyMeasures, draftBlock } from '../../core/blocks/block';
import { bodice } from '../../core/blocks/bodice';
import type { DraftOptions } from '../../core/blocks/draft-names';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { endTangent, isClosed, startTangent } from '../../core/geometry/path';
import { turnBetween } from '../../core/geometry/point';
import { selfCrossings } from '../../core/geometry/self-crossing';
import { netEdgeLength } from '../../core/seams/edge-length';
import { levelLine } from '../../core/shaping/level-line';
import { numberedIds } from './in-inches';

/** Names as they are asked for, with their number. */
export function plainNames(): DraftOptions {
  return { newId: numberedIds(), nameOf: (name, number) => (number === undefined ? name : `${name} ${number}`) };
}

/** How often an edge of a piece comes round the body. */
export function timesRound({ cut }: Piece): number {
  return cut.how === 'fold' ? 2 * cut.count : cut.count;
}

/** The sewn length of all edges that pass, all the way round. */
export function sewnRound(pieces: readonly Piece[], passes: (edge: Piece['edges'][number]) => boolean): number {
  return pieces.reduce((sum, piece) => {
    const lengths = piece.edges.filter(passes).map(({ id }) => netEdgeLength(piece, id) ?? 0);
    return sum + timesRound(piece) * lengths.reduce((all, each) => all + each, 0);
  }, 0);
}

/** The girth `depth` below the waist edges, darts taken off. */
export function roundAt(pieces: readonly Piece[], depth: number): number {
  return pieces.reduce((sum, piece) => sum + timesRound(piece) * (levelLine(piece, depth)?.length ?? 0), 0);
}

/** How far (radians) the ends of an edge are from standing square to their neighbours, the worse of the two. */
export function offSquare(piece: Piece, passes: (edge: Piece['edges'][number]) => boolean): number {
  const { edges } = outlineOf(piece);
  const count = edges.length;
  return piece.edges.reduce((worst, edge, i) => {
    if (!passes(edge)) return worst;
    const [own, before, after] = [edges[i], edges[(i + count - 1) % count], edges[(i + 1) % count]];
    const corners = [
      turnBetween(endTangent(before ?? []), startTangent(own ?? [])),
      turnBetween(endTangent(own ?? []), startTangent(after ?? [])),
    ];
    return Math.max(worst, ...corners.map((turn) => Math.abs(Math.abs(turn) - Math.PI / 2)));
  }, 0);
}

export interface Measured {
  readonly kind: 'measured';
  readonly pieces: readonly Piece[];
  readonly isClosed: boolean;
  readonly crossings: number;
  /** The worst corner of a waist or waist seam (radians), and the worst length of those asked for (mm). */
  readonly offSquare: number;
  readonly offLength: number;
}

/** A block drafted and measured against what was asked of it, or why it was not drafted. */
export function measured(
  block: Block,
  body: BodyMeasures,
): Measured | { readonly kind: 'refused'; readonly why: string } {
  const made = draftBlock(block, body, plainNames());
  if (made.kind !== 'drafted') return { kind: 'refused', why: 'why' in made ? made.why : made.missing.join() };
  const { pieces } = made;
  const wholes = pieces.map((piece) => outlineOf(piece).whole);
  const atWaist = ({ role, name }: Piece['edges'][number]) => role === 'waist' || name === 'waist-seam';
  return {
    kind: 'measured',
    pieces,
    isClosed: wholes.every(isClosed),
    crossings: wholes.reduce((sum, whole) => sum + selfCrossings(whole).length, 0),
    offSquare: Math.max(...pieces.map((piece) => offSquare(piece, atWaist))),
    offLength: Math.max(...offLengths(block, body, pieces).map(Math.abs)),
  };
}

function offLengths(block: Block, body: BodyMeasures, pieces: readonly Piece[]): number[] {
  const { waist = 0, hip = 0, waistToHip = 0, bust = 0, neck = 0 } = body;
  const round = (role: Piece['edges'][number]['role']) => sewnRound(pieces, (edge) => edge.role === role);
  const sides = (name: string) => {
    const lengths = pieces.flatMap((piece) =>
      piece.edges.filter((edge) => edge.name === name).map(({ id }) => netEdgeLength(piece, id) ?? 0),
    );
    return Math.max(...lengths) - Math.min(...lengths);
  };
  switch (block.kind) {
    case 'plain-skirt':
      return [
        round('waist') - waist - block.ease.waist,
        round('hem') - (block.hem ?? hip + block.ease.hip),
        roundAt(pieces, waistToHip) - hip - block.ease.hip,
        sides('side-seam'),
      ];
    case 'gored-skirt':
      return [
        round('waist') - waist - block.ease.waist,
        round('hem') - block.hem,
        roundAt(pieces, waistToHip) - hip - block.ease.hip,
        sides('gore-seam'),
      ];
    case 'shared-gores':
      return [
        round('waist') - waist - block.ease.waist,
        round('hem') - block.hem,
        sides('gore-seam 1'),
        sides('gore-seam 2'),
      ];
    case 'circle-skirt':
      return [
        round('waist') - waist - block.waistEase,
        round('hem') - waist - block.waistEase - 2 * Math.PI * block.share * block.length,
      ];
    case 'shaped-band': {
      const at = (level: number) =>
        waist + block.ease.waist + ((hip + block.ease.hip - waist - block.ease.waist) * level) / waistToHip;
      const [top, bottom] = [at(block.below ?? 0), at((block.below ?? 0) + block.depth)];
      const lap = block.lap ?? 0;
      return [round('waist') - top - lap, sewnRound(pieces, lowerEdge) - bottom - (lap * bottom) / top];
    }
    case 'bodice': {
      const draft = bodice(body as Readonly<Required<BodyMeasures>>, block.ease);
      return [
        sewnRound(pieces, ({ name }) => name === 'waist-seam') - waist - block.ease.waist,
        bustRound(pieces, draft.kind === 'bodice' ? draft.bustUpSide : 0) - bust - block.ease.bust,
        neckRound(pieces) - neck,
        sides('side-seam'),
        sides('shoulder-seam'),
      ];
    }
    case 'slip': {
      const foot = (block.joined === 'waist' ? waist : (body.underbust ?? 0)) + block.ease.waist;
      return [
        sewnRound(pieces, ({ name }) => name === 'waist-seam') - foot,
        round('waist') - foot,
        round('hem') - block.hem,
        neckRound(pieces.slice(0, 2)) - neck,
        sides('side-seam'),
        sides('shoulder-seam'),
        sides('gore-seam'),
      ];
    }
    // The other drafts ask for no lengths of their own: their figures are in their own tests.
    default:
      return [0];
  }
}

function lowerEdge({ role, name }: Piece['edges'][number]): boolean {
  return role === 'seam' && name !== 'end-seam';
}

/** The necklines are the first edges of a bodice. */
function neckRound(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + 2 * (netEdgeLength(piece, piece.edges[0]?.id ?? '') ?? 0), 0);
}

/** The bust girth: as far up from the lower edge as the draft has it, measured parallel to that edge. */
function bustRound(pieces: readonly Piece[], up: number): number {
  const hung = pieces.map((piece) => ({
    ...piece,
    edges: piece.edges.map((edge) => (edge.name === 'waist-seam' ? { ...edge, role: 'waist' as const } : edge)),
  }));
  return roundAt(hung, up);
}
