import { create } from 'zustand';
import { beforeYouCut, type Finding } from '../../core/check/before-you-cut';
import { useGarment } from './garment-store';
import type { Room } from './table-store';

interface FindingsState {
  readonly findings: readonly Finding[];
  readonly countByRoom: Readonly<Partial<Record<Room, number>>>;
}

/** How long the garment must rest before it is looked over again, so that a drag is never held up. */
const REST_MS = 150;

/** Everything still open in the garment on the table, worked out a moment after each change. */
export const useFindings = create<FindingsState>(() => ({ findings: [], countByRoom: {} }));

let waiting: ReturnType<typeof setTimeout> | undefined;
useGarment.subscribe((now, before) => {
  if (now.garment === before.garment) return;
  clearTimeout(waiting);
  // A garment just opened is looked over at once, so that no room shows an empty list first.
  waiting = setTimeout(lookOver, before.garment?.id === now.garment?.id ? REST_MS : 0);
});

function lookOver(): void {
  const { garment } = useGarment.getState();
  const findings = garment ? beforeYouCut(garment) : [];
  const countByRoom: Partial<Record<Room, number>> = {};
  for (const finding of findings) {
    const room = roomOf(finding);
    countByRoom[room] = (countByRoom[room] ?? 0) + 1;
  }
  if (findings.length > 0) countByRoom.check = findings.length;
  useFindings.setState({ findings, countByRoom });
}

/**
 * The room in which a finding can be mended: where its place is, but seams in the Seams room, and with them a waist that
 * peaks where two pieces are joined; a waist is curved in the Fit room.
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
      return 'fit';
    case 'pages-out-of-date':
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
    case 'paper':
      return 'paper';
  }
}
