import { useState } from 'react';
import { suggestedEase } from '../../core/fit/ease';
import type { Garment, Level, Ring } from '../../core/garment/garment';
import { GIRTHS, type GirthName } from '../../core/garment/measure';
import { addLevel } from '../../core/garment/ring-edits';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { fitWords as words } from '../words/fit';
import styles from './fit-room.module.css';
import { useFit } from './fit-store';
import { LevelPlace } from './level-place';

interface NewLevelProps {
  readonly ring: Ring;
  readonly shownIn: Garment['shownIn'];
}

interface Wish {
  readonly name: string;
  readonly girth: GirthName;
  readonly depth: Level['depth'] | undefined;
}

const atFirst: Wish = { name: '', girth: 'hip', depth: undefined };

/** One more level, by its name, where it lies and the girth it stands for. */
export function NewLevel({ ring, shownIn }: NewLevelProps) {
  const [wish, setWish] = useState(atFirst);
  const { name, girth, depth } = wish;
  const change = (next: Partial<Wish>) => setWish({ ...wish, ...next });
  const add = () => {
    if (!depth) {
      say(words.depthFirst);
      return;
    }
    const { kind, cloth } = useFit.getState();
    const ease = suggestedEase(kind, cloth, girth)?.usual ?? 0;
    const level: Level = {
      id: newId(),
      ...(name.trim() === '' ? {} : { name: name.trim() }),
      girth,
      depth,
      ease,
    };
    useGarment.getState().edit(words.levelAddedLabel, (before) => addLevel(before, ring.id, level));
    setWish(atFirst);
  };
  return (
    <details className={styles.more}>
      <summary>{words.addLevel}</summary>
      <fieldset className={styles.fields}>
        <legend className="only-heard">{words.addLevel}</legend>
        <TextField label={words.levelName} value={name} onCommit={(text) => change({ name: text })} />
        <LevelPlace depth={depth} lies={undefined} shownIn={shownIn} onChange={(next) => change({ depth: next })} />
        <Pick
          label={words.standsFor}
          value={girth}
          options={GIRTHS.map((value) => ({ value, words: words.girth[value] }))}
          onChange={(next) => change({ girth: next })}
        />
        <Button icon="plus" tone="chalk" onPress={add}>
          {words.addThisLevel}
        </Button>
      </fieldset>
    </details>
  );
}
