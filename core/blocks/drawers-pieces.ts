import type { EdgeShape, Piece } from '../garment/piece';
import type { Point } from '../geometry/point';
import type { DraftOptions } from './draft-names';
import { draftedPiece } from './drafted-piece';
import type { DrawersLeg } from './drawers-on-fold';

/**
 * A leg of drawers opened out, cut as a pair: the back to the right of the side, the front to the left. The lines the
 * books lead by eye are smooth through the bends the draft gives, and straight where it gives none.
 */
export function drawersPieces(leg: DrawersLeg, { newId, nameOf }: DraftOptions): Piece[] {
  const { foldTop, backTop, frontTop, crotch, legHem, foldHem } = leg;
  const innerLeg = nameOf('inner-leg-seam');
  return [
    draftedPiece({
      newId,
      name: nameOf('leg'),
      cut: { how: 'pair', count: 2 },
      grain: { from: { x: 0, y: foldTop.y + (foldHem.y - foldTop.y) * 0.1 }, to: { x: 0, y: foldHem.y * 0.9 } },
      edges: [
        { from: foldTop, role: 'waist' },
        { from: backTop, role: 'seam', name: nameOf('back-seam'), shape: through(leg.backBends) },
        { from: crotch, role: 'seam', name: innerLeg, shape: through(leg.innerLeg) },
        { from: legHem, role: 'hem' },
        {
          from: mirrored(legHem),
          role: 'seam',
          name: innerLeg,
          shape: through(leg.innerLeg.map(mirrored).reverse()),
        },
        { from: mirrored(crotch), role: 'seam', name: nameOf('front-seam') },
        { from: mirrored(frontTop), role: 'waist' },
      ],
    }),
  ];
}

/** Smooth through the bends; straight where there are none. */
function through(bends: readonly Point[]): EdgeShape {
  return bends.length > 0 ? { kind: 'curve', through: bends, leaves: 'free', meets: 'free' } : { kind: 'straight' };
}

function mirrored({ x, y }: Point): Point {
  return { x: -x, y };
}
