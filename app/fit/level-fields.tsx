import type { GirthAtLevel } from '../../core/fit/round-body';
import type { Garment, Level, Ring } from '../../core/garment/garment';
import { GIRTHS } from '../../core/garment/measure';
import { removeLevel, renameLevel, setLevelBody, setLevelPlace } from '../../core/garment/ring-edits';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { Pick as PickOne } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { fitWords as words } from '../words/fit';
import styles from './fit-room.module.css';
import { LevelPlace } from './level-place';

/** Less than this (mm) is no girth of a body. */
const LEAST = 5;

interface LevelFieldsProps {
  readonly girth: GirthAtLevel;
  readonly ring: Ring;
  readonly shownIn: Garment['shownIn'];
}

/** What a level is called, where it lies, which girth it stands for and what the body measures there; folded away. */
export function LevelFields({ girth: at, ring, shownIn }: LevelFieldsProps) {
  const edit = useGarment((state) => state.edit);
  const { level } = at;
  const name = words.levelOf(level);
  const place = (next: Partial<Pick<Level, 'girth' | 'depth'>>) =>
    edit(words.levelLabel, (before) =>
      setLevelPlace(before, ring.id, level.id, { girth: level.girth, depth: level.depth, ...next }),
    );
  return (
    <details className={styles.more}>
      <summary>{words.changeLevel(name)}</summary>
      <div className={styles.fields}>
        <TextField
          label={words.levelName}
          value={level.name ?? ''}
          hint={words.levelNameHint}
          onCommit={(text) => edit(words.levelLabel, (before) => renameLevel(before, ring.id, level.id, text.trim()))}
        />
        <LevelPlace
          depth={level.depth}
          lies={at.kind === 'no-depth' ? undefined : at.depth}
          shownIn={shownIn}
          onChange={(depth) => place({ depth })}
        />
        <PickOne
          label={words.standsFor}
          value={level.girth}
          options={GIRTHS.map((value) => ({ value, words: words.girth[value] }))}
          onChange={(girth) => place({ girth })}
        />
        <LengthField
          label={words.bodyHere}
          value={level.body}
          shownIn={shownIn}
          hint={words.bodyHereHint}
          min={LEAST}
          allowEmpty
          onCommit={(body) => edit(words.levelLabel, (before) => setLevelBody(before, ring.id, level.id, body))}
        />
        <Button
          icon="bin"
          tone="wrong"
          label={words.removeLevelOf(name)}
          onPress={() => {
            edit(words.levelRemovedLabel, (before) => removeLevel(before, ring.id, level.id));
            say(words.levelRemoved(name));
          }}
        >
          {words.removeLevel}
        </Button>
      </div>
    </details>
  );
}
