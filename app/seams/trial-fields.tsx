import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { Choice } from '../ui/choice';
import { seamsWords as words } from '../words/seams';
import { sideName } from './seam-names';
import { roleAtEnd } from './seam-sums';
import type { SeamTrial } from './seam-trial';
import { trySeam } from './seams-store';

interface TrialFieldsProps {
  readonly garment: Garment;
  readonly seam: Seam;
  readonly walk: SeamWalk;
  readonly trial: SeamTrial;
}

/** The choices of a change; each shows the change at once. */
export function TrialFields({ garment, seam, walk, trial }: TrialFieldsProps) {
  const sides = [
    { value: 'one', words: sideName(garment, seam.one) },
    { value: 'other', words: sideName(garment, seam.other) },
  ] as const;
  const beside = (end: 'at-start' | 'at-end') => words.beside(roleAtEnd(walk, end));
  switch (trial.kind) {
    case 'lengths':
      return (
        <>
          <Choice
            label={words.move}
            value={trial.move}
            options={[...sides, { value: 'both', words: words.moves.both }]}
            onChange={(move) => trySeam({ ...trial, move })}
          />
          <Choice
            label={words.where}
            value={trial.where}
            options={[
              ...(['at-start', 'at-end'] as const).map((end) => ({
                value: end,
                words: words.wheres[end](beside(end)),
              })),
              { value: 'spread', words: words.wheres.spread },
            ]}
            onChange={(where) => trySeam({ ...trial, where })}
          />
        </>
      );
    case 'notches':
      return (
        <Choice
          label={words.from}
          value={trial.from}
          options={sides}
          onChange={(from) => trySeam({ ...trial, from })}
        />
      );
    case 'corners':
      return (
        <>
          <Choice
            label={words.whichEnd}
            value={trial.end}
            options={(['at-start', 'at-end'] as const).map((end) => ({
              value: end,
              words: words.ends[end](beside(end)),
            }))}
            onChange={(end) => trySeam({ ...trial, end })}
          />
          <Choice
            label={words.how}
            value={trial.how}
            options={(['blend', 'square'] as const).map((how) => ({ value: how, words: words.hows[how] }))}
            onChange={(how) => trySeam({ ...trial, how })}
          />
        </>
      );
  }
}
