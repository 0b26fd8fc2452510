import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { nearestOnPath } from '../../core/geometry/path';
import { inches, type ShownIn } from '../../core/units/inch';
import { insidePiece } from '../table/name-place';
import type { PointerAt, Tool } from '../table/tool';
import { NOT_NUDGED, nudgeTo, useCompare } from './compare-store';

/** By how much an arrow key moves the piece (mm), alone and with Shift. */
const STEPS: Readonly<Record<ShownIn, readonly [number, number]>> = {
  in: [inches(1 / 16), inches(1 / 2)],
  cm: [1, 10],
};

/** By how much a key turns it (radians), alone and with Shift. */
const TURNS = [Math.PI / 720, Math.PI / 36] as const;

const KEYS: Readonly<Record<string, readonly [number, number, number]>> = {
  ArrowLeft: [-1, 0, 0],
  ArrowRight: [1, 0, 0],
  ArrowUp: [0, -1, 0],
  ArrowDown: [0, 1, 0],
  PageUp: [0, 0, -1],
  PageDown: [0, 0, 1],
};

/** Moves the other piece over the first by hand and by keys. Neither piece is changed by it. */
export function compareTool(shownIn: ShownIn, laid: () => Piece | undefined): Tool {
  const isOn = ({ world, reach }: PointerAt): boolean => {
    const piece = laid();
    if (!piece) return false;
    return insidePiece(piece, world) || nearestOnPath(outlineOf(piece).whole, world).distance <= reach;
  };
  let over = false;
  return {
    get cursor() {
      return over ? 'move' : 'default';
    },
    hover(at) {
      over = at !== undefined && isOn(at);
    },
    press(at) {
      if (!isOn(at)) return undefined;
      const { nudge: begun } = useCompare.getState();
      return {
        move: ({ world }) => {
          const [dx, dy] = [begun.dx + world.x - at.world.x, begun.dy + world.y - at.world.y];
          useCompare.setState({ nudge: { ...begun, dx, dy }, dragging: true });
        },
        end: () => useCompare.setState({ dragging: false }),
        cancel: () => useCompare.setState({ nudge: begun, dragging: false }),
      };
    },
    key({ key, shift }) {
      if (!laid()) return false;
      const { nudge, keyed } = useCompare.getState();
      const count = { keyed: keyed + 1 };
      if (key === 'Escape') {
        if (nudge === NOT_NUDGED) return false;
        useCompare.setState({ nudge: NOT_NUDGED, ...count });
        return true;
      }
      const way = KEYS[key];
      if (!way) return false;
      const [step, turn] = [STEPS[shownIn][shift ? 1 : 0], TURNS[shift ? 1 : 0]];
      nudgeTo({
        dx: nudge.dx + way[0] * step,
        dy: nudge.dy + way[1] * step,
        angle: nudge.angle + way[2] * turn,
      });
      useCompare.setState(count);
      return true;
    },
  };
}
