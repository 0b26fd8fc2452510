import { create } from 'zustand';
import type { Finding } from '../../core/check/before-you-cut';
import type { PointName } from '../../core/check/points-to-be-sure-of';
import type { Garment } from '../../core/garment/garment';
import { useGarment } from './garment-store';
import type { LookedOver } from './look-over';
import type { Room } from './table-store';

interface FindingsState extends LookedOver {
  /** The garment that was looked over last. */
  readonly garment: Garment | undefined;
  /** Only what is open counts. */
  readonly countByRoom: Readonly<Partial<Record<Room, number>>>;
}

/** How long the garment must rest before it is looked over again, so that a drag is never held up. */
const REST_MS = 150;

const NOTHING: LookedOver = { findings: [], open: [], left: [] };

/** Everything still open in the garment on the table, worked out a moment after each change. */
export const useFindings = create<FindingsState>(() => ({ ...NOTHING, garment: undefined, countByRoom: {} }));

let waiting: ReturnType<typeof setTimeout> | undefined;
useGarment.subscribe((now, before) => {
  if (now.garment === before.garment) return;
  clearTimeout(waiting);
  // A garment just opened is looked over at once, so that no room shows an empty list first.
  waiting = setTimeout(lookOver, before.garment?.id === now.garment?.id ? REST_MS : 0);
});

async function lookOver(): Promise<void> {
  // The checks come on their own: the shelf can be used before they are there.
  const { garment } = useGarment.getState();
  const found = garment && (await import('./look-over')).lookedOver(garment);
  // Another may have been taken to the table while they came; it is looked over in its turn.
  if (useGarment.getState().garment?.id !== garment?.id) return;
  const { findings, open, left } = found ?? NOTHING;
  const countByRoom: Partial<Record<Room, number>> = {};
  for (const finding of open) {
    const room = roomOf(finding);
    countByRoom[room] = (countByRoom[room] ?? 0) + 1;
  }
  if (open.length > 0) countByRoom.check = open.length;
  useFindings.setState({ garment, findings, open, left, countByRoom });
}

/**
 * The room in which a finding can be mended: where its place is, but seams in the Seams room, and with them a waist that
 * peaks where two pieces are joined; a waist is curved and the pieces round the body are named in the Fit room.
 */
export function roomOf(finding: Finding): Room {
  const { place } = finding;
  switch (finding.kind) {
    case 'seam-off':
    case 'seam-notches-off':
    case 'edge-unpaired':
      return 'seams';
    case 'waist-peak':
      // On its own mirror image, as at a fold, no second edge is to be trued: the waist itself is.
      return place.kind === 'edge' && place.pieceId === finding.otherPieceId ? 'draft' : 'seams';
    case 'straight-waist':
    case 'no-ring':
      return 'fit';
    case 'pages-out-of-date':
    case 'squares-out-of-date':
      return 'paper';
    case 'changed-since-cut':
      return 'versions';
  }
  switch (place.kind) {
    case 'measure':
      return 'wearer';
    case 'diagram':
      return 'diagram';
    case 'garment':
    case 'piece':
    case 'edge':
      return 'draft';
    case 'ring':
      return 'fit';
    case 'mockup':
      return 'mockup';
    case 'cloth':
      return 'cloth';
    case 'paper':
      return 'paper';
  }
}

/** The room in which each point of the list before cutting is looked after; a check of pins or printing joins here. */
export const roomOfPoint: Readonly<Record<PointName, Room>> = {
  measures: 'wearer',
  'scale-known': 'diagram',
  outlines: 'draft',
  'goes-round': 'fit',
  'waist-curved': 'fit',
  'seams-true': 'seams',
  'pinned-settled': 'mockup',
  allowances: 'draft',
  grain: 'draft',
  'cut-counts': 'draft',
  'scale-proved': 'paper',
  'lay-made': 'cloth',
  'print-current': 'paper',
};
