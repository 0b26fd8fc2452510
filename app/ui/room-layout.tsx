import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { NextStepName } from '../guide/next-step';
import { NextStrip } from '../guide/next-strip';
import { useGuide } from '../state/guide-store';
import { uiWords } from '../words/ui';
import { Button } from './button';
import { lightUp } from './light-up';
import styles from './room-layout.module.css';

interface RoomLayoutProps {
  /** What lies on the table: the canvas, or the pages. */
  readonly table: ReactNode;
  /** The sentences and fields beside it. */
  readonly notebook: ReactNode;
  /** On a phone the notebook begins folded away, where the table is what one comes for. */
  readonly tableFirst?: boolean;
  /** What the notebook speaks of: when it turns to something else it begins at its top. */
  readonly page?: string | undefined;
  /** The notebook has come to ask something: folded away, nobody would hear it. */
  readonly asks?: boolean;
}

/** As narrow as in room-layout.module.css. */
const PHONE = '(max-width: 46rem)';

/** Steps whose button only takes something up to work with: whoever is led to it has it in hand. */
const TAKES_UP: ReadonlySet<NextStepName> = new Set(['known-length', 'second-length', 'trace']);

/** The table with the notebook beside it; on a phone the notebook lies over its lower part and can be folded away. */
export function RoomLayout({ table, notebook, tableFirst = false, page, asks = false }: RoomLayoutProps) {
  const [folded, setFolded] = useState(() => tableFirst && matchMedia(PHONE).matches);
  const [asked, setAsked] = useState(asks);
  // While it is drawn, so that the question comes up in a notebook that lies open.
  if (asked !== asks) {
    setAsked(asks);
    if (asks) setFolded(false);
  }
  const pages = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page is what turns it back to the top
  useLayoutEffect(() => {
    pages.current?.scrollTo({ top: 0 });
  }, [page]);
  const room = useRef<HTMLDivElement>(null);
  const pointedAt = useGuide((guide) => guide.pointedAt);
  // Every time, for what is pointed at may only now have come.
  useLayoutEffect(() => {
    const target = pointedAt && room.current?.querySelector<HTMLElement>(`[data-step~="${pointedAt}"]`);
    if (!target) return;
    if (folded && pages.current?.contains(target)) return setFolded(false);
    useGuide.setState({ pointedAt: undefined });
    lightUp(target);
    if (target instanceof HTMLButtonElement && TAKES_UP.has(pointedAt)) target.click();
  });
  return (
    <div ref={room} className={styles.room} data-folded={folded || undefined}>
      <main className={styles.table}>{table}</main>
      <aside className={styles.notebook} aria-label={uiWords.notebook}>
        <div className={styles.handle}>
          <Button
            tone="quiet"
            icon={folded ? 'up' : 'down'}
            label={folded ? uiWords.openNotebook : uiWords.closeNotebook}
            onPress={() => setFolded(!folded)}
          >
            {uiWords.notebook}
          </Button>
        </div>
        <div ref={pages} className={styles.pages}>
          {notebook}
        </div>
        <NextStrip />
      </aside>
    </div>
  );
}
