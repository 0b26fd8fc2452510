import { useEffect } from 'react';
import { takeAsked } from '../state/asked-store';
import { useGarment } from '../state/garment-store';
import { useLeaveByUndo } from '../trial/use-leave-by-undo';
import { RoomLayout } from '../ui/room-layout';
import { shellWords } from '../words/shell';
import { lettingOut } from './changes/take-in';
import { ChangesList } from './changes-list';
import { leaveChange, tryChange, useReshape } from './reshape-store';
import { ReshapeTable } from './reshape-table';
import { TrialCard } from './trial-card';

/** The room where a draft is changed as the trade changes it: shown first, in numbers too, and then taken or left. */
export function ReshapeRoom() {
  const garment = useGarment((state) => state.garment);
  const trying = useReshape((state) => state.trying);
  useLeaveByUndo(trying !== undefined, leaveChange);
  useEffect(() => {
    const asked = takeAsked();
    if (asked) tryChange(lettingOut(asked));
  }, []);
  if (!garment) return null;
  return (
    <RoomLayout
      tableFirst
      page={trying?.name}
      table={
        <>
          <h1 className="only-heard">{shellWords.rooms.reshape}</h1>
          <ReshapeTable garment={garment} />
        </>
      }
      notebook={trying ? <TrialCard garment={garment} trying={trying} /> : <ChangesList garment={garment} />}
    />
  );
}
