import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { useVersionsOf } from '../storage/use-versions';
import { NoPieces } from '../table/no-pieces';
import { Note } from '../ui/note';
import { RoomLayout } from '../ui/room-layout';
import { shellWords } from '../words/shell';
import { versionsWords as words } from '../words/versions';
import { CuttingCard } from './cutting-card';
import { KeepCard } from './keep-card';
import { ListCard } from './list-card';
import { LookCard } from './look-card';
import { useFirstDrawn, useLookedAt, useVersionGarment } from './looked-at';
import { SeenFirst } from './seen-first';
import { StepsCard } from './steps-card';
import { TracedCard } from './traced-card';
import { VersionsTable } from './versions-table';

/** What the draft was like before: as it was traced, as it was kept, and what was done in between. */
export function VersionsRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  const { pieces, traced = [] } = garment;
  if (pieces.length > 0 || traced.length > 0) return <WithPieces garment={garment} />;
  return <NoPieces words={words} notebook={<StepsCard garment={garment} />} />;
}

function WithPieces({ garment }: { readonly garment: Garment }) {
  const { versions, reading } = useVersionsOf(garment.id);
  const at = useLookedAt(garment.id);
  const version = useVersionGarment(versions, at);
  const first = useFirstDrawn(garment);
  const head = at.kind === 'version' ? versions.find(({ number }) => number === at.number) : undefined;
  return (
    <RoomLayout
      table={
        <>
          <h1 className="only-heard">{shellWords.rooms.versions}</h1>
          <VersionsTable garment={garment} at={at} version={version} traced={first.traced} />
        </>
      }
      notebook={
        <>
          {reading === 'failed' && <Note tone="stop">{words.notRead}</Note>}
          {head && (
            <SeenFirst key={head.number}>
              <LookCard garment={garment} head={head} version={version} />
            </SeenFirst>
          )}
          {head && version && <CuttingCard garment={garment} number={head.number} version={version} />}
          {at.kind === 'traced' && (
            <SeenFirst>
              <TracedCard garment={garment} first={first} />
            </SeenFirst>
          )}
          {at.kind === 'now' && <KeepCard garment={garment} versions={versions} />}
          <ListCard garment={garment} versions={versions} at={at} />
          <StepsCard garment={garment} />
        </>
      }
    />
  );
}
