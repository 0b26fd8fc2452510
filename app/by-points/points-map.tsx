import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import type { DrawingStep } from '../../core/paper/drawing-steps';
import type { SquaresSheet } from '../../core/paper/squares-sheet';
import { svgPath } from '../ui/svg-path';
import { byPointsWords as words } from '../words/by-points';
import styles from './by-points.module.css';

interface PointsMapProps {
  readonly piece: Piece;
  readonly sheet: SquaresSheet;
  readonly step: DrawingStep;
  readonly byLine: boolean;
  readonly has: (key: string) => boolean;
}

/** The piece small on its squares: what is drawn is filled, the point in hand ringed, with the way to it. */
export function PointsMap({ piece, sheet, step, byLine, has }: PointsMapProps) {
  const { square, squaresAcross, squaresDown, origin, points, marks, base } = sheet;
  const [width, height] = [squaresAcross * square, squaresDown * square];
  const long = Math.max(width, height);
  const inHand = step.kind === 'point' ? step.point : step.kind === 'mark' ? step.mark : undefined;
  const room = long * 0.05;
  const foot = inHand && byLine ? footOf(base, inHand.off.along, origin) : { x: inHand?.across ?? 0, y: 0 };
  const zero = byLine ? { x: base.start.x - origin.x, y: base.start.y - origin.y } : { x: 0, y: 0 };
  return (
    <svg
      className={styles.map}
      viewBox={`${-room} ${-room} ${width + 2 * room} ${height + 2 * room}`}
      role="img"
      aria-label={words.map(piece.name)}
    >
      {Array.from({ length: squaresAcross + 1 }, (_, i) => i * square).map((x) => (
        <line key={`across ${x}`} className={styles.grid} x1={x} y1={0} x2={x} y2={height} />
      ))}
      {Array.from({ length: squaresDown + 1 }, (_, i) => i * square).map((y) => (
        <line key={`down ${y}`} className={styles.grid} x1={0} y1={y} x2={width} y2={y} />
      ))}
      <path
        className={styles.outline}
        transform={`translate(${-origin.x} ${-origin.y})`}
        d={svgPath(outlineOf(piece).whole)}
      />
      {byLine && (
        <line className={styles.base} x1={zero.x} y1={zero.y} x2={base.end.x - origin.x} y2={base.end.y - origin.y} />
      )}
      {inHand && (
        <polyline
          className={styles.way}
          points={`${zero.x},${zero.y} ${foot.x},${foot.y} ${inHand.across},${inHand.down}`}
        />
      )}
      {points.map(({ name, across, down, kind }) => (
        <circle
          key={name}
          className={styles.dot}
          data-done={has(name) || undefined}
          cx={across}
          cy={down}
          r={long * (kind === 'corner' ? 0.012 : 0.008)}
        />
      ))}
      {marks.map(({ across, down, kind, text }, index) => (
        <circle
          key={`${kind} ${text} ${across} ${down}`}
          className={styles.dot}
          data-done={has(`mark ${index + 1}`) || undefined}
          cx={across}
          cy={down}
          r={long * 0.006}
        />
      ))}
      {inHand && <circle className={styles.ring} cx={inHand.across} cy={inHand.down} r={long * 0.028} />}
    </svg>
  );
}

/** Where one turns off from the base line. */
function footOf({ start, end, length }: SquaresSheet['base'], along: number, origin: SquaresSheet['origin']) {
  const share = along / length;
  return {
    x: start.x + (end.x - start.x) * share - origin.x,
    y: start.y + (end.y - start.y) * share - origin.y,
  };
}
