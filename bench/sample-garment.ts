import type { Garment } from '../core/garment/garment';
import { newGarment } from '../core/garment/new-garment';
import { pieceFromTrace, type TracedCorner } from '../core/garment/new-piece';
import type { Edge, Piece } from '../core/garment/piece';
import { inches } from '../core/units/inch';

/** A garment of `pieces` gores with about 40 points each, all named, all with allowances, all in one ring. */
export function sampleGarment(pieces: number): Garment {
  let last = 0;
  const newId = () => `id${++last}`;
  const empty = newGarment({ newId, today: '2026-01-02', name: 'Bench', shownIn: 'in' });
  const gores = Array.from({ length: pieces }, (_, index) => gore(newId, index));
  const length = (mm: number) => ({ length: mm });
  const [set] = empty.wearer.sets;
  if (!set) throw new Error('a new garment has a set of measures');
  const measures = {
    waist: length(720),
    highHip: length(880),
    hip: length(980),
    waistToHip: length(200),
    waistToHighHip: length(100),
  };
  return {
    ...empty,
    wearer: { ...empty.wearer, sets: [{ ...set, measures }] },
    pieces: gores,
    rings: [
      {
        id: newId(),
        name: 'ring',
        members: gores.map((piece) => ({ pieceId: piece.id })),
        levels: [
          { id: newId(), girth: 'waist', depth: { kind: 'length', length: 0 }, ease: 12 },
          { id: newId(), girth: 'highHip', depth: { kind: 'measure', measure: 'waistToHighHip' }, ease: 25 },
          { id: newId(), girth: 'hip', depth: { kind: 'measure', measure: 'waistToHip' }, ease: 50 },
        ],
      },
    ],
  };
}

/** Four corners, and nine points along each of the four curved edges. */
function gore(newId: () => string, index: number): Piece {
  const left = index * 300;
  const side = (x: number, sign: 1 | -1, from: number, to: number) =>
    Array.from({ length: 9 }, (_, k) => {
      const y = from + ((to - from) * (k + 1)) / 10;
      return { x: x + sign * (60 * (y / 700) + 8 * Math.sin(y / 90)), y };
    });
  const across = (y: number, from: number, to: number, bow: number) =>
    Array.from({ length: 9 }, (_, k) => {
      const t = (k + 1) / 10;
      return { x: from + (to - from) * t, y: y + bow * Math.sin(Math.PI * t) };
    });
  const ring: TracedCorner[] = [
    { at: { x: left, y: 0 }, through: across(0, left, left + 60, 3) },
    { at: { x: left + 60, y: 0 }, through: side(left + 60, 1, 0, 700) },
    { at: { x: left + 128, y: 700 }, through: across(700, left + 128, left - 68, 12) },
    { at: { x: left - 68, y: 700 }, through: side(left, -1, 700, 0) },
  ];
  const piece = pieceFromTrace(ring, { newId, name: `Gore ${index + 1}` });
  if (!piece) throw new Error('the sample gore encloses something');
  const roles: readonly Edge['role'][] = ['waist', 'seam', 'hem', 'seam'];
  return {
    ...piece,
    drawnAs: 'net',
    grain: { from: { x: left + 30, y: 200 }, to: { x: left + 30, y: 500 } },
    edges: piece.edges.map((edge, i) => ({
      ...edge,
      role: roles[i] ?? 'seam',
      allowance: inches(i === 2 ? 2 : 0.625),
    })),
  };
}
