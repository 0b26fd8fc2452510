import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { draftWords as words } from '../words/draft';
import styles from './draft.module.css';
import { useDraft } from './draft-store';

/** On a table without a piece: how to come by the first one. It makes way as soon as one begins. */
export function EmptyTable() {
  const hasPiece = useGarment((state) => (state.garment?.pieces.length ?? 0) > 0);
  const hasDiagram = useGarment((state) => (state.garment?.diagrams.length ?? 0) > 0);
  const idle = useDraft((draft) => draft.mode === 'adjust');
  const goTo = useTable((table) => table.goTo);
  if (hasPiece || !idle) return null;
  return (
    <div className={styles.emptyTable}>
      <h2>{words.emptyTable}</h2>
      <p>{hasDiagram ? words.emptyOver : words.emptyBare}</p>
      <div className={styles.row}>
        {!hasDiagram && (
          <Button tone="chalk" icon="picture" onPress={() => goTo('diagram')}>
            {words.toDiagram}
          </Button>
        )}
        <Button
          tone={hasDiagram ? 'chalk' : 'plain'}
          icon="corner"
          step="trace"
          onPress={() => useDraft.setState({ mode: 'trace' })}
        >
          {words.trace}
        </Button>
      </div>
    </div>
  );
}
