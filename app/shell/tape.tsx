import { useEffect, useRef, useState } from 'react';
import { useFindings } from '../state/findings-store';
import { type Room, useTable } from '../state/table-store';
import { shellWords as words } from '../words/shell';
import styles from './tape.module.css';

/** The rooms of the job in their order. The shelf stands before them and is reached by the name of the garment. */
const stations = [
  'wearer',
  'diagram',
  'draft',
  'reshape',
  'seams',
  'fit',
  'mockup',
  'versions',
  'compare',
  'cloth',
  'paper',
  'check',
] as const satisfies readonly Room[];

/** The tape along the top: each inch of it is a room, marked while something in that room is unsettled. */
export function Tape() {
  const room = useTable((table) => table.room);
  const goTo = useTable((table) => table.goTo);
  const counts = useFindings((findings) => findings.countByRoom);
  const left = useFindings((findings) => findings.left.length);
  const { strip, hidden } = useSlide(room);
  return (
    <nav
      className={styles.tape}
      aria-label={words.roomsInOrder}
      data-before={hidden.before || undefined}
      data-after={hidden.after || undefined}
    >
      <ol ref={strip}>
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
                  <span className={styles.count} title={words.unsettled(count)}>
                    {count}
                    <span className="only-heard"> — {words.unsettled(count)}</span>
                  </span>
                )}
                {station === 'check' && left > 0 && (
                  <span className={styles.left}>
                    {words.leftOnTape(left)}
                    <span className="only-heard"> — {words.leftKnowingly(left)}</span>
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

/** Where the tape is longer than the window: slides the room one is in into the middle, and knows what lies beyond. */
function useSlide(room: Room) {
  const strip = useRef<HTMLOListElement>(null);
  const [hidden, setHidden] = useState({ before: false, after: false });

  // biome-ignore lint/correctness/useExhaustiveDependencies: another room is what slides the tape
  useEffect(() => {
    const ol = strip.current;
    const here = ol?.querySelector<HTMLElement>('[aria-current]');
    if (ol && here) ol.scrollLeft = here.offsetLeft - (ol.clientWidth - here.offsetWidth) / 2;
  }, [room]);

  useEffect(() => {
    const ol = strip.current;
    if (!ol) return;
    const look = () => {
      const before = ol.scrollLeft > 1;
      const after = ol.scrollLeft + ol.clientWidth < ol.scrollWidth - 1;
      setHidden((now) => (now.before === before && now.after === after ? now : { before, after }));
    };
    const watch = new ResizeObserver(look);
    watch.observe(ol);
    ol.addEventListener('scroll', look, { passive: true });
    look();
    return () => {
      watch.disconnect();
      ol.removeEventListener('scroll', look);
    };
  }, []);

  return { strip, hidden };
}
