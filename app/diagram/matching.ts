import type { Joined } from '../../core/garment/diagram';
import type { PhotoPoint } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import type { Drag, PointerAt, Tool } from '../table/tool';
import { hushNow } from '../ui/say';
import { diagramWords as words } from '../words/diagram';
import { diagramOf, editDiagram } from './change-diagram';
import { useDesk } from './desk-store';

/** Begins to ask for a place that is seen in two pictures: first in the half to be laid, then in the one it is laid onto. */
export function beginMatching(diagramId: string, otherId: string): void {
  hushNow();
  useTable.getState().setView('photo', undefined);
  useDesk.setState({
    matching: { diagramId, otherId, here: undefined },
    showing: 'photo',
    drawing: undefined,
    fresh: undefined,
  });
}

export function leaveMatching(): void {
  useTable.getState().setView('photo', undefined);
  useDesk.setState({ matching: undefined, held: false });
}

/** A half joined otherwise, or not at all. */
export function putJoined(diagramId: string, joined: Joined | undefined): void {
  editDiagram(words.labels.join, diagramId, ({ joined: _, ...bare }) => (joined ? { ...bare, joined } : bare));
}

/** The place is where the pointer is let go, so that it can be aimed under the magnifier. */
export function matchTool(): Tool {
  const drag: Drag = {
    move: () => undefined,
    end: (at) => choose(at),
    cancel: () => useDesk.setState({ held: false }),
  };
  return {
    cursor: 'crosshair',
    press() {
      useDesk.setState({ held: true });
      return drag;
    },
    key({ key }) {
      if (key !== 'Escape') return false;
      leaveMatching();
      return true;
    },
  };
}

function choose({ world }: PointerAt): void {
  const { matching } = useDesk.getState();
  const { garment } = useGarment.getState();
  if (!matching || !garment) return;
  const place: PhotoPoint = { x: world.x, y: world.y };
  if (!matching.here) {
    useTable.getState().setView('photo', undefined);
    useDesk.setState({ matching: { ...matching, here: place }, held: false });
    return;
  }
  const joined = diagramOf(garment, matching.diagramId)?.joined;
  if (joined)
    putJoined(matching.diagramId, { ...joined, pairs: [...joined.pairs, { here: matching.here, there: place }] });
  leaveMatching();
}
