import { useEffect } from 'react';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { RoomLayout } from '../ui/room-layout';
import { reshapeWords as words } from '../words/reshape';
import { shellWords } from '../words/shell';
import { ChangesList } from './changes-list';
import { tryChange, useReshape } from './reshape-store';
import { ReshapeTable } from './reshape-table';
import { TrialCard } from './trial-card';

/** The room where a draft is changed as the trade changes it: shown first, in numbers too, and then taken or left. */
export function ReshapeRoom() {
  const garment = useGarment((state) => state.garment);
  const trying = useReshape((state) => state.trying);
  useLeaveByUndo(trying !== undefined);
  if (!garment) return null;
  return (
    <RoomLayout
      tableFirst
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

/** While a change is only tried, undo puts it away and leaves the garment alone. */
function useLeaveByUndo(trying: boolean): void {
  useEffect(() => {
    if (!trying) return;
    useTable.setState({ undoFirst: { label: words.leave, undo: () => tryChange(undefined) } });
    return () => useTable.setState({ undoFirst: undefined });
  }, [trying]);
}
