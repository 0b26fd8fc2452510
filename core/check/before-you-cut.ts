import { type DiagramFinding, diagramFindings } from '../diagram/diagram-findings';
import { type FigureFinding, figureFindings } from '../fit/figure-findings';
import { type FitFinding, fitFindings } from '../fit/fit-findings';
import { type WaistFinding, waistFindings } from '../fit/waist-smoothness';
import { cutPieces } from '../garment/cut-pieces';
import { type CuttingSinceFinding, cuttingFindings } from '../garment/cutting';
import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';
import { type MeasureFinding, measureFindings } from '../garment/measure-check';
import { currentSet } from '../garment/measure-value';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { type MockupFinding, mockupFindings } from '../mockup/mockup-findings';
import { type PrintedFinding, printedFindings } from '../paper/pages-out-of-date';
import { type PaperFinding, paperFindings } from '../paper/paper-findings';
import { type SeamFinding, seamFindings } from '../seams/seam-findings';
import { type ClothFinding, clothFindings } from './cloth-findings';

/** What a piece still lacks before it can be cut. */
export type CuttingFinding = FindingBase &
  (
    | { readonly kind: 'drawn-as-not-known' }
    | { readonly kind: 'allowance-not-said'; readonly edges: number }
    | { readonly kind: 'no-grain' }
    /** An edge is named as a fold of the cloth, but the piece is not cut on the fold: half of it would be cut. */
    | { readonly kind: 'fold-not-cut-on' }
    | { readonly kind: 'no-name' }
    /** A fault of this program: an edge could not be worked out and is shown from point to point. */
    | { readonly kind: 'not-worked-out' }
    /** A fault of this program: one of the checks broke off, so nobody knows what it would have found. */
    | { readonly kind: 'check-broke-off' }
  );

export type Finding =
  | MeasureFinding
  | DiagramFinding
  | FitFinding
  | FigureFinding
  | WaistFinding
  | SeamFinding
  | MockupFinding
  | CuttingFinding
  | ClothFinding
  | PaperFinding
  | PrintedFinding
  | CuttingSinceFinding;

/** Everything still open in a garment, from every room in the order of the job; what must be settled is marked `stop`. */
export function beforeYouCut(garment: Garment): Finding[] {
  const set = currentSet(garment);
  const checks: readonly (() => readonly Finding[])[] = [
    () => measureFindings(set),
    () => garment.diagrams.flatMap((diagram) => diagramFindings(diagram, set, garment.diagrams)),
    () => fitFindings(garment),
    () => figureFindings(garment),
    () => waistFindings(garment),
    () => seamFindings(garment),
    () => mockupFindings(garment),
    () => cutPieces(garment).flatMap(lackingFindings),
    () => clothFindings(garment),
    () => paperFindings(garment),
    () => printedFindings(garment),
    () => cuttingFindings(garment),
  ];
  const found: Finding[] = [];
  let brokeOff = false;
  for (const check of checks) {
    try {
      found.push(...check());
    } catch {
      // What the other checks find still counts; that this one is missing holds back cutting.
      brokeOff = true;
    }
  }
  if (brokeOff) found.push({ kind: 'check-broke-off', weight: 'stop', place: { kind: 'garment' } });
  return found;
}

function lackingFindings(piece: Piece): CuttingFinding[] {
  const place = { kind: 'piece', pieceId: piece.id } as const;
  const found: CuttingFinding[] = [];
  if (!outlineOf(piece).isWorkedOut) found.push({ kind: 'not-worked-out', weight: 'stop', place });
  if (piece.name.trim() === '') found.push({ kind: 'no-name', weight: 'warn', place });
  if (piece.drawnAs === 'not-known') found.push({ kind: 'drawn-as-not-known', weight: 'stop', place });
  // A drawing that has its allowances in it is cut along its own line.
  const unsaid =
    piece.drawnAs === 'included'
      ? 0
      : piece.edges.filter((edge) => edge.role !== 'fold' && edge.allowance === undefined).length;
  if (unsaid > 0) found.push({ kind: 'allowance-not-said', weight: 'stop', place, edges: unsaid });
  if (piece.cut.how !== 'fold' && piece.edges.some(({ role }) => role === 'fold')) {
    found.push({ kind: 'fold-not-cut-on', weight: 'stop', place });
  }
  if (!piece.grain) found.push({ kind: 'no-grain', weight: 'warn', place });
  return found;
}
