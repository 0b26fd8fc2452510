import { useState } from 'react';
import type { Level } from '../../core/garment/garment';
import type { ShownIn } from '../../core/units/inch';
import { LengthField } from '../ui/length-field';
import { Pick } from '../ui/pick';
import { fitWords as words } from '../words/fit';
import { measureNames } from '../words/measures';

type Depth = Level['depth'];

/** The measures that say how far below the waist something lies. */
const DEPTHS = ['waistToHighHip', 'waistToHip', 'waistToKnee', 'bodyRise'] as const;

interface LevelPlaceProps {
  /** `undefined` while nothing is said yet. */
  readonly depth: Depth | undefined;
  /** How far down it lies now (mm), where that is known: what the field begins with when a measure is left. */
  readonly lies: number | undefined;
  readonly shownIn: ShownIn;
  readonly onChange: (depth: Depth) => void;
}

/** Where a level lies: so far below or above the waist, or as far down as a measure of the wearer says. */
export function LevelPlace({ depth, lies, shownIn, onChange }: LevelPlaceProps) {
  const [asked, setAsked] = useState<'below' | 'above'>('below');
  const measure = depth?.kind === 'measure' ? depth.measure : undefined;
  const length = depth?.kind === 'length' ? depth.length : undefined;
  const side = length ? (length < 0 ? 'above' : 'below') : asked;
  const setLength = (by: number, towards: 'below' | 'above') =>
    onChange({ kind: 'length', length: towards === 'above' && by > 0 ? -by : by });
  const listed = measure === undefined || DEPTHS.some((one) => one === measure) ? DEPTHS : [...DEPTHS, measure];
  return (
    <>
      <Pick
        label={words.place}
        value={measure ?? side}
        options={[
          { value: 'below', words: words.sides.below },
          { value: 'above', words: words.sides.above },
          ...listed.map((value) => ({ value, words: words.asFarAs(measureNames[value]) })),
        ]}
        onChange={(to) => {
          if (to !== 'below' && to !== 'above') {
            onChange({ kind: 'measure', measure: to });
            return;
          }
          setAsked(to);
          const known = length ?? (measure === undefined ? undefined : (lies ?? 0));
          if (known !== undefined) setLength(Math.abs(known), to);
        }}
      />
      {measure === undefined && (
        <LengthField
          label={words.depth}
          value={length === undefined ? undefined : Math.abs(length)}
          shownIn={shownIn}
          min={0}
          onCommit={(by) => by !== undefined && setLength(by, side)}
        />
      )}
    </>
  );
}
