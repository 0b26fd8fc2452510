import { useState } from 'react';
import type { PinnedOnEdge } from '../../core/mockup/pin-places';
import type { ShownIn } from '../../core/units/inch';
import { Card } from '../ui/card';
import { LengthStepper } from '../ui/length-stepper';
import { mockupWords as words } from '../words/mockup';
import { type PinnableEdge, STEPS } from './new-change';

interface FadeFieldsProps {
  readonly at: PinnableEdge;
  readonly what: PinnedOnEdge;
  readonly shownIn: ShownIn;
  readonly onChange: (what: PinnedOnEdge) => void;
}

/** Where the change has faded to nothing, before and after the pins as they are counted; never among the pins. */
export function FadeFields({ at, what, shownIn, onChange }: FadeFieldsProps) {
  const [open, setOpen] = useState(what.from !== undefined || what.to !== undefined);
  const { length, isTurned, beyond } = at;
  const counted = (along: number) => (isTurned ? length - along : along);
  const places = what.pins.map(({ along }) => counted(along));
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const [before, after] = isTurned ? ([what.to, what.from] as const) : ([what.from, what.to] as const);
  const [start, end] = isTurned ? ([beyond.end, beyond.start] as const) : ([beyond.start, beyond.end] as const);
  const put = (which: 'before' | 'after', place: number | undefined) => {
    const field = (which === 'before') === isTurned ? 'to' : 'from';
    const { [field]: _, ...bare } = what;
    onChange(place === undefined ? bare : { ...bare, [field]: counted(place) });
  };
  const step = STEPS[shownIn].along;
  return (
    <Card title={words.fades} about="fading" open={open} onToggle={setOpen}>
      <LengthStepper
        label={words.fadeBefore}
        value={before === undefined ? undefined : counted(before)}
        begin={0}
        step={step}
        max={first}
        shownIn={shownIn}
        allowEmpty
        hint={words.fadeEnd(start)}
        onCommit={(place) => put('before', place)}
      />
      <LengthStepper
        label={words.fadeAfter}
        value={after === undefined ? undefined : counted(after)}
        begin={length}
        step={step}
        min={last}
        max={length}
        shownIn={shownIn}
        allowEmpty
        hint={words.fadeEnd(end)}
        onCommit={(place) => put('after', place)}
      />
    </Card>
  );
}
