import { movePiece } from '../garment/move-piece';
import type { Dart, EdgeShape, Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import { draftedPiece } from './drafted-piece';

/** Body measures (mm): the draft adds its own ease, 24 at the waist and 50 at the hip. */
export interface TwoDartSkirtSizes {
  readonly waist: number;
  readonly hip: number;
  readonly waistToHip: number;
  readonly length: number;
}

/** One half of the draft: points named by where they lie, the dart with its mouth on the waist. */
export interface SkirtQuarter {
  readonly centreWaist: Point;
  readonly centreHem: Point;
  readonly sideWaist: Point;
  readonly sideHip: Point;
  readonly sideHem: Point;
  /** From the centre to the side. */
  readonly waist: Path;
  /** From waist to hip. */
  readonly hipCurve: Path;
  readonly dart: Omit<Dart, 'id' | 'edgeId'>;
}

/** Back and front side by side, centre back waist at (0, 0), meeting in one line below the hip. */
export interface TwoDartSkirt {
  readonly kind: 'two-dart-skirt';
  readonly back: SkirtQuarter;
  readonly front: SkirtQuarter;
}

export interface NoTwoDartSkirt {
  readonly kind: 'no-two-dart-skirt';
  /** `waist-over-hip`: the side would slope outwards above the hip, which this draft is not made for. */
  readonly why: 'not-positive' | 'hip-below-hem' | 'waist-over-hip';
}

/** The figures of the draft (mm): WikiEducator, Handout for drafting skirt block. */
const HALF_HIP_EASE = 25;
const BACK_WIDER = 7.5;
const DART = 20;
const BACK_WAIST_EASE = 12;
const SIDE_RISE = 10;
const DART_PAST_HALF = 10;
const BACK_DART_LONG = 120;
const FRONT_DART_LONG = 100;

/** How far apart the two pieces are laid. */
const APART = 50;

/**
 * The two-dart skirt block of WikiEducator, Handout for drafting skirt block (open educational handout, metric): half of
 * the skirt, back and front, with one dart each, the side seam raised 1 cm at the waist. The side is led as one curve
 * from waist to hip that runs on straight below; the handout draws it by eye.
 */
export function twoDartSkirt({ waist, hip, waistToHip, length }: TwoDartSkirtSizes): TwoDartSkirt | NoTwoDartSkirt {
  if (!(waist > 0 && hip > 0 && waistToHip > 0)) return { kind: 'no-two-dart-skirt', why: 'not-positive' };
  if (!(length > waistToHip)) return { kind: 'no-two-dart-skirt', why: 'hip-below-hem' };
  const half = hip / 2 + HALF_HIP_EASE;
  const backHip = half / 2 + BACK_WIDER;
  const backWaist = waist / 4 + DART + BACK_WAIST_EASE;
  const frontWaist = waist / 4 + DART;
  if (backWaist > backHip || frontWaist > half - backHip) return { kind: 'no-two-dart-skirt', why: 'waist-over-hip' };
  const lengths = { waistToHip, length };
  return {
    kind: 'two-dart-skirt',
    back: quarter({ centre: 0, side: 1, waist: backWaist, hip: backHip, dartLong: BACK_DART_LONG, ...lengths }),
    front: quarter({
      centre: half,
      side: -1,
      waist: frontWaist,
      hip: half - backHip,
      dartLong: FRONT_DART_LONG,
      ...lengths,
    }),
  };
}

function quarter(at: {
  readonly centre: number;
  readonly side: 1 | -1;
  readonly waist: number;
  readonly hip: number;
  readonly dartLong: number;
  readonly waistToHip: number;
  readonly length: number;
}): SkirtQuarter {
  const { centre, side, waistToHip, length } = at;
  const centreWaist = { x: centre, y: 0 };
  const sideWaist = { x: centre + side * at.waist, y: -SIDE_RISE };
  const sideHip = { x: centre + side * at.hip, y: waistToHip };
  const sideHem = { x: sideHip.x, y: length };
  const dartFromCentre = at.waist / 2 + DART_PAST_HALF;
  return {
    centreWaist,
    centreHem: { x: centre, y: length },
    sideWaist,
    sideHip,
    sideHem,
    waist: splineThrough([centreWaist, sideWaist], { directions: [{ dx: side, dy: 0 }] }),
    hipCurve: splineThrough([sideWaist, sideHip], { directions: [undefined, { dx: 0, dy: 1 }] }),
    dart: { along: dartFromCentre, width: DART, point: { x: centre + side * dartFromCentre, y: at.dartLong } },
  };
}

export interface TwoDartSkirtPieceOptions {
  readonly newId: () => string;
  /** `side` and `centreBack` are carried by the seams; none unless said. */
  readonly names: {
    readonly back: string;
    readonly front: string;
    readonly side?: string;
    readonly centreBack?: string;
  };
}

/** Back and front as pieces: the back a pair with a seam down its centre, the front on the fold. */
export function twoDartSkirtPieces(
  sizes: TwoDartSkirtSizes,
  { newId, names }: TwoDartSkirtPieceOptions,
): Piece[] | NoTwoDartSkirt {
  const draft = twoDartSkirt(sizes);
  if (draft.kind === 'no-two-dart-skirt') return draft;
  const { back, front } = draft;
  const { side = '', centreBack = '' } = names;
  const backPiece = draftedPiece({
    newId,
    name: names.back,
    cut: { how: 'pair', count: 2 },
    grain: grainBeside(back),
    edges: [
      { from: back.centreWaist, role: 'waist', shape: bow('square', 'free'), darts: [back.dart] },
      { from: back.sideWaist, role: 'seam', name: side, shape: bow('free', 'in-line') },
      { from: back.sideHip, role: 'seam', name: side },
      { from: back.sideHem, role: 'hem' },
      { from: back.centreHem, role: 'seam', name: centreBack },
    ],
  });
  const frontDart = { ...front.dart, along: pathLength(front.waist) - front.dart.along };
  const frontPiece = draftedPiece({
    newId,
    name: names.front,
    cut: { how: 'fold', count: 1 },
    grain: grainBeside(front),
    edges: [
      { from: front.sideWaist, role: 'waist', shape: bow('free', 'square'), darts: [frontDart] },
      { from: front.centreWaist, role: 'fold' },
      { from: front.centreHem, role: 'hem' },
      { from: front.sideHem, role: 'seam', name: side },
      { from: front.sideHip, role: 'seam', name: side, shape: bow('in-line', 'free') },
    ],
  });
  return [backPiece, movePiece(frontPiece, { dx: APART, dy: 0 })];
}

type Ends = Extract<EdgeShape, { kind: 'curve' }>;

function bow(leaves: Ends['leaves'], meets: Ends['meets']): EdgeShape {
  return { kind: 'curve', through: [], leaves, meets };
}

/** The straight of the cloth, midway between the centre and the side at the hip. */
function grainBeside({ centreWaist, sideHip, sideHem }: SkirtQuarter) {
  const x = (centreWaist.x + sideHip.x) / 2;
  return { from: { x, y: sideHip.y }, to: { x, y: sideHip.y + (sideHem.y - sideHip.y) * 0.75 } };
}
