import type { Garment } from '../../core/garment/garment';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { seamsWords as words } from '../words/seams';
import { finely } from './seam-names';
import styles from './seams.module.css';
import { otherAlong, type StripNotch, stripOf } from './strip-marks';

interface StripChartProps {
  readonly garment: Garment;
  readonly walk: SeamWalk;
  readonly along: number;
  readonly names: readonly [one: string, other: string];
}

/** Left and right of the strip, in parts of a hundred of its width, so that what stands at an end has room. */
const MARGIN = 2;

/** Heights in CSS pixels: the two lines, and how long a notch is. */
const LINE = { one: 38, other: 66 } as const;
const TICK = 9;

/** Both sides pulled straight, one over the other and to scale: notches, ends, where they part, where the walk is. */
export function StripChart({ garment, walk, along, names }: StripChartProps) {
  const strip = stripOf(walk);
  const x = (mm: number) => `${MARGIN + ((100 - 2 * MARGIN) * mm) / strip.longest}%`;
  const there = otherAlong(walk, along);
  return (
    <svg className={styles.strip} role="img" aria-label={words.stripLabel(...names)}>
      <defs>
        <pattern id="parts" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className={styles.hatch} x1="0" y1="0" x2="0" y2="6" />
        </pattern>
      </defs>
      {walk.partings.map(({ one, other, by }) => (
        <g key={`${one[0]} ${other[0]}`}>
          {(['one', 'other'] as const).map((side) => {
            const [from, to] = side === 'one' ? one : other;
            const width = `${((100 - 2 * MARGIN) * (to - from)) / strip.longest}%`;
            return <rect key={side} x={x(from)} y={LINE[side] - 6} width={width} height="12" fill="url(#parts)" />;
          })}
          <text className={styles.tag} data-state="off" x={x((one[0] + one[1]) / 2)} y="56" textAnchor="middle">
            {words.partsShort(finely(garment, Math.abs(by)), by > 0 ? 'long' : 'short')}
          </text>
        </g>
      ))}
      {walk.meetings.map((meeting) => (
        <line
          key={`${meeting.one.id} ${meeting.one.along}`}
          className={meeting.agrees ? styles.rung : styles.off}
          x1={x(meeting.one.along)}
          y1={LINE.one}
          x2={x(meeting.other.along)}
          y2={LINE.other}
        />
      ))}
      {(['one', 'other'] as const).map((side) => (
        <g key={side}>
          <line
            className={styles.straight}
            data-side={side}
            x1={x(0)}
            y1={LINE[side]}
            x2={x(strip[side].length)}
            y2={LINE[side]}
          />
          {[0, ...strip[side].joins, strip[side].length].map((mm) => (
            <line key={mm} className={styles.tick} x1={x(mm)} y1={LINE[side] - 5} x2={x(mm)} y2={LINE[side] + 5} />
          ))}
          {strip[side].notches.map((notch) => (
            <Notch key={`${notch.id} ${notch.along}`} notch={notch} side={side} x={x(notch.along)} />
          ))}
          <text x={x(0)} y={side === 'one' ? 14 : 100}>
            {names[side === 'one' ? 0 : 1]}
          </text>
        </g>
      ))}
      <line className={styles.contact} x1={x(along)} y1={LINE.one} x2={x(there)} y2={LINE.other} />
      <circle className={styles.dot} cx={x(along)} cy={LINE.one} r="6" />
      <circle className={styles.dot} cx={x(there)} cy={LINE.other} r="6" />
    </svg>
  );
}

interface NotchProps {
  readonly notch: StripNotch;
  readonly side: 'one' | 'other';
  readonly x: string;
}

/** A notch as it is cut, on the outside of its line, with its number. */
function Notch({ notch, side, x }: NotchProps) {
  const out = side === 'one' ? -1 : 1;
  return (
    <>
      <line className={styles.tick} x1={x} y1={LINE[side]} x2={x} y2={LINE[side] + out * TICK} />
      <text
        className={styles.tag}
        data-state={notch.state}
        x={x}
        y={side === 'one' ? LINE.one - TICK - 3 : LINE.other + TICK + 12}
        textAnchor="middle"
      >
        {words.notchTag(notch.number, undefined)}
      </text>
    </>
  );
}
