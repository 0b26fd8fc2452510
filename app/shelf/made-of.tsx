import { useState } from 'react';
import { shelfWords as words } from '../words/shelf';
import styles from './shelf-room.module.css';

/** A package that is part of the program, as the build lists it. */
interface Licensed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/** Whose work the program is made of, and on what terms; fetched when it is unfolded. */
export function MadeOf() {
  const [list, setList] = useState<readonly Licensed[] | 'failed'>();

  async function read(isOpen: boolean) {
    if (!isOpen || Array.isArray(list)) return;
    try {
      setList(await (await fetch('./licences.json')).json());
    } catch {
      setList('failed');
    }
  }

  return (
    <details className={styles.madeOf} onToggle={(event) => void read(event.currentTarget.open)}>
      <summary>{words.madeOf}</summary>
      <p>{words.madeOfHelp}</p>
      {list === 'failed' && <p>{words.madeOfFailed}</p>}
      {typeof list === 'object' && (
        <ul>
          {list.map(({ name, version, licence, text }) => (
            <li key={`${name} ${version}`}>
              <details>
                <summary>{words.licensed(name, version, licence)}</summary>
                <pre>{text}</pre>
              </details>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
