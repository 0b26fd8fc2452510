import { setStated } from '../garment/edge-edits';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { type EdgeFigure, type NotPulled, pullToFigures } from './pull-to-figures';
import { pullEdgeToLength } from './stated-figure';

/** A length is met when it would be written alike on the finest ruler: half of a thirty-second of an inch. */
const MET = 25.4 / 64;

/**
 * The piece with edges pulled to figures, which rule from then on. Edges whose figures rule already keep theirs: with some
 * the corners give way all together, as little as they can; a lone figure moves one corner along its own edge.
 */
export function obeyFigures(piece: Piece, figures: readonly EdgeFigure[]): Piece | NotPulled {
  const held = piece.edges.flatMap(({ id, stated }) => {
    const isHeld = stated?.rules === 'figure' && figures.every(({ edgeId }) => edgeId !== id);
    return isHeld ? [{ edgeId: id, length: stated.length }] : [];
  });
  const all = [...held, ...figures];
  const [only] = all;
  const pulled = only && all.length === 1 ? alone(piece, only) : pullToFigures(piece, all);
  if ('kind' in pulled) return pulled;
  return figures.reduce((now, { edgeId, length }) => setStated(now, edgeId, { length, rules: 'figure' }), pulled);
}

function alone(piece: Piece, { edgeId, length }: EdgeFigure): Piece | NotPulled {
  const pulled = pullEdgeToLength(piece, edgeId, length);
  const path = outlineOf(pulled).edges[edgeIndex(pulled, edgeId)] ?? [];
  return Math.abs(pathLength(path) - length) <= MET ? pulled : { kind: 'not-pulled', why: 'do-not-close' };
}
