import { useEffect, useState } from 'react';
import { distance } from '../../core/geometry/point';
import type { BarReading } from '../../core/picture/bar-intervals';
import type { ShownIn } from '../../core/units/inch';
import type { ReadyPicture } from '../photo/picture-store';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { NumberField } from '../ui/number-field';
import { diagramWords } from '../words/diagram';
import styles from './diagram-room.module.css';
import { type BarLine, useBarReading } from './use-bar-reading';

const words = diagramWords.known.bar;

/** What is said of a scale bar so far. */
export interface BarSaid {
  readonly intervals: number | undefined;
  readonly each: number | undefined;
}

interface BarFieldsProps {
  readonly photo: ReadyPicture | undefined;
  readonly line: BarLine;
  readonly said: BarSaid;
  /** Whether it is counted in the picture at once; else when she asks. */
  readonly countsAtOnce: boolean;
  readonly shownIn: ShownIn;
  readonly onSaid: (said: BarSaid) => void;
  readonly onEnds: (line: BarLine) => void;
}

const MOST_INTERVALS = 1000;

/** A scale bar: how many intervals it has, counted in the picture and hers to correct, and what one or all are worth. */
export function BarFields({ photo, line, said, countsAtOnce, shownIn, onSaid, onEnds }: BarFieldsProps) {
  const [asked, setAsked] = useState(countsAtOnce);
  const seen = useBarReading(photo, line, asked);
  const counted = seen.kind === 'read' ? seen.readings[0]?.intervals : undefined;
  const { intervals, each } = said;

  useEffect(() => {
    if (intervals === undefined && counted !== undefined) onSaid({ intervals: counted, each });
  }, [intervals, counted, each, onSaid]);

  return (
    <>
      {seen.kind === 'not-asked' && photo && (
        <div>
          <Button onPress={() => setAsked(true)}>{words.count}</Button>
        </div>
      )}
      {seen.kind === 'reading' && <Note tone="plain">{words.reading(Math.round(seen.share * 100))}</Note>}
      {seen.kind === 'unreadable' && <Note tone="warn">{words.notCounted}</Note>}
      {seen.kind === 'read' && (
        <Seen
          readings={seen.readings}
          line={line}
          onCount={(count) => onSaid({ intervals: count, each })}
          onEnds={onEnds}
        />
      )}
      <div className={styles.share}>
        <NumberField
          label={words.intervals}
          value={intervals ?? 1}
          least={1}
          most={MOST_INTERVALS}
          whole
          onCommit={(count) => onSaid({ intervals: count, each })}
        />
        <LengthField
          label={words.each}
          value={each}
          shownIn={shownIn}
          min={1}
          onCommit={(length) => onSaid({ intervals: intervals ?? 1, each: length })}
        />
        <LengthField
          label={words.all}
          value={each === undefined ? undefined : each * (intervals ?? 1)}
          shownIn={shownIn}
          min={1}
          onCommit={(length) =>
            onSaid({ intervals: intervals ?? 1, each: length === undefined ? undefined : length / (intervals ?? 1) })
          }
        />
      </div>
      <p className={styles.hint}>{words.units}</p>
    </>
  );
}

interface SeenProps {
  readonly readings: readonly BarReading[];
  readonly line: BarLine;
  readonly onCount: (intervals: number) => void;
  readonly onEnds: (line: BarLine) => void;
}

/** An end nearer than this to its stroke lies on it, in pixels of the picture. */
const ON_STROKE_PX = 1;

function Seen({ readings, line, onCount, onEnds }: SeenProps) {
  const [best, ...others] = readings;
  if (!best) return <Note tone="warn">{words.notCounted}</Note>;
  const off = Math.max(distance(best.from, line.from), distance(best.to, line.to));
  const bring = { onPress: () => onEnds({ from: best.from, to: best.to }), words: words.bring };
  return (
    <>
      <Note tone={best.tail ? 'warn' : 'plain'} {...(off > ON_STROKE_PX ? { action: bring } : {})}>
        {best.tail ? words.tail(best.intervals) : words.seen(best.intervals)}
      </Note>
      {others.map(({ intervals }) => (
        <Note key={intervals} tone="plain" action={{ words: words.take(intervals), onPress: () => onCount(intervals) }}>
          {intervals > best.intervals ? words.finer(intervals) : words.coarser(intervals)}
        </Note>
      ))}
    </>
  );
}
