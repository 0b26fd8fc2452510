import { useEffect, useMemo, useState } from 'react';
import { type LayingOver, laidOver, turnedOver } from '../../core/compare/laid-over';
import { mapPiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { type Affine, composeAffine, rotationAbout, transformPoint, translation } from '../../core/geometry/affine';
import { boxCentre } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import { compareWork } from '../workers/compare-calls';
import type { Comparison, How, Nudge } from './compare-store';

/** Where the other piece is laid, or what keeps it from being laid. */
export type Laying =
  | { readonly kind: 'laid'; readonly piece: Piece }
  | { readonly kind: 'seeking'; readonly stop: () => void }
  | { readonly kind: 'stopped' | 'broken'; readonly again: () => void }
  /** There is no other piece. */
  | { readonly kind: 'none' };

/** How the other piece is laid: as she said; else where both lie if they are one piece, else by best fit. */
export function howOf({ how, source }: Comparison, mine: Piece, other: Piece): How {
  return how ?? (source?.kind !== 'draft' && other.id === mine.id ? 'as-they-lie' : 'best');
}

/** The corners and edges meant: those chosen while they are there, else the first of each, or the same as on mine. */
export function heldBy(comparison: Comparison, mine: Piece, other: Piece) {
  const corner = mine.corners.find(({ id }) => id === comparison.corner) ?? mine.corners[0];
  const otherCorner =
    other.corners.find(({ id }) => id === comparison.otherCorner) ??
    other.corners.find(({ id }) => id === corner?.id) ??
    other.corners[0];
  const edge = mine.edges.find(({ id }) => id === comparison.edge) ?? mine.edges[0];
  const otherEdge =
    other.edges.find(({ id }) => id === comparison.otherEdge) ??
    other.edges.find(({ id }) => id === edge?.id) ??
    other.edges.find(({ role }) => role === edge?.role) ??
    other.edges[0];
  return {
    cornerId: corner?.id ?? '',
    otherCornerId: otherCorner?.id ?? '',
    edgeId: edge?.id ?? '',
    otherEdgeId: otherEdge?.id ?? '',
  };
}

function layingOver(comparison: Comparison, mine: Piece, other: Piece): LayingOver {
  const held = heldBy(comparison, mine, other);
  const kind = howOf(comparison, mine, other);
  switch (kind) {
    case 'as-they-lie':
      return { kind };
    case 'corner':
      return { kind, onCornerId: held.cornerId, cornerId: held.otherCornerId };
    case 'edge':
      return { kind, onEdgeId: held.edgeId, edgeId: held.otherEdgeId, way: comparison.way };
    case 'best':
      return { kind, mirrored: comparison.mirrored };
  }
}

/** The other piece laid on mine, before it is nudged. The best fit is sought off the main thread and can be stopped. */
export function useLaying(comparison: Comparison, mine: Piece, other: Piece | undefined): Laying {
  const { how, source, corner, otherCorner, edge, otherEdge, way, mirrored, turned } = comparison;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a comparison is what it says, whatever object says it
  const asked = useMemo(() => {
    if (!other) return undefined;
    const over = turned ? through(other, turnedOver(other)) : other;
    return { under: mine, over, laying: layingOver(comparison, mine, over) };
  }, [mine, other, how, source, corner, otherCorner, edge, otherEdge, way, mirrored, turned]);
  const [round, setRound] = useState(0);
  const [answer, setAnswer] = useState<{ readonly of: object; readonly laying: Laying }>();
  const [stop, setStop] = useState<() => void>(() => () => undefined);
  useEffect(() => {
    if (asked?.laying.kind !== 'best') return;
    const { under, over, laying } = asked;
    const ending = new AbortController();
    const again = () => {
      setAnswer(undefined);
      setRound(round + 1);
    };
    setStop(() => () => {
      ending.abort();
      setAnswer({ of: asked, laying: { kind: 'stopped', again } });
    });
    void compareWork
      .call('bestFit', { under, over, mirrored: laying.mirrored }, { signal: ending.signal })
      .then((found) => {
        if (ending.signal.aborted) return;
        const laid: Laying =
          'kind' in found ? { kind: 'broken', again } : { kind: 'laid', piece: through(over, found) };
        setAnswer({ of: asked, laying: laid });
      });
    return () => ending.abort();
  }, [asked, round]);
  return useMemo((): Laying => {
    if (!asked) return { kind: 'none' };
    const { under, over, laying } = asked;
    if (laying.kind !== 'best') {
      const motion = laidOver(under, over, laying);
      return { kind: 'laid', piece: motion ? through(over, motion) : over };
    }
    return answer?.of === asked ? answer.laying : { kind: 'seeking', stop };
  }, [asked, answer, stop]);
}

/** A laid piece moved by hand: turned about its middle, then moved. */
export function nudged(piece: Piece, { dx, dy, angle }: Nudge): Piece {
  if (dx === 0 && dy === 0 && angle === 0) return piece;
  const middle = boxCentre(pathBounds(outlineOf(piece).whole));
  return through(piece, composeAffine(translation({ dx, dy }), rotationAbout(middle, angle)));
}

function through(piece: Piece, map: Affine): Piece {
  return mapPiece(piece, (point) => transformPoint(map, point));
}
