import type { KnownLength } from '../../core/garment/diagram';
import { move, type PhotoPoint } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { diagramWords } from '../words/diagram';
import { moveLengthEnd, sayHeldBack, sayWhoFollowed } from './change-diagram';
import styles from './diagram-room.module.css';
import { PixelField } from './pixel-field';

const words = diagramWords.known;

interface LengthEndsProps {
  readonly diagramId: string;
  readonly known: KnownLength;
}

/** The two ends of a known length as numbers. */
export function LengthEnds({ diagramId, known }: LengthEndsProps) {
  return (
    <EndFields
      ends={known}
      onPut={(which, to) => {
        const { garment, edit } = useGarment.getState();
        edit(diagramWords.labels.moveLength, moveLengthEnd(diagramId, known.id, which, to), {
          merge: `length ${known.id} ${which}`,
        });
        sayWhoFollowed(garment);
        sayHeldBack(diagramId, to);
      }}
    />
  );
}

interface EndFieldsProps {
  readonly ends: { readonly from: PhotoPoint; readonly to: PhotoPoint };
  readonly onPut: (which: 'from' | 'to', to: PhotoPoint) => void;
}

/** The two ends of a line as numbers, for those who would rather type or nudge than drag. */
export function EndFields({ ends, onPut: put }: EndFieldsProps) {
  return (
    <details className={styles.numbers}>
      <summary>{words.ends}</summary>
      {(['from', 'to'] as const).map((which) => {
        const name = which === 'from' ? words.from : words.to;
        const { x, y } = ends[which];
        const nudge = (step: Parameters<typeof move>[1]) => put(which, move({ x, y }, step));
        return (
          <div key={which} className={styles.end}>
            <span>{name}</span>
            <PixelField
              label={diagramWords.square.across(name)}
              value={x}
              onCommit={(value) => put(which, { x: value, y })}
              onNudge={nudge}
            />
            <PixelField
              label={diagramWords.square.down(name)}
              value={y}
              onCommit={(value) => put(which, { x, y: value })}
              onNudge={nudge}
            />
          </div>
        );
      })}
    </details>
  );
}
