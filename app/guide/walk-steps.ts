import type { Finding } from '../../core/check/before-you-cut';
import type { Garment } from '../../core/garment/garment';
import type { Chosen, Room } from '../state/table-store';

export type WalkStepName =
  | 'measures'
  | 'squared'
  | 'traced'
  | 'waist'
  | 'opening'
  | 'seams'
  | 'cloth'
  | 'pages'
  | 'proof'
  | 'check';

export interface WalkStep {
  readonly name: WalkStepName;
  readonly room: Room;
  /** What lies chosen on the table when the step begins. */
  readonly shows?: (garment: Garment) => Chosen;
  /** Whether what it asks for has been done; left out where there is only something to look at. */
  readonly isDone?: (garment: Garment, findings: readonly Finding[]) => boolean;
}

/** The first piece. */
const firstPiece = ({ pieces: [piece] }: Garment): Chosen =>
  piece ? { kind: 'piece', pieceId: piece.id } : { kind: 'nothing' };
const lacks =
  (kind: Finding['kind']): NonNullable<WalkStep['isDone']> =>
  (_, findings) =>
    findings.every((finding) => finding.kind !== kind);

/** The walk through the demo garment, in the order of the job. A step is done when the garment says so, however it came about. */
export const walkSteps: readonly WalkStep[] = [
  { name: 'measures', room: 'wearer' },
  { name: 'squared', room: 'diagram' },
  { name: 'traced', room: 'draft', shows: firstPiece },
  { name: 'waist', room: 'fit', isDone: lacks('straight-waist') },
  { name: 'opening', room: 'fit', isDone: lacks('no-opening') },
  { name: 'seams', room: 'seams', isDone: (garment) => (garment.seams?.length ?? 0) > 0 },
  { name: 'cloth', room: 'cloth', isDone: (garment) => (garment.lays?.length ?? 0) > 0 },
  { name: 'pages', room: 'paper', isDone: (garment) => (garment.printings?.length ?? 0) > 0 },
  { name: 'proof', room: 'paper', isDone: (garment) => garment.scaleProof !== undefined },
  { name: 'check', room: 'check' },
];
