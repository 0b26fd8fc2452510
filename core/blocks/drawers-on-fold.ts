/**
 * Drawers drafted with one leg folded down its side: the fold at x = 0, y down from the top of the rectangle, the back
 * line wider than the front. Places carry the letters of their sources; lengths in mm.
 */
import { between, distance, move, type Point, quarterTurn, unit, vectorBetween } from '../geometry/point';
import { inches } from '../units/inch';

export interface NoDrawers {
  readonly kind: 'no-drawers';
  /** `waist-too-wide`: the top would be wider than the cloth at the crotch. */
  readonly why: 'not-positive' | 'waist-too-wide' | 'side-too-short';
}

/** One leg, in places every draft has; a draft without a front line of its own has `frontTop` at `backTop`. */
export interface DrawersLeg {
  readonly kind: 'drawers';
  readonly foldTop: Point;
  readonly backTop: Point;
  readonly frontTop: Point;
  readonly crotch: Point;
  readonly legHem: Point;
  readonly foldHem: Point;
  /** Where a slit down the fold ends; `undefined` where the source has none there. */
  readonly placket: Point | undefined;
  /** Where the inner leg passes on its way from crotch to hem; empty for a curve led by eye. */
  readonly innerLeg: readonly Point[];
  /** Where the back line passes before it comes to the crotch. */
  readonly backBends: readonly Point[];
}

const REFUSED = { kind: 'no-drawers', why: 'not-positive' } as const;

/**
 * Drawers for a yoke by Carrie Crane Ingalls, Text-Book on Domestic Art (1911): a rectangle a third of the hip and 4 in
 * wide, 2 in higher than the side, which is taken without its ruffle. Both tops are gathered to the waist or the yoke.
 */
export function yokeDrawers({
  waist,
  hip,
  side,
}: {
  readonly waist: number;
  readonly hip: number;
  readonly side: number;
}): DrawersLeg | NoDrawers {
  if (!(waist > 0 && hip > 0 && side > 0)) return REFUSED;
  const width = hip / 3 + inches(4);
  const top = waist / 2;
  if (!(top <= width)) return { kind: 'no-drawers', why: 'waist-too-wide' };
  const placket = inches(7);
  const hem = side + inches(2);
  const crotch = hem - side / 3;
  if (!(placket < side && crotch > inches(3))) return { kind: 'no-drawers', why: 'side-too-short' };
  return {
    kind: 'drawers',
    foldTop: { x: 0, y: inches(2) },
    backTop: { x: top, y: 0 },
    frontTop: { x: top - inches(2), y: inches(3) },
    crotch: { x: width, y: crotch },
    legHem: { x: top, y: hem },
    foldHem: { x: 0, y: hem },
    placket: { x: 0, y: inches(2) + placket },
    innerLeg: [],
    backBends: [],
  };
}

/** The places of the school drawers by their letters. */
export interface SchoolDrawers extends DrawersLeg {
  readonly letters: Readonly<Record<'L' | 'M' | 'N' | 'O' | 'P' | 'Q' | 'R' | 'S' | 'T' | 'U' | 'V', Point>>;
}

/**
 * Drawers by Ida R. and Myron G. Burton, School Sewing Based on Home Problems (1910s): front L-N and N-P, back L-V
 * and V-S; the curve from S on to P is led by eye. The leg is a straight half of the hip less 2 in.
 */
export function schoolDrawers({
  hip,
  side,
}: {
  readonly hip: number;
  readonly side: number;
}): SchoolDrawers | NoDrawers {
  if (!(hip > inches(4) && side > 0)) return REFUSED;
  const L = { x: 0, y: inches(3) };
  const M = { x: 0, y: inches(4) };
  const N = { x: hip / 4, y: M.y };
  const O = { x: 0, y: L.y + (2 / 3) * side };
  const P = { x: hip / 2 - inches(2), y: O.y };
  const Q = { x: 0, y: L.y + side };
  const R = { x: P.x, y: Q.y };
  const S = { x: P.x - inches(2), y: O.y };
  const T = { x: S.x - inches(1), y: O.y };
  const U = { x: N.x - inches(1), y: N.y };
  if (!(U.x > 0 && P.x > N.x)) return { kind: 'no-drawers', why: 'waist-too-wide' };
  if (!(O.y > U.y)) return { kind: 'no-drawers', why: 'side-too-short' };
  const V = between(S, U, S.y / (S.y - U.y));
  if (!(V.x > 0)) return { kind: 'no-drawers', why: 'side-too-short' };
  return {
    kind: 'drawers',
    letters: { L, M, N, O, P, Q, R, S, T, U, V },
    foldTop: L,
    backTop: V,
    frontTop: N,
    crotch: P,
    legHem: R,
    foldHem: Q,
    placket: undefined,
    innerLeg: [],
    backBends: [between(V, S, 0.5), S],
  };
}

/** The figures of the child's drawers that do not follow from a measure. */
const CHILD = {
  width: inches(14),
  hem: inches(2),
  toFoldTop: inches(3),
  topFromSide: inches(4),
  crotchUp: inches(7.5),
  legAcross: inches(8.5),
  hollow: inches(1),
} as const;

/**
 * A child's drawers, age 8, by Olive C. Hapgood, School Needlework (1890s): the leg measure with 3 in above and 2 in of
 * hem below, 14 in wide whatever the child; the inner leg hollowed 1 in at its middle. Front and back are alike.
 */
export function childsDrawers({ leg }: { readonly leg: number }): DrawersLeg | NoDrawers {
  if (!(leg > CHILD.crotchUp)) return { kind: 'no-drawers', why: leg > 0 ? 'side-too-short' : 'not-positive' };
  const foldTop = { x: 0, y: CHILD.toFoldTop };
  const foldHem = { x: 0, y: CHILD.toFoldTop + leg };
  const backTop = { x: CHILD.width - CHILD.topFromSide, y: 0 };
  const crotch = { x: CHILD.width, y: foldHem.y - CHILD.crotchUp };
  const legHem = { x: CHILD.legAcross, y: foldHem.y };
  const inwards = unit(quarterTurn(vectorBetween(crotch, legHem))) ?? { dx: 0, dy: 0 };
  return {
    kind: 'drawers',
    foldTop,
    backTop,
    frontTop: backTop,
    crotch,
    legHem,
    foldHem,
    placket: { x: 0, y: foldTop.y + CHILD.crotchUp },
    innerLeg: [move(between(crotch, legHem, 0.5), inwards, CHILD.hollow)],
    backBends: [],
  };
}

/** How wide the two tops of both legs are together: what is gathered into a band or a yoke (mm). */
export function topRoundOf({ foldTop, backTop, frontTop }: DrawersLeg): number {
  return 2 * (distance(foldTop, backTop) + distance(foldTop, frontTop));
}
