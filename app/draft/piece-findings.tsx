import { roomOf, useFindings } from '../state/findings-store';
import { useTable } from '../state/table-store';
import { Note } from '../ui/note';
import { draftWords as words } from '../words/draft';
import { findingSentence } from '../words/findings';
import { shellWords } from '../words/shell';
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
        {...(room === 'draft'
          ? {}
          : { action: { words: words.goTo(shellWords.rooms[room]), onPress: () => goTo(room) } })}
      >
        {findingSentence(finding, garment)}
      </Note>
    );
  });
}
