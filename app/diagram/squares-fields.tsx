import { useState } from 'react';
import type { DiagramMap } from '../../core/diagram/diagram-map';
import { cornersOfSquares } from '../../core/diagram/followed-plane';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram } from '../../core/garment/diagram';
import { putKnownLength } from '../../core/garment/diagram-edits';
import type { SquaresMap } from '../../core/picture/grid-map';
import { inches, type ShownIn } from '../../core/units/inch';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { say } from '../ui/say';
import { diagramWords } from '../words/diagram';
import { writeLength } from '../words/written';
import { editDiagram } from './change-diagram';
import styles from './diagram-room.module.css';

const words = diagramWords.square;

interface SquaresFieldsProps {
  readonly diagram: Diagram;
  readonly squares: SquaresMap;
  readonly map: DiagramMap | NotSquared;
  readonly shownIn: ShownIn;
}

/** The printed squares that are followed, by how much their crossings miss, and how large one is if she knows it. */
export function SquaresFields({ diagram, squares, map, shownIn }: SquaresFieldsProps) {
  const [one, setOne] = useState(shownIn === 'in' ? inches(1) : 20);
  const { columns, rows, rms, worst, leftOut } = squares;
  const mmPerPx = map.kind === 'map' && map.scale ? Math.max(map.across, map.down) : undefined;
  const write = (px: number) =>
    mmPerPx === undefined ? words.squaresPixels(px) : writeLength(px * mmPerPx, { shownIn, step: 'thirtysecond' });

  function take() {
    const [topLeft, topRight, , bottomLeft] = cornersOfSquares(squares);
    const line = (to: typeof topLeft, count: number) =>
      ({
        id: newId(),
        from: topLeft,
        to,
        says: { kind: 'length', length: count * one },
      }) as const;
    editDiagram(diagramWords.labels.addLength, diagram.id, (now) =>
      putKnownLength(putKnownLength(now, line(topRight, columns)), line(bottomLeft, rows)),
    );
    say(words.squareTaken(columns, writeLength(one, { shownIn })));
  }

  return (
    <>
      <p>{words.squaresHelp(columns, rows, leftOut)}</p>
      <p className={styles.hint}>{words.squaresMiss(write(rms), write(worst))}</p>
      <div className={styles.fresh}>
        <LengthField
          label={words.oneSquare}
          value={one}
          shownIn={shownIn}
          onCommit={(length) => length !== undefined && length > 0 && setOne(length)}
        />
        <Button onPress={take}>{words.takeSquare}</Button>
      </div>
    </>
  );
}
