import type { Point } from '../core/geometry/point';
import { halved } from '../core/picture/grey';
import { inkCosts } from '../core/picture/ink-costs';
import { inkRuns } from '../core/picture/ink-followed';
import { inkLine } from '../core/picture/ink-line';
import { inkNear } from '../core/picture/ink-meeting';
import { inkTree, wayTo } from '../core/picture/ink-tree';
import { arcRun, type DrawnLine, drawnPage, letteringAt, offRun } from '../tests/picture/drawn-page';
import type { Figure } from './figure';
import { quantile, timesOf } from './timing';

/** A page of 12 megapixels with arcs of every kind, one inside the other, crossed and lettered. */
const KINDS: readonly (readonly number[] | undefined)[] = [undefined, [36, 18], [5, 16], [420, 37, 300, 29]];
const arcs = KINDS.map((_, index) => arcRun({ x: 150, y: 2850 }, 2700 - 500 * index, -1.5, -0.08));

/** Following the ink of a page: a move of the pointer, how far the followed line is off, and how long the ways take to grow. */
export async function inkFigures(): Promise<Figure[]> {
  const lines: DrawnLine[] = [
    ...arcs.map((run, index) => ({ run, width: 6, ...(KINDS[index] ? { dashes: KINDS[index] } : {}) })),
    {
      run: [
        { x: 300, y: 40 },
        { x: 2300, y: 2900 },
      ],
      width: 6,
    },
    ...letteringAt({ x: 1850, y: 780 }, 50, 5),
  ];
  const whole = drawnPage({ width: 4000, height: 3000, lines });
  const grey = halved(whole);
  const began = performance.now();
  const costs = inkCosts(grey);
  const read = performance.now() - began;
  const small = ({ x, y }: Point): Point => ({ x: x / 2, y: y / 2 });
  const grow: number[] = [];
  const moves: number[] = [];
  const off: number[] = [];
  for (const arc of arcs) {
    const from = small(arc[0] as Point);
    const start = performance.now();
    const tree = inkTree(costs, from, { reach: 1600 });
    grow.push(performance.now() - start);
    const follow = (place: Point) => {
      const to = inkNear(grey, place, 20)?.at ?? place;
      const way = wayTo(tree, to);
      const line = way && inkLine(grey, way);
      return line && inkRuns(line, { from, to });
    };
    const at = (index: number) => small(arc[Math.floor((0.5 + 0.49 * Math.sin(index)) * (arc.length - 1))] as Point);
    moves.push(...timesOf((index) => follow(at(index)), { times: 60, warm: 10 }));
    const runs = follow(small(arc[arc.length - 1] as Point)) ?? [];
    // Every fourth place is looked at, against every tenth of the arc: a hundredth of a pixel is not lost by it.
    const sparse = arc.filter((_, index) => index % 10 === 0 || index === arc.length - 1);
    const places = runs.flat().filter((_, index) => index % 4 === 0);
    off.push(...places.map(({ x, y }) => offRun({ x: 2 * x, y: 2 * y }, sparse)));
  }
  return [
    { name: 'ink_follow_ms_p95', value: quantile(moves, 0.95), unit: 'ms' },
    { name: 'ink_error_px_p95', value: quantile(off, 0.95), unit: 'px' },
    { name: 'ink_read_ms', value: read, unit: 'ms' },
    { name: 'ink_tree_ms', value: quantile(grow, 0.5), unit: 'ms' },
  ];
}
