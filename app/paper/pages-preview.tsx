import type { Mark, Words } from '../../core/drawing/drawing';
import { lineStyles } from '../../core/drawing/line-styles';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import type { PaperChoice } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { type PagePlan, planPages } from '../../core/paper/page-plan';
import type { ShownIn } from '../../core/units/inch';
import { EmptySheet } from '../ui/empty-sheet';
import { svgPath } from '../ui/svg-path';
import { paperWords as words } from '../words/paper';
import { paperSheetWords } from '../words/paper-sheet';
import styles from './paper-room.module.css';
import { useMmPerPx } from './use-mm-per-px';

interface PagesPreviewProps {
  readonly pieces: readonly Piece[];
  readonly paper: PaperChoice;
  readonly shownIn: ShownIn;
}

/** Every piece with the sheets that will carry it. Words that would be too small to read here are left to the paper. */
export function PagesPreview({ pieces, paper, shownIn }: PagesPreviewProps) {
  if (pieces.length === 0) {
    return (
      <EmptySheet title={words.noneChosenTitle}>
        <p>{words.nothing['no-piece']}</p>
      </EmptySheet>
    );
  }
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
  const { svg, mmPerPx } = useMmPerPx();
  const edge = 6;
  const width = (plan.columns - 1) * plan.step.across + plan.window.width + 2 * edge;
  const height = (plan.rows - 1) * plan.step.down + plan.window.height + 2 * edge;
  const paperWords = paperSheetWords(shownIn, 'sixteenth');
  return (
    <svg
      ref={svg}
      // Only their proportion matters: the style sheet makes the drawing as large as there is room.
      width={width * 4}
      height={height * 4}
      viewBox={`${plan.origin.x - edge} ${plan.origin.y - edge} ${width} ${height}`}
      role="img"
      aria-label={words.preview(name || words.unnamed, plan.pages.length)}
    >
      {plan.pages.map(({ label, window: { minX, minY } }) => (
        <rect
          key={label}
          className={styles.sheet}
          x={minX}
          y={minY}
          width={plan.window.width}
          height={plan.window.height}
        />
      ))}
      {marks.map((mark, index) =>
        mark.kind === 'stroke' ? (
          <path
            // The list is made anew with the piece and never reordered.
            // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names of their own
            key={index}
            className={styles.mark}
            d={svgPath(mark.path)}
            strokeWidth={Math.max(lineStyles[mark.line].width * 2, STROKE_PX * mmPerPx)}
            strokeDasharray={lineStyles[mark.line].dash.map((part) => part * 2).join(' ') || undefined}
          />
        ) : (
          sizeHere(mark, mmPerPx) !== undefined && (
            <text
              // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names of their own
              key={index}
              className={styles.words}
              fontSize={sizeHere(mark, mmPerPx)}
              fontWeight={mark.weight === 'bold' ? 700 : 400}
              transform={`translate(${mark.at.x} ${mark.at.y}) rotate(${(mark.angle * 180) / Math.PI})`}
            >
              {paperWords.content(mark.content)}
            </text>
          )
        ),
      )}
      {plan.pages.map(({ label, window: { minX, minY } }) => (
        <text
          key={label}
          className={styles.label}
          fontSize={LABEL_PX * mmPerPx}
          x={minX + 6 * mmPerPx}
          y={minY + (LABEL_PX + 4) * mmPerPx}
        >
          {label}
        </text>
      ))}
    </svg>
  );
}

/** Sizes on the screen, in CSS pixels: the name of a page, the name of a piece, the least that can be read, a line. */
const LABEL_PX = 13;
const NAME_PX = 17;
const READABLE_PX = 11;
const STROKE_PX = 1.1;

/** How high words stand in the preview (mm): never too small to read. Beside the name, words that would be are left out. */
function sizeHere(mark: Words, mmPerPx: number): number | undefined {
  const size = mark.size * 1.3;
  if (mark.role === 'name') return Math.max(size, NAME_PX * mmPerPx);
  return size >= READABLE_PX * mmPerPx ? size : undefined;
}
