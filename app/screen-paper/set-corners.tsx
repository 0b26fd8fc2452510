import { type PointerEvent, useState } from 'react';
import type { Point } from '../../core/geometry/point';
import { type Calibration, type FourCorners, SHORTEST_SIDE, screenMap } from '../../core/screen/calibration';
import type { ScreenSize } from '../../core/screen/pan-steps';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { screenPaperWords as words } from '../words/screen-paper';
import styles from './screen-paper.module.css';

interface SetCornersProps {
  readonly size: ScreenSize;
  readonly shownIn: 'in' | 'cm';
  readonly before: Calibration | undefined;
  readonly onMeasured: (calibration: Calibration) => void;
  readonly onClose: () => void;
}

/** Four corners brought onto a rectangle that lies on the table: by dragging, or with the arrow keys pixel by pixel. */
export function SetCorners({ size, shownIn, before, onMeasured, onClose }: SetCornersProps) {
  const [corners, setCorners] = useState<FourCorners>(() => before?.corners ?? fourIn(size));
  const [across, setAcross] = useState(before?.across);
  const [down, setDown] = useState(before?.down);
  const place = (index: number, { x, y }: Point) => {
    const at = { x: Math.min(size.width, Math.max(0, x)), y: Math.min(size.height, Math.max(0, y)) };
    setCorners((now) => now.map((corner, i) => (i === index ? at : corner)) as unknown as FourCorners);
  };
  const drag = (index: number) => (event: PointerEvent<HTMLButtonElement>) => {
    if (event.type === 'pointerdown') event.currentTarget.setPointerCapture(event.pointerId);
    else if (event.currentTarget.hasPointerCapture(event.pointerId))
      place(index, { x: event.clientX, y: event.clientY });
  };
  const trouble = across !== undefined && down !== undefined && screenMap({ corners, across, down });
  const [a, b, c, d] = corners;
  const outline = corners.map(({ x, y }) => `${x},${y}`).join(' ');
  return (
    <>
      <svg className={styles.whole} width={size.width} height={size.height} aria-hidden="true">
        <polygon className={styles.frame} points={outline} />
        <path className={styles.cross} d={`M${a.x} ${a.y}L${c.x} ${c.y}M${b.x} ${b.y}L${d.x} ${d.y}`} />
      </svg>
      {corners.map(({ x, y }, index) => (
        <button
          key={words.corner[index]}
          type="button"
          className={styles.handle}
          style={{ left: x, top: y }}
          aria-label={words.cornerSaid(index, x, y)}
          onPointerDown={drag(index)}
          onPointerMove={drag(index)}
          onKeyDown={(event) => {
            const way = ARROWS[event.key];
            if (!way) return;
            event.preventDefault();
            const step = event.shiftKey ? 10 : 1;
            place(index, { x: x + way[0] * step, y: y + way[1] * step });
          }}
        >
          {index + 1}
        </button>
      ))}
      <section className={styles.panel}>
        <h2>{words.cornersTitle}</h2>
        <p>{words.cornersHelp}</p>
        <LengthField
          label={words.sideAcross}
          value={across}
          shownIn={shownIn}
          min={SHORTEST_SIDE}
          onCommit={setAcross}
        />
        <LengthField label={words.sideDown} value={down} shownIn={shownIn} min={SHORTEST_SIDE} onCommit={setDown} />
        {trouble && trouble.kind === 'no-screen-map' && <Note tone="stop">{words.noMap[trouble.why]}</Note>}
        <div className={styles.row}>
          <Button
            tone="chalk"
            disabled={!trouble || trouble.kind === 'no-screen-map'}
            onPress={() => across !== undefined && down !== undefined && onMeasured({ corners, across, down })}
          >
            {words.use}
          </Button>
          <Button onPress={onClose}>{words.close}</Button>
        </div>
      </section>
    </>
  );
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function fourIn({ width, height }: ScreenSize): FourCorners {
  const [x, y] = [width * 0.12, height * 0.12];
  return [
    { x, y },
    { x: width - x, y },
    { x: width - x, y: height - y },
    { x, y: height - y },
  ];
}
