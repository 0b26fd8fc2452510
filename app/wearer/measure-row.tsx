import { useState } from 'react';
import type { Measure, MeasureName } from '../../core/garment/measure';
import { canBeHalved, halvesOf, withWhole } from '../../core/garment/measure-halves';
import type { ShownIn } from '../../core/units/inch';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { measureNames } from '../words/measures';
import { wearerWords as words } from '../words/wearer';
import { HalvesFields } from './halves-fields';
import { SmallFigure } from './measure-figure';
import { hasTwoSides, wantsDepth } from './measure-groups';
import styles from './wearer-room.module.css';

interface MeasureRowProps {
  readonly name: MeasureName;
  readonly measure: Measure | undefined;
  readonly shownIn: ShownIn;
  /** It is among those that are asked for next. */
  readonly wanted: boolean;
  /** Sentences on what is unlikely about it. */
  readonly doubts: readonly string[];
  readonly onChange: (measure: Measure | undefined) => void;
  readonly onGuess: () => void;
  readonly onFocus: () => void;
}

/** The least a tape can tell of a body: anything shorter is a slip. */
const LEAST = 5;

/** One measure: where the tape goes, how to hold it, and what it read. */
export function MeasureRow({ name, measure, shownIn, wanted, doubts, onChange, onGuess, onFocus }: MeasureRowProps) {
  const [rightAsked, setRightAsked] = useState(false);
  const isHalved = canBeHalved(name);
  const rightShown = !isHalved && measure !== undefined && (rightAsked || measure.right !== undefined);
  const halves = isHalved && measure ? halvesOf(measure) : undefined;

  function setLength(length: number | undefined) {
    if (length === undefined) onChange(undefined);
    else if (measure && isHalved) onChange(withWhole(measure, length));
    else onChange(measure ? { ...withoutGuess(measure), length } : { length });
  }

  function setRight(right: number | undefined) {
    if (!measure) return;
    const { right: _, ...rest } = withoutGuess(measure);
    onChange(right === undefined ? rest : { ...rest, right });
    if (right === undefined) setRightAsked(false);
  }

  function setDepth(depth: number | undefined) {
    if (!measure) return;
    const { depth: _, ...rest } = measure;
    onChange(depth === undefined ? rest : { ...rest, depth });
  }

  return (
    <li
      className={styles.row}
      onFocus={onFocus}
      data-guessed={measure?.guessed}
      data-step={wanted ? 'measures' : undefined}
    >
      <SmallFigure measure={name} />
      <div className={styles.fields}>
        <LengthField
          label={rightShown ? words.left(measureNames[name]) : measureNames[name]}
          value={halves ? halves.left + halves.right : measure?.length}
          shownIn={shownIn}
          onCommit={setLength}
          hint={words.how[name]}
          min={LEAST}
          allowEmpty
        />
        {measure?.guessed && (
          <Note tone="warn" action={{ words: words.keepGuess, onPress: () => onChange(withoutGuess(measure)) }}>
            {words.guessed}
          </Note>
        )}
        {rightShown && (
          <LengthField
            label={words.right(measureNames[name])}
            value={measure.right}
            shownIn={shownIn}
            onCommit={setRight}
            min={LEAST}
            allowEmpty
          />
        )}
        {measure && (wantsDepth(name) || measure.depth !== undefined) && (
          <LengthField
            label={words.depthOf(measureNames[name])}
            value={measure.depth}
            shownIn={shownIn}
            onCommit={setDepth}
            min={0}
            allowEmpty
          />
        )}
        {measure && isHalved && <HalvesFields name={name} measure={measure} shownIn={shownIn} onChange={onChange} />}
        {doubts.map((doubt) => (
          <Note key={doubt} tone="warn">
            {doubt}
          </Note>
        ))}
        <div className={styles.actions}>
          {!measure && (
            <Button
              tone="quiet"
              onPress={onGuess}
              title={words.guessOf(measureNames[name])}
              label={words.guessLabel(measureNames[name])}
            >
              {words.guess}
            </Button>
          )}
          {measure && hasTwoSides(name) && (
            <Button
              tone="quiet"
              label={words.sidesLabel(rightShown ? words.rightSame : words.rightDiffers, measureNames[name])}
              onPress={() => (rightShown ? setRight(undefined) : setRightAsked(true))}
            >
              {rightShown ? words.rightSame : words.rightDiffers}
            </Button>
          )}
        </div>
      </div>
    </li>
  );
}

/** A measure once a person has said or changed something about it. */
function withoutGuess(measure: Measure): Measure {
  const { guessed: _, ...rest } = measure;
  return rest;
}
