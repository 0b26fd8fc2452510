import { useState } from 'react';
import type { Diagram } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { NumberField } from '../ui/number-field';
import { diagramWords } from '../words/diagram';
import { writeLength } from '../words/written';
import { putLength, sayWhoFollowed } from './change-diagram';
import styles from './diagram-room.module.css';

const words = diagramWords.known;

interface ScannedSizeProps {
  readonly diagram: Diagram;
  readonly onPaper: NonNullable<Diagram['onPaper']>;
  readonly shownIn: Garment['shownIn'];
}

/** What a scan or a page of a PDF says of its own size, to be taken as a known length right across the picture. */
export function ScannedSize({ diagram, onPaper, shownIn }: ScannedSizeProps) {
  const [times, setTimes] = useState(1);
  const write = (mm: number) => writeLength(mm, { shownIn });

  function take() {
    const { garment, edit } = useGarment.getState();
    const id = newId();
    const y = diagram.heightPx / 2;
    const known = {
      id,
      from: { x: 0, y },
      to: { x: diagram.widthPx, y },
      says: { kind: 'length', length: onPaper.across * times },
    } as const;
    edit(diagramWords.labels.addLength, putLength(diagram.id, known));
    sayWhoFollowed(garment);
    useTable.getState().choose({ kind: 'known-length', diagramId: diagram.id, knownLengthId: id });
  }

  return (
    <div className={styles.fresh}>
      <p>{words.scanned(write(onPaper.across), write(onPaper.down))}</p>
      <NumberField label={words.timesLarger} value={times} least={0.1} most={100} onCommit={setTimes} />
      <Button onPress={take}>{words.takeScanned}</Button>
    </div>
  );
}
