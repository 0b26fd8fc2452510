import { useCallback, useEffect, useState } from 'react';
import { newGarment } from '../../core/garment/new-garment';
import { useGarment } from '../state/garment-store';
import { useGuide } from '../state/guide-store';
import { useKept } from '../state/kept-store';
import { newId } from '../state/new-id';
import { usualUnit } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { today } from '../state/today';
import { openProjectFile, startDemo, startGarment } from '../storage/bring-in';
import { type BroughtIn, bringMany } from '../storage/bring-many';
import { Blocked, Outdated } from '../storage/connection';
import { bringUpRows, listShelf, type OnShelf } from '../storage/shelf';
import { LookChoice } from '../ui/look-choice';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { guideWords } from '../words/guide/guide';
import { projectFileWords } from '../words/project-file';
import { shelfWords as words } from '../words/shelf';
import { wholeShelfWords } from '../words/whole-shelf';
import { BroughtReport } from './brought-report';
import { CopiesCard } from './copies-card';
import { GarmentCard } from './garment-card';
import { LanguageChoice } from './language-choice';
import { MadeOf } from './made-of';
import { notOpened } from './not-opened';
import { ShelfList } from './shelf-list';
import styles from './shelf-room.module.css';
import { StartCard } from './start-card';

/** Where garments are kept and begun. */
export function ShelfRoom() {
  const [rows, setRows] = useState<readonly OnShelf[]>();
  const [trouble, setTrouble] = useState<string>();
  const [bringing, setBringing] = useState<string>();
  const [brought, setBrought] = useState<readonly BroughtIn[]>();
  const goTo = useTable((table) => table.goTo);
  const onTable = useGarment((state) => state.garment);

  const refresh = useCallback(() => {
    listShelf().then(setRows, (fault) => setTrouble(unread(fault)));
  }, []);
  const { blocked, unopened } = useKept();
  useEffect(() => {
    // The strip along the top says what to do; once that is done the shelf is read.
    if (blocked) return;
    refresh();
    bringUpRows().then(
      (count) => count > 0 && refresh(),
      (fault) => setTrouble(unread(fault)),
    );
  }, [refresh, blocked]);

  /** At the top of the room, which may be out of sight, and aloud. */
  function tell(sentence: string) {
    setTrouble(sentence);
    say(sentence);
  }

  async function attempt(work: () => Promise<void>) {
    setTrouble(undefined);
    try {
      await work();
    } catch (fault) {
      setTrouble(unread(fault));
    }
  }

  function startFromPicture() {
    return attempt(async () => {
      await startGarment(newGarment({ newId, today: today(), name: words.unnamed, shownIn: usualUnit() }));
      goTo('diagram', { kind: 'nothing' });
    });
  }

  function tryDemo() {
    return attempt(async () => {
      await startDemo(today());
      goTo('draft', { kind: 'nothing' });
    });
  }

  function startWalk() {
    return attempt(async () => {
      const garmentId = await startDemo(today());
      useGuide.getState().setWalk({ garmentId, step: 0 });
      goTo('wearer', { kind: 'nothing' });
    });
  }

  function openFiles(files: readonly File[]) {
    return attempt(async () => {
      setBrought(undefined);
      const [only] = files;
      if (files.length === 1 && only) {
        const reading = await openProjectFile(only);
        if (reading.kind === 'project') {
          if (reading.missingPhotos > 0) say(projectFileWords.missingPhotos(reading.missingPhotos));
          goTo('draft', { kind: 'nothing' });
          return;
        }
        if ('shown' in reading) {
          goTo('draft', { kind: 'nothing' });
          return;
        }
        if (reading.kind !== 'not-a-project') {
          setTrouble(projectFileWords.refused[reading.kind]);
          return;
        }
      }
      setBrought(await bringMany(files, (done, count) => setBringing(wholeShelfWords.bringing(done, count))));
    }).finally(() => {
      setBringing(undefined);
      refresh();
    });
  }

  return (
    <main className={styles.room}>
      <div className={styles.sheet}>
        <h1>{words.title}</h1>
        <p className={styles.promise}>{words.promise}</p>
        <div className={styles.starts} data-known={(rows?.length ?? 0) > 0 || undefined}>
          <StartCard
            icon="camera"
            title={words.startPicture}
            help={words.startPictureHelp}
            onPress={startFromPicture}
          />
          <StartCard icon="piece" title={words.startDemo} help={words.startDemoHelp} onPress={tryDemo} />
          <StartCard icon="book" title={guideWords.startWalk} help={guideWords.startWalkHelp} onPress={startWalk} />
          <StartCard icon="open" title={words.openFile} help={words.openFileHelp} onFiles={openFiles} />
        </div>
        {bringing && <Note tone="plain">{bringing}</Note>}
        {brought && <BroughtReport outcomes={brought} onClose={() => setBrought(undefined)} />}
        {trouble && <Note tone="stop">{trouble}</Note>}
        {!trouble && unopened && <Note tone="stop">{words.unopened(unopened.name, notOpened(unopened.why))}</Note>}
        {onTable && <GarmentCard key={onTable.id} garment={onTable} onChange={refresh} />}
        {rows && rows.length > 0 && (
          <ShelfList rows={rows} onTableId={onTable?.id} onChange={refresh} onTrouble={tell} />
        )}
        {rows && rows.length > 0 && <CopiesCard onTrouble={tell} />}
        {rows?.length === 0 && <p>{words.nothingKept}</p>}
        <LookChoice />
        <LanguageChoice />
        <p className={styles.private}>{words.private}</p>
        <MadeOf />
      </div>
    </main>
  );
}

/** Why the shelf cannot be read; nothing where the strip along the top says it already. */
function unread(fault: unknown): string | undefined {
  return fault instanceof Blocked || fault instanceof Outdated ? undefined : words.noStorage;
}
