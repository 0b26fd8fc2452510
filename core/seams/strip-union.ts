/**
 * The cut line worked out from areas, for pieces on which going from corner to corner does not do.
 *
 * What falls here: an edge swallowed by the allowances of its neighbours; a hollow corner whose two cut lines do not
 * cross next to it; allowances of edges that are no neighbours but come close; an edge too tightly hollow for its
 * allowance to follow. The piece and the strips of all edges are put together as areas, flattened within `FLATNESS`, and
 * each stretch of the boundary is then taken from the exact cut line of the edge it came from. Where that cannot be
 * done (a stretch that is not one simple part of it) the flattened boundary itself stands.
 *
 * Limit: a strip that comes out on the far side of a narrow part of the piece is cut off there.
 */
import { unionBox } from '../geometry/bounds';
import { distanceToChord, flattenPath } from '../geometry/flatten';
import { intersectPaths } from '../geometry/intersect';
import { isClosed, nearestOnPath, pathBounds, pathLength, subPath } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import { type Ring, ringArea, ringLength } from '../geometry/polygon';
import { areasWithout, unionOfAreas } from '../geometry/polygon-boolean';
import { line, type Path } from '../geometry/segment';
import type { AllowanceStrip } from './allowance-strips';
import type { CutPart } from './cut-line-parts';

/** How far the flattened strips may be off, in mm; as many times more as a piece with a point gone astray is too large. */
const FLATNESS = 0.02;
const LARGEST = 20_000;

/** A gap up to this wide is a crack between areas that were flattened apart, in mm. */
const CRACK = 0.08;

/** How far a corner of flattened lines may be from that of the lines themselves, in mm. */
const NEAR_CORNER = 0.5;

/** How near a stretch of boundary must be to the flattened line it came from, in mm: clipping rounds to 0.0001. */
const SAME_LINE = 1e-3;

export type UnionBoundary =
  | { readonly kind: 'boundary'; readonly exact: readonly CutPart[]; readonly flat: readonly CutPart[] }
  /** The boundary runs along the stitch line of an edge that should have an allowance, or no answer is sure. */
  | { readonly kind: 'no-room'; readonly edgeIndex: number; readonly at: Point };

/** The outer boundary of piece and strips, travelled as the outline is (`outward` 1 when that is clockwise to the eye). */
export function stripUnion(strips: readonly AllowanceStrip[], outward: 1 | -1): UnionBoundary {
  const { minX, minY, maxX, maxY } = strips.map(({ stitch }) => pathBounds(stitch)).reduce(unionBox);
  const flatness = FLATNESS * Math.max(1, Math.hypot(maxX - minX, maxY - minY) / LARGEST);
  const runs = strips.map(({ cut }) => (cut.length > 0 ? flattenPath(cut, flatness) : []));
  const stitches = strips.map(({ stitch }) => flattenPath(stitch, flatness));
  const body = clockwise(stitches.flatMap((points) => points.slice(0, -1)));
  let whole: Ring = body;
  for (const group of groupsOf(strips)) {
    const stitch = group.flatMap((i) => stitches[i] as Point[]);
    const ring = clockwise([...group.flatMap((i) => runs[i] as Point[]), ...stitch.toReversed()]);
    const outside = areasWithout([ring], [body]);
    if (outside.kind === 'unsure') return noRoom(strips[group[0] as number] as AllowanceStrip);
    // Strips all the way round make a ring with a hole: then the hole touches the stitch lines, and all of it counts.
    const closed = outside.rings.some((each) => ringArea(each) < 0 && touches(each, stitch));
    const beside = outside.rings.filter((each) => ringArea(each) > 0 && (closed || touches(each, stitch)));
    const parts = outside.rings.length === 1 ? [ring] : beside;
    for (const part of parts) {
      const grown = unionOfAreas([whole], [part]);
      const largest = grown.kind === 'areas' ? largestOf(grown.rings) : undefined;
      if (!largest) return noRoom(strips[group[0] as number] as AllowanceStrip);
      whole = largest;
    }
  }
  whole = withoutCracks(whole);
  const lines = strips.map(({ width }, i) => [runs[i] as Point[], ...(width > 0 ? [] : [stitches[i] as Point[]])]);
  return sortedOut(strips, lines, outward === 1 ? whole : whole.toReversed());
}

/** Strips that lead on from one to the next, together; those with nothing to add are left out. */
function groupsOf(strips: readonly AllowanceStrip[]): number[][] {
  const breaks = strips.findIndex(({ leadsOn }) => !leadsOn);
  const groups: number[][] = [];
  let open = false;
  for (let k = 1; k <= strips.length; k++) {
    const i = (breaks + k + strips.length) % strips.length;
    const { width, cut, leadsOn } = strips[i] as AllowanceStrip;
    const adds = width > 0 && cut.length > 0;
    if (adds && open) groups[groups.length - 1]?.push(i);
    else if (adds) groups.push([i]);
    // Where every corner is joined and the line crosses itself all the same, each strip is taken by itself.
    open = adds && leadsOn && breaks >= 0;
  }
  return groups;
}

/** A ring without hairlines: places to which it comes back with next to nothing gone round. */
function withoutCracks(ring: Ring): Ring {
  const points = ring.slice();
  for (let i = 0; i < points.length; i++) {
    for (let j = Math.min(points.length - 1, i + (points.length >> 1)); j > i + 1; j--) {
      if (distance(points[i] as Point, points[j] as Point) > CRACK) continue;
      const loop = points.slice(i, j + 1);
      if (Math.abs(ringArea(loop)) > CRACK * ringLength(loop)) continue;
      points.splice(i + 1, j - i - 1);
      break;
    }
  }
  return points;
}

function noRoom({ edgeIndex, stitch }: AllowanceStrip): UnionBoundary {
  return { kind: 'no-room', edgeIndex, at: (stitch[0] as Path[number]).p0 };
}

function clockwise(points: Point[]): Ring {
  return ringArea(points) < 0 ? points.reverse() : points;
}

function touches(ring: Ring, run: readonly Point[]): boolean {
  return ring.some((point) => isOnRun(point, run));
}

function isOnRun(point: Point, run: readonly Point[], within = SAME_LINE): boolean {
  for (let i = 1; i < run.length; i++) {
    const [from, to] = [run[i - 1] as Point, run[i] as Point];
    if (
      point.x >= Math.min(from.x, to.x) - within &&
      point.x <= Math.max(from.x, to.x) + within &&
      point.y >= Math.min(from.y, to.y) - within &&
      point.y <= Math.max(from.y, to.y) + within &&
      distanceToChord(point, from, to) <= within
    ) {
      return true;
    }
  }
  return false;
}

function largestOf(rings: readonly Ring[]): Ring | undefined {
  let best: Ring | undefined;
  for (const ring of rings) if (!best || ringArea(ring) > ringArea(best)) best = ring;
  return best;
}

/** The boundary cut into stretches by the edge each came from. */
function sortedOut(
  strips: readonly AllowanceStrip[],
  lines: readonly (readonly (readonly Point[])[])[],
  ring: Ring,
): UnionBoundary {
  const isOwner = (owner: number, point: Point) =>
    (lines[owner] ?? []).some((run, k) => isOnRun(point, run, k > 0 ? CRACK : SAME_LINE));
  const owners: number[] = [];
  for (let i = 0; i < ring.length; i++) {
    const [from, to] = [ring[i] as Point, ring[(i + 1) % ring.length] as Point];
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const before = owners[i - 1];
    const owner =
      before !== undefined && isOwner(before, middle) ? before : lines.findIndex((_, each) => isOwner(each, middle));
    if (owner < 0) {
      if (distance(from, to) > 2 * SAME_LINE)
        return { kind: 'no-room', edgeIndex: nearestStrip(strips, middle), at: middle };
      owners.push(before ?? 0);
    } else owners.push(owner);
  }
  return { kind: 'boundary', ...partsOf(strips, ring, owners) };
}

/** The boundary as one part for each run of sides with one owner: from the exact cut lines, and as it stands. */
function partsOf(strips: readonly AllowanceStrip[], ring: Ring, owners: readonly number[]) {
  const first = Math.max(
    0,
    owners.findIndex((owner, i) => owner !== owners.at(i - 1)),
  );
  const runs: { readonly strip: AllowanceStrip; readonly points: readonly Point[] }[] = [];
  for (let done = 0; done < ring.length; ) {
    const owner = owners[(first + done) % ring.length] as number;
    const points = [ring[(first + done) % ring.length] as Point];
    while (done < ring.length && owners[(first + done) % ring.length] === owner) {
      done++;
      points.push(ring[(first + done) % ring.length] as Point);
    }
    runs.push({ strip: strips[owner] as AllowanceStrip, points });
  }
  const joints = runs.map(({ strip, points }, i) =>
    jointOf((runs.at(i - 1) as (typeof runs)[number]).strip.cut, strip.cut, points[0] as Point),
  );
  const flat: CutPart[] = [];
  const exact: CutPart[] = [];
  runs.forEach(({ strip: { edgeIndex, cut }, points }, i) => {
    const path = points.slice(1).map((to, k) => line(points[k] as Point, to));
    flat.push({ edgeIndex, path });
    const from = (joints[i] as Joint).onAfter;
    const to = (joints[(i + 1) % joints.length] as Joint).onBefore;
    exact.push({ edgeIndex, path: partOfCut(cut, from, to, pathLength(path)) ?? path });
  });
  return { exact, flat };
}

interface Joint {
  readonly onBefore: number;
  readonly onAfter: number;
}

/** How far along two cut lines the boundary changes from one to the other, which it does near `point`. */
function jointOf(before: Path, after: Path, point: Point): Joint {
  let best: Joint | undefined;
  let least = NEAR_CORNER;
  for (const meeting of intersectPaths(before, after)) {
    if (meeting.kind === 'overlap') continue;
    const off = distance(meeting.point, point);
    if (off < least) [best, least] = [{ onBefore: meeting.alongA, onAfter: meeting.alongB }, off];
  }
  return best ?? { onBefore: nearestOnPath(before, point).along, onAfter: nearestOnPath(after, point).along };
}

/** The part of an exact cut line that so much flattened boundary stands for; `undefined` where it is no single part. */
function partOfCut(cut: Path, from: number, to: number, length: number): Path | undefined {
  if (isClosed(cut) || !(Math.abs(to - from - length) <= 2 * NEAR_CORNER + 1e-3 * length)) return undefined;
  return subPath(cut, from, to);
}

function nearestStrip(strips: readonly AllowanceStrip[], point: Point): number {
  let best = 0;
  let least = Infinity;
  for (const { edgeIndex, stitch } of strips) {
    const off = nearestOnPath(stitch, point).distance;
    if (off < least) [best, least] = [edgeIndex, off];
  }
  return best;
}
