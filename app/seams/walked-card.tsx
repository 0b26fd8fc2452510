import type { Garment } from '../../core/garment/garment';
import { isOwnMirror, type Seam } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { Figures } from '../trial/figures';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { seamsWords as words } from '../words/seams';
import { writeLength } from '../words/written';
import { edgeName, finely, isOfCopies, lengthWords, sideName } from './seam-names';
import { notchesOff } from './seam-sums';
import { stripOf } from './strip-marks';

const SIDES = ['one', 'other'] as const;

interface WalkedCardProps {
  readonly garment: Garment;
  readonly seam: Seam;
  readonly walk: SeamWalk;
}

/** What walking the seam shows, in sentences and numbers. */
export function WalkedCard({ garment, seam, walk }: WalkedCardProps) {
  if (isOwnMirror(seam)) {
    return (
      <Card title={words.walked} about="walked">
        <Note tone="good">{isOfCopies(garment, seam.one) ? words.ownCopy : words.ownMirror}</Note>
      </Card>
    );
  }
  const names = { one: sideName(garment, seam.one), other: sideName(garment, seam.other) };
  const place = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  return (
    <Card title={words.walked} about="walked">
      <Figures
        label={words.whole}
        rows={SIDES.map((side) => ({ key: side, words: names[side], value: finely(garment, walk.totals[side]) }))}
      />
      <Note tone={walk.agrees ? 'good' : 'warn'}>{lengthWords(garment, seam, walk)}</Note>
      {walk.partings.length === 0 && <p>{words.noPartings}</p>}
      {walk.partings.map(({ one, by }) => (
        <p key={one[0]}>
          {words.parts(place(one[0]), place(one[1]), by > 0 ? names.one : names.other, finely(garment, Math.abs(by)))}
        </p>
      ))}
      <Notches garment={garment} walk={walk} other={names.other} />
    </Card>
  );
}

interface NotchesProps {
  readonly garment: Garment;
  readonly walk: SeamWalk;
  readonly other: string;
}

function Notches({ garment, walk, other }: NotchesProps) {
  const count = walk.meetings.length;
  if (notchesOff(walk) === 0) return <p>{count === 0 ? words.noNotches : words.allNotches(count)}</p>;
  const off = stripOf(walk).one.notches.filter(({ state }) => state === 'off');
  return (
    <>
      {off.map(({ id, number = 0, apart }) => (
        <Note key={id} tone="warn">
          {words.notchOff(number, finely(garment, Math.abs(apart)), apart > 0 ? 'beyond' : 'before', other)}
        </Note>
      ))}
      {walk.alone.flat().map((notch) => (
        <Note key={`${notch.id} ${notch.along}`} tone="warn">
          {words.notchAlone(edgeName(garment, notch), writeLength(notch.along, { shownIn: garment.shownIn }))}
        </Note>
      ))}
    </>
  );
}
