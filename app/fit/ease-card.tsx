import { EASED_GARMENTS, type EaseRange, suggestedEase, withSuggestedEase } from '../../core/fit/ease';
import type { Garment, Ring } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { fitWords as words } from '../words/fit';
import { locale } from '../words/language';
import { writeLength } from '../words/written';
import styles from './fit-room.module.css';
import { useFit } from './fit-store';

interface EaseCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** The ease usual for such a garment and cloth, level by level, with one press to take all of it. */
export function EaseCard({ garment, ring }: EaseCardProps) {
  const edit = useGarment((state) => state.edit);
  const { kind, cloth } = useFit();
  const { shownIn } = garment;
  const rows = ring.levels.map((level) => ({ level, usual: suggestedEase(kind, cloth, level.girth) }));
  const isWritten = withSuggestedEase(garment, ring.id, { kind, cloth }) === garment;
  const named = (which: typeof rows) =>
    new Intl.ListFormat(locale()).format(which.map(({ level }) => words.levelOf(level)));
  const withOne = named(rows.filter(({ usual }) => usual));
  const without = named(rows.filter(({ usual }) => !usual));
  const take = () => {
    edit(words.easesLabel, (before) => withSuggestedEase(before, ring.id, { kind, cloth }));
    say(words.easesTaken(withOne, without));
  };
  return (
    <Card title={words.easeCard} about="ease">
      <p className={styles.small}>{words.easeHelp}</p>
      <Pick
        label={words.easedKind}
        value={kind}
        options={EASED_GARMENTS.map((value) => ({ value, words: words.easedKinds[value] }))}
        onChange={(to) => useFit.setState({ kind: to })}
      />
      <Choice
        label={words.easedCloth}
        value={cloth}
        options={(['straight', 'bias'] as const).map((value) => ({ value, words: words.easedCloths[value] }))}
        onChange={(to) => useFit.setState({ cloth: to })}
      />
      {rows.length > 0 && (
        <dl className={styles.figures}>
          {rows.map(({ level, usual }) => (
            <div key={level.id}>
              <dt>{words.levelOf(level)}</dt>
              <dd>{usual ? rangeWords(usual, shownIn) : words.nothingUsual}</dd>
            </div>
          ))}
        </dl>
      )}
      {withOne !== '' && (
        <>
          <p className={styles.small}>{words.easeSource(kind, cloth)}</p>
          {isWritten ? (
            <Note tone="good">{words.easesWritten(withOne, without)}</Note>
          ) : (
            <Button tone="chalk" onPress={take}>
              {words.takeEases}
            </Button>
          )}
        </>
      )}
    </Card>
  );
}

function rangeWords({ low, usual, high }: EaseRange, shownIn: Garment['shownIn']): string {
  if (low === high) return writeLength(usual, { shownIn });
  const bare = (mm: number) => writeLength(mm, { shownIn, unit: 'left-off' });
  return words.easeRange(bare(low), writeLength(high, { shownIn }), bare(usual));
}
