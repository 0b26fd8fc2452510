/** Notches, grain, folds and drill marks of a file, put on the pieces they lie on. */

import { outlineOf } from '../garment/outline';
import type { Edge, Notch, Piece } from '../garment/piece';
import { boxCentre } from '../geometry/bounds';
import { distanceToChord } from '../geometry/flatten';
import { nearestOnPath, pathBounds } from '../geometry/path';
import { between, distance, type Point } from '../geometry/point';
import { placeInRing, type Ring, ringArea } from '../geometry/polygon';
import type { Line, Path } from '../geometry/segment';
import type { DrawnGroup } from './drawn-line';
import type { FileFinding } from './file-reading';

/** A piece just made, and the outline it was made of. */
export interface MadePiece {
  readonly piece: Piece;
  readonly ring: Ring;
}

/** A notch is cut from the cut line: no further from the stitch line than the widest hem, in mm. */
const NOTCH_REACH = 100;

/** Notches no further apart than this, in mm, are one notch of two or three cuts: 1/4 in and some room. */
const NOTCH_STEP = 8;

/** An edge lies on a fold line when both its ends do, within so many mm. */
const ON_FOLD = 0.2;

/** As much as a stored piece may have. */
const MOST_MARKS = 500;

/** The pieces of a group with the marks of the group on them, in the same order. */
export function placedMarks(
  made: readonly MadePiece[],
  group: DrawnGroup,
  newId: () => string,
): { readonly pieces: readonly Piece[]; readonly findings: readonly FileFinding[] } {
  if (made.length === 0) return { pieces: [], findings: [] };
  const findings: FileFinding[] = [];
  const most = MOST_MARKS * made.length;
  const lines = (meaning: 'grain' | 'fold') =>
    group.lines
      .filter((line) => line.meaning === meaning)
      .flatMap(({ path }) => straightLines(path))
      .slice(0, most);
  const marks = { notches: markPlaces(group, 'notches'), drill: markPlaces(group, 'drill') };
  if (Math.max(marks.notches.length, marks.drill.length) > most) {
    findings.push({ kind: 'too-much-for-a-piece', name: group.name });
  }
  const places = marks.notches.slice(0, most).map((place) => notchPlace(made, place));
  const drills = marks.drill.slice(0, most).map((ends) => ends[0] as Point);
  const [grains, folds] = [lines('grain'), lines('fold')];
  const pieces = made.map(({ piece }, index) => {
    const mine = places.filter((place) => place.owner === index);
    for (const { at, distance: off } of mine) {
      if (off > NOTCH_REACH) findings.push({ kind: 'notch-astray', pieceId: piece.id, at });
    }
    const notches = notchesAt(
      mine.filter((place) => place.distance <= NOTCH_REACH),
      newId,
    );
    const labels = drills
      .filter((at) => ownerOf(made, at) === index)
      .map((at): Piece['labels'][number] => ({ id: newId(), at, text: '' }));
    if (notches.length > MOST_MARKS || labels.length > MOST_MARKS) {
      findings.push({ kind: 'too-much-for-a-piece', name: piece.name });
    }
    const marked = {
      ...piece,
      notches: notches.slice(0, MOST_MARKS),
      labels: labels.slice(0, MOST_MARKS),
    };
    return withGrain(
      withFolds(marked, folds),
      grains.filter(({ p0, p1 }) => ownerOf(made, between(p0, p1, 0.5)) === index),
    );
  });
  return { pieces, findings };
}

/** The places that may stand for each mark: a point, both ends of a line, or the middle of any other shape. */
function markPlaces(group: DrawnGroup, meaning: 'notches' | 'drill'): Point[][] {
  const lines = group.lines.filter((line) => line.meaning === meaning);
  return [
    ...group.points.filter((point) => point.meaning === meaning).map(({ at }) => [at]),
    ...lines.map(({ path }) => {
      const only = path.length === 1 && path[0]?.kind === 'line' && meaning === 'notches' ? path[0] : undefined;
      return only ? [only.p0, only.p1] : [boxCentre(pathBounds(path))];
    }),
  ];
}

/** The piece on which a place lies: the smallest of those it lies within. */
function ownerOf(made: readonly MadePiece[], place: Point): number {
  let best = -1;
  made.forEach(({ ring }, index) => {
    if (placeInRing(ring, place) === 'outside') return;
    const other = made[best];
    if (!other || Math.abs(ringArea(ring)) < Math.abs(ringArea(other.ring))) best = index;
  });
  return best;
}

interface NotchPlace {
  readonly owner: number;
  readonly edgeId: string;
  readonly along: number;
  readonly distance: number;
  readonly at: Point;
}

/** The nearest place on any edge of any piece. */
function notchPlace(made: readonly MadePiece[], places: readonly Point[]): NotchPlace {
  let best: NotchPlace = { owner: 0, edgeId: '', along: 0, distance: Infinity, at: places[0] as Point };
  made.forEach(({ piece }, owner) => {
    outlineOf(piece).edges.forEach((path, index) => {
      for (const at of places) {
        const near = nearestOnPath(path, at);
        if (near.distance >= best.distance) continue;
        const { id } = piece.edges[index] as Edge;
        best = { owner, edgeId: id, along: near.along, distance: near.distance, at };
      }
    });
  });
  return best;
}

/** Places side by side on one edge, put together as notches of one, two or three cuts. */
function notchesAt(places: readonly NotchPlace[], newId: () => string): Notch[] {
  const sorted = places.toSorted((a, b) => (a.edgeId === b.edgeId ? a.along - b.along : a.edgeId < b.edgeId ? -1 : 1));
  const sets: NotchPlace[][] = [];
  for (const place of sorted) {
    const set = sets[sets.length - 1];
    const before = set?.[set.length - 1];
    const isBeside = before?.edgeId === place.edgeId && place.along - before.along <= NOTCH_STEP;
    if (set && isBeside && set.length < 3) set.push(place);
    else sets.push([place]);
  }
  return sets.map((set): Notch => {
    const along = set.reduce((sum, place) => sum + place.along, 0) / set.length;
    return { id: newId(), edgeId: (set[0] as NotchPlace).edgeId, along, count: set.length as 1 | 2 | 3 };
  });
}

function withFolds(piece: Piece, folds: readonly Line[]): Piece {
  const isOn = (at: Point, { p0, p1 }: Line): boolean => distanceToChord(at, p0, p1) <= ON_FOLD;
  const edges = piece.edges.map((edge, index): Edge => {
    const [start, end] = [piece.corners[index], piece.corners[(index + 1) % piece.corners.length]];
    if (edge.shape.kind !== 'straight' || !start || !end) return edge;
    return folds.some((fold) => isOn(start.at, fold) && isOn(end.at, fold)) ? { ...edge, role: 'fold' } : edge;
  });
  if (!edges.some(({ role }) => role === 'fold')) return piece;
  return { ...piece, edges, cut: { how: 'fold', count: piece.cut.count } };
}

/** The longest straight line on the grain layer; arrow heads are shorter. */
function withGrain(piece: Piece, lines: readonly Line[]): Piece {
  const longest = lines.reduce<Line | undefined>(
    (best, each) => (best && distance(best.p0, best.p1) >= distance(each.p0, each.p1) ? best : each),
    undefined,
  );
  return longest ? { ...piece, grain: { from: longest.p0, to: longest.p1 } } : piece;
}

function straightLines(path: Path): Line[] {
  return path.filter((segment) => segment.kind === 'line');
}
