import type { Quad } from '../../core/garment/diagram';
import { move } from '../../core/geometry/point';
import { diagramWords } from '../words/diagram';
import { nudgeCorner } from './change-diagram';
import { cornerNumbers, useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { PixelField } from './pixel-field';

const words = diagramWords.square;

interface CornerFieldsProps {
  readonly diagramId: string;
  readonly corners: Quad;
}

/** The four corners as numbers: to be typed, or moved with the arrow keys while one of their fields has the focus. */
export function CornerFields({ diagramId, corners }: CornerFieldsProps) {
  const chosen = useDesk((desk) => desk.corner);

  return (
    <details className={styles.numbers}>
      <summary>{words.asNumbers}</summary>
      <table className={styles.corners}>
        <thead>
          <tr>
            <th scope="col">
              <span className="only-heard">{words.cornerHead}</span>
            </th>
            <th scope="col">{words.acrossHead}</th>
            <th scope="col">{words.downHead}</th>
          </tr>
        </thead>
        <tbody>
          {cornerNumbers.map((corner) => {
            const { x, y } = corners[corner];
            return (
              <tr
                key={corner}
                data-chosen={chosen === corner || undefined}
                onFocus={() => useDesk.setState({ corner, showing: 'photo' })}
              >
                <th scope="row">{words.corner[corner]}</th>
                <td>
                  <PixelField
                    label={words.across(words.corner[corner])}
                    value={x}
                    onCommit={(value) => nudgeCorner(diagramId, corner, { x: value, y })}
                    onNudge={(step) => nudgeCorner(diagramId, corner, move({ x, y }, step))}
                  />
                </td>
                <td>
                  <PixelField
                    label={words.down(words.corner[corner])}
                    value={y}
                    onCommit={(value) => nudgeCorner(diagramId, corner, { x, y: value })}
                    onNudge={(step) => nudgeCorner(diagramId, corner, move({ x, y }, step))}
                  />
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className={styles.hint}>{words.nudge}</p>
    </details>
  );
}
