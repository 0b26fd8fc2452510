/** Words, ids and measures for the tests of files. */

import type { FileReading } from '../../core/files/file-reading';
import type { FileWords } from '../../core/files/file-words';
import type { Edge, Piece } from '../../core/garment/piece';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { nearestOnPath } from '../../core/geometry/path';
import type { Path } from '../../core/geometry/segment';
import { at, pieceOf } from '../seams/pieces';

export const words: FileWords = {
  content: (content) =>
    content.kind === 'piece-name' ? content.name : content.kind === 'label' ? content.text : content.kind,
  unnamedPiece: 'Piece without a name',
  unnamedGarment: 'Garment without a name',
  garmentLine: (garment, date, version) => `${garment}, ${date}, version ${version}`,
  layer: (layer) => `the ${layer}`,
};

export const written = { words, date: '2026-03-01' };

export function idsFrom(first: string): () => string {
  let count = 0;
  return () => `${first}${count++}`;
}

export const reading = { newId: idsFrom('f') };

/** The pieces of a file that was read; throws for any other outcome. */
export function piecesOf(read: FileReading): Piece[] {
  if (read.kind !== 'read') throw new Error(`the file was not read: ${JSON.stringify(read)}`);
  return read.pieces.map(({ piece }) => piece);
}

export function onlyPiece(read: FileReading): Piece {
  const [piece, ...others] = piecesOf(read);
  if (!piece || others.length > 0) throw new Error(`there are ${others.length + (piece ? 1 : 0)} pieces`);
  return piece;
}

/** Half a skirt panel: straight waist (0), side square to it (1), hem square to the fold (2), and the fold (3). */
export function panel(): Piece {
  const piece = pieceOf(
    [at(3, 5), at(183, 5), at(371, 690), at(3, 711)],
    [
      { allowance: 12.7 },
      { allowance: 15.875, through: [at(241, 203)] },
      { allowance: 50.8, through: [at(190, 706)] },
      { role: 'fold' },
    ],
    [],
    { how: 'fold', count: 2 },
  );
  const ruled = (edge: Edge, rules: Partial<Extract<Edge['shape'], { kind: 'curve' }>>): Edge =>
    edge.shape.kind === 'curve' ? { ...edge, shape: { ...edge.shape, ...rules } } : edge;
  return {
    ...piece,
    edges: piece.edges.map((edge, i) =>
      i === 1 ? ruled(edge, { leaves: 'square' }) : i === 2 ? ruled(edge, { meets: 'square' }) : edge,
    ),
    darts: [{ id: 'd', edgeId: 'e0', along: 95, width: 19, point: at(98, 104) }],
    notches: [{ id: 'n', edgeId: 'e1', along: 207, count: 2 }],
    labels: [{ id: 'l', at: at(60, 380), text: '' }],
    grain: { from: at(77, 178), to: at(77, 559) },
  };
}

/** How far two lines are apart at most, looked at from both sides at 16 places of every stretch. */
export function furthestApart(one: Path, other: Path): number {
  let furthest = 0;
  for (const [path, target] of [
    [one, other],
    [other, one],
  ] as const) {
    for (const segment of path) {
      for (let i = 0; i <= 16; i++) {
        furthest = Math.max(furthest, nearestOnPath(target, segmentAt(segment, i / 16)).distance);
      }
    }
  }
  return furthest;
}
