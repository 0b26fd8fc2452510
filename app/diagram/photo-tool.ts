import type { Diagram, Quad } from '../../core/garment/diagram';
import { distance, move, type PhotoPoint, type Point, vectorBetween } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import type { Drag, KeyPress, PointerAt, Tool } from '../table/tool';
import { hushNow, say } from '../ui/say';
import { diagramWords as words } from '../words/diagram';
import { arrowStep } from './arrow-step';
import {
  moveCorner,
  moveLengthEnd,
  moveSidePlace,
  nudgeCorner,
  nudgeSidePlace,
  sayWhoFollowed,
} from './change-diagram';
import { useDesk } from './desk-store';
import { endAtTick } from './end-at-tick';
import type { Face } from './face';
import { cornerAt, isChosen, lengthEndAt, sidePlaceAt, throughOf } from './within-reach';

/**
 * The pointer on a picture: it takes hold of the corners (on the photo as taken), of the ends of known lengths, and, when
 * she asked for it, draws a new one, by a drag or by pressing on both ends.
 */
export function photoTool(diagram: Diagram, face: Face, mode: { readonly drawing: boolean }): Tool {
  return {
    cursor: mode.drawing ? 'crosshair' : 'default',
    press: (at) => (mode.drawing ? drawLine(diagram, face, at) : takeHold(diagram, face, at)),
    tap: (at) => chooseLine(diagram, face, at),
    key: (press) => nudge(diagram, press),
  };
}

function takeHold(diagram: Diagram, face: Face, at: PointerAt): Drag | undefined {
  const end = lengthEndAt(diagram, face, at);
  // Where both lie in one place the corner goes first, unless she has just chosen that known length.
  const corner = end && isChosen(end.known) ? undefined : cornerAt(diagram, face, at);
  const found = end && isChosen(end.known) ? undefined : sidePlaceAt(diagram, face, at);
  // A ring close to a corner is taken by a press that is nearer to it than to the corner.
  if (corner !== undefined && !(found && isNearer(found.at, corner, diagram, at))) {
    useDesk.setState({ corner, sidePlace: undefined });
    return dragPoint(at, face, (diagram.squareUp as { corners: Quad }).corners[corner], {
      label: words.labels.corner(words.square.corner[corner]),
      change: (photo) => moveCorner(diagram.id, corner, photo),
    });
  }
  if (found) {
    useDesk.setState({ corner: undefined, sidePlace: found.place });
    return dragPoint(at, face, found.at, {
      label: words.labels.side(words.square.side[found.place.side]),
      change: (photo) => moveSidePlace(diagram.id, found.place, photo),
    });
  }
  if (!end) return undefined;
  const { known, which } = end;
  useTable.getState().choose({ kind: 'known-length', diagramId: diagram.id, knownLengthId: known.id });
  return dragPoint(at, face, known[which], {
    label: words.labels.moveLength,
    change: (photo, now) => moveLengthEnd(diagram.id, known.id, which, endAtTick(photo, face, now)),
  });
}

function isNearer(ring: PhotoPoint, corner: 0 | 1 | 2 | 3, { squareUp }: Diagram, { world }: PointerAt): boolean {
  return squareUp.kind === 'rectangle' && distance(ring, world) < distance(squareUp.corners[corner], world);
}

interface PointDrag {
  readonly label: string;
  readonly change: (photo: PhotoPoint, at: PointerAt) => Parameters<ReturnType<typeof useGarment.getState>['drag']>[0];
}

/** Drags one point, which keeps its distance from the finger so that it does not jump at the first move. */
function dragPoint(from: PointerAt, face: Face, start: PhotoPoint, { label, change }: PointDrag): Drag {
  const { garment: before, beginDrag, drag, endDrag, cancelDrag } = useGarment.getState();
  const grip = vectorBetween(from.world, face.toWorld(start) ?? from.world);
  let moved = false;
  const letGo = () => useDesk.setState({ held: false });
  const to = (at: PointerAt) => {
    const photo = face.toPhoto(move(at.world, grip));
    if (photo) drag(change(photo, at));
  };
  beginDrag(label);
  hushNow();
  useDesk.setState({ held: true });
  return {
    move(at) {
      moved = true;
      to(at);
    },
    end(at) {
      if (moved) to(at);
      endDrag();
      letGo();
      sayWhoFollowed(before);
    },
    cancel() {
      cancelDrag();
      letGo();
    },
  };
}

/** One end where it was pressed and the other where it was let go, or, after a mere press, where the next press falls. */
function drawLine(diagram: Diagram, face: Face, at: PointerAt): Drag | undefined {
  const endOf = (pointer: PointerAt) => {
    const photo = face.toPhoto(pointer.world);
    return photo && endAtTick(photo, face, pointer);
  };
  const pressed = endOf(at);
  const { what, from: first } = useDesk.getState().drawing ?? { what: 'length', from: undefined };
  const from = first ?? pressed;
  if (!from || !pressed) return undefined;
  const show = (to: PhotoPoint) => useDesk.setState({ fresh: { diagramId: diagram.id, from, to } });
  const cancel = () => useDesk.setState({ fresh: undefined, held: false });
  show(pressed);
  useDesk.setState({ held: true });
  return {
    move(now) {
      const photo = endOf(now);
      if (photo) show(photo);
    },
    end(now) {
      const to = endOf(now) ?? pressed;
      useDesk.setState({ held: false });
      const long = distance(face.toWorld(from) ?? from, face.toWorld(to) ?? to) > now.reach;
      const line = { diagramId: diagram.id, from, to };
      if (!long) {
        useDesk.setState({ drawing: { what, from }, fresh: undefined });
        if (first) say(words.known.tooNear);
      } else if (what === 'length') useDesk.setState({ drawing: undefined, fresh: line });
      else useDesk.setState({ drawing: undefined, fresh: undefined, ruling: line });
    },
    cancel,
  };
}

function chooseLine(diagram: Diagram, face: Face, at: PointerAt): void {
  const hit = diagram.knownLengths.find(({ from, to }) => {
    const [a, b] = [face.toWorld(from), face.toWorld(to)];
    return a && b && distanceToRun(at.world, a, b) <= at.reach;
  });
  useDesk.setState({ corner: undefined, sidePlace: undefined });
  useTable
    .getState()
    .choose(
      hit
        ? { kind: 'known-length', diagramId: diagram.id, knownLengthId: hit.id }
        : { kind: 'diagram', diagramId: diagram.id },
    );
}

function nudge(diagram: Diagram, press: KeyPress): boolean {
  if (press.key === 'Escape' && useDesk.getState().drawing) {
    useDesk.setState({ drawing: undefined, fresh: undefined });
    return true;
  }
  const { corner, sidePlace } = useDesk.getState();
  const step = arrowStep(press);
  const at = sidePlace && throughOf(diagram)[sidePlace.side]?.[sidePlace.index];
  if (sidePlace && step && at) {
    nudgeSidePlace(diagram.id, sidePlace, move(at, step));
    return true;
  }
  if (corner === undefined || !step || diagram.squareUp.kind !== 'rectangle') return false;
  nudgeCorner(diagram.id, corner, move(diagram.squareUp.corners[corner], step));
  return true;
}

function distanceToRun(point: Point, a: Point, b: Point): number {
  const run = vectorBetween(a, b);
  const size = run.dx * run.dx + run.dy * run.dy;
  const along = size > 0 ? ((point.x - a.x) * run.dx + (point.y - a.y) * run.dy) / size : 0;
  return distance(point, move(a, run, Math.min(1, Math.max(0, along))));
}
