import { lazy, Suspense } from 'react';
import styles from './app.module.css';
import { WalkBar } from './guide/walk-bar';
import { ShelfRoom } from './shelf/shelf-room';
import { Header } from './shell/header';
import { KeptNotice } from './shell/kept-notice';
import { RoomGuard } from './shell/room-guard';
import { SayRefused } from './shell/say-refused';
import { UndoKeys } from './shell/undo-keys';
import { UpdateNotice } from './shell/update-notice';
import { useGarment } from './state/garment-store';
import { useGuide } from './state/guide-store';
import { type Room, useTable } from './state/table-store';
import { SaidHere } from './ui/say';
import { shellWords as words } from './words/shell';

// The shelf comes at once; every other room is fetched when it is first entered, from the offline store if need be.
const rooms: Readonly<Record<Room, React.ComponentType>> = {
  shelf: ShelfRoom,
  wearer: lazy(async () => ({ default: (await import('./wearer/wearer-room')).WearerRoom })),
  diagram: lazy(async () => ({ default: (await import('./diagram/diagram-room')).DiagramRoom })),
  draft: lazy(async () => ({ default: (await import('./draft/draft-room')).DraftRoom })),
  reshape: lazy(async () => ({ default: (await import('./reshape/reshape-room')).ReshapeRoom })),
  seams: lazy(async () => ({ default: (await import('./seams/seams-room')).SeamsRoom })),
  fit: lazy(async () => ({ default: (await import('./fit/fit-room')).FitRoom })),
  mockup: lazy(async () => ({ default: (await import('./mockup/mockup-room')).MockupRoom })),
  versions: lazy(async () => ({ default: (await import('./versions/versions-room')).VersionsRoom })),
  compare: lazy(async () => ({ default: (await import('./compare/compare-room')).CompareRoom })),
  cloth: lazy(async () => ({ default: (await import('./cloth/cloth-room')).ClothRoom })),
  paper: lazy(async () => ({ default: (await import('./paper/paper-room')).PaperRoom })),
  check: lazy(async () => ({ default: (await import('./check/check-room')).CheckRoom })),
};

const GuideBook = lazy(async () => ({ default: (await import('./guide/guide-book')).GuideBook }));

/** The workbench: a strip along the top and one room below it. Without a garment there is only the shelf. */
export function App() {
  const chosen = useTable((table) => table.room);
  const hasGarment = useGarment((state) => state.garment !== undefined);
  const room = hasGarment ? chosen : 'shelf';
  const page = useGuide((guide) => guide.page);
  const Entered = rooms[room];
  return (
    <div className={styles.app}>
      <UndoKeys />
      <SayRefused />
      <Header />
      <UpdateNotice />
      <KeptNotice />
      <SaidHere />
      <div className={styles.room}>
        <RoomGuard key={room} room={words.rooms[room]} sentence={words.broken(words.rooms[room])}>
          <Suspense fallback={<p className={styles.loading}>{words.loading}</p>}>
            <Entered />
          </Suspense>
        </RoomGuard>
        {page !== undefined && (
          <Suspense fallback={null}>
            <GuideBook page={page} />
          </Suspense>
        )}
      </div>
      <WalkBar />
    </div>
  );
}
