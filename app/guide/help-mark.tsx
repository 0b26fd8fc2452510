import { lazy, type RefObject, Suspense, useEffect, useRef, useState } from 'react';
import { Icon } from '../ui/icon';
import { guideWords as words } from '../words/guide/guide';
import type { HelpName } from './help';
import styles from './help.module.css';

const HelpNote = lazy(async () => ({ default: (await import('./help-note')).HelpNote }));

/** Whether the note of a card lies open, and the button that had it opened; Escape within the card closes it. */
export function useHelp(card: RefObject<HTMLElement | null>) {
  const [isOpen, setOpen] = useState(false);
  const mark = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!isOpen) return;
    const close = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || !card.current?.contains(document.activeElement)) return;
      event.stopPropagation();
      setOpen(false);
      mark.current?.focus();
    };
    window.addEventListener('keydown', close, true);
    return () => window.removeEventListener('keydown', close, true);
  }, [isOpen, card]);
  return { isOpen, setOpen, mark };
}

interface HelpMarkProps {
  /** The title of the card it stands beside. */
  readonly of: string;
  readonly noteId: string;
  readonly help: ReturnType<typeof useHelp>;
  /** The card unfolds with it. */
  readonly onOpen: () => void;
}

/** A small mark beside the title of a card: pressed, it says what the card is about. */
export function HelpMark({ of, noteId, help: { isOpen, setOpen, mark }, onOpen }: HelpMarkProps) {
  return (
    <button
      ref={mark}
      type="button"
      className={styles.mark}
      aria-label={words.about(of)}
      aria-expanded={isOpen}
      aria-controls={isOpen ? noteId : undefined}
      onClick={() => {
        if (!isOpen) onOpen();
        setOpen(!isOpen);
      }}
    >
      <Icon name="ask" />
    </button>
  );
}

/** The note itself, within the card and never over it; its sentences are fetched when they are first asked for. */
export function HelpHere({ name, noteId }: { readonly name: HelpName; readonly noteId: string }) {
  return (
    <div id={noteId}>
      <Suspense fallback={null}>
        <HelpNote name={name} />
      </Suspense>
    </div>
  );
}
