import type { Mark } from '../../core/drawing/drawing';
import { lineStyles } from '../../core/drawing/line-styles';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import type { PaperChoice } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { type PagePlan, planPages } from '../../core/paper/page-plan';
import type { ShownIn } from '../../core/units/inch';
import { svgPath } from '../ui/svg-path';
import { paperWords as words } from '../words/paper';
import { paperSheetWords } from '../words/paper-sheet';
import styles from './paper-room.module.css';

interface PagesPreviewProps {
  readonly pieces: readonly Piece[];
  readonly paper: PaperChoice;
  readonly shownIn: ShownIn;
}

/** Every piece with the sheets that will carry it, just as they will be printed. */
export function PagesPreview({ pieces, paper, shownIn }: PagesPreviewProps) {
  return (
    <div className={styles.preview}>
      {pieces.map((piece) => {
        const marks = pieceDrawing(piece);
        const plan = planPages(marks, paper);
        if (!plan) return null;
        return (
          <figure key={piece.id} className={styles.figure}>
            <PiecePages marks={marks} plan={plan} shownIn={shownIn} name={piece.name} />
            <figcaption>{words.preview(piece.name || words.unnamed, plan.pages.length)}</figcaption>
          </figure>
        );
      })}
    </div>
  );
}

interface PiecePagesProps {
  readonly marks: readonly Mark[];
  readonly plan: PagePlan;
  readonly shownIn: ShownIn;
  readonly name: string;
}

function PiecePages({ marks, plan, shownIn, name }: PiecePagesProps) {
  const edge = 6;
  const width = (plan.columns - 1) * plan.step.across + plan.window.width + 2 * edge;
  const height = (plan.rows - 1) * plan.step.down + plan.window.height + 2 * edge;
  const paperWords = paperSheetWords(shownIn, 'sixteenth');
  return (
    <svg
      viewBox={`${plan.origin.x - edge} ${plan.origin.y - edge} ${width} ${height}`}
      role="img"
      aria-label={words.preview(name || words.unnamed, plan.pages.length)}
    >
      {plan.pages.map(({ label, window: { minX, minY } }) => (
        <g key={label}>
          <rect className={styles.sheet} x={minX} y={minY} width={plan.window.width} height={plan.window.height} />
          <text className={styles.label} x={minX + plan.step.across / 2} y={minY + plan.step.down / 2 + 14}>
            {label}
          </text>
        </g>
      ))}
      {marks.map((mark, index) =>
        mark.kind === 'stroke' ? (
          <path
            // The list is made anew with the piece and never reordered.
            // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names of their own
            key={index}
            className={styles.mark}
            d={svgPath(mark.path)}
            strokeWidth={lineStyles[mark.line].width * 2}
            strokeDasharray={lineStyles[mark.line].dash.map((part) => part * 2).join(' ') || undefined}
          />
        ) : (
          <text
            // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names of their own
            key={index}
            className={styles.words}
            fontSize={mark.size * 1.3}
            fontWeight={mark.weight === 'bold' ? 700 : 400}
            transform={`translate(${mark.at.x} ${mark.at.y}) rotate(${(mark.angle * 180) / Math.PI})`}
          >
            {paperWords.content(mark.content)}
          </text>
        ),
      )}
    </svg>
  );
}
