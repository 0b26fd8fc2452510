import { type Garment, PAPER_SIZES, type PaperChoice } from '../../core/garment/garment';
import { setPaper } from '../../core/garment/paper-edits';
import { useGarment } from '../state/garment-store';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { paperWords as words } from '../words/paper';

/** What the printer holds and what it cannot reach. */
export function PaperCard({ garment }: { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  const { paper, shownIn } = garment;
  const change = (choice: Partial<PaperChoice>) => edit(words.paperLabel, (before) => setPaper(before, choice));
  return (
    <Card title={words.paper}>
      <Choice
        label={words.size}
        value={paper.size}
        options={PAPER_SIZES.map((value) => ({ value, words: words.sizes[value] }))}
        onChange={(size) => change({ size })}
      />
      <Choice
        label={words.turned}
        value={paper.turned}
        options={[
          { value: 'upright', words: words.upright },
          { value: 'sideways', words: words.sideways },
        ]}
        onChange={(turned) => change({ turned })}
      />
      <LengthField
        label={words.margin}
        value={paper.margin}
        shownIn={shownIn}
        hint={words.marginHint}
        min={0}
        onCommit={(margin) => margin !== undefined && change({ margin })}
      />
      <LengthField
        label={words.overlap}
        value={paper.overlap}
        shownIn={shownIn}
        min={0}
        onCommit={(overlap) => overlap !== undefined && change({ overlap })}
      />
    </Card>
  );
}
