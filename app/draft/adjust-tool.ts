import type { Piece } from '../../core/garment/piece';
import { pieceOf } from '../../core/garment/with-piece';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { pressedOn } from '../table/hit-edge';
import type { PointerAt, Tool } from '../table/tool';
import { setPointer } from './draft-store';
import { type Hit, hitPiece } from './hit-test';
import { LEAST_PLUS_PX } from './paint-grips';
import { dragOf } from './piece-drag';
import { pointKey } from './point-keys';
import { pixelAt } from './snap-here';

/** Chooses and moves: points, marks and, by its name, the whole of the piece in hand. Anything else moves the table. */
export function adjustTool(): Tool {
  let over: Hit | undefined;
  return {
    get cursor() {
      if (!over) return 'default';
      return over.kind === 'edge' ? 'pointer' : over.kind === 'plus' ? 'copy' : 'move';
    },
    press(at) {
      const hit = hitInHand(at);
      return hit && hit.kind !== 'edge' ? dragOf(pieceInHand() as Piece, hit, at) : undefined;
    },
    hover(at) {
      over = at && hitInHand(at);
      setPointer(at && { at: at.world, to: 'nothing' });
    },
    tap(at) {
      const pieces = useGarment.getState().garment?.pieces ?? [];
      useTable.getState().choose(pressedOn(pieces, pieceInHand(), at.world, at.reach));
    },
    key: pointKey,
  };
}

/** The piece that something is chosen of. */
export function pieceInHand(): Piece | undefined {
  const { garment } = useGarment.getState();
  const { chosen } = useTable.getState();
  return garment && 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
}

function hitInHand(at: PointerAt): Hit | undefined {
  const piece = pieceInHand();
  return piece && hitPiece(piece, at.world, at.reach, { leastStretch: LEAST_PLUS_PX * pixelAt(at) });
}
