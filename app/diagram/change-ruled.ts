import type { Diagram, RuledLine } from '../../core/garment/diagram';
import { putRuledLine, withDiagram } from '../../core/garment/diagram-edits';
import type { ReadyPicture } from '../photo/picture-store';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { diagramWords } from '../words/diagram';
import { within } from './change-diagram';
import { type RuledEnds, useDesk } from './desk-store';
import { followRuled } from './follow-ruled';

const { labels } = diagramWords;

/** One step on the lines of a picture that should be straight. They check how it lies and move nothing. */
export function editRuled(label: string, diagramId: string, change: (diagram: Diagram) => Diagram): void {
  useGarment.getState().edit(label, (garment) => withDiagram(garment, diagramId, change));
}

/** The printed line between two ends, followed and then added, or put in the place of the one whose ends were moved. */
export async function ruleLine(photo: ReadyPicture, ends: RuledEnds): Promise<void> {
  const { diagramId, from, to, again } = ends;
  const followed = await followRuled(photo, from, to);
  if (useDesk.getState().ruling !== ends) return;
  useDesk.setState({ ruling: undefined });
  const id = again?.id ?? newId();
  editRuled(again ? labels.moveRuled : labels.rule, diagramId, (diagram) => {
    const squareTo = diagram.ruled?.find((line) => line.id === id)?.squareTo;
    const places = followed.map((place) => within(diagram, place));
    return putRuledLine(diagram, { id, places, ...(squareTo === undefined ? {} : { squareTo }) });
  });
}

/** A line said to be square to another; by the empty id, to none. */
export function putSquareTo(diagramId: string, { squareTo: _, ...line }: RuledLine, id: string): void {
  editRuled(labels.squareTo, diagramId, (diagram) =>
    putRuledLine(diagram, id === '' ? line : { ...line, squareTo: id }),
  );
}
