import { setRole } from '../../core/garment/edge-edits';
import { outlineOf } from '../../core/garment/outline';
import { pieceOf } from '../../core/garment/with-piece';
import { pathLength } from '../../core/geometry/path';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { editPiece } from './edit-piece';
import { useRestedGarment } from './rested-garment';

/** A piece that is cut on the fold asks which of its straight edges lies there, until one does; the longest comes first. */
export function FoldEdge({ pieceId }: { readonly pieceId: string }) {
  const shownIn = useShownIn();
  const garment = useRestedGarment();
  const piece = garment && pieceOf(garment, pieceId);
  if (!piece || piece.edges.some(({ role }) => role === 'fold')) return null;
  const paths = outlineOf(piece).edges;
  const straight = piece.edges
    .map((edge, index) => ({ edge, name: words.edgeOr(edge.name, index + 1), length: pathLength(paths[index] ?? []) }))
    .filter(({ edge }) => edge.shape.kind === 'straight')
    .toSorted((a, b) => b.length - a.length);
  return (
    <div data-step="fold-edge" className={styles.says}>
      <Note tone="warn">{straight.length > 0 ? words.foldWhich : words.foldNone}</Note>
      <div className={styles.row}>
        {straight.map(({ edge, name, length }) => (
          <Button
            key={edge.id}
            icon="fold"
            onPress={() => {
              editPiece(words.steps.edge, pieceId, (now) => setRole(now, edge.id, 'fold'));
              useTable.getState().choose({ kind: 'piece', pieceId });
              say(words.foldSaid(name));
            }}
          >
            {words.foldChoice(name, writeLength(length, { shownIn }))}
          </Button>
        ))}
      </div>
    </div>
  );
}
