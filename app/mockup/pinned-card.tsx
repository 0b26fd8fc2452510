import type { Garment } from '../../core/garment/garment';
import type { Mockup, PinnedWhat } from '../../core/garment/mockup';
import { outstanding } from '../../core/mockup/mockup-findings';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import type { IconName } from '../ui/icon';
import { mockupWords as words } from '../words/mockup';
import { ChangeEntry } from './change-entry';
import styles from './mockup.module.css';
import { carry, note } from './mockup-store';
import { newChange } from './new-change';

const KINDS = ['edge', 'length', 'point'] as const satisfies readonly PinnedWhat['kind'][];
const ICONS = { edge: 'pin', length: 'down', point: 'corner' } as const satisfies Record<PinnedWhat['kind'], IconName>;

interface PinnedCardProps {
  /** The pieces as the mock-up was cut. */
  readonly shown: Garment;
  readonly mockup: Mockup;
}

/** All that was pinned, what became of each, and ways to note more and to carry over. */
export function PinnedCard({ shown, mockup }: PinnedCardProps) {
  const open = outstanding(mockup).map(({ id }) => id);
  const [first, ...rest] = open;
  return (
    <Card title={words.pinned} about="pinned" step="carry">
      {mockup.pinned.length === 0 ? (
        <p>{words.nothingPinned}</p>
      ) : (
        <>
          {first !== undefined && (
            <div className={styles.row}>
              <Button tone="chalk" icon="done" onPress={() => carry(open)}>
                {words.carryAll(open.length)}
              </Button>
              {rest.length > 0 && <Button onPress={() => carry([first], rest)}>{words.carryEach}</Button>}
            </div>
          )}
          <ol className={styles.list}>
            {mockup.pinned.map((change, i) => (
              <ChangeEntry key={change.id} shown={shown} mockup={mockup} change={change} number={i + 1} />
            ))}
          </ol>
          <h3>{words.add}</h3>
        </>
      )}
      <div className={styles.thumbs}>
        {KINDS.map((kind) => (
          <Button key={kind} icon={ICONS[kind]} onPress={() => note(newChange(shown, kind), 0)}>
            {words.kinds[kind]}
          </Button>
        ))}
      </div>
    </Card>
  );
}
