import { useState } from 'react';
import { SearchField } from '../ui/search-field';
import { glossary } from '../words/guide/glossary';
import { guideWords as words } from '../words/guide/guide';
import styles from './guide.module.css';

/** What each word of the trade means here, sought by the word or by what it means. */
export function GlossaryPage() {
  const [sought, setSought] = useState('');
  const wanted = sought.trim().toLowerCase();
  const found = glossary.filter(({ word, means }) => `${word} ${means}`.toLowerCase().includes(wanted));
  return (
    <>
      <SearchField label={words.seekWord} hint={words.wordsHelp} value={sought} onChange={setSought} />
      {found.length === 0 && <p>{words.noWord(sought.trim())}</p>}
      <dl className={styles.words}>
        {found.map(({ word, means }) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
