import { type DiagramMap, photoToTable, tableToPhoto } from '../../core/diagram/diagram-map';
import { flattenPath } from '../../core/geometry/flatten';
import { distance, type Point, type TablePoint } from '../../core/geometry/point';
import { type FollowedPoint, followedLine } from '../../core/picture/ink-followed';
import { inkLine, shownLine, spaced } from '../../core/picture/ink-line';
import { type InkTree, wayTo } from '../../core/picture/ink-tree';
import { ensureInk, inGrey, inkNearby, inkRead, inPicture, leaveInk, usePictureInk } from '../photo/picture-ink';
import type { ReadyPicture } from '../photo/picture-store';
import { type GrowPlan, inkWork, type ReadInk } from '../workers/ink-calls';
import type { Snapped } from './snap';
import { pathsOf, type Trace } from './trace';

/** The picture under the table whose lines can be followed, and how it lies there. */
interface UnderTable {
  readonly photo: ReadyPicture;
  readonly map: DiagramMap;
}

let under: UnderTable | undefined;

/** The cheapest ways from the ends of traces, the newest last. */
let grown: readonly { readonly trace: Trace; readonly tree: Promise<InkTree | undefined> }[] = [];
const ready = new WeakMap<Promise<InkTree | undefined>, InkTree>();
const TREES_KEPT = 2;

/** How finely what was traced is laid out to be kept clear of, in mm. */
const FLAT = 0.3;

/** Says which picture lies under the table, or none. */
export function setUnderTable(next: UnderTable | undefined): void {
  if (under?.map !== next?.map || under?.photo.key !== next?.photo.key) grown = [];
  under = next;
}

/** Reads the ink of the picture under the table, if there is one. */
export function beginFollowing(): void {
  if (under) void ensureInk(under.photo);
}

/** Lets go of the ink and gives its memory back. */
export function endFollowing(): void {
  grown = [];
  leaveInk();
}

/** The printed line near a place of the table: where lines meet, else the middle of one. */
export function snappedToInk(place: TablePoint, reach: number): Snapped | undefined {
  const photo = under && tableToPhoto(under.map, place);
  const beside = under && tableToPhoto(under.map, { x: place.x + reach, y: place.y });
  if (!under || !photo || !beside) return undefined;
  const found = inkNearby(under.photo.key, photo, distance(photo, beside));
  const at = found && photoToTable(under.map, found.at);
  return found && at && { at, to: found.what === 'line' ? 'ink' : 'meeting' };
}

/** Grows the ways from the end of a trace, unless they are there; `undefined` when there is no ink, or it was given up. */
export async function growFrom(trace: Trace): Promise<InkTree | undefined> {
  await inkRead();
  const { ink } = usePictureInk.getState();
  if (!under || ink.kind !== 'read') return undefined;
  const known = grown.find((each) => each.trace === trace);
  if (known) return known.tree;
  const plan = growPlan(trace, under.map, ink);
  if (!plan) return undefined;
  const { key, file } = under.photo;
  const tree = inkWork.call('grow', { key, file, ...plan }).then((answer) => {
    return answer.kind === 'grown' ? answer.tree : undefined;
  });
  grown = [...grown.slice(1 - TREES_KEPT), { trace, tree }];
  const done = await tree;
  if (done) ready.set(tree, done);
  return done;
}

/** Where the ways begin in the grey picture, and the lines that the trace has taken already. */
function growPlan(trace: Trace, map: DiagramMap, ink: ReadInk): GrowPlan | undefined {
  const laid = (place: TablePoint) => {
    const photo = tableToPhoto(map, place);
    return photo && inGrey(ink, photo);
  };
  const [start, end] = [trace[0], trace.at(-1)];
  const [first, last] = [start && laid(start.at), end && laid(end.at)];
  if (!first || !last) return undefined;
  const runs = pathsOf(trace, undefined).map((path) => flattenPath(path, FLAT).flatMap((place) => laid(place) ?? []));
  return { seed: last, spared: [first, last], followed: runs.flatMap((run) => spaced(run, 1)) };
}

/** The printed line from the end of a trace to a place, to be looked at; nothing until it is ready. */
export function lookAlong(trace: Trace, to: TablePoint): readonly TablePoint[] | undefined {
  const known = grown.find((each) => each.trace === trace);
  const tree = known && ready.get(known.tree);
  const from = trace.at(-1)?.at;
  const found = tree && from && wayBetween(tree, from, to);
  if (!found) return undefined;
  const { way, lay } = found;
  const over = shownLine(way)
    .slice(1, -1)
    .flatMap((place) => lay(place) ?? []);
  return [from, ...over, to];
}

/** The fewest points that keep to the printed line from the end of a trace to a place; none where there is no line. */
export async function followFrom(trace: Trace, to: TablePoint): Promise<readonly FollowedPoint[]> {
  const from = trace.at(-1)?.at;
  const tree = from && (await growFrom(trace));
  const found = tree && wayBetween(tree, from, to);
  const line = found && inkLine(found.ink.grey, found.way);
  return line ? followedLine(line, found.ends, found.lay) : [];
}

interface WayBetween {
  readonly ink: ReadInk;
  readonly way: readonly Point[];
  readonly ends: { readonly from: Point; readonly to: Point };
  /** From the grey picture to the table. */
  readonly lay: (place: Point) => TablePoint | undefined;
}

function wayBetween(tree: InkTree, from: TablePoint, to: TablePoint): WayBetween | undefined {
  const { ink } = usePictureInk.getState();
  if (!under || ink.kind !== 'read') return undefined;
  const { map } = under;
  const [a, b] = [tableToPhoto(map, from), tableToPhoto(map, to)];
  if (!a || !b) return undefined;
  const ends = { from: inGrey(ink, a), to: inGrey(ink, b) };
  const way = wayTo(tree, ends.to);
  return way && { ink, way, ends, lay: (place) => photoToTable(map, inPicture(ink, place)) };
}
