import { useEffect } from 'react';
import { useTable } from '../state/table-store';
import { trialWords as words } from '../words/trial';

/** While a change is only tried, undo puts it away and leaves the garment alone. Keep `leave` while it stays the same. */
export function useLeaveByUndo(trying: boolean, leave: () => void): void {
  useEffect(() => {
    if (!trying) return;
    useTable.setState({ undoFirst: { label: words.leave, undo: leave } });
    return () => useTable.setState({ undoFirst: undefined });
  }, [trying, leave]);
}
