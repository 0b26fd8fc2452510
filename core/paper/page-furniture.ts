import { arcOfCircle } from '../geometry/arc';
import { inkHeader } from './page-header';
import type { Join, JoinMark } from './page-joins';
import { HEADER, type Page } from './page-plan';
import { inkRulerFigures } from './page-rulers';
import { marginsOf } from './page-sizes';
import type { PdfDocument, StoredDrawing } from './pdf-document';
import type { Ink } from './pdf-ink';
import { inkTestSquare, type SquareOnPage } from './test-square';

/** What stands on a page beside the drawing. */
export interface Furniture extends SquareOnPage {
  readonly joins: readonly Join[];
  /** The ticks, stored once for all pages. */
  readonly rulers: StoredDrawing;
}

/** Draws everything beside the drawing: header, rulers, joins and the test square. */
export function inkFurniture(ink: Ink, furniture: Furniture): void {
  const { document, words, paper, plan, page, rulers } = furniture;
  inkHeader(ink, furniture);
  const { left, top } = marginsOf(paper);
  ink.save().shift(left, top + HEADER);
  ink.clip(0, 0, plan.window.width, plan.window.height).show(rulers.name);
  const joins = furniture.joins.filter((join) => touches(join, page));
  const crosses = (runs: Join['runs']) => joins.flatMap((join) => (join.runs === runs ? join.marks : []));
  inkRulerFigures(ink, document, words, plan.window, {
    across: crosses('across').map(({ at }) => at.x - page.window.minX),
    down: crosses('down').map(({ at }) => at.y - page.window.minY),
  });
  ink.shift(-page.window.minX, -page.window.minY);
  for (const join of joins) inkJoin(ink, furniture, join);
  inkTestSquare(ink, furniture);
  ink.restore();
}

function touches({ over, under }: Join, { label }: Page): boolean {
  return over.label === label || under.label === label;
}

/** A join in table millimetres, and which page lies over which. */
function inkJoin(ink: Ink, { document, words, page, paper }: Furniture, join: Join): void {
  const isOver = join.over.label === page.label;
  // Dots so short that nobody takes it for a stitch line.
  ink.pen(0.25, [0.4, 1.3]).line(join.from.x, join.from.y, join.to.x, join.to.y);
  const inner = isOver ? -1 : 1;
  for (const mark of join.marks) inkJoinMark(ink, document, join, mark, inner);
  const other = isOver ? join.under.label : join.over.label;
  const lapped = isOver ? words.cutAndLayOver(other) : words.goesUnder(other);
  const says = paper.joins === 'butted' ? words.cutAndSetTo(other) : lapped;
  const { x, y } = join.wordsAt;
  const style = { size: 2.1, align: 'middle', grey: 0.2 } as const;
  // Edge to edge the line stands among the figures of the rulers: words keep clear of them.
  const clear = paper.joins === 'butted' ? 4.5 : 0;
  const base = isOver ? -0.9 - clear : 2.4 + clear;
  if (join.runs === 'across') document.text(ink, says, x, y + base, style);
  else document.text(ink, says, x + base, y, { ...style, angle: -Math.PI / 2 });
}

/**
 * A cross and a circle that reach over the join, so that half of each is left on either page: the arms show a slip
 * sideways, the circle one towards or away. The mark stands on this page's own side.
 */
function inkJoinMark(ink: Ink, document: PdfDocument, { runs }: Join, { at, mark }: JoinMark, inner: 1 | -1): void {
  const { x, y } = at;
  const arm = 3;
  ink
    .pen(0.4)
    .line(x - arm, y - arm, x + arm, y + arm)
    .line(x - arm, y + arm, x + arm, y - arm);
  ink.pen(0.25).path(arcOfCircle({ x, y }, { x: x + arm * 0.6, y }, 2 * Math.PI, 0.01));
  const away = arm + 3.4;
  const [textX, textY] = runs === 'down' ? [x + inner * away, y] : [x, y + inner * away];
  document.text(ink, mark, textX, textY + 1.5, { size: 4.2, weight: 'bold', align: 'middle' });
}
