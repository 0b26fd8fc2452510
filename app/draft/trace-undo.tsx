import { useEffect } from 'react';
import { useTable } from '../state/table-store';
import { draftWords as words } from '../words/draft';
import { useDraft } from './draft-store';
import { takeBackPoint } from './trace-tool';

/** While a piece is being traced, undo takes back its last point and leaves the garment alone. */
export function TraceUndo() {
  const tracing = useDraft((draft) => draft.mode === 'trace' && draft.trace.length > 0);
  useEffect(() => {
    if (!tracing) return;
    useTable.setState({ undoFirst: { label: words.steps.addPoint, undo: takeBackPoint } });
    return () => useTable.setState({ undoFirst: undefined });
  }, [tracing]);
  return null;
}
