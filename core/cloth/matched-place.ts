import { boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import type { LayGround, Stance, ToLay } from './lay-task';
import { inStance } from './stance-outline';

/** The place nearest to the wanted one (both of the top left of the box) at which a piece is matched to the repeat. */
export function matchedPlace(
  { outline, match, onFold }: Pick<ToLay, 'outline' | 'match' | 'onFold'>,
  stance: Stance,
  repeat: NonNullable<LayGround['repeat']>,
  at: Point,
): Point {
  const corner = boxOfPoints(outline.map((point) => inStance(point, stance)));
  if (!match || !corner) return at;
  const matched = inStance(match, stance);
  const nearest = (place: number, each: number, phase: number) =>
    each > 0 ? phase + Math.round((place - phase) / each) * each : place;
  return {
    x: onFold === 'across' ? 0 : nearest(at.x, repeat.along, corner.minX - matched.x),
    y: onFold === 'along' ? 0 : nearest(at.y, repeat.across, corner.minY - matched.y),
  };
}
