import { useEffect, useRef } from 'react';
import { useGuide } from '../state/guide-store';
import { useShownIn } from '../state/shown-in';
import { Button } from '../ui/button';
import { guideWords as words } from '../words/guide/guide';
import { helpWords } from '../words/guide/help';
import { howTos } from '../words/guide/how-to';
import { inFull } from '../words/written';
import { Drawing } from './drawing';
import { type HelpName, helpOf } from './help';
import styles from './help.module.css';

/** What a card is about, in a few sentences, with a small drawing and the page of the book that tells more. */
export function HelpNote({ name }: { readonly name: HelpName }) {
  const { drawing, page } = helpOf(name);
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    note.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <div ref={note} className={styles.note}>
      <p>{inFull(helpWords[name], useShownIn())}</p>
      {drawing && <Drawing name={drawing} />}
      {page && (
        <Button tone="quiet" icon="book" onPress={() => useGuide.getState().open(page)}>
          {words.readMore(howTos[page].title)}
        </Button>
      )}
    </div>
  );
}
