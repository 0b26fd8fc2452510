import type { SidePlaces } from '../../core/garment/diagram';
import { move, type PhotoPoint } from '../../core/geometry/point';
import { diagramWords } from '../words/diagram';
import { nudgeSidePlace, type SidePlace } from './change-diagram';
import { useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { PixelField } from './pixel-field';

const words = diagramWords.square;

interface SideFieldsProps {
  readonly diagramId: string;
  readonly through: SidePlaces;
}

/** The places that curved sides pass through, as numbers: to be typed, or moved with the arrow keys. */
export function SideFields({ diagramId, through }: SideFieldsProps) {
  const places = through.flatMap((side, k) => side.map((at, index) => ({ place: { side: k as 0, index }, at })));
  return (
    <details className={styles.numbers}>
      <summary>{words.placesAsNumbers}</summary>
      <ul className={styles.rings}>
        {places.map(({ place, at }) => (
          <OnePlace key={`${place.side} ${place.index}`} {...{ diagramId, place, at }} />
        ))}
      </ul>
    </details>
  );
}

interface OnePlaceProps {
  readonly diagramId: string;
  readonly place: SidePlace;
  readonly at: PhotoPoint;
}

function OnePlace({ diagramId, place, at: { x, y } }: OnePlaceProps) {
  const name = words.ring(words.side[place.side], place.index + 1);
  const put = (to: PhotoPoint) => nudgeSidePlace(diagramId, place, to);
  const nudge = (step: Parameters<typeof move>[1]) => put(move({ x, y }, step));
  return (
    <li
      className={styles.end}
      onFocus={() => useDesk.setState({ corner: undefined, sidePlace: place, showing: 'photo' })}
    >
      <span>{name}</span>
      <PixelField label={words.across(name)} value={x} onCommit={(value) => put({ x: value, y })} onNudge={nudge} />
      <PixelField label={words.down(name)} value={y} onCommit={(value) => put({ x, y: value })} onNudge={nudge} />
    </li>
  );
}
