import { useEffect, useRef } from 'react';
import type { Garment } from '../../core/garment/garment';
import { mockupFindings } from '../../core/mockup/mockup-findings';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { pinnedSentence, mockupWords as words } from '../words/mockup';
import styles from './paper-room.module.css';

interface OutstandingProps {
  readonly garment: Garment;
  readonly onGoOn: () => void;
}

/** What was pinned and is not in these pages, said before they are made; the way to the mock-up, and the way on. */
export function Outstanding({ garment, onGoOn }: OutstandingProps) {
  const goTo = useTable((table) => table.goTo);
  const said = useRef<HTMLElement>(null);
  // Told before anything is made, so it must be what she sees and hears next.
  useEffect(() => said.current?.focus(), []);
  const found = mockupFindings(garment);
  const changes = found.flatMap(({ mockup, pinned }) => pinned.map((change) => ({ mockup, change })));
  return (
    <section ref={said} className={styles.outstanding} aria-label={words.outstandingTitle} tabIndex={-1}>
      <Note tone="stop">{words.outstanding(changes.length)}</Note>
      <ol>
        {changes.map(({ mockup, change }) => (
          <li key={`${mockup.id} ${change.id}`}>
            {mockup.name}. {pinnedSentence(garment, change)}
          </li>
        ))}
      </ol>
      <Button tone="chalk" onPress={() => goTo('mockup')}>
        {words.toMockup}
      </Button>
      <Button onPress={onGoOn}>{words.makeAllTheSame}</Button>
    </section>
  );
}
