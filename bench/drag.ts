import { pieceDrawing } from '../core/drawing/piece-drawing';
import { girthsOf } from '../core/fit/round-body';
import { waistNeeds } from '../core/fit/waist-needs';
import type { Garment } from '../core/garment/garment';
import { moveThrough } from '../core/garment/move-point';
import { outlineOf } from '../core/garment/outline';
import { withPiece } from '../core/garment/with-piece';
import { pathLength } from '../core/geometry/path';
import type { Figure } from './figure';
import { sampleGarment } from './sample-garment';
import { quantile, timesOf } from './timing';

/**
 * One step of a drag: a point of one gore moves, and everything drawn live is worked out: its outline and edge lengths,
 * its cut line and marks, the girths of the ring at every level, the curved waist of every piece.
 */
function dragStep(garment: Garment, step: number): unknown {
  const piece = garment.pieces[5];
  const edge = piece?.edges[1];
  const at = edge?.shape.kind === 'curve' ? edge.shape.through[4] : undefined;
  const ring = garment.rings[0];
  if (!piece || !edge || !at || !ring) throw new Error('the sample garment has a sixth gore');
  const moved = withPiece(garment, piece.id, (before) =>
    moveThrough(before, edge.id, 4, { x: at.x + 6 * Math.sin(step / 7), y: at.y + 4 * Math.cos(step / 5) }),
  );
  const now = moved.pieces[5] ?? piece;
  return [
    outlineOf(now).edges.map((path) => pathLength(path)),
    pieceDrawing(now),
    girthsOf(moved, ring),
    waistNeeds(moved, ring),
  ];
}

/** Core time of a drag step in a garment of 12 pieces with 40 points each, every overlay on; and of its one piece alone. */
export async function dragFigures(): Promise<Figure[]> {
  const twelve = sampleGarment(12);
  const one = sampleGarment(6);
  const whole = timesOf((index) => dragStep(twelve, index), { times: 1000, warm: 400 });
  const piece = timesOf(
    (index) => {
      const edge = one.pieces[5]?.edges[1];
      const before = one.pieces[5];
      if (!edge || !before || edge.shape.kind !== 'curve') return;
      const at = edge.shape.through[4] ?? { x: 0, y: 0 };
      pieceDrawing(moveThrough(before, edge.id, 4, { x: at.x + 5 * Math.sin(index / 9), y: at.y }));
    },
    { times: 400, warm: 60 },
  );
  return [
    { name: 'drag_core_ms_p50', value: quantile(whole, 0.5), unit: 'ms' },
    { name: 'drag_core_ms_p95', value: quantile(whole, 0.95), unit: 'ms' },
    { name: 'drag_piece_ms_p95', value: quantile(piece, 0.95), unit: 'ms' },
  ];
}
