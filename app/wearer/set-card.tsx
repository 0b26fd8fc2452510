import { withMeasuresChanged } from '../../core/diagram/reseat-for-measures';
import type { Garment } from '../../core/garment/garment';
import type { MeasureSet } from '../../core/garment/measure';
import { chooseSet, copySet, describeSet } from '../../core/garment/wearer-edits';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { shellWords } from '../words/shell';
import { wearerWords as words } from '../words/wearer';

interface SetCardProps {
  readonly garment: Garment;
  readonly set: MeasureSet;
}

/** Who is measured, on which day, over what, and in which units lengths are written. */
export function SetCard({ garment, set }: SetCardProps) {
  const edit = useGarment((state) => state.edit);
  const { wearer } = garment;

  function again() {
    edit(words.labels.newSet, (now) => copySet(now, { newId, date: today() }));
    say(words.copied);
  }

  return (
    <Card title={words.who} about="who">
      <TextField
        label={words.name}
        value={wearer.name}
        onCommit={(name) => edit(words.labels.name, (now) => ({ ...now, wearer: { ...now.wearer, name } }))}
      />
      <Choice
        label={words.shownIn}
        value={garment.shownIn}
        options={[
          { value: 'in', words: words.inches },
          { value: 'cm', words: words.centimetres },
        ]}
        onChange={(shownIn) => edit(shellWords.unitsChanged, (now) => ({ ...now, shownIn }))}
      />
      {wearer.sets.length > 1 && (
        <Pick
          label={words.sets}
          value={set.id}
          options={wearer.sets.map((each) => ({ value: each.id, words: words.setName(each.date, each.wornOver) }))}
          onChange={(id) =>
            edit(words.labels.chooseSet, (now) => withMeasuresChanged(now, (before) => chooseSet(before, id)))
          }
        />
      )}
      <TextField
        key={`date ${set.id}`}
        label={words.date}
        type="date"
        value={set.date}
        onCommit={(date) => date !== '' && edit(words.labels.date, (now) => describeSet(now, { date }))}
      />
      <TextField
        key={`worn ${set.id}`}
        label={words.wornOver}
        value={set.wornOver}
        hint={words.wornOverHint}
        onCommit={(wornOver) => edit(words.labels.wornOver, (now) => describeSet(now, { wornOver }))}
      />
      <Button icon="copy" onPress={again}>
        {words.copySet}
      </Button>
    </Card>
  );
}
