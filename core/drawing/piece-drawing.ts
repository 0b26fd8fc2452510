import type { Piece } from '../garment/piece';
import { arcOfCircle } from '../geometry/arc';
import { move, type Point } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { cutLine, cutLineSoFar } from '../seams/cut-line';
import { dartShape } from '../seams/dart-cap';
import { arrow, stroke } from './arrows';
import type { Mark, Stroke } from './drawing';
import { fullnessMarks } from './fullness-lines';
import { openingStrokes } from './opening-marks';
import { cutStrokes, foldStrokes, notchStrokes, stitchStrokes } from './piece-lines';
import { bodyWords, placedWords } from './piece-words';

/** What may be drawn besides what the piece itself holds. */
export interface DrawingOptions {
  /** Lines round the body at which the piece is measured. */
  readonly levels?: readonly Path[];
}

/** The radius of a drill mark, in mm: 1/8 in. */
const DRILL_RADIUS = 25.4 / 8;

const remembered = new WeakMap<Piece, readonly Mark[]>();

/**
 * Everything drawn for a piece, in millimetres of the table. Allowances not yet said count as none, and words say so; a
 * piece with no cut line shows its stitch line. Remembered for as long as the piece is when no options are given.
 */
export function pieceDrawing(piece: Piece, options?: DrawingOptions): readonly Mark[] {
  if (options?.levels) return drawn(piece, options.levels);
  const known = remembered.get(piece);
  if (known) return known;
  const marks = drawn(piece, []);
  remembered.set(piece, marks);
  return marks;
}

function drawn(piece: Piece, levels: readonly Path[]): readonly Mark[] {
  return [
    ...levels.map((path): Stroke => ({ kind: 'stroke', line: 'level', path })),
    ...pieceStrokes(piece),
    ...bodyWords(piece, cutLine(piece)),
    ...placedWords(piece),
  ];
}

/** The lines and marks without the words about the piece, which a screen leaves to the page beside it. */
export function pieceStrokes(piece: Piece): readonly Mark[] {
  return [...strokesAlong(piece), ...strokesWithin(piece)];
}

const strokesOf = new WeakMap<Piece, readonly Mark[]>();

/** Of those, what is drawn along its edges: the stitch line, the fold, the cut line, and across it notches
 * and the ends of openings. Remembered. */
export function strokesAlong(piece: Piece): readonly Mark[] {
  const known = strokesOf.get(piece);
  if (known) return known;
  const cut = cutLineSoFar(piece);
  const strokes = [
    ...stitchStrokes(piece, cut),
    ...foldStrokes(piece, cut),
    ...cutStrokes(piece, cut),
    ...piece.notches.flatMap((notch) => notchStrokes(piece, cut, notch)),
    ...openingStrokes(piece, cut),
  ];
  strokesOf.set(piece, strokes);
  return strokes;
}

/** Of those, what lies within the piece and does not wait for its cut line: darts, pleats, the grain, drill marks. */
export function strokesWithin(piece: Piece): readonly Mark[] {
  return [
    ...piece.darts.flatMap((dart) => dartStrokes(piece, dart)),
    ...fullnessMarks(piece),
    ...(piece.grain ? arrow('grain', piece.grain.from, piece.grain.to, 'both') : []),
    ...piece.labels.filter(({ text }) => text.trim() === '').flatMap(({ at }) => drillMark(at)),
  ];
}

/** The legs of a dart, the fold down its middle, and its cap. */
function dartStrokes(piece: Piece, dart: Piece['darts'][number]): Stroke[] {
  const shape = dartShape(piece, dart);
  if (!shape) return [];
  return [
    { kind: 'stroke', line: 'dart', path: [line(shape.from, shape.point), line(shape.point, shape.to)] },
    stroke('centre', shape.tip, shape.point),
    { kind: 'stroke', line: 'stitch', path: shape.cap },
  ];
}

/** A small circle with a cross. */
function drillMark(at: Point): Stroke[] {
  const right = move(at, { dx: DRILL_RADIUS, dy: 0 });
  return [
    { kind: 'stroke', line: 'drill', path: arcOfCircle(at, right, 2 * Math.PI, 0.01) },
    stroke('drill', move(at, { dx: -DRILL_RADIUS, dy: 0 }), right),
    stroke('drill', move(at, { dx: 0, dy: -DRILL_RADIUS }), move(at, { dx: 0, dy: DRILL_RADIUS })),
  ];
}
