import type { Words } from '../../core/drawing/drawing';
import { lineStyles } from '../../core/drawing/line-styles';
import { olderLine } from '../../core/paper/older-lines';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { type ChosenPages, isChosen } from '../../core/paper/printing-of';
import type { ShownIn } from '../../core/units/inch';
import { Button } from '../ui/button';
import { EmptySheet } from '../ui/empty-sheet';
import { svgPath } from '../ui/svg-path';
import { sheetWords, paperWords as words } from '../words/paper';
import { paperSheetWords } from '../words/paper-sheet';
import styles from './paper-room.module.css';
import { useMmPerPx } from './use-mm-per-px';

interface PagesPreviewProps {
  readonly sheets: readonly TapedSheet[];
  readonly shownIn: ShownIn;
  readonly noneChosen: boolean;
  readonly pages: ChosenPages;
  readonly onPage: (sheet: TapedSheet, name: string) => void;
}

/** Every sheet of pages with the pieces on it. Words that would be too small to read here are left to the paper. */
export function PagesPreview({ sheets, shownIn, noneChosen, pages, onPage }: PagesPreviewProps) {
  if (noneChosen) {
    return (
      <EmptySheet title={words.noneChosenTitle}>
        <p>{words.nothing['no-piece']}</p>
      </EmptySheet>
    );
  }
  return (
    <div className={styles.preview}>
      {sheets.map((sheet) => {
        const name = sheetWords(sheet);
        const isOn = (label: string) => pages.length > 0 && isChosen(sheet, { label }, pages);
        return (
          <figure key={sheet.placed.map(({ piece }) => piece.id).join(' ')} className={styles.figure}>
            <SheetDrawing
              sheet={sheet}
              shownIn={shownIn}
              name={name}
              isOn={isOn}
              onPage={(one) => onPage(sheet, one)}
            />
            <figcaption>{words.preview(name, sheet.plan.pages.length)}</figcaption>
            <details className={styles.choose}>
              <summary>{words.choosePages}</summary>
              <div>
                {sheet.plan.pages.map(({ label }) => (
                  <Button
                    key={label}
                    pressed={isOn(label)}
                    label={words.pageNamed(label, name)}
                    onPress={() => onPage(sheet, label)}
                  >
                    {label}
                  </Button>
                ))}
              </div>
            </details>
          </figure>
        );
      })}
    </div>
  );
}

interface SheetDrawingProps {
  readonly sheet: TapedSheet;
  readonly shownIn: ShownIn;
  readonly name: string;
  readonly isOn: (label: string) => boolean;
  readonly onPage: (label: string) => void;
}

function SheetDrawing({ sheet: { placed, plan }, shownIn, name, isOn, onPage }: SheetDrawingProps) {
  const { svg, mmPerPx } = useMmPerPx();
  const edge = 6;
  const width = (plan.columns - 1) * plan.step.across + plan.window.width + 2 * edge;
  const height = (plan.rows - 1) * plan.step.down + plan.window.height + 2 * edge;
  const paperWords = paperSheetWords(shownIn, 'sixteenth');
  const marks = placed.flatMap((one) => one.marks);
  const older = placed.flatMap(({ under }) => under.map((lines, index) => ({ lines, dash: olderLine(index).dash })));
  return (
    <svg
      ref={svg}
      // Only their proportion matters: the style sheet makes the drawing as large as there is room.
      width={width * 4}
      height={height * 4}
      viewBox={`${plan.origin.x - edge} ${plan.origin.y - edge} ${width} ${height}`}
      role="img"
      aria-label={words.preview(name, plan.pages.length)}
    >
      {plan.pages.map(({ label, window: { minX, minY } }) => (
        // Pages are pressed here by the pointer; the buttons below are for every other way.
        <rect
          key={label}
          className={styles.sheet}
          data-on={isOn(label) || undefined}
          onPointerUp={() => onPage(label)}
          x={minX}
          y={minY}
          width={plan.window.width}
          height={plan.window.height}
        />
      ))}
      {older.map(({ lines, dash }, version) =>
        lines.map(
          (mark, index) =>
            mark.kind === 'stroke' && (
              <path
                // biome-ignore lint/suspicious/noArrayIndexKey: marks have no names of their own
                key={`${version} ${index}`}
                className={styles.under}
                d={svgPath(mark.path)}
                strokeDasharray={dash.map((part) => part * UNDER_PX).join(' ')}
              />
            ),
        ),
      )}
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

/** How many CSS pixels stand for a mm in the dots of older versions. */
const UNDER_PX = 2.5;

/** How high words stand in the preview (mm): never too small to read. Beside the name, words that would be are left out. */
function sizeHere(mark: Words, mmPerPx: number): number | undefined {
  const size = mark.size * 1.3;
  if (mark.role === 'name') return Math.max(size, NAME_PX * mmPerPx);
  return size >= READABLE_PX * mmPerPx ? size : undefined;
}
