import type { Dart } from '../garment/piece';
import { move, type Point, quarterTurn } from '../geometry/point';
import { inches } from '../units/inch';
import { type ArcRun, alongFacing, arcPlace } from './arc-run';
import {
  backNeck,
  type DartedSide,
  dartedSide,
  frontNeck,
  type NeckAndShoulder,
  neckWidth,
  sideOf,
  waistRun,
} from './bodice-lines';
import type { DraftQuestion } from './draft-question';

/** Body measures (mm) as they are taken: the front length and the bust depth from the neck end of the shoulder. */
export interface BodiceMeasures {
  readonly bust: number;
  readonly waist: number;
  readonly backWaistLength: number;
  readonly frontWaistLength: number;
  readonly shoulder: number;
  readonly acrossBack: number;
  readonly acrossFront: number;
  readonly neck: number;
  readonly bustDepth: number;
  readonly bustSpan: number;
}

/** What is added to the girths, all the way round (mm). */
export interface BodiceEase {
  readonly bust: number;
  readonly waist: number;
}

/** Half of the back or front. Runs go from the centre outwards; darts have their places along the waist from the centre. */
export interface BodiceHalf extends NeckAndShoulder {
  readonly acrossPoint: Point;
  readonly underarm: Point;
  readonly waist: ArcRun;
  readonly sideWaist: Point;
  readonly waistDart: Omit<Dart, 'id' | 'edgeId'> | undefined;
}

export interface Bodice {
  readonly kind: 'bodice';
  readonly back: BodiceHalf;
  readonly front: BodiceHalf & { readonly bustPoint: Point; readonly sideDart: DartedSide | undefined };
  /** The length of the sewn side seam, and how far up it from the waist the bust girth lies. */
  readonly side: number;
  readonly bustUpSide: number;
  readonly questions: readonly DraftQuestion[];
}

export interface NoBodice {
  readonly kind: 'no-bodice';
  /**
   * `across-too-wide`: no room for an armhole between the across measure and the side. `bust-below-waist`: the bust
   * depth reaches the waist. `armhole-too-shallow`: the shoulder falls as low as the underarm.
   */
  readonly why: 'not-positive' | 'across-too-wide' | 'bust-below-waist' | 'armhole-too-shallow' | 'dart-too-wide';
}

/** What of a body a bodice is drafted from, in the order it is asked for. */
export const BODICE_MEASURES = [
  'bust',
  'waist',
  'backWaistLength',
  'frontWaistLength',
  'shoulder',
  'acrossBack',
  'acrossFront',
  'neck',
  'bustDepth',
  'bustSpan',
] as const satisfies readonly (keyof BodiceMeasures)[];

/** The underarm 7 parts of 15 1/2 of the back length down: I. Rosenfeld, The Practical Designer (1918), the 36 figure. */
const ARMHOLE_SHARE = 7 / 15.5;

/** The front is wider than the back by twice this at bust and waist, a quarter (common practice). */
const FRONT_WIDER = inches(3 / 8);

/** Of what a quarter narrows to the waist the side takes a third, the dart the rest (common practice). */
const SIDE_SHARE = 1 / 3;

/** Less than a quarter of an inch is not worth a dart. */
const NARROWEST_DART = inches(1 / 4);

/** Darts end an inch short of the bust point, and behind of its level (common practice). */
const SHORT_OF_BUST = inches(1);

/** A side dart keeps this far from underarm and waist, an armhole at least this deep and this wide in each half (mm). */
const DART_FROM_ENDS = inches(1 / 2);
const LEAST_ARMHOLE = { deep: inches(3), wide: inches(1 / 4) } as const;

/** Rounds in which the place of the side dart settles; each leaves a small part of what was off. */
const ROUNDS = 12;

/** A dart off the level of the bust by more than half an inch is asked about. */
const OFF_LEVEL = inches(1 / 2);

/**
 * A plain bodice block to the waist, by rules of common practice: bust and waist with their ease are met exactly, the
 * neckline is the neck, both shoulders and both sewn sides are equal. What the front from neck over bust to waist has more
 * than the back goes into a side dart that points at the bust; waist darts take up two thirds of the rest. A front that
 * is not longer than the back has no side dart and is asked about. The waist is one even curve with its darts open. A
 * bodice that ends `raised` mm above the waist has the girth there as its `waist`.
 */
export function bodice(body: BodiceMeasures, ease: BodiceEase, raised = 0): Bodice | NoBodice {
  const [backLong, frontLong] = [body.backWaistLength - raised, body.frontWaistLength - raised];
  if (!(BODICE_MEASURES.every((name) => body[name] > 0) && backLong > 0))
    return { kind: 'no-bodice', why: 'not-positive' };
  const width = neckWidth(body.neck);
  const backLines = backNeck(width, body.shoulder);
  const frontLines = frontNeck(width, body.shoulder);
  const armhole = body.backWaistLength * ARMHOLE_SHARE;
  const side = backLong - armhole;
  const bustHalf = { across: body.bustSpan / 2, down: bustLevel(body, width) };
  const bustUp = frontLong - bustHalf.down;
  if (!(bustUp > 0 && side > 2 * DART_FROM_ENDS)) return { kind: 'no-bodice', why: 'bust-below-waist' };

  const longer = body.frontWaistLength - (body.backWaistLength - backLines.sideNeck.y);
  const takeUp = longer >= NARROWEST_DART ? longer : 0;
  const quarters = (girth: number) => ({ back: girth / 4 - FRONT_WIDER, front: girth / 4 + FRONT_WIDER });
  const [bust, waist] = [quarters(body.bust + ease.bust), quarters(body.waist + ease.waist)];
  if (!(waist.back > 0 && bust.back > 0)) return { kind: 'no-bodice', why: 'not-positive' };

  const bustPoint = { x: bustHalf.across, y: bustHalf.down };
  const frontUp = (below: number) => {
    const lines = quarterOf(frontLong, bust.front, waist.front, below);
    const across = bustPoint.x + SHORT_OF_BUST;
    const hasRoom = across < move(lines.foot, lines.up, below).x - takeUp;
    const dart = takeUp > 0 && hasRoom ? dartedSide(lines, { takeUp, below, above: side - below, across }) : undefined;
    return { lines, dart };
  };
  // The dart leans, so its mouth is moved along the side until it points straight at the bust.
  const reachable = (below: number) => within(below, DART_FROM_ENDS, side - DART_FROM_ENDS);
  let below = reachable(bustUp - takeUp / 2);
  for (let round = 0; round < ROUNDS; round++) {
    below = reachable(below + (frontUp(below).dart?.dartPoint.y ?? bustPoint.y) - bustPoint.y);
  }
  const { lines: front, dart: sideDart } = frontUp(below);
  if (takeUp > 0 && !sideDart) return { kind: 'no-bodice', why: 'dart-too-wide' };
  const back = quarterOf(backLong, bust.back, waist.back, below);
  const backUnderarm = move(back.foot, back.up, side);
  const frontUnderarm = sideDart?.underarm ?? move(front.foot, front.up, side);
  const off = sideDart ? Math.abs(sideDart.dartPoint.y - bustPoint.y) : 0;

  const backHalf = halfOf(backLines, body.acrossBack, backUnderarm);
  const frontHalf = halfOf(frontLines, body.acrossFront, frontUnderarm);
  const refused = armholeRefusal(backHalf) ?? armholeRefusal(frontHalf);
  if (refused) return refused;
  // The waist darts end below the level of the bust girth, so that they take nothing off it.
  const backAim = { x: back.run.length / 2, y: backLong - below };
  return {
    kind: 'bodice',
    back: { ...backHalf, waist: back.run, sideWaist: back.foot, waistDart: dartTowards(back, backAim, SHORT_OF_BUST) },
    front: {
      ...frontHalf,
      waist: front.run,
      sideWaist: front.foot,
      waistDart: dartTowards(front, bustPoint, SHORT_OF_BUST + Math.max(0, bustUp - below)),
      bustPoint,
      sideDart,
    },
    side,
    bustUpSide: below,
    questions: [
      ...(takeUp === 0
        ? [{ kind: 'no-bust-dart', front: body.frontWaistLength, back: body.frontWaistLength - longer } as const]
        : []),
      ...(off > OFF_LEVEL ? [{ kind: 'bust-dart-off', by: off } as const] : []),
    ],
  };
}

/** How far the bust point lies below the side of the neck: its depth is measured slanting. */
function bustLevel({ bustDepth, bustSpan }: BodiceMeasures, neck: number): number {
  const aside = bustSpan / 2 - neck;
  return bustDepth > Math.abs(aside) ? Math.sqrt(bustDepth * bustDepth - aside * aside) : bustDepth;
}

function within(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), Math.max(low, high));
}

/** The waist of a half from its centre at that level down, its side, and what its dart takes up. */
function quarterOf(waistLevel: number, bust: number, waist: number, bustUpSide: number) {
  const inDart = (bust - waist) * (1 - SIDE_SHARE);
  const takeUp = inDart >= NARROWEST_DART ? inDart : 0;
  const run = waistRun({ x: 0, y: waistLevel }, waist + takeUp, bust, bustUpSide);
  return { run, takeUp, ...sideOf(run) };
}

function halfOf(lines: NeckAndShoulder, across: number, underarm: Point) {
  const acrossPoint = { x: across / 2, y: (lines.shoulderTip.y + underarm.y) / 2 };
  return { ...lines, acrossPoint, underarm };
}

function armholeRefusal({ shoulderTip, acrossPoint, underarm }: ReturnType<typeof halfOf>): NoBodice | undefined {
  if (!(underarm.y - shoulderTip.y > LEAST_ARMHOLE.deep)) return { kind: 'no-bodice', why: 'armhole-too-shallow' };
  if (!(underarm.x - acrossPoint.x > LEAST_ARMHOLE.wide)) return { kind: 'no-bodice', why: 'across-too-wide' };
  return undefined;
}

/** The waist dart straight towards a place, with even legs, ending `short` of it; `undefined` where there is none. */
function dartTowards({ run, takeUp }: { readonly run: ArcRun; readonly takeUp: number }, place: Point, short: number) {
  if (takeUp === 0) return undefined;
  const along = within(alongFacing(run, place), takeUp / 2 + 1, run.length - takeUp / 2 - 1);
  const { point, direction } = arcPlace(run, along);
  const reach = point.y - place.y;
  return { along, width: takeUp, point: move(point, quarterTurn(direction), -Math.max(reach - short, reach / 2)) };
}
