import type { PrintedJoin } from '../garment/printed';
import type { TablePoint } from '../geometry/point';
import { type Crowd, crowdOf } from './crowd';
import { letters, lettersRead } from './letters';
import type { Page, PagePlan } from './page-plan';

/** A place on a join where both pages carry a cross and the same mark. */
export interface JoinMark {
  readonly at: TablePoint;
  /** A number beside a join between columns, a small letter at a join between rows; none twice in a piece. */
  readonly mark: string;
}

/** Where two pages meet: the line in the middle of what both show. */
export interface Join {
  readonly runs: 'down' | 'across';
  /** The page on the left or above, which is cut off along the line and lies over the other. */
  readonly over: Page;
  readonly under: Page;
  readonly from: TablePoint;
  readonly to: TablePoint;
  readonly marks: readonly JoinMark[];
  /** Where words along the join have room. */
  readonly wordsAt: TablePoint;
}

/** A cross stands at one of these shares of a page's own side, the first that is free: two on each join. */
const SHARES = [
  [0.24, 0.18, 0.3, 0.12, 0.36],
  [0.72, 0.78, 0.66, 0.84, 0.6],
] as const;

/** Words stand at one of these shares, between the crosses. */
const WORDS = [0.5, 0.46, 0.54, 0.42] as const;

/** Room a cross and its mark, and words, take about them (mm). */
const ROOM = 9;
const WORDS_ROOM = 14;

/**
 * Every join of a plan, in the order of its pages. Where some of the pages are printed already, `printed` are the joins
 * these show: they stay as they are, and marks of new ones count on.
 */
export function pageJoins(plan: PagePlan, printed: readonly PrintedJoin[] = []): Join[] {
  const { pages, step, window, origin } = plan;
  const overlap = window.width - step.across;
  const used = printed.flatMap(({ marks }) => marks.map(({ mark }) => mark));
  let numbers = Math.max(0, ...used.filter((mark) => /^\d+$/.test(mark)).map(Number));
  let marks = Math.max(0, ...used.filter((mark) => /^[a-z]+$/.test(mark)).map((mark) => lettersRead(mark) + 1));
  const shown = (over: Page, under: Page) =>
    printed.find((join) => join.over === over.label && join.under === under.label)?.marks;
  const crowd = crowdOf(plan.ink);
  const byCell = new Map(pages.map((page) => [page.row * plan.columns + page.column, page]));
  return pages.flatMap((over): Join[] => {
    const joins: Join[] = [];
    const left = origin.x + over.column * step.across + overlap / 2;
    const top = origin.y + over.row * step.down + overlap / 2;
    const cell = over.row * plan.columns + over.column;
    const beside = over.column + 1 < plan.columns ? byCell.get(cell + 1) : undefined;
    const below = byCell.get(cell + plan.columns);
    if (beside) {
      const x = left + step.across;
      const at = (share: number) => ({ x, y: top + share * step.down });
      joins.push({
        runs: 'down',
        over,
        under: beside,
        from: { x, y: over.window.minY },
        to: { x, y: over.window.maxY },
        marks:
          shown(over, beside) ??
          SHARES.map((shares) => {
            numbers += 1;
            return { at: freest(crowd, shares.map(at)), mark: String(numbers) };
          }),
        wordsAt: freest(crowd, WORDS.map(at), WORDS_ROOM),
      });
    }
    if (below) {
      const y = top + step.down;
      const at = (share: number) => ({ x: left + share * step.across, y });
      joins.push({
        runs: 'across',
        over,
        under: below,
        from: { x: over.window.minX, y },
        to: { x: over.window.maxX, y },
        marks:
          shown(over, below) ??
          SHARES.map((shares) => {
            marks += 1;
            return { at: freest(crowd, shares.map(at)), mark: letters(marks - 1).toLowerCase() };
          }),
        wordsAt: freest(crowd, WORDS.map(at), WORDS_ROOM),
      });
    }
    return joins;
  });
}

/** The place with least of the drawing about it; of equals the first. */
function freest(crowd: Crowd, places: readonly TablePoint[], room = ROOM): TablePoint {
  const crowds = places.map((place) => crowd(place, room));
  return places[crowds.indexOf(Math.min(...crowds))] as TablePoint;
}
