import type { Finding } from '../../core/check/before-you-cut';
import { roomOf, useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { chosenAt, useTable } from '../state/table-store';
import { Note } from '../ui/note';
import { checkWords as words } from '../words/check';
import { findingSentence } from '../words/findings';
import { shellWords } from '../words/shell';
import styles from './check-room.module.css';

/** One list of what is still open, in numbers, each line leading to the place that mends it. */
export function CheckRoom() {
  const findings = useFindings((state) => state.findings);
  const stops = findings.filter((finding) => finding.weight === 'stop');
  const warns = findings.filter((finding) => finding.weight === 'warn');
  return (
    <main className={styles.room}>
      <article className={styles.sheet}>
        <h1>{words.title}</h1>
        <p>{words.intro}</p>
        {findings.length === 0 && <Note tone="good">{words.clear}</Note>}
        {stops.length > 0 && <OpenList title={words.stops(stops.length)} findings={stops} />}
        {warns.length > 0 && <OpenList title={words.warns(warns.length)} findings={warns} />}
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

function OpenList({ title, findings }: { readonly title: string; readonly findings: readonly Finding[] }) {
  const garment = useGarment((state) => state.garment);
  const goTo = useTable((table) => table.goTo);
  if (!garment) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ol className={styles.list}>
        {findings.map((finding) => {
          const room = roomOf(finding);
          return (
            <li key={`${finding.kind} ${JSON.stringify(finding.place)}`}>
              <Note
                tone={finding.weight}
                action={{
                  words: words.mend(shellWords.rooms[room]),
                  onPress: () => goTo(room, chosenAt(finding.place)),
                }}
              >
                {findingSentence(finding, garment)}
              </Note>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
