import { expect, it } from 'vitest';
import type { Diagram, KnownLength } from '../../core/garment/diagram';
import {
  addDiagram,
  putKnownLength,
  removeDiagram,
  removeKnownLength,
  withDiagram,
} from '../../core/garment/diagram-edits';
import { readGarment } from '../../core/garment/schema';
import { linden } from './linden';

it('removeDiagram leaves the pieces traced from it, which forget where they came from', () => {
  const garment = linden();
  const after = removeDiagram(garment, 'plate-14');
  expect(after.diagrams.map(({ id }) => id)).toEqual(['plate-15']);
  expect(after.pieces[0]).not.toHaveProperty('diagramId');
  expect(after.pieces[0]?.corners).toBe(garment.pieces[0]?.corners);
  expect(after.pieces[1]).toBe(garment.pieces[1]);
  expect(readGarment(after).kind).toBe('garment');
});

it('putKnownLength adds a known length and replaces one of the same id', () => {
  const diagram = linden().diagrams[0] as Diagram;
  const [front, waist] = diagram.knownLengths as readonly [KnownLength, KnownLength];
  const longer: KnownLength = { ...front, says: { kind: 'length', length: 720 } };
  expect(putKnownLength(diagram, longer).knownLengths).toEqual([longer, waist]);
  expect(putKnownLength(diagram, { ...front, id: 'known-hem' }).knownLengths).toHaveLength(3);
  expect(removeKnownLength(diagram, 'known-front').knownLengths).toEqual([waist]);
});

it('addDiagram and withDiagram change the diagrams only', () => {
  const garment = linden();
  const added = addDiagram(garment, { ...(garment.diagrams[1] as Diagram), id: 'plate-16' });
  const turned = withDiagram(added, 'plate-16', (diagram) => ({ ...diagram, quarterTurns: 2 }));
  expect(turned.diagrams.map(({ quarterTurns }) => quarterTurns)).toEqual([0, 3, 2]);
  expect(turned.pieces).toBe(garment.pieces);
});

it('diagram edits give the same object back when nothing changes', () => {
  const garment = linden();
  const diagram = garment.diagrams[0] as Diagram;
  expect(removeDiagram(garment, 'plate-99')).toBe(garment);
  expect(withDiagram(garment, 'plate-14', (same) => same)).toBe(garment);
  expect(putKnownLength(diagram, diagram.knownLengths[1] as KnownLength)).toBe(diagram);
  expect(removeKnownLength(diagram, 'known-nothing')).toBe(diagram);
});
