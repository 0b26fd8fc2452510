import { Button } from '../ui/button';
import { colourToken } from '../ui/canvas-colours';
import { compareWords as words } from '../words/compare';
import styles from './compare.module.css';
import { type Fill, LOOKS } from './looks';

interface KeyStripProps {
  readonly names: { readonly under: string; readonly over: string };
  /** The widest gap, written; nothing while there is none to speak of. */
  readonly gap: string | undefined;
  readonly onSwap: () => void;
}

/** Over the table: what each line and fill is, the widest gap, and the button that lets both change places. */
export function KeyStrip({ names, gap, onSwap }: KeyStripProps) {
  return (
    <section className={styles.strip} aria-label={words.key}>
      <ul className={styles.keys}>
        <li>
          <LineSample look="under" />
          <span>
            {names.under}, {words.lines.under}
          </span>
        </li>
        <li>
          <LineSample look="over" />
          <span>
            {names.over}, {words.lines.over}
          </span>
        </li>
        <li>
          <FillSample look="more" />
          <span>{words.more}</span>
        </li>
        <li>
          <FillSample look="less" />
          <span>{words.less}</span>
        </li>
      </ul>
      <p className={styles.gap}>
        {words.largest}: <strong>{gap ?? words.nowhere}</strong>
      </p>
      <Button icon="turn" onPress={onSwap}>
        {words.swap}
      </Button>
    </section>
  );
}

function LineSample({ look }: { readonly look: 'under' | 'over' }) {
  const { colour, width, dash } = LOOKS[look];
  return (
    <svg className={styles.sample} viewBox="0 0 44 16" aria-hidden="true" focusable="false">
      <path d="M1 8H43" stroke={colourToken(colour)} strokeWidth={width} strokeDasharray={dash.join(' ')} fill="none" />
    </svg>
  );
}

function FillSample({ look }: { readonly look: Fill }) {
  const { colour, width, dash, rises } = LOOKS[look];
  const lines = [-6, 4, 14, 24, 34].map((x) => (rises ? `M${x} 16L${x + 16} 0` : `M${x} 0L${x + 16} 16`)).join('');
  return (
    <svg className={styles.sample} viewBox="0 0 44 16" aria-hidden="true" focusable="false">
      <path d={lines} stroke={colourToken(colour)} strokeWidth={width} strokeDasharray={dash.join(' ')} fill="none" />
    </svg>
  );
}
