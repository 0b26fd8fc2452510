import { withMeasuresChanged } from '../../core/diagram/reseat-for-measures';
import type { MeasureName, MeasureSet } from '../../core/garment/measure';
import { guessMeasure } from '../../core/garment/measure-guess';
import { setMeasure } from '../../core/garment/wearer-edits';
import type { ShownIn } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { say } from '../ui/say';
import { measureNames } from '../words/measures';
import { wearerWords as words } from '../words/wearer';
import { writeLength } from '../words/written';

/** Fills a missing measure in with a guess, marked as one, or says that there is nothing to go on. */
export function guessInto(name: MeasureName, set: MeasureSet, shownIn: ShownIn): void {
  const guess = guessMeasure(set, name);
  if (!guess) {
    say(words.noGuess);
    return;
  }
  useGarment
    .getState()
    .edit(words.labels.guess(measureNames[name]), (garment) =>
      withMeasuresChanged(garment, (now) => setMeasure(now, name, guess)),
    );
  say(words.guessMade(measureNames[name], writeLength(guess.length, { shownIn })));
}
