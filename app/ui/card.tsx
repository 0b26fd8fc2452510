import { type ReactNode, useId, useRef } from 'react';
import type { HelpName } from '../guide/help';
import { HelpHere, HelpMark, useHelp } from '../guide/help-mark';
import styles from './card.module.css';

interface CardProps {
  readonly title: string;
  readonly children: ReactNode;
  /** Given together with `onToggle`, the card folds. */
  readonly open?: boolean;
  readonly onToggle?: (open: boolean) => void;
  /** A word or number at the right of the title. */
  readonly aside?: ReactNode;
  /** What of the job is done in it, so that it can be led to: names of `NextStepName`, apart by a space. */
  readonly step?: string;
  /** The help that can be unfolded beside its title. */
  readonly about?: HelpName;
  /** What the help is about, where the title is a name she gave. */
  readonly aboutWhat?: string;
}

/** One entry of the notebook. */
export function Card({ title, children, open, onToggle, aside, step, about, aboutWhat = title }: CardProps) {
  const card = useRef<HTMLElement>(null);
  const help = useHelp(card);
  const noteId = useId();
  const heading = (
    <h2 className={styles.title}>
      {title}
      {aside !== undefined && <span className={styles.aside}>{aside}</span>}
    </h2>
  );
  const note = about && help.isOpen && <HelpHere name={about} noteId={noteId} />;
  const mark = about && <HelpMark of={aboutWhat} noteId={noteId} help={help} onOpen={() => onToggle?.(true)} />;
  return (
    <section ref={card} className={styles.card} data-step={step} data-marked={about && true}>
      {onToggle === undefined ? (
        <>
          {heading}
          {mark}
          {note}
          <div className={styles.body}>{children}</div>
        </>
      ) : (
        <>
          {mark}
          <details open={open} onToggle={(event) => onToggle(event.currentTarget.open)}>
            <summary className={styles.summary}>{heading}</summary>
            {note}
            <div className={styles.body}>{children}</div>
          </details>
        </>
      )}
    </section>
  );
}
