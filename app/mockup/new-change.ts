import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { PinnedChange, PinnedWhat } from '../../core/garment/mockup';
import type { Edge, Piece } from '../../core/garment/piece';
import type { EdgeRef } from '../../core/garment/seam';
import { pieceOf } from '../../core/garment/with-piece';
import { edgeBeyond } from '../../core/mockup/pinned-saying';
import { edgeLength } from '../../core/seams/edge-length';
import { inches } from '../../core/units/inch';
import { newId } from '../state/new-id';

/** One press of the thumb: an eighth of an inch of cloth, half an inch along an edge; or the like in centimetres (mm). */
export const STEPS = {
  in: { by: inches(1 / 8), along: inches(1 / 2) },
  cm: { by: 3, along: 10 },
} as const;

const blank = { note: '', side: 'both', state: { kind: 'noted' } } as const;

/** A change of one kind with nothing said yet. */
export function newChange(garment: Garment, kind: PinnedWhat['kind'], edge?: EdgeRef): PinnedChange {
  return { ...blank, id: newId(), what: newWhat(garment, kind, edge) };
}

function newWhat(garment: Garment, kind: PinnedWhat['kind'], edge: EdgeRef | undefined): PinnedWhat {
  switch (kind) {
    case 'edge':
      return { kind, edge: edge ?? NO_EDGE, pins: [], share: 0.5 };
    case 'length': {
      const pieceIds = cutPieces(garment)
        .filter(({ edges }) => edges.some(({ role }) => role === 'hem'))
        .map(({ id }) => id);
      return { kind, pieceIds, at: { kind: 'hem' }, by: STEPS[garment.shownIn].by };
    }
    case 'point':
      return { kind, pieceId: '', cornerId: '', by: { dx: 0, dy: 0 } };
  }
}

/** Before an edge is chosen. */
const NO_EDGE: EdgeRef = { pieceId: '', edgeId: '' };

/** An edge that can be pinned, with its piece, its length and whether it is counted from its end: from the waist wherever it meets it. */
export interface PinnableEdge {
  readonly piece: Piece;
  readonly edge: Edge;
  readonly length: number;
  readonly isTurned: boolean;
  readonly beyond: ReturnType<typeof edgeBeyond>;
}

/** The edge of a reference, ready to be pinned; `undefined` where there is none. */
export function pinnableEdge(garment: Garment, { pieceId, edgeId }: EdgeRef): PinnableEdge | undefined {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId);
  const length = piece && edgeLength(piece, edgeId);
  if (!piece || !edge || length === undefined) return undefined;
  const beyond = edgeBeyond(piece, edgeId);
  return { piece, edge, length, beyond, isTurned: beyond.end === 'waist' && beyond.start !== 'waist' };
}

/** Every edge but folds, piece by piece: those of the version, and those that came into the draft since. */
export function pinnableEdges(shown: Garment, draft: Garment): EdgeRef[] {
  const edgesOf = (garment: Garment) =>
    cutPieces(garment).flatMap((piece) =>
      piece.edges.filter(({ role }) => role !== 'fold').map(({ id }) => ({ pieceId: piece.id, edgeId: id })),
    );
  const known = edgesOf(shown);
  return [...known, ...edgesOf(draft).filter(({ edgeId }) => known.every((one) => one.edgeId !== edgeId))];
}

/** A pin set where she pressed, with the amount of the pin before it, and its number among them in order. */
export function withPin(change: PinnedChange, along: number, by: number): { change: PinnedChange; pin: number } {
  const { what } = change;
  if (what.kind !== 'edge') return { change, pin: 0 };
  const pins = [...what.pins, { along, by }].sort((a, b) => a.along - b.along);
  return { change: { ...change, what: { ...what, pins } }, pin: pins.findIndex((pin) => pin.along === along) };
}

/** Whether enough is said for the change to be noted. */
export function isSaid({ what }: PinnedChange): boolean {
  switch (what.kind) {
    case 'edge':
      return what.pins.some(({ by }) => by !== 0);
    case 'length':
      return what.by !== 0 && what.pieceIds.length > 0;
    case 'point':
      return what.cornerId !== '' && (what.by.dx !== 0 || what.by.dy !== 0);
  }
}

/** A place along an edge brought to whole steps from the end it is counted from. */
export function stepped(along: number, step: number, { length, isTurned }: PinnableEdge): number {
  const counted = isTurned ? length - along : along;
  const whole = Math.min(length, Math.max(0, Math.round(counted / step) * step));
  const near = length - whole < step / 2 ? length : whole;
  return isTurned ? length - near : near;
}
