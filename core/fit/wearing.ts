import { SHOULDERS_TO_BUST } from '../garment/body-figures';
import type { FindingBase } from '../garment/finding';
import type { Garment, Ring } from '../garment/garment';
import { currentSet, depthOf, measureOf } from '../garment/measure-value';
import { outlineOf } from '../garment/outline';
import { isSameEdge } from '../garment/seam';
import { pathLength } from '../geometry/path';
import { inches } from '../units/inch';
import { type LengthPlace, lengthAt } from './length-round';
import { longestOpening, openingNeeded } from './opening';
import { type GirthAtLevel, hemSweep, lineAt, ringPieces } from './round-body';

/** What can be said of getting a garment on, walking in it and wearing another over it. Lengths in mm. */
export type WearingFinding = FindingBase &
  (
    | { readonly kind: 'hem-narrow'; readonly sweep: number; readonly hip: number }
    /** The waist cannot pass the hips and no edge is named as an opening; with how deep one must reach. */
    | { readonly kind: 'no-opening'; readonly waist: number; readonly hip: number; readonly depth: number }
    /** The longest opening, and how long it must be for the hips to pass. */
    | { readonly kind: 'opening-short'; readonly opening: number; readonly needed: number }
    /** Closed all round and narrower somewhere than the shoulders, and than the hips where they are known. */
    | {
        readonly kind: 'no-way-on';
        readonly narrowest: number;
        readonly depth: number;
        readonly shoulders: number;
        readonly hip?: number;
      }
    /** A waist drawn up on a string, that does not open as wide as the hips. */
    | { readonly kind: 'casing-narrow'; readonly casing: number; readonly hip: number }
    /** Longer than the garment over it allows. */
    | {
        readonly kind: 'hem-shows';
        readonly at: LengthPlace;
        readonly length: number;
        readonly outer: number;
        readonly shorterBy: number;
      }
    /** Too narrow for both thighs side by side. */
    | { readonly kind: 'thigh-narrow'; readonly depth: number; readonly total: number; readonly needed: number }
  );

/** A sixteenth of an inch (Threads, 20 August 2020). */
const AS_GOOD = inches(1 / 16);

/** A closed hem wants so much beyond the hip; with less than the first it is hard to walk without a slit or pleat (common practice). */
export const WALKING_ROOM = { least: inches(6), easy: inches(8) } as const;

/** A string round two round thighs that touch, for each mm of one of them: computed, 1 + 2/π. */
const ROUND_BOTH_THIGHS = 1 + 2 / Math.PI;

/** Gathers that leave no more than this of an edge smooth (mm) draw up the whole of it: an inch for the ends. */
const WHOLE_EDGE = inches(1);

/** Everything to be said of how a ring of pieces is worn. */
export function wearingFindings(garment: Garment, ring: Ring, girths: readonly GirthAtLevel[]): WearingFinding[] {
  const isUpper = girths.some(({ level }) => level.girth === 'bust' || level.girth === 'chest');
  return [
    ...(isUpper ? overHead(garment, ring, girths) : overHips(garment, ring, girths)),
    ...walking(garment, ring),
    ...underOuter(garment, ring),
  ];
}

function overHips(garment: Garment, ring: Ring, girths: readonly GirthAtLevel[]): WearingFinding[] {
  const place = { kind: 'ring', ringId: ring.id } as const;
  const hip = measureOf(currentSet(garment), 'hip');
  const waist = girths.find((girth) => girth.level.girth === 'waist');
  if (hip === undefined || waist?.kind !== 'measured' || waist.total === 0 || waist.total >= hip) return [];
  const opening = longestOpening(garment, ring);
  const casing = opening ? undefined : casingGirth(garment, ring);
  if (casing !== undefined) {
    return casing < hip - AS_GOOD ? [{ kind: 'casing-narrow', weight: 'warn', place, casing, hip }] : [];
  }
  const needed = openingNeeded(girths, hip);
  if (!opening) return [{ kind: 'no-opening', weight: 'warn', place, waist: waist.total, hip, depth: needed }];
  if (opening.length >= needed - AS_GOOD) return [];
  const edge = { kind: 'edge', pieceId: opening.pieceId, edgeId: opening.edgeId } as const;
  return [{ kind: 'opening-short', weight: 'warn', place: edge, opening: opening.length, needed }];
}

/**
 * How wide a waist drawn up on a string opens (mm, all the way round): every waist edge of the ring is gathered all along
 * and none is sewn to a band. `undefined` where it is not so.
 */
export function casingGirth(garment: Garment, ring: Ring): number | undefined {
  let girth = 0;
  for (const { piece, times } of ringPieces(garment, ring)) {
    const { edges } = outlineOf(piece);
    for (const [index, { id, role }] of piece.edges.entries()) {
      if (role !== 'waist') continue;
      const length = pathLength(edges[index] ?? []);
      const gathered = (piece.fullness ?? []).reduce(
        (sum, each) => (each.kind === 'gathers' && each.edgeId === id ? sum + each.to - each.from : sum),
        0,
      );
      const ref = { pieceId: piece.id, edgeId: id };
      const isSewn = (garment.seams ?? []).some(({ one, other }) =>
        [...one, ...other].some((each) => isSameEdge(each, ref)),
      );
      if (gathered < length - WHOLE_EDGE || isSewn) return undefined;
      girth += length * times;
    }
  }
  return girth > 0 ? girth : undefined;
}

/** A garment from the bust down is drawn over the head or stepped into, whichever is easier. */
function overHead(garment: Garment, ring: Ring, girths: readonly GirthAtLevel[]): WearingFinding[] {
  const set = currentSet(garment);
  const bust = measureOf(set, 'bust');
  if (bust === undefined || longestOpening(garment, ring)) return [];
  const shoulders = bust * SHOULDERS_TO_BUST;
  const known = girths.flatMap((girth) => (girth.kind === 'no-depth' || girth.total === 0 ? [] : [girth]));
  const [narrowest] = known.toSorted((a, b) => a.total - b.total);
  const hip = measureOf(set, 'hip');
  if (!narrowest || narrowest.total >= Math.min(shoulders, hip ?? shoulders) - AS_GOOD) return [];
  const place = { kind: 'ring', ringId: ring.id, levelId: narrowest.level.id } as const;
  const { total, depth } = narrowest;
  return [
    {
      kind: 'no-way-on',
      weight: 'warn',
      place,
      narrowest: total,
      depth,
      shoulders,
      ...(hip === undefined ? {} : { hip }),
    },
  ];
}

function walking(garment: Garment, ring: Ring): WearingFinding[] {
  const set = currentSet(garment);
  const place = { kind: 'ring', ringId: ring.id } as const;
  const found: WearingFinding[] = [];
  const hip = measureOf(set, 'hip');
  const sweep = hemSweep(garment, ring);
  const isClosed = !longestOpening(garment, ring);
  if (hip !== undefined && sweep > 0 && sweep < hip + WALKING_ROOM.least && isClosed) {
    found.push({ kind: 'hem-narrow', weight: 'warn', place, sweep, hip });
  }
  const thigh = measureOf(set, 'thigh');
  const depth = depthOf(set, 'thigh') ?? measureOf(set, 'bodyRise');
  if (thigh === undefined || depth === undefined || sweep === 0) return found;
  const worn = ringPieces(garment, ring);
  const lines = worn.map((member) => ({ ...lineAt(member, depth, worn), times: member.times }));
  if (lines.some(({ line, times, isElsewhere }) => !line && !isElsewhere && times > 0)) return found;
  const total = lines.reduce((sum, { line, times }) => sum + (line?.length ?? 0) * times, 0);
  const needed = thigh * ROUND_BOTH_THIGHS;
  if (total < needed - AS_GOOD) found.push({ kind: 'thigh-narrow', weight: 'warn', place, depth, total, needed });
  return found;
}

/** The hem against that of the garment worn over it, which is measured from the waist like this one. */
function underOuter(garment: Garment, ring: Ring): WearingFinding[] {
  const { outer } = garment;
  if (!outer || hemSweep(garment, ring) === 0) return [];
  const place = { kind: 'ring', ringId: ring.id } as const;
  return (['front', 'side', 'back'] as const).flatMap((at): WearingFinding[] => {
    const over = outer[at];
    const length = over === undefined ? undefined : lengthAt(garment, ring, at);
    if (over === undefined || length === undefined || length <= over - outer.shorterBy + AS_GOOD) return [];
    return [{ kind: 'hem-shows', weight: 'warn', place, at, length, outer: over, shorterBy: outer.shorterBy }];
  });
}
