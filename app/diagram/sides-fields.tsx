import { useState } from 'react';
import type { RectangleSides } from '../../core/garment/diagram';
import { inches } from '../../core/units/inch';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { diagramWords } from '../words/diagram';
import styles from './diagram-room.module.css';

const words = diagramWords.square;

type Known = keyof typeof words.sidesKnown;

/** Sheets by their printed size: A4 of ISO 216, and the Letter of ANSI/ASME Y14.1, 8 1/2 by 11 in. */
const sheets = { a4: [210, 297], letter: [inches(8.5), inches(11)] } as const;

interface SidesFieldsProps {
  readonly sides: RectangleSides;
  readonly onChange: (sides: RectangleSides) => void;
}

/** What is known of the sides of the rectangle: nothing, a sheet of paper either way up, or any proportion. */
export function SidesFields({ sides, onChange }: SidesFieldsProps) {
  const [typing, setTyping] = useState(false);
  const found = sheetOf(sides);
  const known = typing ? 'typed' : found;

  function pick(next: Known) {
    setTyping(next === 'typed');
    if (next === 'not-known') onChange({ kind: 'not-known' });
    else if (next !== 'typed') onChange({ kind: 'ratio', across: sheets[next][0], down: sheets[next][1] });
    else if (sides.kind === 'not-known') onChange({ kind: 'ratio', across: 2, down: 3 });
  }

  function put(which: 'across' | 'down', text: string) {
    const read = Number(text.trim().replace(',', '.'));
    if (!(read > 0 && read < 1e6) || sides.kind !== 'ratio') say(diagramWords.notANumber);
    else onChange({ ...sides, [which]: read });
  }

  return (
    <>
      <Pick
        label={words.sides}
        value={known}
        options={(Object.keys(words.sidesKnown) as Known[]).map((value) => ({ value, words: words.sidesKnown[value] }))}
        onChange={pick}
      />
      {known === 'not-known' && <p className={styles.hint}>{words.notKnownHint}</p>}
      {known === 'typed' && sides.kind === 'ratio' && (
        <div className={styles.pair}>
          {(['across', 'down'] as const).map((which) => (
            <TextField
              key={which}
              label={which === 'across' ? words.proportionAcross : words.proportionDown}
              value={String(Math.round(sides[which] * 1000) / 1000)}
              onCommit={(text) => put(which, text)}
            />
          ))}
        </div>
      )}
      {(known === 'a4' || known === 'letter') && sides.kind === 'ratio' && (
        <Pick
          label={words.wayUp}
          value={sides.across < sides.down ? 'upright' : 'sideways'}
          options={[
            { value: 'upright', words: words.upright },
            { value: 'sideways', words: words.sideways },
          ]}
          onChange={(way) => {
            const [short, long] = sheets[known];
            onChange(
              way === 'upright'
                ? { kind: 'ratio', across: short, down: long }
                : { kind: 'ratio', across: long, down: short },
            );
          }}
        />
      )}
    </>
  );
}

function sheetOf(sides: RectangleSides): Known {
  if (sides.kind === 'not-known') return 'not-known';
  const [short, long] = [Math.min(sides.across, sides.down), Math.max(sides.across, sides.down)];
  for (const name of ['a4', 'letter'] as const) {
    if (short === sheets[name][0] && long === sheets[name][1]) return name;
  }
  return 'typed';
}
