import { useEffect, useState } from 'react';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Note } from '../ui/note';
import { shellWords as words } from '../words/shell';
import styles from './broken.module.css';
import { FaultWords } from './fault-words';
import { saveAndSay } from './save-and-say';

interface Stray {
  readonly fault: unknown;
  /** A later fault is another report. */
  readonly count: number;
}

/** Says that something went wrong behind a press, where no room breaks by it: it would else seem that nothing happened. */
export function StrayFault() {
  const [stray, setStray] = useState<Stray>();
  const garment = useGarment((state) => state.garment);
  const room = useTable((table) => table.room);

  useEffect(() => {
    const note = (fault: unknown) => {
      setStray((last) => ({ fault, count: (last?.count ?? 0) + 1 }));
    };
    const thrown = ({ error }: ErrorEvent) => {
      // The browser also tells of its own hitches, which name no fault.
      if (error) note(error);
    };
    const refused = ({ reason }: PromiseRejectionEvent) => {
      // What was called off is no fault.
      if (!(reason instanceof DOMException && reason.name === 'AbortError')) note(reason);
    };
    window.addEventListener('error', thrown);
    window.addEventListener('unhandledrejection', refused);
    return () => {
      window.removeEventListener('error', thrown);
      window.removeEventListener('unhandledrejection', refused);
    };
  }, []);

  if (!stray) return null;
  const close = { words: words.strayClose, onPress: () => setStray(undefined) };
  const save = garment && { words: words.saveToFile, onPress: () => void saveAndSay(garment) };
  return (
    <div className={styles.stray}>
      <div role="alert">
        <Note tone="stop" action={save ?? close} beside={save && close}>
          {words.stray}
        </Note>
      </div>
      <FaultWords key={stray.count} where={words.rooms[room]} fault={stray.fault} />
    </div>
  );
}
