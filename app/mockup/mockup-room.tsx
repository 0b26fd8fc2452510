import { useEffect, useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import { versionMark } from '../../core/garment/version-mark';
import { carriedOver } from '../../core/mockup/carried-over';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { NoPieces } from '../table/no-pieces';
import { useLeaveByUndo } from '../trial/use-leave-by-undo';
import { Card } from '../ui/card';
import { RoomLayout } from '../ui/room-layout';
import { mockupWords as words } from '../words/mockup';
import { shellWords } from '../words/shell';
import { CarryCard } from './carry-card';
import { leave, mockupInHand, useMockup } from './mockup-store';
import { MockupTable } from './mockup-table';
import { MockupsCard } from './mockups-card';
import { NotingCard } from './noting-card';
import { PinnedCard } from './pinned-card';
import { useVersion } from './use-version';

/** The room where what was pinned at a fitting is noted, and carried over into the draft. */
export function MockupRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  if (garment.pieces.length > 0) return <WithPieces garment={garment} />;
  const notebook = (
    <Card title={words.mockups} about="mock-ups">
      <p>{words.none}</p>
    </Card>
  );
  return <NoPieces words={words} notebook={notebook} />;
}

function WithPieces({ garment }: { readonly garment: Garment }) {
  const mockupId = useMockup((state) => state.mockupId);
  const noting = useMockup((state) => state.noting);
  const carrying = useMockup((state) => state.carrying);
  const mockup = mockupInHand(garment.mockups ?? [], mockupId);
  const version = useVersion(garment.id, mockup?.version);
  const isBusy = noting !== undefined || carrying !== undefined;
  useLeaveByUndo(isBusy, leave);
  const isGone = isBusy && (!mockup || (carrying?.ids.some((id) => !isOutstanding(mockup.pinned, id)) ?? false));
  useEffect(() => {
    // Undone or settled elsewhere: there is nothing left to carry over.
    if (isGone) leave();
  }, [isGone]);
  const base = version.kind === 'here' ? version.garment : undefined;
  const asCut = base ?? garment;
  const hasMoved = useMemo(() => mockup !== undefined && versionMark(garment) !== mockup.mark, [garment, mockup]);
  const tried = useMemo(() => {
    if (!mockup || !carrying || version.kind === 'opening') return undefined;
    return carriedOver(garment, { mockupId: mockup.id, pinnedIds: carrying.ids, date: today(), base });
  }, [garment, mockup, carrying, version.kind, base]);
  const after = tried?.kind === 'carried' ? tried.garment : undefined;
  return (
    <RoomLayout
      page={noting?.id ?? carrying?.ids.join(' ')}
      table={
        <>
          <h1 className="only-heard">{shellWords.rooms.mockup}</h1>
          <MockupTable shown={carrying ? garment : asCut} mockup={mockup} after={after} />
        </>
      }
      notebook={
        mockup && noting ? (
          <NotingCard shown={asCut} draft={garment} mockup={mockup} noting={noting} />
        ) : mockup && carrying && !isGone ? (
          <CarryCard garment={garment} shown={asCut} mockup={mockup} {...carrying} tried={tried} />
        ) : (
          <>
            {mockup && <PinnedCard shown={asCut} mockup={mockup} />}
            <MockupsCard garment={garment} mockup={mockup} version={version} hasMoved={hasMoved} />
          </>
        )
      }
    />
  );
}

function isOutstanding(
  pinned: readonly { readonly id: string; readonly state: { readonly kind: string } }[],
  id: string,
): boolean {
  return pinned.some((change) => change.id === id && change.state.kind === 'noted');
}
