import { pathsOf, type Trace, withFollowed, withPoint } from '../../app/draft/trace';
import { flattenPath } from '../../core/geometry/flatten';
import { distance, type Point } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import type { Grey } from '../../core/picture/grey';
import { costsBeside, type InkCosts } from '../../core/picture/ink-costs';
import { followedLine } from '../../core/picture/ink-followed';
import { inkLine, spaced } from '../../core/picture/ink-line';
import { inkNear } from '../../core/picture/ink-meeting';
import { inkTree, wayTo } from '../../core/picture/ink-tree';

/** A picture whose ink was read, and how it lies on the table. */
export interface ReadPicture {
  readonly grey: Grey;
  readonly costs: InkCosts;
  readonly toTable: (photo: Point) => Point | undefined;
  readonly toPhoto: (table: Point) => Point | undefined;
}

/** Presses are brought to ink within so many pixels, as far as a pointer reaches on a page that fills the screen. */
const REACH = 12;

/** An outline traced by following the printed lines from press to press. */
export interface TracedOutline {
  readonly trace: Trace;
  /** Where the presses went, on the table, in order; the last is the first again when it was closed. */
  readonly pressed: readonly Point[];
  readonly paths: readonly Path[];
}

/**
 * An outline traced with presses at places of the picture, the printed line followed from each to the next as the table
 * does it. `undefined` where there is no line to follow, or a place cannot be laid.
 */
export function tracedByInk(picture: ReadPicture, presses: readonly Point[]): TracedOutline | undefined {
  const { grey, costs, toTable, toPhoto } = picture;
  let trace: Trace = [];
  const pressed: Point[] = [];
  for (const press of presses) {
    const isLast = pressed.length > 1 && distance(press, presses[0] as Point) < 2 * REACH;
    const at = isLast ? pressed[0] : toTable(inkNear(grey, press, REACH)?.at ?? press);
    if (!at) return undefined;
    pressed.push(at);
    const [first, from] = [trace[0]?.at, trace.at(-1)?.at];
    if (!first || !from) {
      trace = withPoint(trace, at, 'corner');
      continue;
    }
    const [seed, to, start] = [toPhoto(from), toPhoto(at), toPhoto(first)];
    if (!(seed && to && start)) return undefined;
    const followed = pathsOf(trace, undefined).flatMap((path) => {
      return spaced(
        flattenPath(path, 0.3).flatMap((place) => toPhoto(place) ?? []),
        1,
      );
    });
    const tree = inkTree(costsBeside(costs, followed, [start, seed]), seed, { reach: 1600 });
    const way = wayTo(tree, to);
    const line = way && inkLine(grey, way);
    if (!line) return undefined;
    trace = withFollowed(trace, followedLine(line, { from: seed, to }, toTable), at, 'corner');
  }
  return { trace, pressed, paths: pathsOf(trace, undefined) };
}
