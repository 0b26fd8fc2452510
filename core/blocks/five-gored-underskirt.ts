import type { Piece } from '../garment/piece';
import { distance, move, type Point, unit, vectorBetween } from '../geometry/point';
import { inches } from '../units/inch';
import type { DraftOptions } from './draft-names';
import type { DraftQuestion } from './draft-question';
import { draftedPiece } from './drafted-piece';
import { laidBeside } from './lay-beside';

/** Body measures (mm), the hip 6 in below the waist; lengths from waist to hem. */
export interface UnderskirtSizes {
  readonly waist: number;
  readonly hip: number;
  readonly front: number;
  readonly side: number;
}

/** One gore by the six dots of the book; its straight edge runs down from `dot1` to `base`. */
export interface DottedGore {
  readonly dot1: Point;
  readonly dot2: Point;
  readonly dot3: Point;
  readonly dot4: Point;
  readonly dot5: Point;
  readonly dot6: Point;
  readonly base: Point;
}

export interface Underskirt {
  readonly kind: 'underskirt';
  /** Half of the front gore, its straight edge on the fold. */
  readonly front: DottedGore;
  readonly side: DottedGore;
  /** The back gore as far as the book goes: its top, and that top carried on 3 in for gathers. */
  readonly back: Omit<DottedGore, 'dot6' | 'base'> & { readonly gathersEnd: Point };
  readonly questions: readonly DraftQuestion[];
}

export interface NoUnderskirt {
  readonly kind: 'no-underskirt';
  /** `hip-too-narrow`: a dot of the hip would lie nearer than the waist's rise reaches. */
  readonly why: 'not-positive' | 'hip-below-hem' | 'hip-too-narrow';
}

/** The figures of the draft: the hip below the waist, how far each gore rises, what a back is widened by for gathers. */
const HIP_DEPTH = inches(6);
const RISE = { front: inches(1 / 4), side: inches(1 / 2), back: inches(3 / 4) } as const;
const FRONT_WIDENS = inches(1);
const SIDE_WIDENS = 1.5;
const GATHERS = inches(3);

/**
 * The five-gored underskirt of Carrie Crane Ingalls, Text-Book on Domestic Art (1911), dot by dot; "six below" is taken
 * straight down. The waist of a gore is the slanting line from dot 1 to dot 4. The text breaks off within the back gore,
 * which is asked about.
 */
export function fiveGoredUnderskirt({ waist, hip, front, side }: UnderskirtSizes): Underskirt | NoUnderskirt {
  if (!(waist > 0 && hip > 0)) return { kind: 'no-underskirt', why: 'not-positive' };
  if (!(front > HIP_DEPTH && side > HIP_DEPTH)) return { kind: 'no-underskirt', why: 'hip-below-hem' };
  const frontTop = topOf(waist / 8, RISE.front, (slope) => slope + FRONT_WIDENS);
  const sideTop = topOf(waist / 6, RISE.side, (slope) => slope * SIDE_WIDENS);
  if (!frontTop || !sideTop) return { kind: 'no-underskirt', why: 'hip-too-narrow' };
  const backWaist = waist / 2 - frontTop.waist - sideTop.waist;
  const backTop = topOf(backWaist, RISE.back, () => hip / 2 - frontTop.hip - sideTop.hip);
  if (!backTop || !(backWaist > 0)) return { kind: 'no-underskirt', why: 'hip-too-narrow' };
  const frontSix = downTo(frontTop.dot4, frontTop.dot5, front);
  const straight = distance(frontTop.dot4, frontSix);
  const along = unit(vectorBetween(sideTop.dot4, sideTop.dot5)) ?? { dx: 0, dy: 1 };
  const outwards = unit(vectorBetween(backTop.dot1, backTop.dot4)) ?? { dx: 1, dy: 0 };
  const { waist: _w, hip: _h, ...back } = { ...backTop, gathersEnd: move(backTop.dot4, outwards, GATHERS) };
  return {
    kind: 'underskirt',
    front: { ...dotsOf(frontTop), dot6: frontSix, base: { x: 0, y: front } },
    side: { ...dotsOf(sideTop), dot6: move(sideTop.dot4, along, side), base: { x: 0, y: straight } },
    back,
    questions: [{ kind: 'source-ends', piece: 'back', last: 'dot5', at: back.dot5 }],
  };
}

type Top = Omit<DottedGore, 'dot6' | 'base'> & { readonly waist: number; readonly hip: number };

/** Dots 1 to 5, dot 1 at (0, 0); `undefined` where the hip does not reach from dot 2 to the level of dot 5. */
function topOf(across: number, rise: number, hipOf: (waist: number) => number): Top | undefined {
  const waist = Math.hypot(across, rise);
  const hip = hipOf(waist);
  if (!(hip > rise)) return undefined;
  const level = HIP_DEPTH - rise;
  return {
    dot1: { x: 0, y: 0 },
    dot2: { x: 0, y: HIP_DEPTH },
    dot3: { x: across, y: 0 },
    dot4: { x: across, y: -rise },
    dot5: { x: Math.sqrt(hip * hip - rise * rise), y: level },
    waist,
    hip,
  };
}

function dotsOf({ dot1, dot2, dot3, dot4, dot5 }: Top) {
  return { dot1, dot2, dot3, dot4, dot5 };
}

/** Where the line from `from` through `via` comes to the level `y`. */
function downTo(from: Point, via: Point, y: number): Point {
  const share = (y - from.y) / (via.y - from.y);
  return { x: from.x + (via.x - from.x) * share, y };
}

export interface UnderskirtPieces {
  readonly kind: 'underskirt-pieces';
  readonly pieces: readonly Piece[];
  readonly questions: readonly DraftQuestion[];
}

/**
 * The front on the fold and the side gore, straight edge to the front; the book's notches: one where front and side meet
 * at the hip, two behind. The hem of the side is curved down by eye, square to both edges. No back: the book breaks off.
 */
export function fiveGoredUnderskirtPieces(
  sizes: UnderskirtSizes,
  { newId, nameOf }: DraftOptions,
): UnderskirtPieces | NoUnderskirt {
  const draft = fiveGoredUnderskirt(sizes);
  if (draft.kind === 'no-underskirt') return draft;
  const { front, side, questions } = draft;
  const notch = (along: number, count: 1 | 2) => ({ notches: [{ along, count }] });
  const hem = { role: 'hem', shape: { kind: 'curve', through: [], leaves: 'square', meets: 'square' } } as const;
  const frontPiece = draftedPiece({
    newId,
    name: nameOf('front'),
    cut: { how: 'fold', count: 1 },
    grain: grainOf(front),
    edges: [
      { from: front.dot1, role: 'waist' },
      {
        from: front.dot4,
        role: 'seam',
        name: nameOf('gore-seam', 1),
        ...notch(distance(front.dot4, front.dot5), 1),
      },
      { from: front.dot6, ...hem },
      { from: front.base, role: 'fold' },
    ],
  });
  const sidePiece = draftedPiece({
    newId,
    name: nameOf('side-gore', 1),
    cut: { how: 'pair', count: 2 },
    grain: grainOf(side),
    edges: [
      { from: side.dot1, role: 'waist' },
      { from: side.dot4, role: 'seam', name: nameOf('gore-seam', 2), ...notch(distance(side.dot4, side.dot5), 2) },
      { from: side.dot6, ...hem },
      {
        from: side.base,
        role: 'seam',
        name: nameOf('gore-seam', 1),
        ...notch(side.base.y - side.dot2.y, 1),
      },
    ],
  });
  return { kind: 'underskirt-pieces', pieces: laidBeside([frontPiece, sidePiece]), questions };
}

function grainOf({ dot2, dot3, base }: DottedGore) {
  return { from: { x: dot3.x / 2, y: dot2.y }, to: { x: dot3.x / 2, y: base.y * 0.8 } };
}
