import type { ReactNode } from 'react';
import { uiWords } from '../words/ui';
import { Button } from './button';
import { Icon } from './icon';
import styles from './note.module.css';

export type NoteTone = 'stop' | 'warn' | 'good' | 'plain';

interface NoteProps {
  readonly tone: NoteTone;
  readonly children: ReactNode;
  readonly action?: { readonly words: string; readonly onPress: () => void };
  /** A second, quieter thing to do, beside the first. */
  readonly beside?: { readonly words: string; readonly onPress: () => void } | undefined;
  /** What of the job it asks for: as on a card. */
  readonly step?: string | undefined;
}

/** A sentence of the notebook. A mark and a word say its weight, so colour is never needed to understand it. */
export function Note({ tone, children, action, beside, step }: NoteProps) {
  return (
    <div className={styles.note} data-tone={tone} data-step={step}>
      {tone !== 'plain' && <Icon name={tone === 'stop' ? 'hand' : tone === 'warn' ? 'look' : 'done'} />}
      <p>
        {tone !== 'plain' && <span className="only-heard">{uiWords.weight[tone]} </span>}
        {children}
      </p>
      {action && (
        <div className={styles.actions}>
          <Button onPress={action.onPress}>{action.words}</Button>
          {beside && (
            <Button tone="quiet" onPress={beside.onPress}>
              {beside.words}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
