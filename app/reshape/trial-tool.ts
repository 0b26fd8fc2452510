import { pieceOf } from '../../core/garment/with-piece';
import { distance } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { pressedOn } from '../table/hit-edge';
import type { PointerAt, Tool } from '../table/tool';
import type { Grip } from './change';
import { leaveChange, tryChange, useReshape } from './reshape-store';

/** Moves the grips of the change being tried; a press chooses a piece, and an edge of the piece in hand. */
export function trialTool(): Tool {
  let over = false;
  return {
    get cursor() {
      return over ? 'move' : 'default';
    },
    hover(at) {
      over = at !== undefined && gripAt(at) !== undefined;
    },
    press(at) {
      const grip = gripAt(at);
      if (!grip) return undefined;
      const begun = useReshape.getState().trying;
      const off = { x: grip.at.x - at.world.x, y: grip.at.y - at.world.y };
      const show = ({ world }: PointerAt) => tryChange(grip.moved({ x: world.x + off.x, y: world.y + off.y }));
      return { move: show, end: () => undefined, cancel: () => tryChange(begun) };
    },
    tap(at) {
      const { garment } = useGarment.getState();
      if (!garment) return;
      const { chosen, choose } = useTable.getState();
      const inHand = 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
      const pressed = pressedOn(garment.pieces, inHand, at.world, at.reach);
      const { trying } = useReshape.getState();
      const picked = trying?.picks?.(garment, pressed);
      if (picked) tryChange(picked);
      // While a change is tried, a press beside everything is not meant to put it away.
      if (pressed.kind !== 'nothing' || !trying) choose(pressed);
    },
    key({ key }) {
      if (key !== 'Escape' || !useReshape.getState().trying) return false;
      leaveChange();
      return true;
    },
  };
}

function gripAt({ world, reach }: PointerAt): Grip | undefined {
  const { garment } = useGarment.getState();
  const grips = (garment && useReshape.getState().trying?.grips?.(garment)) ?? [];
  return grips.find(({ at }) => distance(at, world) <= reach * 1.5);
}
