import type { Garment, Ring } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, pieceOf, withPiece } from '../garment/with-piece';
import { nearestOnPath, pathAtLength, pathLength } from '../geometry/path';
import { type NotTakenIn, takeIn } from '../shaping/take-in';
import { type NoPanelsRound, type PanelRound, type PanelsRoundOptions, panelsRound } from './panels-round';
import { type Reading, roundCurve } from './round-curve';
import { type FourLengths, placeAlong, readingsOf } from './waist-from-lengths';

/** The eight places a hung hem is read at, in order round the body from centre front over the right side. */
export const HEM_PLACES = [
  'front',
  'front-right',
  'right',
  'back-right',
  'back',
  'back-left',
  'left',
  'front-left',
] as const;
export type HemPlace = (typeof HEM_PLACES)[number];

export type HemLevelled =
  | { readonly kind: 'hem-levelled'; readonly garment: Garment; readonly panels: readonly PanelHem[] }
  | NoPanelsRound
  | {
      readonly kind: 'no-hem-levelled';
      readonly why: NotTakenIn['why'] | 'no-hem' | 'no-reading';
      readonly pieceId?: string;
    };

/** What a panel's hem was let down by at its front and back end (mm; less than 0 is taken up). */
export interface PanelHem {
  readonly pieceId: string;
  readonly front: number;
  readonly back: number;
}

/** Less than this (mm) is rounding and moves nothing. */
const NO_CHANGE = 1e-9;

/** Along a hem the correction is set at this many steps, besides the places that were read. */
const STEPS = 6;

/** A place read nearer to a step than this share of the hem takes its stead. */
const NEAR_STEP = 0.05;

/**
 * The garment with its hem levelled after hanging: where the gap to the floor was read larger than `wanted`, the hem is
 * let down by the difference, else taken up, and smoothly between the places read. Readings lie along the hem by its
 * share of each panel, which is taken at the waist. Two readings are enough, eight usual; marks are put 3 in apart on the
 * cloth (Theta Johnson, It's Fun to Sew, 4-H).
 */
export function levelHem(
  garment: Garment,
  ring: Ring,
  gaps: Readonly<Partial<Record<HemPlace, number>>>,
  wanted: number,
  places: PanelsRoundOptions = {},
): HemLevelled {
  const readings = HEM_PLACES.flatMap((place, i): Reading[] => {
    const gap = gaps[place];
    return gap === undefined ? [] : [{ at: i / HEM_PLACES.length, value: gap - wanted }];
  });
  const down = roundCurve(readings, 'smooth');
  if (!down) return { kind: 'no-hem-levelled', why: 'no-reading' };
  const panels = panelsRound(garment, ring, places);
  if ('kind' in panels) return panels;
  return withHems(garment, panels, readings, (_, __, at) => down(at));
}

/**
 * The garment with its hem drawn from the lengths to the floor less its height off it, down every panel from the waist as
 * it is. For a waist that is not to be raised.
 */
export function hemFromLengths(
  garment: Garment,
  ring: Ring,
  lengths: FourLengths,
  offFloor: number,
  places: PanelsRoundOptions = {},
): HemLevelled {
  const panels = panelsRound(garment, ring, places);
  if ('kind' in panels) return panels;
  const readings = readingsOf(lengths);
  const height = roundCurve(readings, 'smooth');
  if (!height) throw new Error('four readings make a curve');
  return withHems(garment, panels, readings, (piece, panel, at, hemShare) => {
    return height(at) - offFloor - drawnLength(piece, panel, hemShare);
  });
}

/** How far down the panel its hem lies from the waist (mm), at a share along the hem from its front. */
export function drawnLength(piece: Piece, panel: Pick<PanelRound, 'waistEdgeId' | 'front'>, fromFront: number): number {
  const { edges } = outlineOf(piece);
  const waist = edges[edgeIndex(piece, panel.waistEdgeId)];
  const hem = hemOf(piece);
  if (!waist || !hem) return 0;
  const [front, back] = sideEnds(piece, panel);
  if (fromFront <= 0) return front;
  if (fromFront >= 1) return back;
  const share = panel.front === 'start' ? 1 - fromFront : fromFront;
  const path = edges[hem.index] ?? [];
  return nearestOnPath(waist, pathAtLength(path, pathLength(path) * share).point).distance;
}

type DownAt = (piece: Piece, panel: PanelRound, at: number, fromFront: number) => number;

function withHems(
  garment: Garment,
  panels: readonly PanelRound[],
  readings: readonly Reading[],
  downAt: DownAt,
): HemLevelled {
  let changed = garment;
  for (const panel of panels) {
    const piece = pieceOf(garment, panel.pieceId);
    const hem = piece && hemOf(piece);
    if (!piece || !hem) return { kind: 'no-hem-levelled', why: 'no-hem', pieceId: panel.pieceId };
    const total = pathLength(outlineOf(piece).edges[hem.index] ?? []);
    // The hem runs the other way round the piece than the waist does.
    const pins = sharesOf(panel, readings).map((share) => {
      const fromFront = panel.front === 'start' ? 1 - share : share;
      const by = -downAt(piece, panel, placeAlong(panel, 1 - share), fromFront);
      return { along: total * share, by };
    });
    if (pins.every(({ by }) => Math.abs(by) < NO_CHANGE)) continue;
    const led = takeIn(piece, hem.id, pins);
    if ('why' in led) return { kind: 'no-hem-levelled', why: led.why, pieceId: piece.id };
    changed = withPiece(changed, piece.id, () => led);
  }
  const ends = panels.flatMap((panel) => {
    const piece = pieceOf(garment, panel.pieceId);
    if (!piece) return [];
    const [front, back] = [downAt(piece, panel, panel.from, 0), downAt(piece, panel, panel.to, 1)];
    return [{ pieceId: panel.pieceId, front, back }];
  });
  return { kind: 'hem-levelled', garment: changed, panels: ends };
}

/** Shares along the hem as drawn at which it is set: both ends, even steps, and wherever it was read. */
function sharesOf(panel: PanelRound, readings: readonly Reading[]): readonly number[] {
  const width = panel.to - panel.from;
  const read = readings.flatMap(({ at }) => {
    const fromFront = (at - panel.from) / width;
    if (!(fromFront > NEAR_STEP && fromFront < 1 - NEAR_STEP)) return [];
    return [panel.front === 'start' ? 1 - fromFront : fromFront];
  });
  const steps = Array.from({ length: STEPS + 1 }, (_, i) => i / STEPS).filter(
    (step) => step === 0 || step === 1 || read.every((share) => Math.abs(share - step) > NEAR_STEP),
  );
  return [...steps, ...read].sort((a, b) => a - b);
}

function hemOf(piece: Piece): { readonly index: number; readonly id: string } | undefined {
  const index = piece.edges.findIndex(({ role }) => role === 'hem');
  const edge = piece.edges[index];
  return edge && { index, id: edge.id };
}

/** How long the edges are between waist and hem at the panel's front and back (mm). */
function sideEnds(
  piece: Piece,
  panel: Pick<PanelRound, 'waistEdgeId' | 'front'>,
): readonly [front: number, back: number] {
  const { edges } = outlineOf(piece);
  const count = edges.length;
  const run = (step: -1 | 1) => {
    let length = 0;
    let at = edgeIndex(piece, panel.waistEdgeId);
    for (let i = 1; i < count; i++) {
      at = (at + step + count) % count;
      if (piece.edges[at]?.role === 'hem') break;
      length += pathLength(edges[at] ?? []);
    }
    return length;
  };
  return panel.front === 'start' ? [run(-1), run(1)] : [run(1), run(-1)];
}
