import { HEM_PLACES, type HemPlace, hemFromLengths, levelHem } from '../../../core/fit/level-hem';
import { lengthsToFloor, waistFromLengths } from '../../../core/fit/waist-from-lengths';
import type { Garment } from '../../../core/garment/garment';
import { currentSet } from '../../../core/garment/measure-value';
import { pieceOf } from '../../../core/garment/with-piece';
import { inches } from '../../../core/units/inch';
import type { Figure } from '../../trial/figures';
import { Choice } from '../../ui/choice';
import { LengthField } from '../../ui/length-field';
import { Pick } from '../../ui/pick';
import { reshapeWords } from '../../words/reshape';
import { writeLength } from '../../words/written';
import type { Change, Tried, Trying } from '../change';
import styles from '../reshape.module.css';

const words = reshapeWords.hang;
const WAYS = ['waist', 'hem', 'gaps'] as const;
const FOUR = ['front', 'right', 'back', 'left'] as const;

interface Hang {
  readonly ringId: string;
  /** The waist from lengths to the floor, the hem from them, or the hem from gaps read under it. */
  readonly way: (typeof WAYS)[number];
  readonly lengths: Readonly<Partial<Record<(typeof FOUR)[number], number>>>;
  readonly offFloor: number;
  readonly gaps: Readonly<Partial<Record<HemPlace, number>>>;
}

export const hangChange: Change = {
  name: 'hang',
  icon: 'ruler',
  begin(garment) {
    const ring = garment.rings[0];
    if (!ring) return { kind: 'first', sentence: words.noRing };
    const lengths = lengthsToFloor(currentSet(garment)) ?? {};
    return trying({ ringId: ring.id, way: 'waist', lengths, offFloor: inches(2), gaps: {} });
  },
};

function trying(wish: Hang): Trying {
  return {
    name: 'hang',
    label: () => words.label[wish.way],
    make: (garment) => made(garment, wish),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
  };
}

function made(garment: Garment, wish: Hang): Tried {
  const ring = garment.rings.find(({ id }) => id === wish.ringId);
  if (!ring) return { kind: 'not-tried', sentence: words.noRing };
  const { front, right, back, left } = wish.lengths;
  const isMeasured = front !== undefined && right !== undefined && back !== undefined && left !== undefined;
  if (wish.way !== 'gaps' && !isMeasured) return { kind: 'not-tried', sentence: words.lengthsFirst };
  const lengths = isMeasured ? { front, right, back, left } : { front: 0, right: 0, back: 0, left: 0 };
  const done =
    wish.way === 'waist'
      ? waistFromLengths(garment, ring, lengths)
      : wish.way === 'hem'
        ? hemFromLengths(garment, ring, lengths, wish.offFloor)
        : levelHem(garment, ring, wish.gaps, wish.offFloor);
  if ('why' in done) {
    const name = 'pieceId' in done && done.pieceId !== undefined ? (pieceOf(garment, done.pieceId)?.name ?? '') : '';
    return { kind: 'not-tried', sentence: words.refused(done.why, name) };
  }
  const write = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const figures = done.panels.map((panel): Figure => {
    const name = pieceOf(garment, panel.pieceId)?.name ?? '';
    return { words: words.panel[wish.way](name), value: words.frontBack(write(panel.front), write(panel.back)) };
  });
  return { kind: 'tried', garment: done.garment, figures };
}

interface FieldsProps {
  readonly wish: Hang;
  readonly garment: Garment;
  readonly onChange: (wish: Hang) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const { shownIn } = garment;
  const change = (next: Partial<Hang>) => onChange({ ...wish, ...next });
  return (
    <>
      {garment.rings.length > 1 && (
        <Pick
          label={words.ring}
          value={wish.ringId}
          options={garment.rings.map(({ id, name }) => ({ value: id, words: name }))}
          onChange={(ringId) => change({ ringId })}
        />
      )}
      <Choice
        label={words.way}
        value={wish.way}
        options={WAYS.map((value) => ({ value, words: words.ways[value] }))}
        onChange={(way) => change({ way })}
      />
      {wish.way === 'gaps' ? (
        <>
          <p className={styles.help}>{words.gapsHelp}</p>
          <div className={styles.pair}>
            {HEM_PLACES.map((place) => (
              <LengthField
                key={place}
                label={words.places[place]}
                value={wish.gaps[place]}
                shownIn={shownIn}
                allowEmpty
                onCommit={(gap) => change({ gaps: withOrWithout(wish.gaps, place, gap) })}
              />
            ))}
          </div>
        </>
      ) : (
        <div className={styles.pair}>
          {FOUR.map((place) => (
            <LengthField
              key={place}
              label={words.toFloor[place]}
              value={wish.lengths[place]}
              shownIn={shownIn}
              allowEmpty
              min={0}
              onCommit={(length) => change({ lengths: withOrWithout(wish.lengths, place, length) })}
            />
          ))}
        </div>
      )}
      {wish.way !== 'waist' && (
        <LengthField
          label={words.offFloor}
          value={wish.offFloor}
          shownIn={shownIn}
          min={0}
          onCommit={(offFloor) => offFloor !== undefined && change({ offFloor })}
        />
      )}
    </>
  );
}

function withOrWithout<Key extends string>(
  values: Readonly<Partial<Record<Key, number>>>,
  key: Key,
  value: number | undefined,
): Readonly<Partial<Record<Key, number>>> {
  const { [key]: _, ...others } = values;
  return value === undefined ? (others as Partial<Record<Key, number>>) : { ...values, [key]: value };
}
