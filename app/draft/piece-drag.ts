import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { pieceOf, withPiece } from '../../core/garment/with-piece';
import type { TablePoint } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import type { Drag, PointerAt } from '../table/tool';
import { draftWords as words } from '../words/draft';
import { setPointer } from './draft-store';
import { chosenBy, dragged } from './drag-effect';
import type { Hit } from './hit-test';
import { snapped } from './snap';
import { pointsBeside, pointsOfOthers, snapHere } from './snap-here';

/**
 * A drag of a point, a mark or a whole piece: nothing happens to the garment before the pointer has moved, the drag is
 * one step to undo, and a press on the spot only chooses (or, on a plus, puts the new point in).
 */
export function dragOf(piece: Piece, hit: Hit, pressed: PointerAt): Drag {
  const others = hit.kind === 'handle' ? [] : pointsOfOthers(piece.id);
  const beside = hit.kind === 'handle' ? [] : pointsBeside(piece, hit.at);
  const grab = { x: hit.at.x - pressed.world.x, y: hit.at.y - pressed.world.y };
  const chosenBefore = useTable.getState().chosen;
  let begun = false;

  const show = (at: PointerAt) => {
    const free = { x: at.world.x + grab.x, y: at.world.y + grab.y };
    const place = placed(free, at);
    setPointer(place);
    useGarment.getState().drag((garment) => moved(garment, place.at));
  };
  const placed = (free: TablePoint, at: PointerAt) => {
    const place = snapped(free, snapHere(at, others, beside));
    if (hit.kind !== 'handle' || place.to !== 'grid') return place;
    // A piece moves by whole steps, so that points that lay on the squares stay on them.
    const start = snapped(hit.at, snapHere(at, others, beside));
    const at2 = { x: hit.at.x + place.at.x - start.at.x, y: hit.at.y + place.at.y - start.at.y };
    return { at: at2, to: 'grid' as const };
  };
  const moved = (garment: Garment, to: TablePoint) =>
    withPiece(garment, piece.id, (asAtBegin) => dragged(asAtBegin, hit, to));

  if (hit.kind !== 'plus') useTable.getState().choose(chosenBy(piece, hit));

  return {
    move(at) {
      if (!begun) {
        begun = true;
        useGarment.getState().beginDrag(labelOf(hit));
        if (hit.kind === 'plus') useTable.getState().choose(chosenBy(piece, hit));
      }
      show(at);
    },
    end(at) {
      if (begun) {
        show(at);
        useGarment.getState().endDrag();
      } else if (hit.kind === 'plus') {
        const now = useGarment.getState().garment;
        const here = now && pieceOf(now, piece.id);
        useGarment.getState().edit(words.steps.addPoint, (garment) => moved(garment, hit.at));
        if (here) useTable.getState().choose(chosenBy(here, hit));
      }
      setPointer(undefined);
    },
    cancel() {
      useTable.getState().choose(chosenBefore);
      if (begun) useGarment.getState().cancelDrag();
      setPointer(undefined);
    },
  };
}

function labelOf(hit: Hit): string {
  const { steps } = words;
  switch (hit.kind) {
    case 'corner':
    case 'through':
      return steps.movePoint;
    case 'plus':
      return steps.addPoint;
    case 'handle':
    case 'edge':
      return steps.movePiece;
    case 'dart-point':
    case 'dart-mouth':
      return steps.dart;
    case 'notch':
      return steps.notch;
    case 'label':
      return steps.label;
    case 'grain-end':
      return steps.grain;
  }
}
