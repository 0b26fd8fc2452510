import type { Finding } from '../../core/check/before-you-cut';
import { pieceOf } from '../../core/garment/with-piece';
import { roomOf, useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { type Room, useTable } from '../state/table-store';
import { Note } from '../ui/note';
import { draftWords as words } from '../words/draft';
import { findingSentence } from '../words/findings';
import { shellWords } from '../words/shell';
import { useDraft } from './draft-store';
import { editPiece } from './edit-piece';
import { useRestedGarment } from './rested-garment';

/** What is still open about one piece, as sentences on its card; what the card says of itself is left out. */
export function PieceFindings({ pieceId }: { readonly pieceId: string }) {
  const garment = useRestedGarment();
  const findings = useFindings((state) => state.findings);
  const goTo = useTable((table) => table.goTo);
  if (!garment) return null;
  return findings.map((finding) => {
    const { place, kind, weight } = finding;
    if (!('pieceId' in place) || place.pieceId !== pieceId || kind === 'drawn-as-not-known') return null;
    const room = roomOf(finding);
    return (
      <Note
        key={`${kind} ${JSON.stringify(place)}`}
        tone={weight}
        step={kind === 'no-grain' ? 'grain' : undefined}
        {...actionFor(finding, () => goTo(room), room)}
      >
        {findingSentence(finding, garment)}
      </Note>
    );
  });
}

/** The one press that leads to where a finding is mended: another room, an edge of this piece, or a tool. */
function actionFor({ kind, place }: Finding, goThere: () => void, room: Room) {
  if (room !== 'draft') return { action: { words: words.goTo(shellWords.rooms[room]), onPress: goThere } };
  if (kind === 'allowance-not-said' && place.kind === 'piece')
    return { action: { words: words.toFirstEdge, onPress: () => chooseUnsaid(place.pieceId) } };
  if (kind === 'fold-not-cut-on' && place.kind === 'piece')
    return { action: { words: words.cutOnFold, onPress: () => cutOnFold(place.pieceId) } };
  if (kind === 'no-grain')
    return { action: { words: words.drawGrain, onPress: () => useDraft.setState({ mode: 'mark', marking: 'grain' }) } };
  return {};
}

function cutOnFold(pieceId: string): void {
  editPiece(words.steps.cut, pieceId, (now) => ({ ...now, cut: { ...now.cut, how: 'fold' } }));
}

/** Takes the first edge of a piece in hand of which no allowance is said. */
function chooseUnsaid(pieceId: string): void {
  const { garment } = useGarment.getState();
  const piece = garment && pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ role, allowance }) => role !== 'fold' && allowance === undefined);
  if (edge) useTable.getState().choose({ kind: 'edge', pieceId, edgeId: edge.id });
}
