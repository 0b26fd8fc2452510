import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { segmentAt } from '../geometry/cubic-curve';
import { forwardSpans, type Span, steadyStretches } from '../geometry/parallel-source';
import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { allowanceOf } from './allowance-strips';
import { windingOf } from './corner-angle';

/** A place on an edge that is hollow more tightly than its allowance is wide. */
export interface TightHollow {
  readonly edgeId: string;
  readonly at: Point;
  readonly width: number;
}

/**
 * Where edges curve inwards more tightly than their allowances are wide (the radius is less than the width): there the cut
 * line cannot follow and passes the bottom of the hollow further out, so that more is allowed than she said. One place for
 * each stretch of such a curve, in the middle of it.
 */
export function tightHollows(piece: Piece): readonly TightHollow[] {
  const { edges } = outlineOf(piece);
  const outward = windingOf(piece);
  return piece.edges.flatMap((edge, index) => {
    const width = allowanceOf(edge) ?? 0;
    if (width === 0) return [];
    return steadyStretches(edges[index] as Path).flatMap((segment): TightHollow[] => {
      return backwardSpans(forwardSpans(segment, outward * width)).map(({ from, to }) => {
        return { edgeId: edge.id, at: segmentAt(segment, (from + to) / 2), width };
      });
    });
  });
}

/** What is left of a stretch between the spans on which its parallel runs forwards; specks are left out. */
function backwardSpans(forward: readonly Span[]): Span[] {
  const gaps: Span[] = [];
  let from = 0;
  for (const span of [...forward, { from: 1, to: 1 }]) {
    if (span.from - from > SPECK) gaps.push({ from, to: span.from });
    from = span.to;
  }
  return gaps;
}

/** A share of a stretch too small to speak of. */
const SPECK = 1e-3;
