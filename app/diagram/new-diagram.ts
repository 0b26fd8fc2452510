import { diagramMap } from '../../core/diagram/diagram-map';
import { shownBox } from '../../core/diagram/squared-picture';
import type { Diagram } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import { currentSet } from '../../core/garment/measure-value';
import type { TablePoint } from '../../core/geometry/point';
import type { ReadyPicture } from '../photo/picture-store';
import { newId } from '../state/new-id';
import { diagramWords as words } from '../words/diagram';
import { startingCorners } from './change-diagram';

/** A picture as a new diagram, to the right of every picture that lies on the table already. */
export function newDiagram(
  garment: Garment,
  {
    file,
    photoId,
    opened,
    squareUp,
  }: Pick<Diagram, 'photoId' | 'squareUp'> & { readonly file: File; readonly opened: ReadyPicture },
): Diagram {
  const { widthPx, heightPx, onPaper, focalPx } = opened;
  return {
    id: newId(),
    name: withoutEnding(file.name),
    photoId,
    widthPx,
    heightPx,
    ...(onPaper ? { onPaper } : {}),
    ...(focalPx === undefined ? {} : { focalPx }),
    squareUp,
    quarterTurns: 0,
    knownLengths: [],
    placedAt: freePlace(garment),
  };
}

/** The same picture once more, for another page that is seen in it; its corners are to be put on that page. */
export function otherPage(garment: Garment, diagram: Diagram): Diagram {
  const { seen: _, scaleFrom: __, joined: ___, ruled: ____, ...rest } = diagram;
  return {
    ...rest,
    id: newId(),
    name: words.otherPageName(diagram.name),
    squareUp: startingCorners(diagram),
    knownLengths: [],
    placedAt: freePlace(garment),
  };
}

/** What a file is called, without its ending. */
export function withoutEnding(fileName: string): string {
  return fileName.replace(/\.[^.]*$/, '').slice(0, 100) || words.unnamed;
}

/** Room between two pictures on the table. */
const GAP = 50;

/** To the right of every picture that lies on the table already. */
function freePlace(garment: Garment): TablePoint {
  const set = currentSet(garment);
  const rights = garment.diagrams.map((diagram) => {
    const map = diagramMap(diagram, set, garment.diagrams);
    const box = map.kind === 'map' ? shownBox(diagram, map) : undefined;
    return (box?.maxX ?? diagram.placedAt.x) + GAP;
  });
  return { x: Math.max(0, ...rights), y: 0 };
}
