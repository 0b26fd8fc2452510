import type { FirstDrawn } from '../../core/garment/first-drawn';
import type { Garment } from '../../core/garment/garment';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { pieceName, versionsWords as words } from '../words/versions';
import { Differences } from './differences';
import { useLooking } from './looked-at';
import styles from './versions.module.css';

interface TracedCardProps {
  readonly garment: Garment;
  readonly first: FirstDrawn;
}

/** The draft as it was traced, and what is different now. */
export function TracedCard({ garment, first }: TracedCardProps) {
  const { traced, late } = first;
  return (
    <Card title={words.traced} about="as-traced">
      <p>{traced.length === 0 ? words.tracedNone : words.lookingAt(words.traced.toLowerCase())}</p>
      {late.map(({ pieceId, since }) => (
        <Note key={pieceId} tone="plain">
          {words.tracedLate([pieceName(pieceId, { pieces: garment.pieces, traced })], since)}
        </Note>
      ))}
      <Differences before={{ ...garment, pieces: traced }} after={garment} />
      <div className={styles.row}>
        <Button icon="close" onPress={() => useLooking.setState({ at: { kind: 'now' } })}>
          {words.stop}
        </Button>
      </div>
    </Card>
  );
}
