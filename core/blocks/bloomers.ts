import type { Piece } from '../garment/piece';
import { between, distance, move, type Point, unit, vectorBetween } from '../geometry/point';
import { inches } from '../units/inch';
import type { DraftOptions } from './draft-names';
import type { DraftQuestion } from './draft-question';
import { draftedPiece } from './drafted-piece';

/** Body measures (mm); `outside` is the finished length down the side. */
export interface BloomersSizes {
  readonly waist: number;
  readonly hip: number;
  readonly rise: number;
  readonly outside: number;
}

/** The front by the letters of its source, A at (0, 0), the side at the left. */
export interface Bloomers {
  readonly kind: 'bloomers';
  readonly letters: Readonly<
    Record<'A' | 'B' | 'C' | 'H' | 'I' | 'R' | 'O' | 'P' | 'Q' | 'X' | 'U' | 'J' | 'M' | 'N' | 'V' | 'T', Point>
  >;
}

export interface NoBloomers {
  readonly kind: 'no-bloomers';
  /** `waist-over-hip`: the waist quarter with its fullness would reach past the side. */
  readonly why: 'not-positive' | 'rise-below-hem' | 'waist-over-hip';
}

/** A sixth of the half hip beyond the quarter is rounded up to an eighth of an inch by the source, so that no curve is short. */
const EIGHTH = inches(1 / 8);
const FULLNESS = inches(2);
const HALF = inches(1 / 2);
const SIDE_OUT = inches(1.5);

/**
 * The front of bloomers by I. Rosenfeld, The Practical Designer for Women's and Misses' Underwear (1918), lesson 411,
 * seams in the lines. A waist quarter too wide for the hip is refused.
 */
export function bloomers({ waist, hip, rise, outside }: BloomersSizes): Bloomers | NoBloomers {
  if (!(waist > 0 && hip > 0 && rise > 0)) return { kind: 'no-bloomers', why: 'not-positive' };
  if (!(outside > rise)) return { kind: 'no-bloomers', why: 'rise-below-hem' };
  const quarter = hip / 4;
  const O = { x: quarter - waist / 4, y: 0 };
  const P = { x: O.x - FULLNESS, y: 0 };
  if (!(P.x > -SIDE_OUT)) return { kind: 'no-bloomers', why: 'waist-over-hip' };
  const reach = Math.ceil(hip / 12 / EIGHTH - 1e-9) * EIGHTH;
  const H = { x: quarter, y: rise };
  const I = { x: quarter + reach, y: rise };
  const J = { x: quarter, y: rise - reach };
  const M = between(J, I, 0.5);
  const towardsH = unit(vectorBetween(M, H)) ?? { dx: 0, dy: 0 };
  const V = { x: I.x - HALF, y: rise };
  return {
    kind: 'bloomers',
    letters: {
      A: { x: 0, y: 0 },
      B: { x: 0, y: rise },
      C: { x: 0, y: outside },
      H,
      I,
      R: { x: quarter, y: 0 },
      O,
      P,
      Q: { x: P.x, y: -HALF },
      X: { x: quarter, y: HALF },
      U: { x: -SIDE_OUT, y: rise },
      J,
      M,
      N: move(M, towardsH, HALF),
      V,
      T: { x: V.x, y: outside },
    },
  };
}

export interface BloomersPieces {
  readonly kind: 'bloomers-pieces';
  readonly pieces: readonly Piece[];
  readonly questions: readonly DraftQuestion[];
}

/** The front as a pair, seams included as in the source; the back is another draft that is not to hand, and asked about. */
export function bloomersPieces(sizes: BloomersSizes, { newId, nameOf }: DraftOptions): BloomersPieces | NoBloomers {
  const draft = bloomers(sizes);
  if (draft.kind === 'no-bloomers') return draft;
  const { B, C, H, I, J, N, Q, T, U, V, X } = draft.letters;
  const piece = draftedPiece({
    newId,
    name: nameOf('front'),
    cut: { how: 'pair', count: 2 },
    drawnAs: 'included',
    grain: { from: { x: H.x / 2, y: B.y * 0.2 }, to: { x: H.x / 2, y: C.y * 0.9 } },
    edges: [
      { from: Q, role: 'waist' },
      {
        from: X,
        role: 'seam',
        name: nameOf('front-seam'),
        shape: { kind: 'curve', through: [between(X, J, 0.5), J, N], leaves: 'free', meets: 'free' },
      },
      { from: I, role: 'seam', name: nameOf('inner-leg-seam') },
      { from: T, role: 'hem' },
      {
        from: C,
        role: 'seam',
        name: nameOf('side-seam'),
        shape: { kind: 'curve', through: [U], leaves: 'free', meets: 'free' },
      },
    ],
  });
  return {
    kind: 'bloomers-pieces',
    pieces: [piece],
    questions: [{ kind: 'source-ends', piece: 'back', last: 'V', at: V }],
  };
}

/** How far the waist reaches and how wide the front is at the hip and at the knee (mm), for checking against the cloth. */
export function bloomersWidths({ letters: { Q, X, U, I, C, T } }: Bloomers) {
  return { waist: distance(Q, X), hip: I.x - U.x, knee: T.x - C.x };
}
