/** Which closed lines of a group are the outlines of pieces. */
import type { DrawnAs } from '../garment/piece';
import { flattenPath } from '../geometry/flatten';
import type { Point } from '../geometry/point';
import { placeInRing, type Ring } from '../geometry/polygon';
import type { Path } from '../geometry/segment';
import type { DrawnGroup, DrawnLine } from './drawn-line';
import type { LineMeaning } from './file-layers';
import { type FileFinding, MOST_OUTLINES } from './file-reading';
import { closedPath, joinedRings } from './joined-rings';

/** The outline of a piece to be. */
export interface GroupRing {
  readonly path: Path;
  /** The outline as corners, to see what lies within. */
  readonly ring: Ring;
  readonly line: DrawnLine;
  readonly drawnAs: DrawnAs;
}

/** What goes before what when both lie on one another; other meanings are no outline. */
const RANKS: ReadonlyMap<LineMeaning, number> = new Map([
  ['outline', 3],
  ['stitch', 2],
  ['cut', 1],
  ['boundary', 1],
  ['unsaid', 0],
]);

/** How closely an outline is flattened to see what lies within, in mm. */
const LOOK = 1;

/**
 * The outlines of a group. Open lines of one layer are joined where they meet. Where a stitch line and a cut line lie on
 * one another the stitch line is the piece. Lines that stay open are told, unless the group has outlines and a
 * layer says that the line is something else.
 */
export function groupRings(group: DrawnGroup): {
  readonly rings: readonly GroupRing[];
  readonly findings: readonly FileFinding[];
} {
  const { closed, open } = byLayer(group.lines.filter(({ meaning }) => RANKS.has(meaning)));
  // So many are refused as they are, and comparing each with each would take too long.
  const kept = closed.length > 4 * MOST_OUTLINES ? closed : withoutDoubles(closed);
  const has = (meaning: LineMeaning) => group.lines.some((line) => line.meaning === meaning);
  const isNet = has('cut') && has('stitch');
  const rings = kept.map(
    ({ line, path, ring }): GroupRing => ({ line, path, ring, drawnAs: drawnAsOf(line.meaning, isNet) }),
  );
  const isPlain = ({ meaning }: DrawnLine) => meaning === 'unsaid' || meaning === 'outline' || meaning === 'boundary';
  const findings = open
    .filter(({ line }) => rings.length === 0 || isPlain(line))
    .slice(0, MOST_OUTLINES)
    .map(({ line, path }): FileFinding => {
      const [start, end] = [path[0] as Path[number], path[path.length - 1] as Path[number]];
      const last = end.kind === 'line' ? end.p1 : end.p3;
      const gap = Math.hypot(last.x - start.p0.x, last.y - start.p0.y);
      return { kind: 'open-line', name: line.name || group.name, layer: line.layer, gap, at: last };
    });
  return { rings, findings };
}

function drawnAsOf(meaning: LineMeaning, isNet: boolean): DrawnAs {
  if (meaning === 'stitch' || (meaning === 'outline' && isNet)) return 'net';
  return meaning === 'cut' ? 'included' : 'not-known';
}

interface Found {
  readonly line: DrawnLine;
  readonly path: Path;
  readonly ring: Ring;
}

/** Closed lines, and open ones joined within their layer. */
function byLayer(lines: readonly DrawnLine[]): { readonly closed: readonly Found[]; readonly open: readonly Found[] } {
  const closed: Found[] = [];
  const open: Found[] = [];
  const loose = new Map<string, DrawnLine[]>();
  const found = (line: DrawnLine, path: Path): Found => ({ line, path, ring: flattenPath(path, LOOK).slice(0, -1) });
  for (const line of lines) {
    const path = closedPath(line.path);
    if (path) closed.push(found(line, path));
    else {
      const key = `${line.meaning} ${line.layer}`;
      const others = loose.get(key);
      if (others) others.push(line);
      else loose.set(key, [line]);
    }
  }
  for (const group of loose.values()) {
    const joined = joinedRings(group.map(({ path }) => path));
    const line = group[0] as DrawnLine;
    const name = group.length === 1 ? line.name : '';
    closed.push(...joined.closed.map((path) => found({ ...line, name }, path)));
    open.push(...joined.open.map((path) => found({ ...line, name }, path)));
  }
  return { closed, open };
}

/** Without the lines that lie on one of higher rank. */
function withoutDoubles(found: readonly Found[]): readonly Found[] {
  const rank = ({ line }: Found): number => RANKS.get(line.meaning) ?? 0;
  return found.filter(
    (one) => !found.some((other) => rank(other) > rank(one) && lieOnOneAnother(one.ring, other.ring)),
  );
}

function lieOnOneAnother(one: Ring, other: Ring): boolean {
  return someWithin(one, other) || someWithin(other, one);
}

function someWithin(points: readonly Point[], ring: Ring): boolean {
  return points.some((point) => placeInRing(ring, point) !== 'outside');
}
