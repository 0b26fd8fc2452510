/** What is found in a file before pieces are made of it, in millimetres and y down. */
import type { Cut } from '../garment/piece';
import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import type { LineMeaning } from './file-layers';

/** A line of a file and what its layer says of it. */
export interface DrawnLine {
  readonly path: Path;
  readonly meaning: LineMeaning;
  /** The layer as the file names it; empty where it has none. */
  readonly layer: string;
  /** The name of this very line, where it has one. */
  readonly name: string;
}

/** A place marked in a file: a notch or a drill hole. */
export interface DrawnPoint {
  readonly at: Point;
  readonly meaning: 'notches' | 'drill';
}

/** Lines that belong together: a group of an SVG file, a block of a DXF file. */
export interface DrawnGroup {
  readonly name: string;
  readonly lines: readonly DrawnLine[];
  readonly points: readonly DrawnPoint[];
  /** Places marked as corners, and as points of a curve that straight sides stand for. */
  readonly turns: readonly Point[];
  readonly bends: readonly Point[];
  /** How often the piece is cut, where the file says. */
  readonly count?: Cut['count'];
}
