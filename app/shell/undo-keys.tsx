import { useEffect } from 'react';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';

/** Undo and redo by the keys every system uses for them. In a field the keys belong to the field. */
export function UndoKeys() {
  useEffect(() => {
    function press(event: KeyboardEvent) {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLElement && event.target.closest('input, textarea, select')) return;
      const key = event.key.toLowerCase();
      const { redo } = useGarment.getState();
      const { undo } = useTable.getState().undoFirst ?? useGarment.getState();
      if (key === 'z' && !event.shiftKey) undo();
      else if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
      else return;
      event.preventDefault();
    }
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
  return null;
}
