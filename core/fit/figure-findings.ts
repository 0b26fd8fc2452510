/** Printed figures held against one another: their sums against a printed whole, against a seam's other side, round a piece. */
import { cutPieces } from '../garment/cut-pieces';
import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { PrintedWhole } from '../garment/printed-whole';
import { isOwnMirror, type Seam, type SeamEdge } from '../garment/seam';
import { pathLength } from '../geometry/path';
import { SEWING_TOLERANCE } from './fit-findings';
import { edgeOf, figureOf, printedSum } from './printed-sums';

/** A clash of printed figures, in mm. Where one place can have several, `at` says which. */
export type FigureFinding = FindingBase &
  /** Single figures that add to something else than the whole says. Parts without a figure count as drawn. */
  (
    | {
        readonly kind: 'figures-clash';
        readonly at: string;
        readonly name: string;
        readonly lengths: readonly { readonly length: number; readonly times: number }[];
        readonly sum: number;
        readonly whole: number;
        readonly allPrinted: boolean;
      }
    /** The whole rules, but the edges drawn come to something else. */
    | {
        readonly kind: 'whole-not-met';
        readonly at: string;
        readonly name: string;
        readonly drawn: number;
        readonly whole: number;
      }
    /** What is printed for the two sides of a seam differs by other than its ease. */
    | {
        readonly kind: 'seam-figures-clash';
        readonly at: string;
        readonly one: number;
        readonly other: number;
        readonly ease: number;
      }
    /** A straight edge is said to be longer than all the others of its piece together. */
    | { readonly kind: 'figures-cannot-close'; readonly stated: number; readonly others: number }
  );

/** Every clash between printed figures. */
export function figureFindings(garment: Garment): FigureFinding[] {
  return [
    ...(garment.wholes ?? []).flatMap((whole) => wholeFindings(garment, whole)),
    ...(garment.seams ?? []).flatMap((seam) => seamFigures(garment, seam)),
    ...cutPieces(garment).flatMap(closingFindings),
  ];
}

function wholeFindings(garment: Garment, whole: PrintedWhole): FigureFinding[] {
  const { parts, sum, drawn } = printedSum(garment, whole);
  const first = parts[0]?.ref;
  if (!first || whole.rules === 'parts') return [];
  const base = { weight: 'stop', place: { kind: 'edge', ...first }, at: whole.id, name: whole.name } as const;
  if (whole.rules === 'whole') {
    const isMet = Math.abs(drawn - whole.length) <= SEWING_TOLERANCE;
    return isMet ? [] : [{ kind: 'whole-not-met', ...base, drawn, whole: whole.length }];
  }
  if (Math.abs(sum - whole.length) <= SEWING_TOLERANCE) return [];
  const lengths = parts.map(({ length, times }) => ({ length, times }));
  const allPrinted = parts.every(({ isPrinted }) => isPrinted);
  return [{ kind: 'figures-clash', ...base, lengths, sum, whole: whole.length, allPrinted }];
}

function seamFigures(garment: Garment, seam: Seam): FigureFinding[] {
  if (isOwnMirror(seam)) return [];
  const [one, other] = [printedSide(garment, seam.one), printedSide(garment, seam.other)];
  const place = seam.one[0];
  if (one === undefined || other === undefined || !place) return [];
  if (seam.lap || Math.abs(one - other - seam.ease) <= SEWING_TOLERANCE) return [];
  const { pieceId, edgeId } = place;
  const { ease, id } = seam;
  return [
    { kind: 'seam-figures-clash', weight: 'warn', place: { kind: 'edge', pieceId, edgeId }, at: id, one, other, ease },
  ];
}

/** What is printed for one side of a seam; nothing where an edge of it has no figure. */
function printedSide(garment: Garment, side: readonly SeamEdge[]): number | undefined {
  let sum = 0;
  for (const { times = 1, ...ref } of side) {
    const found = edgeOf(garment, ref);
    const figure = found && figureOf(found);
    if (!figure?.isPrinted) return undefined;
    sum += times * figure.length;
  }
  return sum;
}

function closingFindings(piece: Piece): FigureFinding[] {
  const lengths = piece.edges.map((edge, index) => {
    return figureOf({ piece, edge, drawn: pathLength(outlineOf(piece).edges[index] ?? []) });
  });
  const round = lengths.reduce((sum, { length }) => sum + length, 0);
  return piece.edges.flatMap((edge, index): FigureFinding[] => {
    const { length, isPrinted } = lengths[index] ?? { length: 0, isPrinted: false };
    if (!isPrinted || edge.shape.kind !== 'straight' || length <= round - length) return [];
    const place = { kind: 'edge', pieceId: piece.id, edgeId: edge.id } as const;
    return [{ kind: 'figures-cannot-close', weight: 'stop', place, stated: length, others: round - length }];
  });
}
