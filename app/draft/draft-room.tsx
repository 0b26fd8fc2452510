import { RoomLayout } from '../ui/room-layout';
import tableStyles from '../ui/room-table.module.css';
import { shellWords } from '../words/shell';
import { DraftBar } from './draft-bar';
import { DraftCanvas } from './draft-canvas';
import { EmptyTable } from './empty-table';
import { Notebook } from './notebook';
import { TraceUndo } from './trace-undo';

/** The room where lines are traced over the picture and shaped into pieces. */
export function DraftRoom() {
  return (
    <RoomLayout
      tableFirst
      table={
        <div className={tableStyles.table}>
          <h1 className="only-heard">{shellWords.rooms.draft}</h1>
          <TraceUndo />
          <DraftBar />
          <div className={tableStyles.canvas}>
            <DraftCanvas />
            <EmptyTable />
          </div>
        </div>
      }
      notebook={<Notebook />}
    />
  );
}
