import { pointsToBeSureOf } from '../../core/check/points-to-be-sure-of';
import { useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { Note } from '../ui/note';
import { checkWords as words } from '../words/check';
import styles from './check-room.module.css';
import { PointCard } from './point-card';
import { PrintList } from './print-list';

/** What to be sure of before cutting, in numbers, each line leading to the place that mends it. */
export function CheckRoom() {
  const garment = useGarment((state) => state.garment);
  const { findings, open, left } = useFindings();
  if (!garment) return null;
  const stops = open.filter(({ weight }) => weight === 'stop').length;
  return (
    <main className={styles.room}>
      <article className={styles.sheet}>
        <h1>{words.title}</h1>
        <p>{words.intro}</p>
        {open.length === 0 ? (
          <Note tone="good">{words.clear}</Note>
        ) : (
          <Note tone={stops > 0 ? 'stop' : 'warn'}>{words.counts(stops, open.length - stops, left.length)}</Note>
        )}
        <PrintList garment={garment} />
        <section>
          <h2>{words.points}</h2>
          <ol className={styles.list}>
            {pointsToBeSureOf(garment, findings).map((point) => (
              <PointCard key={point.name} point={point} garment={garment} />
            ))}
          </ol>
        </section>
        <section>
          <h2>{words.cautions}</h2>
          <ul className={styles.cautions}>
            {words.cautionLines.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      </article>
    </main>
  );
}
