import { useEffect, useMemo, useState } from 'react';
import { doesNotFit } from '../../core/check/does-not-fit';
import { forAnotherWearer } from '../../core/garment/for-another-wearer';
import type { Garment } from '../../core/garment/garment';
import { currentSet } from '../../core/garment/measure-value';
import { newId } from '../state/new-id';
import { type Room, useTable } from '../state/table-store';
import { today } from '../state/today';
import { startGarment } from '../storage/bring-in';
import type { ShelfRow } from '../storage/database';
import { flushJournal } from '../storage/journal';
import { takeForSaving } from '../storage/shelf';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { TextField } from '../ui/text-field';
import { findingSentence } from '../words/findings';
import { shelfWords, takeUpWords as words } from '../words/shelf';
import { LevelsBeside } from './levels-beside';
import styles from './shelf-room.module.css';

interface TakeUpProps {
  readonly row: ShelfRow;
  readonly rows: readonly ShelfRow[];
  readonly onLeave: () => void;
}

const NOT_YET = 'not-yet';

/** Takes a garment up again for another body, and says first what of it would not fit her. */
export function TakeUp({ row, rows, onLeave }: TakeUpProps) {
  const [wearer, setWearer] = useState('');
  const [from, setFrom] = useState<string>(NOT_YET);
  const [setId, setSetId] = useState<string>();
  const [failed, setFailed] = useState(false);
  const garment = useFromShelf(row.id);
  const measured = useFromShelf(from === NOT_YET ? undefined : from);
  const goTo = useTable((table) => table.goTo);
  const set = measured ? (measured.wearer.sets.find(({ id }) => id === setId) ?? currentSet(measured)) : undefined;

  const after = useMemo(() => {
    if (!garment || (from !== NOT_YET && !set)) return undefined;
    const name = wearer.trim() || (from === row.id ? '' : measured?.wearer.name) || '';
    return forAnotherWearer(garment, {
      id: newId(),
      name: name === '' ? shelfWords.copyName(garment.name) : words.garmentName(garment.name, name),
      today: today(),
      wearer: name,
      measures: { ...(set ?? { date: today(), wornOver: '', measures: {} }), id: newId() },
    });
  }, [garment, measured, set, from, row.id, wearer]);

  async function begin(made: Garment, room: Room) {
    try {
      await startGarment(made);
      goTo(room, { kind: 'nothing' });
    } catch {
      setFailed(true);
    }
  }

  return (
    <section className={styles.takeUp} aria-label={words.title(row.name)}>
      <h3>{words.title(row.name)}</h3>
      <p>{words.intro}</p>
      <div className={styles.beside}>
        <TextField label={words.wearer} value={wearer} onCommit={setWearer} />
        <Pick
          label={words.measures}
          value={from}
          options={[
            { value: NOT_YET, words: words.notYet },
            ...rows.map(({ id, name }) => ({ value: id, words: words.asIn(name) })),
          ]}
          onChange={(to) => {
            setFrom(to);
            setSetId(undefined);
          }}
        />
        {measured && set && measured.wearer.sets.length > 1 && (
          <Pick
            label={words.whichSet}
            value={set.id}
            options={measured.wearer.sets.map(({ id, date, wornOver }) => {
              const said = words.setOf(date, wornOver);
              return { value: id, words: id === measured.wearer.currentSetId ? words.inUse(said) : said };
            })}
            onChange={setSetId}
          />
        )}
      </div>
      {from === NOT_YET && <Note tone="plain">{words.measureFirst}</Note>}
      {garment === null && <Note tone="stop">{shelfWords.damaged}</Note>}
      {measured === null && <Note tone="stop">{words.noMeasures}</Note>}
      {garment && measured && after && (
        <>
          <LevelsBeside first={garment} takenUp={after} />
          <h4>{words.noLonger}</h4>
          <NotFitting first={garment} takenUp={after} />
        </>
      )}
      {failed && <Note tone="stop">{words.failed}</Note>}
      <div className={styles.asked}>
        {after && (
          <Button tone={measured ? 'plain' : 'chalk'} onPress={() => void begin(after, 'wearer')}>
            {words.toMeasures}
          </Button>
        )}
        {after && measured && (
          <>
            <Button tone="chalk" onPress={() => void begin(after, 'fit')}>
              {words.toFit}
            </Button>
            <Button onPress={() => void begin(after, 'reshape')}>{words.toReshape}</Button>
          </>
        )}
        <Button tone="quiet" onPress={onLeave}>
          {words.leave}
        </Button>
      </div>
    </section>
  );
}

function NotFitting({ first, takenUp }: { readonly first: Garment; readonly takenUp: Garment }) {
  const found = useMemo(() => doesNotFit(first, takenUp), [first, takenUp]);
  if (takenUp.rings.length === 0) return <Note tone="plain">{words.noRings}</Note>;
  if (found.length === 0) return <Note tone="good">{words.allFits}</Note>;
  return found.map(({ finding, didFit }) => (
    <Note key={`${finding.kind} ${JSON.stringify(finding.place)}`} tone={finding.weight}>
      {findingSentence(finding, takenUp)} {didFit ? words.didFit : words.neverFitted}
    </Note>
  ));
}

/** A garment of the shelf to look at: `undefined` while it is fetched, `null` when it cannot be read. */
function useFromShelf(id: string | undefined): Garment | null | undefined {
  const [read, setRead] = useState<{ readonly id: string; readonly garment: Garment | null }>();
  useEffect(() => {
    if (id === undefined) return;
    let left = false;
    const done = (garment: Garment | undefined) => !left && setRead({ id, garment: garment ?? null });
    flushJournal()
      .then(() => takeForSaving(id))
      .then(done, () => done(undefined));
    return () => {
      left = true;
    };
  }, [id]);
  return read && read.id === id ? read.garment : undefined;
}
