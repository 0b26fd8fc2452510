import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { pieceOf } from '../../core/garment/with-piece';
import type { HelpName } from '../guide/help';
import { type Chosen, useTable } from '../state/table-store';
import { Card } from '../ui/card';
import { Icon } from '../ui/icon';
import { Note } from '../ui/note';
import { reshapeWords as words } from '../words/reshape';
import { trialWords } from '../words/trial';
import type { Change, ChangeName } from './change';
import { GROUPS } from './changes';
import styles from './reshape.module.css';
import { tryChange } from './reshape-store';

/** The help beside each group. */
const ABOUT: Readonly<Record<(typeof GROUPS)[number]['group'], HelpName>> = {
  length: 'change-length',
  width: 'change-width',
  darts: 'change-darts',
  waist: 'change-waist',
  pieces: 'new-pieces',
};

/** What can be changed, in groups, with what is chosen now. */
export function ChangesList({ garment }: { readonly garment: Garment }) {
  const chosen = useTable((table) => table.chosen);
  const [refused, setRefused] = useState<{ readonly name: ChangeName; readonly sentence: string }>();
  const begin = (change: Change) => {
    const begun = change.begin(garment, chosen);
    if ('kind' in begun) setRefused({ name: change.name, sentence: begun.sentence });
    else tryChange(begun);
  };
  return (
    <>
      <p className={styles.chosen}>{chosenWords(garment, chosen)}</p>
      {GROUPS.map(({ group, changes }) => (
        <Card key={group} title={words.groups[group]} about={ABOUT[group]}>
          <ul className={styles.list}>
            {changes.map((change) => (
              <li key={change.name}>
                <button type="button" className={styles.change} onClick={() => begin(change)}>
                  <Icon name={change.icon} />
                  <span>
                    <strong>{words.changes[change.name].name}</strong>
                    <small>{words.changes[change.name].help}</small>
                  </span>
                </button>
                {refused?.name === change.name && <Note tone="warn">{refused.sentence}</Note>}
              </li>
            ))}
          </ul>
        </Card>
      ))}
    </>
  );
}

function chosenWords(garment: Garment, chosen: Chosen): string {
  const piece = 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
  if (!piece) return words.nothingChosen;
  const edge = 'edgeId' in chosen ? piece.edges.find(({ id }) => id === chosen.edgeId) : undefined;
  return words.isChosen(edge ? trialWords.edgeOf(piece, edge) : piece.name);
}
