import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { filesWords } from '../words/files';
import { filesWork } from '../workers/files-calls';
import styles from './paper-room.module.css';
import { pngOf } from './png-of';

const words = filesWords.out;

const TYPES = { svg: 'image/svg+xml', dxf: 'image/vnd.dxf', png: 'image/png' } as const;

/** The pieces as files for other programs. */
export function FilesCard({ garment }: { readonly garment: Garment }) {
  const [units, setUnits] = useState<'mm' | 'in'>(garment.shownIn === 'in' ? 'in' : 'mm');
  const [isOpen, setOpen] = useState(false);
  const [failed, setFailed] = useState(false);

  async function save(kind: keyof typeof TYPES) {
    setFailed(false);
    const answer = await filesWork.call('write', {
      garment,
      kind: kind === 'dxf' ? 'dxf' : 'svg',
      units,
      today: today(),
    });
    try {
      if (answer.kind !== 'written' || answer.text === undefined) throw new Error('no file was made');
      const drawing = new Blob([answer.text], { type: kind === 'dxf' ? TYPES.dxf : TYPES.svg });
      const name = `${fileName(garment.name)}.${kind}`;
      download(kind === 'png' ? await pngOf(drawing) : drawing, name, TYPES[kind]);
      say(words.made(name));
    } catch {
      setFailed(true);
    }
  }

  return (
    <Card title={words.title} about="drawing-files" open={isOpen} onToggle={setOpen}>
      <p className={styles.small}>{words.help}</p>
      <Button onPress={() => void save('svg')}>{words.svg}</Button>
      <p className={styles.small}>{words.svgHelp}</p>
      <Button onPress={() => void save('dxf')}>{words.dxf}</Button>
      <p className={styles.small}>{words.dxfHelp}</p>
      <Choice
        label={words.dxfUnit}
        value={units}
        options={[
          { value: 'mm', words: words.units.mm },
          { value: 'in', words: words.units.in },
        ]}
        onChange={setUnits}
      />
      <Button onPress={() => void save('png')}>{words.png}</Button>
      <p className={styles.small}>{words.pngHelp}</p>
      {failed && <Note tone="stop">{words.failed}</Note>}
    </Card>
  );
}
