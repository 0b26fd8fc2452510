import type { Mark, Placed, Stroke, Words, WordsContent } from '../drawing/drawing';
import { EDGE_SIZE } from '../drawing/edge-words';
import { openingRuns } from '../drawing/opening-marks';
import { levelsOnPiece } from '../fit/level-lines';
import type { Garment, Level } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { transformPath } from '../geometry/affine';
import { arcOfCircle } from '../geometry/arc';
import { flattenPath } from '../geometry/flatten';
import { distance, move, type Point, type TablePoint, vectorBetween } from '../geometry/point';
import { placeInRing } from '../geometry/polygon';
import { line, type Path } from '../geometry/segment';
import { allowanceOf } from '../seams/allowance-strips';
import { windingOf } from '../seams/corner-angle';
import { longestBetweenCorners } from './assembled-totals';
import { type FreeRoom, freeRoom } from './free-room';
import { motionMap, movedPoint } from './moved-marks';
import { type Join, pageJoins } from './page-joins';
import { inkPlaces } from './page-plan';
import type { PlacedPiece, TapedSheet } from './placed-piece';
import { type SquarePlace, testSquarePlaces } from './test-square-place';
import { wordsBesideLine } from './words-beside-line';

/** The number of a corner: the radius of its ring, its height, and how far from the corner its middle is sought (mm). */
const RING = 2.9;
const NUMBER_SIZE = 3.6;
const FROM_CORNER = Array.from({ length: 15 }, (_, k) => 6 + k);
const WAYS = 24;

/** Test squares keep their sides from so far about such a corner (mm). */
const ABOUT_CORNER = 7;

/** The name of a level stands at this share of its line. */
const LEVEL_NAME_AT = 0.3;

/** The level lines of the body over a piece, as it lies on its sheets. */
type Levels = readonly { readonly level: Level; readonly run: Path }[];

export interface NotesOptions {
  readonly garment: Garment;
  readonly joins: readonly Join[];
  /** Where the test squares lie. */
  readonly squares: readonly TablePoint[];
  /** How wide words are (mm). */
  readonly widthOf: (content: WordsContent, size: number) => number;
}

/**
 * What is drawn on taped pages once it is known where their joins and test squares are, and asks for no page of its own:
 * the levels of the body; the numbers of the corners between which the whole is measured; and along each edge, once, what
 * it is, what is allowed on it and what of it is left open. Words for which there is no room are left out.
 */
export function sheetNotes({ placed, plan }: TapedSheet, options: NotesOptions): Mark[] {
  const { garment, joins, squares } = options;
  const levels = levelsOn({ placed }, garment);
  const strokes = levelStrokes(levels);
  const room = freeRoom(plan, joins, squares, inkPlaces(strokes));
  const write = writer(room, options);
  return [
    ...strokes,
    ...placed.flatMap((one) => cornerMarks(room, one)),
    ...placed.flatMap((one) => openingWords(one, write)),
    ...placed.flatMap((one) => edgeWords(one, garment, write)),
    ...levels.flat().flatMap(({ level: { girth, name }, run }) => {
      const beside = { path: run, best: LEVEL_NAME_AT, side: -1 } as const;
      return write([{ kind: 'level', girth, name }], beside);
    }),
  ];
}

/** The levels over the pieces of a sheet. */
function levelsOn({ placed }: Pick<TapedSheet, 'placed'>, garment: Garment): Levels[] {
  return placed.map(({ piece, motion }) =>
    levelsOnPiece(garment, piece.id).map(({ level, run }) => ({ level, run: moved(motion, run) })),
  );
}

function levelStrokes(levels: readonly Levels[]): Stroke[] {
  return levels.flat().map(({ run }) => ({ kind: 'stroke', line: 'level', path: run }));
}

/**
 * Where the test squares of a sheet's pages lie: where they can be, clear of the drawing, the levels and the corners that
 * are numbered.
 */
export function testSquares(
  sheet: TapedSheet,
  garment: Garment,
  joins: readonly Join[] = pageJoins(sheet.plan),
): SquarePlace[] {
  const { placed, plan } = sheet;
  const corners = placed.flatMap((one) => numberedCorners(one).flatMap(({ at }) => aroundIt(at, ABOUT_CORNER)));
  const keepOff = [...inkPlaces(levelStrokes(levelsOn(sheet, garment))), ...corners];
  return testSquarePlaces(plan, joins, keepOff);
}

function aroundIt(middle: Point, away: number): Point[] {
  return Array.from({ length: WAYS }, (_, k) => {
    const angle = (k * 2 * Math.PI) / WAYS;
    return move(middle, { dx: Math.cos(angle), dy: Math.sin(angle) }, away);
  });
}

const moved = (motion: PlacedPiece['motion'], path: Path) => transformPath(motionMap(motion), path);

type Write = (said: readonly WordsContent[], beside: { path: Path; best: number; side: 1 | -1 }) => Words[];

/** Writes the first of several ways to say a thing for which there is room. */
function writer(room: FreeRoom, { widthOf }: NotesOptions): Write {
  return (said, beside) => {
    for (const content of said) {
      const width = widthOf(content, EDGE_SIZE);
      const at = wordsBesideLine(room, width, { ...beside, size: EDGE_SIZE });
      if (!at) continue;
      room.take(at, width);
      return [{ kind: 'words', role: 'edge', weight: 'plain', content, ...at }];
    }
    return [];
  };
}

/** How much of a seam is left open, near the mark where that ends. */
function openingWords({ piece, motion }: PlacedPiece, write: Write): Words[] {
  return openingRuns(piece).flatMap(({ path, length, sewn }) => {
    const marks = sewn.before && sewn.after ? 2 : sewn.before || sewn.after ? 1 : 0;
    const best = marks !== 1 ? 0.5 : sewn.after ? 1 : 0;
    return write([{ kind: 'opening', length, marks }], {
      path: moved(motion, path),
      best,
      side: windingOf(piece),
    });
  });
}

/** What each edge is and what is allowed on it, in few words where there is little room. A fold says so itself. */
function edgeWords({ piece, motion }: PlacedPiece, garment: Garment, write: Write): Words[] {
  const { edges: paths } = outlineOf(piece);
  return edgeContents(piece, garment).flatMap((said, index) => {
    if (!said) return [];
    return write(said.width === undefined ? [said] : [said, { ...said, width: undefined }], {
      path: moved(motion, paths[index] as Path),
      best: 0.5,
      side: windingOf(piece),
    });
  });
}

type EdgeSaid = Extract<WordsContent, { kind: 'edge' }>;

/** What is said of each edge in turn; nothing of a fold. */
export function edgeContents(piece: Piece, garment: Garment): (EdgeSaid | undefined)[] {
  return piece.edges.map((edge) => {
    const { id, role } = edge;
    if (role === 'fold') return undefined;
    const name = edge.name.trim() || seamNameOf(garment, piece, id);
    return { kind: 'edge', name, role, width: piece.drawnAs === 'net' ? allowanceOf(edge) : undefined };
  });
}

/** What she calls the seam an edge is sewn in; empty where she calls it nothing. */
function seamNameOf({ seams = [] }: Garment, { id }: Piece, edgeId: string): string {
  const its = seams.find(({ one, other }) =>
    [...one, ...other].some((side) => side.pieceId === id && side.edgeId === edgeId),
  );
  return its?.name.trim() ?? '';
}

/** The two corners of the stitch line between which the whole is measured. */
function numberedCorners({ piece, motion }: PlacedPiece): { readonly number: number; readonly at: Point }[] {
  const [diagonal] = longestBetweenCorners(piece);
  if (!diagonal) return [];
  return [
    { number: diagonal.from, at: movedPoint(motion, diagonal.fromAt) },
    { number: diagonal.to, at: movedPoint(motion, diagonal.toAt) },
  ];
}

/** Their numbers, in rings inside the piece. */
function cornerMarks(room: FreeRoom, one: PlacedPiece): Mark[] {
  const ring = flattenPath(moved(one.motion, outlineOf(one.piece).whole), 0.5);
  return numberedCorners(one).flatMap(({ number, at }): Mark[] => {
    const placed = besideCorner(room, ring, at);
    if (!placed) return [];
    room.take(placed, 0);
    const middle = placed.at;
    const rim = { x: middle.x + RING, y: middle.y };
    const toCorner = move(middle, vectorBetween(middle, at), RING / distance(middle, at));
    return [
      { kind: 'stroke', line: 'corner', path: arcOfCircle(middle, rim, 2 * Math.PI, 0.01) },
      { kind: 'stroke', line: 'corner', path: [line(toCorner, at)] },
      {
        kind: 'words',
        role: 'edge',
        weight: 'bold',
        content: { kind: 'corner', number },
        ...placed,
        size: NUMBER_SIZE,
      },
    ];
  });
}

/** The place of a ring about the number of a corner, as near to it as can be within the piece. */
function besideCorner(room: FreeRoom, ring: readonly Point[], corner: Point): Placed | undefined {
  const inside = FROM_CORNER.flatMap((away) => aroundIt(corner, away))
    .filter((at) => placeInRing(ring, at) === 'inside')
    .map((at): Placed => ({ at, size: 2 * RING, angle: 0 }));
  return inside.find((placed) => room.isFree(placed, 0)) ?? inside[0];
}
