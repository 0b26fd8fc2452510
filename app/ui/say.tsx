import { create } from 'zustand';
import styles from './say.module.css';

const useSaid = create<{ readonly sentence: string; readonly count: number }>(() => ({ sentence: '', count: 0 }));

let hush: ReturnType<typeof setTimeout> | undefined;

/** Says a sentence to eye and ear for a few seconds, without taking the focus. */
export function say(sentence: string): void {
  useSaid.setState((said) => ({ sentence, count: said.count + 1 }));
  clearTimeout(hush);
  hush = setTimeout(() => useSaid.setState({ sentence: '' }), 6000);
}

/** Takes back what was said, when the place it was about is left. */
export function hushNow(): void {
  clearTimeout(hush);
  useSaid.setState({ sentence: '' });
}

/** Where said sentences appear; once in the app. */
export function SaidHere() {
  const { sentence, count } = useSaid();
  return (
    <output className={styles.said} aria-live="polite">
      {sentence && <span key={count}>{sentence}</span>}
    </output>
  );
}
