import type { Point } from '../geometry/point';
import type { LayGround, Stance, ToLay } from './lay-task';
import { boxInStance, inStance } from './stance-outline';

/**
 * How far beyond a multiple of the repeat the top left of a piece's box lies when the piece is matched. `undefined` for a
 * piece without a place to be matched.
 */
export function matchPhase({ outline, match }: Pick<ToLay, 'outline' | 'match'>, stance: Stance): Point | undefined {
  const box = match && boxInStance(outline, stance);
  if (!box) return undefined;
  const { x, y } = inStance(match, stance);
  return { x: box.minX - x, y: box.minY - y };
}

/** The place nearest to the wanted one (both of the top left of the box) at which a piece is matched to the repeat. */
export function matchedPlace(
  piece: Pick<ToLay, 'outline' | 'match' | 'onFold'>,
  stance: Stance,
  repeat: NonNullable<LayGround['repeat']>,
  at: Point,
): Point {
  const phase = matchPhase(piece, stance);
  if (!phase) return at;
  const nearest = (place: number, each: number, beyond: number) =>
    each > 0 ? beyond + Math.round((place - beyond) / each) * each : place;
  return {
    x: piece.onFold === 'across' ? 0 : nearest(at.x, repeat.along, phase.x),
    y: piece.onFold === 'along' ? 0 : nearest(at.y, repeat.across, phase.y),
  };
}
