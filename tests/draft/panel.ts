import type { Piece } from '../../core/garment/piece';

/** A panel with a straight waist, a curved side, a hem and a fold; a dart and a notch on it. */
export const panel: Piece = {
  id: 'p',
  name: 'panel',
  cut: { how: 'single', count: 1 },
  drawnAs: 'net',
  corners: [
    { id: 'c0', at: { x: 0, y: 0 } },
    { id: 'c1', at: { x: 200, y: 0 } },
    { id: 'c2', at: { x: 260, y: 500 } },
    { id: 'c3', at: { x: 0, y: 520 } },
  ],
  edges: [
    { id: 'waist', name: 'waist', role: 'waist', shape: { kind: 'straight' } },
    {
      id: 'side',
      name: 'side',
      role: 'seam',
      shape: { kind: 'curve', through: [{ x: 240, y: 150 }], leaves: 'free', meets: 'free' },
    },
    { id: 'hem', name: 'hem', role: 'hem', shape: { kind: 'straight' } },
    { id: 'fold', name: 'fold', role: 'fold', shape: { kind: 'straight' } },
  ],
  darts: [{ id: 'd', edgeId: 'waist', along: 60, width: 20, point: { x: 62, y: 90 } }],
  notches: [{ id: 'n', edgeId: 'fold', along: 120, count: 2 }],
  labels: [{ id: 'l', at: { x: 30, y: 333 }, text: 'this way up' }],
  grain: { from: { x: 90, y: 130 }, to: { x: 90, y: 380 } },
  remarks: '',
};
