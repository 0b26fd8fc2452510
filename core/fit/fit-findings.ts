import { cutPieces } from '../garment/cut-pieces';
import type { FindingBase } from '../garment/finding';
import type { Garment, Ring } from '../garment/garment';
import type { GirthName, MeasureName } from '../garment/measure';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength } from '../geometry/path';
import type { Point } from '../geometry/point';
import { type SelfCrossing, selfCrossings } from '../geometry/self-crossing';
import { inches } from '../units/inch';
import { type GirthAtLevel, girthsOf, ringPieces } from './round-body';
import { waistNeeds } from './waist-needs';
import { type WearingFinding, wearingFindings } from './wearing';

/** What can be said against the pieces on this body. Lengths in mm; girths all the way round. */
export type FitFinding = WearingFinding | OwnFinding;

type OwnFinding = FindingBase &
  (
    | { readonly kind: 'no-piece' }
    | { readonly kind: 'no-ring' }
    | { readonly kind: 'no-waist-edge' }
    | { readonly kind: 'girth-measure-missing'; readonly measure: MeasureName }
    /** The pieces come to about one part in `parts` of what must go round. */
    | {
        readonly kind: 'panel-missing';
        readonly girth: GirthName;
        readonly total: number;
        readonly wanted: number;
        readonly parts: 2 | 3 | 4;
      }
    | {
        readonly kind: 'girth-too-small';
        readonly girth: GirthName;
        readonly depth: number;
        readonly total: number;
        readonly body: number;
        readonly wanted: number;
      }
    | {
        readonly kind: 'girth-too-large';
        readonly girth: GirthName;
        readonly depth: number;
        readonly total: number;
        readonly wanted: number;
      }
    /** One side of a body that was taped side by side, and what the pieces of that side come to. */
    | {
        readonly kind: 'side-uneven';
        readonly girth: GirthName;
        readonly side: 'left' | 'right';
        readonly total: number;
        readonly body: number;
        readonly wanted: number;
      }
    /** Pieces end above this level, so nothing can be said of the girth there. */
    | {
        readonly kind: 'level-below-piece';
        readonly girth: GirthName;
        readonly depth: number;
        readonly pieceIds: readonly string[];
      }
    | {
        readonly kind: 'straight-waist';
        readonly straight: number;
        readonly curved: number;
        readonly rise: number;
        readonly dip: number;
      }
    | { readonly kind: 'outline-crosses'; readonly at: Point }
    | { readonly kind: 'figure-unsettled'; readonly drawn: number; readonly stated: number }
    | { readonly kind: 'figure-not-met'; readonly drawn: number; readonly stated: number }
  );

/** Seams and girths within this are as good as equal: a sixteenth of an inch (Threads, 20 August 2020). */
export const SEWING_TOLERANCE = inches(1 / 16);

/** More room than this beyond the ease is worth a word: two inches all round. */
const MUCH_OVER = inches(2);

/** A total this near to a half, third or quarter of what is wanted is a missing panel rather than a tight one. */
const NEAR_SHARE = 0.12;

/** Everything to be said of the pieces and how they go round the body. */
export function fitFindings(garment: Garment): FitFinding[] {
  const worn = cutPieces(garment);
  if (worn.length === 0) return [{ kind: 'no-piece', weight: 'stop', place: { kind: 'garment' } }];
  const pieces = worn.flatMap(pieceFindings);
  if (garment.rings.length === 0) {
    return [...pieces, { kind: 'no-ring', weight: 'stop', place: { kind: 'garment' } }];
  }
  return [...pieces, ...garment.rings.flatMap((ring) => ringFindings(garment, ring))];
}

const crossings = new WeakMap<Piece, SelfCrossing | 'none'>();

/** Where the outline of a piece first crosses itself. Remembered per piece. */
function crossingOf(piece: Piece): SelfCrossing | undefined {
  let known = crossings.get(piece);
  if (known === undefined) {
    known = selfCrossings(outlineOf(piece).whole)[0] ?? 'none';
    crossings.set(piece, known);
  }
  return known === 'none' ? undefined : known;
}

function pieceFindings(piece: Piece): FitFinding[] {
  const { edges } = outlineOf(piece);
  const crossing = crossingOf(piece);
  const found: FitFinding[] = crossing
    ? [{ kind: 'outline-crosses', weight: 'stop', place: { kind: 'piece', pieceId: piece.id }, at: crossing.point }]
    : [];
  for (const [index, edge] of piece.edges.entries()) {
    const path = edges[index];
    if (!edge.stated || !path) continue;
    const drawn = pathLength(path);
    const stated = edge.stated.length;
    if (Math.abs(drawn - stated) <= SEWING_TOLERANCE || edge.stated.rules === 'drawing') continue;
    const place = { kind: 'edge', pieceId: piece.id, edgeId: edge.id } as const;
    const kind = edge.stated.rules === 'figure' ? 'figure-not-met' : 'figure-unsettled';
    found.push({ kind, weight: 'stop', place, drawn, stated });
  }
  return found;
}

function ringFindings(garment: Garment, ring: Ring): FitFinding[] {
  const place = { kind: 'ring', ringId: ring.id } as const;
  const worn = ringPieces(garment, ring);
  const members = worn.map(({ piece }) => piece);
  if (members.length === 0) return [{ kind: 'no-ring', weight: 'stop', place }];
  const unnamed = worn
    .filter(({ piece, from }) => !from && !piece.edges.some((edge) => edge.role === 'waist'))
    .map(({ piece }) => piece);
  const noWaist = unnamed.map((piece): FitFinding => {
    return { kind: 'no-waist-edge', weight: 'stop', place: { kind: 'piece', pieceId: piece.id } };
  });
  if (noWaist.length === members.length) return noWaist;
  // A crossed outline has no inside to be measured across; that is said of the piece itself.
  if (members.some(crossingOf)) return noWaist;
  const all = girthsOf(garment, ring);
  const below = all.flatMap((girth) => levelBelowPiece(garment, ring, girth));
  const girths = all.filter((girth) => !below.some(({ place }) => place.levelId === girth.level.id));
  const missing = missingPanel(girths, ring);
  return [
    ...noWaist,
    ...measuresMissing(all),
    ...below,
    ...(missing ? [missing] : girths.flatMap((girth) => girthFindings(girth, ring))),
    ...(missing ? [] : straightWaists(garment, ring)),
    ...(missing ? [] : wearingFindings(garment, ring, girths)),
  ];
}

function measuresMissing(girths: readonly GirthAtLevel[]): FitFinding[] {
  const names = new Set(girths.flatMap((girth) => (girth.kind === 'measured' ? [] : [girth.missing])));
  return [...names].map((measure) => ({
    kind: 'girth-measure-missing',
    weight: 'warn',
    place: { kind: 'measure', measure },
    measure,
  }));
}

/** Waist pieces that end above a level; what the others come to there is not the girth. */
function levelBelowPiece(garment: Garment, ring: Ring, girth: GirthAtLevel) {
  if (girth.kind === 'no-depth' || girth.depth === 0) return [];
  const worn = ringPieces(garment, ring);
  const pieceIds = girth.pieces.flatMap(({ pieceId, line, times, isElsewhere }) => {
    const member = worn.find(({ piece }) => piece.id === pieceId);
    const hasTop = member?.from ?? member?.piece.edges.some((edge) => edge.role === 'waist');
    return hasTop && !isElsewhere && !line && times > 0 ? [pieceId] : [];
  });
  if (pieceIds.length === 0) return [];
  const place = { kind: 'ring', ringId: ring.id, levelId: girth.level.id } as const;
  const { level, depth } = girth;
  return [{ kind: 'level-below-piece', weight: 'warn', place, girth: level.girth, depth, pieceIds } as const];
}

/** Half a garment is the likeliest slip of all, so it is said once and instead of everything that follows from it. */
function missingPanel(girths: readonly GirthAtLevel[], ring: Ring): FitFinding | undefined {
  for (const girth of girths) {
    if (girth.kind !== 'measured' || girth.total === 0 || girth.total >= 0.75 * girth.wanted) continue;
    const parts = ([2, 3, 4] as const).find(
      (n) => Math.abs(girth.total * n - girth.wanted) < NEAR_SHARE * girth.wanted,
    );
    if (!parts) continue;
    return {
      kind: 'panel-missing',
      weight: 'stop',
      place: { kind: 'ring', ringId: ring.id, levelId: girth.level.id },
      girth: girth.level.girth,
      total: girth.total,
      wanted: girth.wanted,
      parts,
    };
  }
  return undefined;
}

function girthFindings(girth: GirthAtLevel, ring: Ring): FitFinding[] {
  if (girth.kind !== 'measured' || girth.total === 0) return [];
  return [...wholeFindings(girth, ring), ...sideFindings(girth, ring)];
}

type Measured = Extract<GirthAtLevel, { readonly kind: 'measured' }>;

/** Half of SEWING_TOLERANCE is a side's own; what one side lacks the other may have over, and the whole says nothing. */
function sideFindings({ level, sides }: Measured, ring: Ring): FitFinding[] {
  const place = { kind: 'ring', ringId: ring.id, levelId: level.id } as const;
  return sides.flatMap(({ side, total, body, wanted }): FitFinding[] => {
    if (total >= wanted - SEWING_TOLERANCE / 2) return [];
    const weight = total < body - SEWING_TOLERANCE / 2 ? 'stop' : 'warn';
    return [{ kind: 'side-uneven', weight, place, girth: level.girth, side, total, body, wanted }];
  });
}

function wholeFindings(girth: Measured, ring: Ring): FitFinding[] {
  const { level, depth, total, body, wanted } = girth;
  const place = { kind: 'ring', ringId: ring.id, levelId: level.id } as const;
  if (total < wanted - SEWING_TOLERANCE) {
    const weight = total < body - SEWING_TOLERANCE ? 'stop' : 'warn';
    return [{ kind: 'girth-too-small', weight, place, girth: level.girth, depth, total, body, wanted }];
  }
  // Only at the waist does much room say that something is amiss: a flared skirt is meant to be wide below it.
  if (depth === 0 && total > wanted + MUCH_OVER) {
    return [{ kind: 'girth-too-large', weight: 'warn', place, girth: level.girth, depth, total, wanted }];
  }
  return [];
}

function straightWaists(garment: Garment, ring: Ring): FitFinding[] {
  return waistNeeds(garment, ring).flatMap((need): FitFinding[] => {
    if (need.kind !== 'needs-curve' || need.settled) return [];
    const place = { kind: 'edge', pieceId: need.pieceId, edgeId: need.edgeId } as const;
    const { straightLength, length, rise, dip } = need.curve;
    return [
      {
        kind: 'straight-waist',
        weight: 'warn',
        place,
        straight: straightLength,
        curved: length,
        rise,
        dip,
      },
    ];
  });
}
