import type { Garment, Level } from '../garment/garment';
import type { Path } from '../geometry/segment';
import { girthsOf } from './round-body';

/** Where a level of the body runs over a piece: the first run of it, and the length of all (mm). */
export interface LevelOnPiece {
  readonly level: Level;
  readonly run: Path;
  readonly length: number;
}

/** The levels that run over a piece, of the ring it belongs to; the waist itself, which is an edge of it, left out. */
export function levelsOnPiece(garment: Garment, pieceId: string): LevelOnPiece[] {
  const ring = garment.rings.find(({ members }) => members.some((member) => member.pieceId === pieceId));
  if (!ring) return [];
  return girthsOf(garment, ring).flatMap((girth) => {
    if (girth.kind === 'no-depth' || girth.depth === 0) return [];
    const line = girth.pieces.find((piece) => piece.pieceId === pieceId)?.line;
    const run = line?.runs[0];
    return line && run ? [{ level: girth.level, run, length: line.length }] : [];
  });
}
