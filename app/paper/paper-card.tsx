import type { Garment } from '../../core/garment/garment';
import { type PaperChange, setPaper } from '../../core/garment/paper-edits';
import { PAPER_SIZES } from '../../core/garment/sheet-choice';
import { LONGEST_PAGE, ROLL_WIDTH } from '../../core/paper/page-sizes';
import { useGarment } from '../state/garment-store';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { paperWords as words } from '../words/paper';
import { writeLength } from '../words/written';

/** What the printer holds. */
export function PaperCard({ garment }: { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  const { paper, shownIn } = garment;
  const change = (choice: PaperChange) => edit(words.paperLabel, (before) => setPaper(before, choice));
  return (
    <Card title={words.paper} about="paper-size">
      <Choice
        label={words.size}
        value={paper.size}
        options={PAPER_SIZES.map((value) => ({ value, words: words.sizes[value] }))}
        onChange={(size) => change({ size })}
      />
      {paper.size === 'roll' ? (
        <LengthField
          label={words.rollWidth}
          value={paper.rollWidth ?? ROLL_WIDTH}
          shownIn={shownIn}
          hint={words.rollHint(writeLength(LONGEST_PAGE, { shownIn }))}
          min={ROLL_LEAST}
          max={LONGEST_PAGE}
          onCommit={(rollWidth) => rollWidth !== undefined && change({ rollWidth })}
        />
      ) : (
        <Choice
          label={words.turned}
          value={paper.turned}
          options={[
            { value: 'upright', words: words.upright },
            { value: 'sideways', words: words.sideways },
          ]}
          onChange={(turned) => change({ turned })}
        />
      )}
    </Card>
  );
}

/** A roll has room for the test square and what stands about it (mm). */
const ROLL_LEAST = 180;
