import { useCallback } from 'react';
import { canvasColours } from '../ui/canvas-colours';
import { tableWords } from '../words/table';
import { lettering } from './ink';
import { type Paint, Painted } from './painted';
import { rulingFor, type Squares } from './squares';

interface GridProps {
  readonly squares: Squares;
}

/** The squares on the paper: fine lines for halves and quarters when near, every numbered line a little heavier. */
export function Grid({ squares }: GridProps) {
  const paint = useCallback<Paint>(
    (ink, { px, seen }) => {
      const { side } = squares;
      const { every, numberEvery, parts } = rulingFor(side / px, squares);
      ink.strokeStyle = canvasColours.ink;
      const rule = (step: number, passOver: number, alpha: number, widthPx: number) => {
        ink.globalAlpha = alpha;
        ink.lineWidth = widthPx * px;
        ink.beginPath();
        for (let i = Math.ceil(seen.minX / step); i * step <= seen.maxX; i++) {
          if (passOver > 0 && i % passOver === 0) continue;
          ink.moveTo(i * step, seen.minY);
          ink.lineTo(i * step, seen.maxY);
        }
        for (let i = Math.ceil(seen.minY / step); i * step <= seen.maxY; i++) {
          if (passOver > 0 && i % passOver === 0) continue;
          ink.moveTo(seen.minX, i * step);
          ink.lineTo(seen.maxX, i * step);
        }
        ink.stroke();
      };
      if (parts > 1) rule(side / parts, parts, 0.1, 1);
      if (numberEvery > every) rule(side * every, numberEvery / every, 0.17, 1);
      rule(side * numberEvery, 0, 0.32, 1);
      ink.globalAlpha = 0.8;
      ink.lineWidth = 1.5 * px;
      ink.beginPath();
      ink.moveTo(0, seen.minY);
      ink.lineTo(0, seen.maxY);
      ink.moveTo(seen.minX, 0);
      ink.lineTo(seen.maxX, 0);
      ink.stroke();
    },
    [squares],
  );
  return <Painted paint={paint} />;
}

/** How wide the numbered strips along the top and left are, in CSS pixels. */
const STRIP_PX = 30;

interface RulerProps extends GridProps {
  /** Whether lines across are counted from the right, as on cloth that lies to the left of its fold. */
  readonly leftwards?: boolean;
}

/** The numbers of the lines, on a strip of paper along the top and the left, like a ruler laid there. */
export function RulerNumbers({ squares, leftwards = false }: RulerProps) {
  const paint = useCallback<Paint>(
    (ink, { px, seen }) => {
      const { side } = squares;
      const { numberEvery, every } = rulingFor(side / px, squares);
      const width = (seen.maxX - seen.minX) / px;
      const height = (seen.maxY - seen.minY) / px;
      // From here on in CSS pixels of the canvas.
      ink.translate(seen.minX, seen.minY);
      ink.scale(px, px);
      ink.fillStyle = canvasColours.sheet;
      ink.globalAlpha = 0.93;
      ink.fillRect(0, 0, width, STRIP_PX);
      ink.fillRect(0, STRIP_PX, STRIP_PX, height - STRIP_PX);
      ink.globalAlpha = 1;
      ink.fillStyle = canvasColours.ink;
      ink.strokeStyle = canvasColours.ink;
      ink.lineWidth = 1;
      ink.textAlign = 'center';
      ink.textBaseline = 'middle';
      ink.font = lettering(14);
      ink.beginPath();
      const spot = (index: number, from: number) => (index * side - from) / px;
      for (let i = Math.ceil(seen.minX / (side * every)) * every; spot(i, seen.minX) <= width; i += every) {
        const x = spot(i, seen.minX);
        if (x < STRIP_PX) continue;
        const numbered = i % numberEvery === 0;
        ink.moveTo(x, STRIP_PX);
        ink.lineTo(x, STRIP_PX - (numbered ? 6 : 3));
        if (numbered && x > STRIP_PX + 6) ink.fillText(tableWords.lineNumber(leftwards ? -i : i), x, STRIP_PX - 16);
      }
      ink.textAlign = 'right';
      for (let i = Math.ceil(seen.minY / (side * every)) * every; spot(i, seen.minY) <= height; i += every) {
        const y = spot(i, seen.minY);
        if (y < STRIP_PX) continue;
        const numbered = i % numberEvery === 0;
        ink.moveTo(STRIP_PX, y);
        ink.lineTo(STRIP_PX - (numbered ? 6 : 3), y);
        if (numbered && y > STRIP_PX + 6) ink.fillText(tableWords.lineNumber(i), STRIP_PX - 8, y);
      }
      ink.moveTo(STRIP_PX, STRIP_PX);
      ink.lineTo(width, STRIP_PX);
      ink.moveTo(STRIP_PX, STRIP_PX);
      ink.lineTo(STRIP_PX, height);
      ink.stroke();
    },
    [squares, leftwards],
  );
  return <Painted paint={paint} />;
}
