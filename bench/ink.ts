import type { Point } from '../core/geometry/point';
import { halved } from '../core/picture/grey';
import { inkCosts } from '../core/picture/ink-costs';
import { followedLine, inkRuns } from '../core/picture/ink-followed';
import { inkLine, shownLine } from '../core/picture/ink-line';
import { inkNear } from '../core/picture/ink-meeting';
import { inkTree, wayTo } from '../core/picture/ink-tree';
import { arcRun, type DrawnLine, drawnPage, letteringAt, offRun } from '../tests/picture/drawn-page';
import type { Figure } from './figure';
import { quantile, timesOf } from './timing';

/** A page of 12 megapixels with arcs of every kind, one inside the other, crossed and lettered. */
const KINDS: readonly { readonly name: string; readonly dashes?: readonly number[] }[] = [
  { name: 'solid' },
  { name: 'dashed', dashes: [36, 18] },
  { name: 'dotted', dashes: [5, 16] },
  { name: 'broken', dashes: [420, 37, 300, 29] },
];
const arcs = KINDS.map((_, index) => arcRun({ x: 150, y: 2850 }, 2700 - 500 * index, -1.5, -0.08));

/**
 * Following the ink of a page: a move of the pointer and a press, how far the followed line is off in pixels of the page,
 * over half of each arc and the whole of it, and how long reading and growing the ways take.
 */
export async function inkFigures(): Promise<Figure[]> {
  const lines: DrawnLine[] = [
    ...arcs.map((run, index) => ({ ...KINDS[index], run, width: 6 })),
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
  const presses: number[] = [];
  const off: (readonly number[])[] = [];
  for (const arc of arcs) {
    const from = small(arc[0] as Point);
    const start = performance.now();
    const tree = inkTree(costs, from, { reach: 1600 });
    grow.push(performance.now() - start);
    const aim = (place: Point) => inkNear(grey, place, 20)?.at ?? place;
    const show = (place: Point) => shownLine(wayTo(tree, aim(place)) ?? []);
    const follow = (place: Point) => {
      const to = aim(place);
      const way = wayTo(tree, to);
      const line = way && inkLine(grey, way);
      return line && { runs: inkRuns(line, { from, to }), points: followedLine(line, { from, to }) };
    };
    const at = (index: number) => small(arc[Math.floor((0.5 + 0.49 * Math.sin(index)) * (arc.length - 1))] as Point);
    moves.push(...timesOf((index) => show(at(index)), { times: 60, warm: 10 }));
    presses.push(...timesOf((index) => follow(at(index)), { times: 20, warm: 3 }));
    // Every fourth place is looked at, against every tenth of the arc: a hundredth of a pixel is not lost by it.
    const sparse = arc.filter((_, index) => index % 10 === 0 || index === arc.length - 1);
    const ends = [0.5, 1].map((share) => small(arc[Math.floor(share * (arc.length - 1))] as Point));
    const places = ends.flatMap((end) => follow(end)?.runs.flat() ?? []).filter((_, index) => index % 4 === 0);
    off.push(places.map(({ x, y }) => offRun({ x: 2 * x, y: 2 * y }, sparse)));
  }
  return [
    { name: 'ink_follow_ms_p95', value: quantile(moves, 0.95), unit: 'ms' },
    { name: 'ink_press_ms_p95', value: quantile(presses, 0.95), unit: 'ms' },
    { name: 'ink_error_px_p95', value: quantile(off.flat(), 0.95), unit: 'px' },
    ...KINDS.map(({ name }, index) => ({
      name: `ink_error_${name}_px_p95`,
      value: quantile(off[index] ?? [], 0.95),
      unit: 'px',
    })),
    { name: 'ink_read_ms', value: read, unit: 'ms' },
    { name: 'ink_tree_ms', value: quantile(grow, 0.5), unit: 'ms' },
  ];
}
