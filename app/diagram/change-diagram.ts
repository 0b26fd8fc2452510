import { carryPieces } from '../../core/diagram/reseat';
import type { Diagram, KnownLength, Quad, SidePlaces, SquareUp } from '../../core/garment/diagram';
import { putKnownLength, withDiagram } from '../../core/garment/diagram-edits';
import type { Garment } from '../../core/garment/garment';
import type { PhotoPoint } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { say } from '../ui/say';
import { diagramWords as words } from '../words/diagram';

type Change = (garment: Garment) => Garment;

/** Changes a diagram and takes the pieces traced on it along, so that both are one step. */
export function changeDiagram(diagramId: string, change: (diagram: Diagram) => Diagram): Change {
  return (garment) => {
    const changed = withDiagram(garment, diagramId, change);
    return changed === garment ? garment : carryPieces(garment, changed);
  };
}

export function diagramOf(garment: Garment, diagramId: string): Diagram | undefined {
  return garment.diagrams.find(({ id }) => id === diagramId);
}

/** One corner put elsewhere: at most one picture's size outside the picture, where a cut-off corner may well lie. */
export function moveCorner(diagramId: string, index: 0 | 1 | 2 | 3, to: PhotoPoint): Change {
  return changeDiagram(diagramId, (diagram) => {
    if (diagram.squareUp.kind !== 'rectangle') return diagram;
    const { squareUp } = diagram;
    const at = within(diagram, to);
    const before = squareUp.corners[index];
    if (at.x === before.x && at.y === before.y) return diagram;
    const { followed, ...rest } = squareUp;
    const corners = squareUp.corners.with(index, at) as unknown as Quad;
    // Printed squares say where their corners are; with another corner it is squared up by four of them again.
    const sides = followed?.kind === 'sides' ? { followed } : {};
    return { ...diagram, squareUp: { ...rest, corners, ...sides } };
  });
}

/** A place that a curved side passes through. */
export interface SidePlace {
  readonly side: 0 | 1 | 2 | 3;
  readonly index: number;
}

/** One place of a curved side put elsewhere. */
export function moveSidePlace(diagramId: string, { side, index }: SidePlace, to: PhotoPoint): Change {
  return changeDiagram(diagramId, (diagram) => {
    const { squareUp } = diagram;
    if (squareUp.kind !== 'rectangle' || squareUp.followed?.kind !== 'sides') return diagram;
    const { through } = squareUp.followed;
    const places = through[side].with(index, within(diagram, to));
    const followed = { kind: 'sides', through: through.with(side, places) as unknown as SidePlaces } as const;
    return { ...diagram, squareUp: { ...squareUp, followed } };
  });
}

/** One place of a curved side put elsewhere as a step of its own; nudges in quick succession are one step. */
export function nudgeSidePlace(diagramId: string, place: SidePlace, to: PhotoPoint): void {
  const { garment, edit } = useGarment.getState();
  const label = words.labels.side(words.square.side[place.side]);
  edit(label, moveSidePlace(diagramId, place, to), { merge: `side ${diagramId} ${place.side} ${place.index}` });
  sayWhoFollowed(garment);
  sayHeldBack(diagramId, to);
}

/** One corner put elsewhere as a step of its own; nudges in quick succession are one step. */
export function nudgeCorner(diagramId: string, index: 0 | 1 | 2 | 3, to: PhotoPoint): void {
  const { garment, edit } = useGarment.getState();
  const label = words.labels.corner(words.square.corner[index]);
  edit(label, moveCorner(diagramId, index, to), { merge: `corner ${diagramId} ${index}` });
  sayWhoFollowed(garment);
  sayHeldBack(diagramId, to);
}

/** One end of a known length put elsewhere. */
export function moveLengthEnd(diagramId: string, lengthId: string, which: 'from' | 'to', to: PhotoPoint): Change {
  return changeDiagram(diagramId, (diagram) => {
    const known = diagram.knownLengths.find(({ id }) => id === lengthId);
    const at = within(diagram, to);
    if (!known || (known[which].x === at.x && known[which].y === at.y)) return diagram;
    return putKnownLength(diagram, { ...known, [which]: at });
  });
}

/** A known length added or said otherwise. */
export function putLength(diagramId: string, known: KnownLength): Change {
  return changeDiagram(diagramId, (diagram) =>
    putKnownLength(diagram, { ...known, from: within(diagram, known.from), to: within(diagram, known.to) }),
  );
}

/** Corners to start from: a tenth of the picture in from each of its edges. */
export function startingCorners({ widthPx, heightPx }: Pick<Diagram, 'widthPx' | 'heightPx'>): SquareUp {
  const [x, y] = [widthPx / 10, heightPx / 10];
  const corners: Quad = [
    { x, y },
    { x: widthPx - x, y },
    { x: widthPx - x, y: heightPx - y },
    { x, y: heightPx - y },
  ];
  return { kind: 'rectangle', corners, sides: { kind: 'not-known' } };
}

/** Says that pieces followed since the garment was as it was `before`, when they did. */
export function sayWhoFollowed(before: Garment | undefined): void {
  const { garment } = useGarment.getState();
  if (!before || !garment || before.pieces === garment.pieces) return;
  const moved = garment.pieces.filter((piece, index) => piece !== before.pieces[index]).length;
  if (moved > 0) say(words.followed(moved));
}

/** Says where a place came to lie that was asked for too far outside the picture. */
export function sayHeldBack(diagramId: string, asked: PhotoPoint): void {
  const { garment } = useGarment.getState();
  const diagram = garment && diagramOf(garment, diagramId);
  if (!diagram) return;
  const { x, y } = within(diagram, asked);
  if (x !== asked.x || y !== asked.y) say(words.heldBack(x, y));
}

/** One step on a diagram from the notebook; says who followed. */
export function editDiagram(
  label: string,
  diagramId: string,
  change: (diagram: Diagram) => Diagram,
  options?: { readonly merge?: string },
): void {
  const { garment, edit } = useGarment.getState();
  edit(label, changeDiagram(diagramId, change), options);
  sayWhoFollowed(garment);
}

/** A place of a picture, held back to at most one picture's size outside it. */
export function within({ widthPx, heightPx }: Diagram, { x, y }: PhotoPoint): PhotoPoint {
  return { x: Math.min(2 * widthPx, Math.max(-widthPx, x)), y: Math.min(2 * heightPx, Math.max(-heightPx, y)) };
}
