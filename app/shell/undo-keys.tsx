import { useEffect } from 'react';
import { useGarment } from '../state/garment-store';

/**
 * Undo and redo by the keys every system uses for them. In a field the keys belong to the field, and a room that is in
 * the middle of something (tracing, say) may take the key first by preventing its default.
 */
export function UndoKeys() {
  useEffect(() => {
    function press(event: KeyboardEvent) {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
      if (event.target instanceof HTMLElement && event.target.closest('input, textarea, select')) return;
      const key = event.key.toLowerCase();
      const { undo, redo } = useGarment.getState();
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
