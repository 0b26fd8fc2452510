import type { PaperChoice, SquaresChoice } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathAtLength, pathBounds, pathLength } from '../geometry/path';
import { type Point, type TablePoint, turnBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { centimetres, inches, MM_PER_INCH, type ShownIn, squareSize } from '../units/inch';
import { longestBetweenCorners } from './assembled-totals';
import { type BaseLine, baseLineOf, type Offset, offsetFrom } from './base-line';
import { letters } from './letters';
import { type SquareProof, squareProof } from './square-proof';

/** A place counted from the sheet's zero, and by the base line; each rounded once to the sheet's step (mm). */
interface Counted {
  readonly across: number;
  readonly down: number;
  readonly off: Offset;
}

/** A point to carry to large paper. */
export interface SquaresPoint extends Counted {
  readonly name: string;
  readonly kind: 'corner' | 'along';
}

/** A dart's mouth and point, a notch, an end of the grain or a label, in the same count. */
export interface SquaresMark extends Counted {
  readonly kind: 'dart-start' | 'dart-point' | 'dart-end' | 'notch' | 'grain-start' | 'grain-end' | 'label';
  /** The number of the dart, or the words of the label. */
  readonly text: string;
}

/** A length between two named points, along an edge or straight (mm). */
export interface SquaresLength {
  readonly from: string;
  readonly to: string;
  readonly name: string;
  readonly length: number;
}

/** A piece as a table of points, to be drawn on large paper with a yardstick and a right angle. */
export interface SquaresSheet {
  /** The zero, on a crossing of the drafting squares above and left of the piece. */
  readonly origin: TablePoint;
  /** The side of one square at full size (mm), and how many there are. */
  readonly square: number;
  readonly squaresAcross: number;
  readonly squaresDown: number;
  /** In the order of drawing, round the stitch line. */
  readonly points: readonly SquaresPoint[];
  readonly marks: readonly SquaresMark[];
  readonly edges: readonly SquaresLength[];
  /** Two distances between corners far apart: measured on the paper, they prove the whole. */
  readonly diagonals: readonly SquaresLength[];
  /** The line from which points are measured off, where that is how they are told. */
  readonly base: BaseLine;
  /** What proves the large paper square before the first point. */
  readonly proof: SquareProof;
}

export interface SquaresOptions {
  readonly shownIn: ShownIn;
  readonly step: PaperChoice['step'];
  /** So many squares can be told apart on the small drawing, either way. */
  readonly most: { readonly across: number; readonly down: number };
  /** The square and the base line she asked for. */
  readonly choice?: Pick<SquaresChoice, 'square' | 'base'> | undefined;
}

const steps: Readonly<Record<PaperChoice['step'], number>> = {
  sixteenth: MM_PER_INCH / 16,
  eighth: MM_PER_INCH / 8,
  millimetre: 1,
};

/** How large a square can be at full size, the finest first. */
export const SQUARES: Readonly<Record<ShownIn, readonly number[]>> = {
  in: [1, 2, 3, 4, 6, 12, 24].map(inches),
  cm: [2, 5, 10, 20, 50].map(centimetres),
};

/** Along a curve a point stands at least this often, and before it has turned so far. */
const ALONG_EVERY: Readonly<Record<ShownIn, number>> = { in: inches(2), cm: centimetres(5) };
const TURNS_AT_MOST = Math.PI / 9;

/** Nobody marks more points of a piece than this: where its curves had more, they stand further apart. */
const MOST_POINTS = 1000;

/**
 * The table of points of a piece: every corner (A, B, C…) and between them the points of every curve (A1, A2…), close
 * enough to be drawn again by hand. Each is rounded once, from one zero; steps are never added up. Squares are an inch
 * or two centimetres or as she chose, and larger for a piece that has more of them than `most`.
 */
export function squaresSheet(piece: Piece, { shownIn, step, most, choice }: SquaresOptions): SquaresSheet {
  const outline = outlineOf(piece);
  const box = pathBounds(outline.whole);
  const grid = squareSize(shownIn);
  const origin = { x: Math.floor(box.minX / grid + 1e-6) * grid, y: Math.floor(box.minY / grid + 1e-6) * grid };
  const across = box.maxX - origin.x;
  const down = box.maxY - origin.y;
  const least = choice?.square ?? 0;
  const fits = (side: number) => side >= least - 1e-6 && across <= side * most.across && down <= side * most.down;
  const square = SQUARES[shownIn].find(fits) ?? Math.max(...SQUARES[shownIn]);
  const base = baseLineOf(piece, choice?.base?.find(({ pieceId }) => pieceId === piece.id)?.edgeId);
  if (!base) throw new Error(`piece ${piece.id} has no corners`);
  const rounded = (length: number) => Math.round(length / steps[step]) * steps[step] + 0;
  const counted = ({ x, y }: Point): Counted => {
    const { along, out } = offsetFrom(base, { x, y });
    const off = { along: rounded(along), out: rounded(out) };
    return { across: rounded(x - origin.x), down: rounded(y - origin.y), off };
  };
  const edges = piece.edges.map((edge, index): SquaresLength & { readonly path: Path } => {
    const path = outline.edges[index] ?? [];
    const to = letters((index + 1) % piece.corners.length);
    return { from: letters(index), to, name: edge.name, length: pathLength(path), path };
  });
  const divided = edges.map(({ path, length }) => partsOf(path, length, shownIn));
  const share = Math.min(1, MOST_POINTS / divided.reduce((sum, parts) => sum + parts, 0));
  const points = edges.flatMap(({ from, length, path }, index): SquaresPoint[] => {
    const corner = piece.corners[index];
    if (!corner) return [];
    const parts = Math.ceil((divided[index] ?? 1) * share);
    return Array.from({ length: parts }, (_, k) =>
      k === 0
        ? { name: from, kind: 'corner', ...counted(corner.at) }
        : { name: `${from}${k}`, kind: 'along', ...counted(pathAtLength(path, (length * k) / parts).point) },
    );
  });
  const [squaresAcross, squaresDown] = [across, down].map((long) => Math.max(1, Math.ceil(long / square - 1e-6))) as [
    number,
    number,
  ];
  return {
    origin,
    square,
    squaresAcross,
    squaresDown,
    points,
    marks: marksOf(piece).map(({ kind, text, at }) => ({ kind, text, ...counted(at) })),
    edges: edges.map(({ path: _, ...edge }) => edge),
    diagonals: twoDiagonals(piece),
    base,
    proof: squareProof({ across: squaresAcross * square, down: squaresDown * square }, shownIn),
  };
}

/** Into how many equal parts an edge is divided: one when it is straight. */
function partsOf(path: Path, length: number, shownIn: ShownIn): number {
  if (path.every((segment) => segment.kind === 'line')) return 1;
  const looks = 32;
  let turned = 0;
  for (let k = 0; k < looks; k++) {
    const [one, other] = [k, k + 1].map((at) => pathAtLength(path, (length * at) / looks).tangent);
    if (one && other) turned += Math.abs(turnBetween(one, other));
  }
  return Math.max(2, Math.ceil(length / ALONG_EVERY[shownIn]), Math.ceil(turned / TURNS_AT_MOST));
}

type Placed = Pick<SquaresMark, 'kind' | 'text'> & { readonly at: Point };

function marksOf(piece: Piece): Placed[] {
  const outline = outlineOf(piece);
  const onEdge = (edgeId: string, along: number): Point | undefined => {
    const path = outline.edges[piece.edges.findIndex((edge) => edge.id === edgeId)];
    return path && pathAtLength(path, along).point;
  };
  const marks: (Omit<Placed, 'at'> & { readonly at: Point | undefined })[] = [
    ...piece.darts.flatMap(({ edgeId, along, width, point }, index) => [
      { kind: 'dart-start' as const, text: String(index + 1), at: onEdge(edgeId, along - width / 2) },
      { kind: 'dart-point' as const, text: String(index + 1), at: point },
      { kind: 'dart-end' as const, text: String(index + 1), at: onEdge(edgeId, along + width / 2) },
    ]),
    ...piece.notches.map(({ edgeId, along }) => ({ kind: 'notch' as const, text: '', at: onEdge(edgeId, along) })),
    { kind: 'grain-start', text: '', at: piece.grain?.from },
    { kind: 'grain-end', text: '', at: piece.grain?.to },
    ...piece.labels.map(({ at, text }) => ({ kind: 'label' as const, text, at })),
  ];
  return marks.flatMap(({ kind, text, at }) => (at ? [{ kind, text, at }] : []));
}

/** The longest, and of those that end in other corners the longest; any other where there is none. */
function twoDiagonals(piece: Piece): SquaresLength[] {
  const [first, ...others] = longestBetweenCorners(piece);
  if (!first) return [];
  const ends = [first.from, first.to];
  const second = others.find(({ from, to }) => !ends.includes(from) && !ends.includes(to)) ?? others[0];
  return [first, ...(second ? [second] : [])].map(({ from, to, length }) => {
    return { from: letters(from - 1), to: letters(to - 1), name: '', length };
  });
}
