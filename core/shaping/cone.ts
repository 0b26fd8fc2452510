/**
 * A skirt from waist to hip is a part of a cone, laid flat as a part of a ring. With waist W, hip H and d between them
 * along the body, the waist lies on a circle of radius W d / (H - W); so Laura I. Baldt, Clothing for Women (1916), for a
 * circular flounce. Written with the curvature 1/r the sums run on through H = W, where the waist is straight, to H < W.
 */

/** Lengths (mm) of one piece, or of a whole ring: waist, hip, and how far apart they lie along the body. */
export interface ConeMeasures {
  readonly waist: number;
  readonly hip: number;
  readonly depth: number;
}

/** The flat part of the cone, with the straight edge down from the waist at zero, x towards the other edge, y down. */
export interface Cone {
  readonly waist: number;
  /** One over the radius of the waist, per mm; 0 for a straight waist, negative where the waist is larger than the hip. */
  readonly curvature: number;
  /** The turn from the straight edge to the other (radians); negative where the waist is larger. */
  readonly angle: number;
  /** The waist's far end: how far across it lies and how far it rises above the near end (mm). */
  readonly across: number;
  readonly rise: number;
}

/** Below this turn the straight-line forms are exact to the last figure and the quotients are not. */
const NO_TURN = 1e-6;

/** The flat shape of the measures. `waist` and `depth` must be positive. */
export function coneOf({ waist, hip, depth }: ConeMeasures): Cone {
  const angle = (hip - waist) / depth;
  const curvature = angle / waist;
  return { waist, curvature, angle, ...ringPoint(waist, angle, 0) };
}

/** A point on the far edge of the cone, `depth` down it from the waist: across and above the near end of the waist. */
export function farEdgeAt(cone: Cone, depth: number): { readonly across: number; readonly rise: number } {
  return ringPoint(cone.waist, cone.angle, depth);
}

/** How far the middle of a piece with two equal sloping edges dips below its waist corners (mm). */
export function middleDip(cone: Cone): number {
  return ringPoint(cone.waist / 2, cone.angle / 2, 0).rise;
}

/** The point at the end of a waist of that length that turns by `angle`, and `depth` further down the edge there. */
function ringPoint(waist: number, angle: number, depth: number) {
  const isStraight = Math.abs(angle) < NO_TURN;
  const sine = isStraight ? 1 : Math.sin(angle) / angle;
  const versine = isStraight ? angle / 2 : (1 - Math.cos(angle)) / angle;
  return {
    across: waist * sine + depth * Math.sin(angle),
    rise: waist * versine - depth * Math.cos(angle),
  };
}
