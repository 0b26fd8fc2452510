/** Garments and pieces made in few words, for the tests of paper. */
import type { Garment, PaperChoice } from '../../core/garment/garment';
import { newGarment } from '../../core/garment/new-garment';
import type { Piece } from '../../core/garment/piece';
import type { Point } from '../../core/geometry/point';

/** Pieces on it lie as they are drawn, so that names and numbers of pages can be worked by hand. */
export const A4: PaperChoice = {
  size: 'a4',
  turned: 'upright',
  margin: 10,
  overlap: 10,
  step: 'sixteenth',
  placed: 'as-drawn',
};
/** Letter with half an inch of margin and half an inch of overlap. */
export const LETTER: PaperChoice = { ...A4, size: 'letter', margin: 12.7, overlap: 12.7 };

/** A piece with straight edges, its allowances in the drawing, so that its outline is the cut line. */
export function straightPiece(corners: readonly (readonly [number, number])[], more: Partial<Piece> = {}): Piece {
  return {
    id: 'p',
    name: 'Side gore',
    cut: { how: 'pair', count: 4 },
    drawnAs: 'included',
    corners: corners.map(([x, y], index) => ({ id: `c${index}`, at: { x, y } })),
    edges: corners.map((_, index) => ({ id: `e${index}`, name: '', role: 'seam', shape: { kind: 'straight' } })),
    darts: [],
    notches: [],
    labels: [],
    remarks: '',
    ...more,
  };
}

/** The piece with edge `index` curved through points. */
export function curved(piece: Piece, index: number, through: readonly Point[]): Piece {
  const shape = { kind: 'curve', through, leaves: 'free', meets: 'free' } as const;
  return { ...piece, edges: piece.edges.map((edge, i) => (i === index ? { ...edge, shape } : edge)) };
}

export function rectangle(x: number, y: number, width: number, height: number, more: Partial<Piece> = {}): Piece {
  return straightPiece(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    more,
  );
}

export function garmentOf(pieces: readonly Piece[], paper: PaperChoice = A4, name = 'Linden petticoat'): Garment {
  let count = 0;
  const newId = () => `id${count++}`;
  return { ...newGarment({ newId, today: '2026-03-01', name, shownIn: 'in' }), pieces, paper };
}
