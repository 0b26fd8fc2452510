import { GuideButton } from '../guide/guide-button';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { shellWords as words } from '../words/shell';
import styles from './header.module.css';
import { KeptMark } from './kept-mark';
import { Tape } from './tape';
import { UnitSwitch } from './unit-switch';

/** The strip along the top of every room: whose garment it is, the rooms, and the way back. */
export function Header() {
  const name = useGarment((state) => state.garment?.name);
  const goTo = useTable((table) => table.goTo);
  return (
    <header className={styles.header}>
      <button type="button" className={styles.name} onClick={() => goTo('shelf')} title={words.rooms.shelf}>
        <span className={styles.product}>{words.product}</span>
        {name !== undefined && <span className={styles.garment}>{name}</span>}
      </button>
      {name !== undefined && (
        <>
          <Tape />
          <History />
        </>
      )}
      <div className={styles.guide}>
        <GuideButton />
      </div>
    </header>
  );
}

function History() {
  const undoable = useGarment((state) => state.past.at(-1)?.label);
  const redoable = useGarment((state) => state.future.at(-1)?.label);
  const first = useTable((table) => table.undoFirst);
  const undo = useGarment((state) => state.undo);
  const what = first?.label ?? undoable;
  const redo = useGarment((state) => state.redo);
  return (
    <div className={styles.history}>
      <Button icon="undo" title={words.undo(what)} disabled={what === undefined} onPress={first?.undo ?? undo} />
      <Button icon="redo" title={words.redo(redoable)} disabled={redoable === undefined} onPress={redo} />
      <UnitSwitch />
      <KeptMark />
    </div>
  );
}
