import { lazy, Suspense, useState } from 'react';
import { saveAndSay } from '../shell/save-and-say';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useTable } from '../state/table-store';
import { openFromShelf } from '../storage/bring-in';
import type { ShelfRow } from '../storage/database';
import { isHeldElsewhere } from '../storage/editing-lock';
import { flushJournal } from '../storage/journal';
import { copyOnShelf, isReplayed, type OnShelf, putAway, removeFromShelf, takeForSaving } from '../storage/shelf';
import { useCopyAges } from '../storage/use-copy-ages';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { SearchField } from '../ui/search-field';
import { locale } from '../words/language';
import { shelfWords as words } from '../words/shelf';
import { CopyLine } from './copy-line';
import { CoverPicture } from './cover-picture';
import { notOpened } from './not-opened';
import { ORDERS, type Order, onShelf } from './shelf-order';
import styles from './shelf-room.module.css';

/** Judging a garment for another body brings all the checks with it, so it is fetched when it is asked for. */
const TakeUp = lazy(async () => ({ default: (await import('./take-up')).TakeUp }));

interface ShelfListProps {
  readonly rows: readonly OnShelf[];
  readonly onTableId: string | undefined;
  readonly onChange: () => void;
  readonly onTrouble: (sentence: string) => void;
}

/** The garments kept on this device, those put away folded up below. */
export function ShelfList({ rows, onTableId, onChange, onTrouble }: ShelfListProps) {
  const [asked, setAsked] = useState<string>();
  const [takenUp, setTakenUp] = useState<string>();
  const [sought, setSought] = useState('');
  const [order, setOrder] = useState<Order>('changed');
  const goTo = useTable((table) => table.goTo);

  const open = (row: ShelfRow) => attempt(() => toTable(row), words.openFailed(row.name));

  async function toTable(row: ShelfRow) {
    if (row.id !== onTableId) {
      const opened = await openFromShelf(row.id);
      if (!isReplayed(opened)) {
        onTrouble(notOpened(opened.kind));
        return;
      }
      if (opened.lost > 0) say(words.lost(opened.lost));
    }
    goTo('draft', { kind: 'nothing' });
  }

  /** Does something to a garment; where the device fails at it she is told what did not happen. */
  async function attempt(work: () => Promise<void>, failed: string) {
    try {
      await work();
    } catch {
      onTrouble(failed);
    }
  }

  const save = (row: ShelfRow) =>
    attempt(async () => {
      const garment = row.id === onTableId ? useGarment.getState().garment : await takeForSaving(row.id);
      if (garment) await saveAndSay(garment);
      else onTrouble(words.damaged);
    }, words.saveFailed(row.name));

  const copy = (row: ShelfRow) =>
    attempt(async () => {
      await flushJournal();
      const made = await copyOnShelf(row.id, { newId, name: words.copyName(row.name) });
      if (!made) onTrouble(words.damaged);
      onChange();
    }, words.copyFailed(row.name));

  const setAway = (row: ShelfRow, isPutAway: boolean) =>
    attempt(async () => {
      await putAway(row.id, isPutAway);
      say(isPutAway ? words.putAwayDone(row.name) : words.bringOutDone(row.name));
      onChange();
    }, words.putAwayFailed(row.name));

  const remove = (row: ShelfRow) =>
    attempt(async () => {
      if (await isHeldElsewhere(row.id)) {
        setAsked(undefined);
        onTrouble(words.removeElsewhere(row.name));
        return;
      }
      // First: of a garment that is still on the table nothing more would be kept.
      if (row.id === onTableId) useGarment.getState().close();
      await removeFromShelf(row.id);
      say(words.removed(row.name));
      setAsked(undefined);
      onChange();
    }, words.removeFailed(row.name));

  const ages = useCopyAges(rows);
  const found = onShelf(rows, { sought, order });
  const out = found.filter((row) => !row.isPutAway);
  const away = found.filter((row) => row.isPutAway);

  function age(id: string) {
    const known = ages.get(id);
    return known && <CopyLine age={known} />;
  }

  const list = (listed: readonly OnShelf[]) => (
    <ul className={styles.list}>
      {listed.map((row) => (
        <li key={row.id}>
          <button type="button" className={styles.garment} onClick={() => void open(row)}>
            <CoverPicture row={row} />
            <span>
              <strong>{row.name}</strong>
              <span>
                {row.id === onTableId ? words.onTheTable : words.changed(when(row.changed))}, {words.pieces(row.pieces)}
              </span>
              {age(row.id)}
            </span>
          </button>
          <div className={styles.does}>
            <Button icon="figure" title={words.takeUpLabel(row.name)} onPress={() => setTakenUp(row.id)} />
            <Button icon="save" title={words.saveLabel(row.name)} onPress={() => void save(row)} />
            <Button icon="copy" title={words.copyLabel(row.name)} onPress={() => void copy(row)} />
            <Button
              icon={row.isPutAway ? 'up' : 'down'}
              title={row.isPutAway ? words.bringOutLabel(row.name) : words.putAwayLabel(row.name)}
              onPress={() => void setAway(row, !row.isPutAway)}
            />
            <Button icon="bin" title={words.removeLabel(row.name)} onPress={() => setAsked(row.id)} />
          </div>
          {takenUp === row.id && (
            <Suspense>
              <TakeUp row={row} rows={rows} onLeave={() => setTakenUp(undefined)} />
            </Suspense>
          )}
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
  );

  return (
    <section>
      <h2>{words.onTheShelf}</h2>
      {rows.length > 1 && (
        <div className={styles.beside}>
          <SearchField label={words.search} hint={words.searchHint} value={sought} onChange={setSought} />
          <Pick
            label={words.order}
            value={order}
            options={ORDERS.map((value) => ({ value, words: words.orders[value] }))}
            onChange={setOrder}
          />
        </div>
      )}
      {found.length === 0 && <Note tone="plain">{words.noneFound(sought.trim())}</Note>}
      {list(out)}
      {away.length > 0 && (
        <details className={styles.away} open={sought.trim() !== '' || undefined}>
          <summary>{words.putAwayTitle(away.length)}</summary>
          {list(away)}
        </details>
      )}
    </section>
  );
}

const format = new Intl.DateTimeFormat(locale(), { dateStyle: 'medium', timeStyle: 'short' });

function when(time: number): string {
  return format.format(time);
}
