import { useEffect } from 'react';
import { useDraft } from './draft-store';
import { takeBackPoint } from './trace-tool';

/** While a piece is being traced, the undo keys take back its last point and nothing else. */
export function TraceUndo() {
  useEffect(() => {
    function press(event: KeyboardEvent) {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== 'z')
        return;
      if (event.target instanceof HTMLElement && event.target.closest('input, textarea, select')) return;
      const { mode, trace } = useDraft.getState();
      if (mode !== 'trace' || trace.length === 0) return;
      event.preventDefault();
      takeBackPoint();
    }
    // Before the keys reach the garment's own undo.
    window.addEventListener('keydown', press, { capture: true });
    return () => window.removeEventListener('keydown', press, { capture: true });
  }, []);
  return null;
}
