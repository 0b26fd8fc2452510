import { lengthAt } from '../../core/fit/length-round';
import { hemSweep } from '../../core/fit/round-body';
import type { Garment, Ring } from '../../core/garment/garment';
import { removeOuter, setOuterLength, setShorterBy } from '../../core/garment/outer-edits';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { say } from '../ui/say';
import { fitWords as words } from '../words/fit';
import { writeLength } from '../words/written';
import styles from './fit-room.module.css';

const PLACES = ['front', 'side', 'back'] as const;

/** A garment shorter than this (mm) below the waist covers nothing. */
const LEAST = 5;

interface OuterCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** How long the garment is that is worn over this one, and how long this one may be under it. */
export function OuterCard({ garment, ring }: OuterCardProps) {
  const edit = useGarment((state) => state.edit);
  const { outer, shownIn } = garment;
  const length = (mm: number) => writeLength(mm, { shownIn });
  const hasHem = hemSweep(garment, ring) > 0;
  const own = (at: (typeof PLACES)[number]) => {
    const long = hasHem ? lengthAt(garment, ring, at) : undefined;
    if (long === undefined) return undefined;
    const over = outer?.[at];
    if (!outer || over === undefined) return words.ownLength(length(long));
    return words.ownAgainst(length(long), length(Math.max(0, over - outer.shorterBy)));
  };
  const remove = () => {
    edit(words.outerLabel, removeOuter);
    say(words.outerRemoved);
  };
  return (
    <Card title={words.outerCard} about="worn-over">
      <p className={styles.small}>{words.outerHelp}</p>
      {PLACES.map((at) => {
        const hint = own(at);
        return (
          <LengthField
            key={at}
            label={words.outerAt[at]}
            value={outer?.[at]}
            shownIn={shownIn}
            min={LEAST}
            allowEmpty
            {...(hint === undefined ? {} : { hint })}
            onCommit={(to) => edit(words.outerLabel, (before) => setOuterLength(before, at, to))}
          />
        );
      })}
      {outer && (
        <>
          <LengthField
            label={words.shorterBy}
            value={outer.shorterBy}
            shownIn={shownIn}
            hint={words.shorterHint(garment.shownIn)}
            onCommit={(by) => by !== undefined && edit(words.outerLabel, (before) => setShorterBy(before, by))}
          />
          <Button tone="quiet" icon="bin" onPress={remove}>
            {words.removeOuter}
          </Button>
        </>
      )}
      {!hasHem && <p className={styles.small}>{words.noHem}</p>}
    </Card>
  );
}
