import { useEffect, useRef } from 'react';
import { type GuidePage, useGuide } from '../state/guide-store';
import { useShownIn } from '../state/shown-in';
import { Button } from '../ui/button';
import { Switch } from '../ui/switch';
import { guideWords as words } from '../words/guide/guide';
import { howTos } from '../words/guide/how-to';
import { nextWords } from '../words/guide/next';
import { inFull } from '../words/written';
import { GlossaryPage } from './glossary-page';
import styles from './guide.module.css';
import { HowToPage } from './how-to-page';
import { howToOrder } from './pages';

/** The book beside every room: how each part of the job is done, and what the words mean. The room goes on beside it. */
export function GuideBook({ page }: { readonly page: GuidePage }) {
  const { open, close } = useGuide.getState();
  const top = useRef<HTMLHeadingElement>(null);
  const before = useRef<Element | null>(null);

  useEffect(() => {
    before.current = document.activeElement;
    return () => {
      if (before.current instanceof HTMLElement && before.current.isConnected) before.current.focus();
    };
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another page is what begins at its top
  useEffect(() => {
    top.current?.focus();
  }, [page]);

  return (
    <aside
      className={styles.book}
      aria-label={words.title}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        close();
      }}
    >
      <div className={styles.strip}>
        {page !== 'list' && (
          <Button tone="quiet" icon="left" onPress={() => open('list')}>
            {words.backToList}
          </Button>
        )}
        <span className={styles.close}>
          <Button tone="quiet" icon="close" title={words.close} onPress={close} />
        </span>
      </div>
      <div className={styles.leaf} key={page}>
        <h2 ref={top} tabIndex={-1}>
          {titleOf(page)}
        </h2>
        {page === 'list' && <List />}
        {page === 'words' && <GlossaryPage />}
        {page !== 'list' && page !== 'words' && <HowToPage name={page} />}
      </div>
    </aside>
  );
}

function titleOf(page: GuidePage): string {
  if (page === 'list') return words.title;
  return page === 'words' ? words.words : howTos[page].title;
}

function List() {
  const { open, setSaysNext } = useGuide.getState();
  const saysNext = useGuide((guide) => guide.saysNext);
  const shownIn = useShownIn();
  return (
    <>
      <Switch label={nextWords.shown} on={saysNext} onChange={setSaysNext} />
      <ul className={styles.list}>
        {howToOrder.map((name) => (
          <li key={name}>
            <button type="button" onClick={() => open(name)}>
              <strong>{howTos[name].title}</strong>
              <span>{inFull(howTos[name].why, shownIn)}</span>
            </button>
          </li>
        ))}
        <li>
          <button type="button" onClick={() => open('words')}>
            <strong>{words.words}</strong>
            <span>{words.wordsHelp}</span>
          </button>
        </li>
      </ul>
    </>
  );
}
