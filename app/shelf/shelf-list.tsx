import { useState } from 'react';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { openFromShelf } from '../storage/bring-in';
import type { ShelfRow } from '../storage/database';
import { flushJournal } from '../storage/journal';
import { saveProject } from '../storage/save-project';
import { copyOnShelf, isReplayed, removeFromShelf, takeForSaving } from '../storage/shelf';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { shelfWords as words } from '../words/shelf';
import styles from './shelf-room.module.css';

interface ShelfListProps {
  readonly rows: readonly ShelfRow[];
  readonly onTableId: string | undefined;
  readonly onChange: () => void;
  readonly onTrouble: (sentence: string) => void;
}

/** The garments kept on this device, the last changed first. */
export function ShelfList({ rows, onTableId, onChange, onTrouble }: ShelfListProps) {
  const [asked, setAsked] = useState<string>();
  const goTo = useTable((table) => table.goTo);

  async function open(row: ShelfRow) {
    if (row.id !== onTableId) {
      const opened = await openFromShelf(row.id);
      if (!isReplayed(opened)) {
        onTrouble({ missing: words.missing, newer: words.newer, 'not-a-garment': words.damaged }[opened.kind]);
        return;
      }
      if (opened.lost > 0) say(words.lost(opened.lost));
    }
    goTo('draft', { kind: 'nothing' });
  }

  async function save(row: ShelfRow) {
    const garment = row.id === onTableId ? useGarment.getState().garment : await takeForSaving(row.id);
    if (garment) await saveProject(garment);
    else onTrouble(words.damaged);
  }

  async function copy(row: ShelfRow) {
    await flushJournal();
    await copyOnShelf(row.id, { newId: () => crypto.randomUUID(), name: words.copyName(row.name) });
    onChange();
  }

  async function remove(row: ShelfRow) {
    if (row.id === onTableId) useGarment.getState().close();
    await removeFromShelf(row.id);
    say(words.removed(row.name));
    setAsked(undefined);
    onChange();
  }

  return (
    <section>
      <h2>{words.onTheShelf}</h2>
      <ul className={styles.list}>
        {rows.map((row) => (
          <li key={row.id}>
            <button type="button" className={styles.garment} onClick={() => void open(row)}>
              <strong>{row.name}</strong>
              <span>
                {row.id === onTableId ? words.onTheTable : words.changed(when(row.changed))}, {words.pieces(row.pieces)}
              </span>
            </button>
            <Button icon="save" title={words.saveLabel(row.name)} onPress={() => void save(row)} />
            <Button icon="copy" title={words.copyLabel(row.name)} onPress={() => void copy(row)} />
            <Button icon="bin" title={words.removeLabel(row.name)} onPress={() => setAsked(row.id)} />
            {asked === row.id && (
              <div className={styles.asked}>
                <Note tone="stop">{words.removeSure(row.name)}</Note>
                <Button tone="wrong" onPress={() => void remove(row)}>
                  {words.removeYes}
                </Button>
                <Button onPress={() => setAsked(undefined)}>{words.removeNo}</Button>
              </div>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

const format = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

function when(time: number): string {
  return format.format(time);
}
