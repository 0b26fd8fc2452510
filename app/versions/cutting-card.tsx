import { useState } from 'react';
import { changedSinceCut } from '../../core/garment/cutting';
import type { Cutting } from '../../core/garment/done-to-it';
import type { Garment } from '../../core/garment/garment';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { TextField } from '../ui/text-field';
import { pieceName, versionsWords as words } from '../words/versions';
import styles from './versions.module.css';
import { forgetCut, noteCut } from './versions-actions';

interface CuttingCardProps {
  readonly garment: Garment;
  readonly number: number;
  readonly version: Garment;
}

/** What was cut from a version, and whether the draft is still as it was cut. */
export function CuttingCard({ garment, number, version }: CuttingCardProps) {
  const [from, setFrom] = useState<Cutting['from']>('mock-up');
  const [date, setDate] = useState(today);
  const cuttings = (garment.cuttings ?? []).filter((cutting) => cutting.version === number);
  return (
    <Card title={words.cutting} about="what-was-cut">
      {cuttings.map((cutting) => {
        const changed = changedSinceCut(garment, cutting).map((id) => pieceName(id, garment));
        return (
          <Note
            key={cutting.id}
            tone={changed.length === 0 ? 'good' : cutting.from === 'cloth' ? 'warn' : 'plain'}
            action={{ words: words.forget, onPress: () => forgetCut(cutting.id) }}
          >
            {words.cutSaid(cutting)} {changed.length === 0 ? words.cutCurrent : words.cutChanged(changed)}
          </Note>
        );
      })}
      <Choice
        label={words.cutFrom}
        value={from}
        options={(['mock-up', 'cloth'] as const).map((value) => ({ value, words: words.from[value] }))}
        onChange={setFrom}
      />
      <TextField label={words.cutOn} type="date" value={date} onCommit={(day) => setDate(day || today())} />
      <div className={styles.row}>
        <Button onPress={() => noteCut(version, number, { from, date })}>{words.noteCut}</Button>
      </div>
    </Card>
  );
}
