import { lazy, Suspense } from 'react';
import styles from './app.module.css';
import { WalkBar } from './guide/walk-bar';
import { ShelfRoom } from './shelf/shelf-room';
import { Header } from './shell/header';
import { KeptNotice } from './shell/kept-notice';
import { RoomGuard } from './shell/room-guard';
import { SayRefused } from './shell/say-refused';
import { StrayFault } from './shell/stray-fault';
import { UndoKeys } from './shell/undo-keys';
import { UpdateNotice } from './shell/update-notice';
import { useGarment } from './state/garment-store';
import { useGuide } from './state/guide-store';
import { type Room, useTable } from './state/table-store';
import { SaidHere } from './ui/say';
import { shellWords as words } from './words/shell';

// The shelf comes at once; every other room is fetched when it is first entered, from the offline store if need be.
const loaders: Readonly<Record<Exclude<Room, 'shelf'>, () => Promise<React.ComponentType>>> = {
  wearer: async () => (await import('./wearer/wearer-room')).WearerRoom,
  diagram: async () => (await import('./diagram/diagram-room')).DiagramRoom,
  draft: async () => (await import('./draft/draft-room')).DraftRoom,
  reshape: async () => (await import('./reshape/reshape-room')).ReshapeRoom,
  seams: async () => (await import('./seams/seams-room')).SeamsRoom,
  fit: async () => (await import('./fit/fit-room')).FitRoom,
  mockup: async () => (await import('./mockup/mockup-room')).MockupRoom,
  versions: async () => (await import('./versions/versions-room')).VersionsRoom,
  compare: async () => (await import('./compare/compare-room')).CompareRoom,
  cloth: async () => (await import('./cloth/cloth-room')).ClothRoom,
  paper: async () => (await import('./paper/paper-room')).PaperRoom,
  check: async () => (await import('./check/check-room')).CheckRoom,
};

const fetched = new Map<Room, React.ComponentType>();

function roomOf(room: Room): React.ComponentType {
  if (room === 'shelf') return ShelfRoom;
  const known = fetched.get(room) ?? lazy(async () => ({ default: await loaders[room]() }));
  fetched.set(room, known);
  return known;
}

function Entered({ room }: { readonly room: Room }) {
  const Known = roomOf(room);
  return <Known />;
}

const GuideBook = lazy(async () => ({ default: (await import('./guide/guide-book')).GuideBook }));

/** The workbench: a strip along the top and one room below it. Without a garment there is only the shelf. */
export function App() {
  const chosen = useTable((table) => table.room);
  const hasGarment = useGarment((state) => state.garment !== undefined);
  const room = hasGarment ? chosen : 'shelf';
  const page = useGuide((guide) => guide.page);
  return (
    <div className={styles.app}>
      <UndoKeys />
      <SayRefused />
      <Header />
      <UpdateNotice />
      <KeptNotice />
      <StrayFault />
      <SaidHere />
      <div className={styles.room}>
        <RoomGuard
          key={room}
          room={words.rooms[room]}
          sentence={words.broken(words.rooms[room])}
          // Its code may not have come; it is asked for anew.
          onTryAgain={() => fetched.delete(room)}
        >
          <Suspense fallback={<p className={styles.loading}>{words.loading}</p>}>
            <Entered room={room} />
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
