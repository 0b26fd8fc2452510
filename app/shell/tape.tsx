import { useFindings } from '../state/findings-store';
import { type Room, useTable } from '../state/table-store';
import { shellWords as words } from '../words/shell';
import styles from './tape.module.css';

/** The rooms of the job in their order. The shelf stands before them and is reached by the name of the garment. */
const stations = ['wearer', 'diagram', 'draft', 'fit', 'paper', 'check'] as const satisfies readonly Room[];

/** The tape along the top: each inch of it is a room, marked while something in that room is unsettled. */
export function Tape() {
  const room = useTable((table) => table.room);
  const goTo = useTable((table) => table.goTo);
  const counts = useFindings((findings) => findings.countByRoom);
  return (
    <nav className={styles.tape} aria-label={words.roomsInOrder}>
      <ol>
        {stations.map((station, index) => {
          const count = counts[station] ?? 0;
          return (
            <li key={station}>
              <button type="button" aria-current={room === station ? 'page' : undefined} onClick={() => goTo(station)}>
                <span className={styles.number} aria-hidden="true">
                  {index + 1}
                </span>
                {words.rooms[station]}
                {count > 0 && (
                  <span className={styles.count}>
                    {count}
                    <span className="only-heard"> — {words.unsettled(count)}</span>
                  </span>
                )}
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
