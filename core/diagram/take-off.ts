import type { Diagram, KnownLength } from '../garment/diagram';
import { removeDiagram } from '../garment/diagram-edits';
import type { Garment } from '../garment/garment';
import { currentSet } from '../garment/measure-value';
import { type DiagramMap, diagramMap } from './diagram-map';
import { fromPlane } from './squared-plane';

/**
 * The garment without a picture. Those that had their scale from it keep that scale as known lengths of their own, across
 * and down; a half that was joined to it stands alone.
 */
export function takeOff(garment: Garment, diagramId: string, newId: () => string): Garment {
  const set = currentSet(garment);
  const diagrams = garment.diagrams.map((diagram) => {
    const { scaleFrom, joined, ...bare } = diagram;
    const [leaves, parts] = [scaleFrom?.diagramId === diagramId, joined?.diagramId === diagramId];
    if (!leaves && !parts) return diagram;
    const map = diagramMap(diagram, set, garment.diagrams);
    const isLost = map.kind === 'map' && ((leaves && map.scaleBy === 'shared') || (parts && map.scaleBy === 'joined'));
    return {
      ...bare,
      ...(scaleFrom && !leaves && !isLost ? { scaleFrom } : {}),
      ...(joined && !parts ? { joined } : {}),
      ...(isLost ? { knownLengths: ownLengths(diagram, map, newId) } : {}),
    };
  });
  return removeDiagram({ ...garment, diagrams }, diagramId);
}

/** A line across and one down the middle of a picture, as long as they are now; what was said of it before checks them. */
function ownLengths({ knownLengths }: Diagram, map: DiagramMap, newId: () => string): readonly KnownLength[] {
  const { across, down } = map.plane;
  const line = (a: readonly [number, number], b: readonly [number, number], length: number): KnownLength[] => {
    const [from, to] = [fromPlane(map.plane, { x: a[0], y: a[1] }), fromPlane(map.plane, { x: b[0], y: b[1] })];
    return from && to ? [{ id: newId(), from, to, says: { kind: 'length', length } }] : [];
  };
  return [
    ...line([0, down / 2], [across, down / 2], across * map.across),
    ...line([across / 2, 0], [across / 2, down], down * map.down),
    ...knownLengths,
  ];
}
