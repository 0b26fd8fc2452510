import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { pieceName, versionsWords as words } from '../words/versions';
import styles from './versions.module.css';

/** So many steps are shown at first, the latest; the others on asking. */
const AT_FIRST = 30;

/** What was done to the pieces, in order: what, on which piece, when. */
export function StepsCard({ garment }: { readonly garment: Garment }) {
  const [open, setOpen] = useState(false);
  const [all, setAll] = useState(false);
  const { steps = [] } = garment;
  const hidden = all ? 0 : Math.max(0, steps.length - AT_FIRST);
  return (
    <Card title={words.steps} about="steps" aside={String(steps.length)} open={open} onToggle={setOpen}>
      <p className={styles.small}>{steps.length === 0 ? words.noSteps : words.stepsHelp}</p>
      {hidden > 0 && <Button onPress={() => setAll(true)}>{words.earlier(hidden)}</Button>}
      <ol className={styles.steps} start={hidden + 1}>
        {steps.slice(hidden).map(({ label, time, pieceIds }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two steps can have all in common, and only the last comes or goes
          <li key={hidden + index}>
            <strong>{label}</strong>
            <span>{pieceIds.map((id) => pieceName(id, garment)).join(', ')}</span>
            <time dateTime={new Date(time).toISOString()}>{words.when(time)}</time>
          </li>
        ))}
      </ol>
    </Card>
  );
}
