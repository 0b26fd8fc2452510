import { cutPieces, isGuide } from '../garment/cut-pieces';
import type { FindingBase, Place } from '../garment/finding';
import type { Garment } from '../garment/garment';
import type { EdgeRef, Seam } from '../garment/seam';
import { isOwnMirror, isSameEdge } from '../garment/seam';
import { pieceOf } from '../garment/with-piece';
import { inches } from '../units/inch';
import { walkOfSeam } from './seam-walk';
import { isWithinMatch } from './walk';

/** What can be said against the seams of a garment. Lengths in mm, over every coming of the edges. */
export type SeamFinding = FindingBase &
  /** The sides differ by more than the ease meant; `beyondEase` is more than 0 where `one` is too long. */
  (
    | {
        readonly kind: 'seam-off';
        readonly seamId: string;
        readonly one: number;
        readonly other: number;
        readonly ease: number;
        readonly beyondEase: number;
      }
    /** Notches that do not meet: `off` pairs miss one another, by `most` at worst, and `alone` have no partner. */
    | {
        readonly kind: 'seam-notches-off';
        readonly seamId: string;
        readonly off: number;
        readonly most: number;
        readonly alone: number;
      }
    /** Seam edges that are in no seam, said once any seam is named. */
    | { readonly kind: 'edge-unpaired'; readonly edges: readonly EdgeRef[] }
  );

/** A seam off by a quarter of an inch is treated as a fault (The Fashion Incubator, "Too many notches", part 2). */
export const SEAM_FAULT = inches(1 / 4);

/**
 * What is open in the seams: beyond a sixteenth of an inch (Threads magazine, 20 August 2020) a warning, from a quarter
 * on a stop. Seams with an edge of a guide are passed over, and edges of guides need no partner.
 */
export function seamFindings(garment: Garment): SeamFinding[] {
  const seams = (garment.seams ?? []).filter((seam) => !isOfGuide(garment, seam));
  return [...seams.flatMap((seam) => findingsOf(garment, seam)), ...unpaired(garment, seams)];
}

function findingsOf(garment: Garment, seam: Seam): SeamFinding[] {
  const walk = walkOfSeam(garment, seam);
  const [first] = seam.one;
  if (!walk || !first || isOwnMirror(seam)) return [];
  const place: Place = { kind: 'edge', pieceId: first.pieceId, edgeId: first.edgeId };
  const found: SeamFinding[] = [];
  const { one, other, beyondEase } = walk.totals;
  if (!isWithinMatch(beyondEase)) {
    const weight = Math.abs(beyondEase) < SEAM_FAULT ? 'warn' : 'stop';
    found.push({ kind: 'seam-off', weight, place, seamId: seam.id, one, other, ease: seam.ease, beyondEase });
  }
  const off = walk.meetings.filter(({ agrees }) => !agrees);
  const alone = walk.alone[0].length + walk.alone[1].length;
  if (off.length > 0 || alone > 0) {
    const most = off.reduce((worst, { apart }) => Math.max(worst, Math.abs(apart)), 0);
    found.push({ kind: 'seam-notches-off', weight: 'warn', place, seamId: seam.id, off: off.length, most, alone });
  }
  return found;
}

function unpaired(garment: Garment, seams: readonly Seam[]): SeamFinding[] {
  const paired = seams.flatMap(({ one, other }) => [...one, ...other]);
  const edges = cutPieces(garment)
    .flatMap(({ id, edges }) =>
      edges.filter(({ role }) => role === 'seam').map((edge): EdgeRef => ({ pieceId: id, edgeId: edge.id })),
    )
    .filter((edge) => !paired.some((each) => isSameEdge(each, edge)));
  const [first] = edges;
  if (!first || seams.length === 0) return [];
  return [{ kind: 'edge-unpaired', weight: 'warn', place: { kind: 'edge', ...first }, edges }];
}

function isOfGuide(garment: Garment, { one, other }: Seam): boolean {
  return [...one, ...other].some(({ pieceId }) => {
    const piece = pieceOf(garment, pieceId);
    return piece !== undefined && isGuide(piece);
  });
}
