import { type ReactNode, useState } from 'react';
import { uiWords } from '../words/ui';
import { Button } from './button';
import styles from './room-layout.module.css';

interface RoomLayoutProps {
  /** What lies on the table: the canvas, or the pages. */
  readonly table: ReactNode;
  /** The sentences and fields beside it. */
  readonly notebook: ReactNode;
  /** On a phone the notebook begins folded away, where the table is what one comes for. */
  readonly tableFirst?: boolean;
}

/** As narrow as in room-layout.module.css. */
const PHONE = '(max-width: 46rem)';

/** The table with the notebook beside it; on a phone the notebook lies over its lower part and can be folded away. */
export function RoomLayout({ table, notebook, tableFirst = false }: RoomLayoutProps) {
  const [folded, setFolded] = useState(() => tableFirst && matchMedia(PHONE).matches);
  return (
    <div className={styles.room} data-folded={folded || undefined}>
      <main className={styles.table}>{table}</main>
      <aside className={styles.notebook} aria-label={uiWords.notebook}>
        <div className={styles.handle}>
          <Button tone="quiet" icon={folded ? 'up' : 'down'} onPress={() => setFolded(!folded)}>
            {folded ? uiWords.openNotebook : uiWords.closeNotebook}
          </Button>
        </div>
        <div className={styles.pages}>{notebook}</div>
      </aside>
    </div>
  );
}
