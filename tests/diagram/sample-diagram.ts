import type { Diagram, KnownLength, Quad } from '../../core/garment/diagram';
import type { MeasureSet } from '../../core/garment/measure';

export const set: MeasureSet = {
  id: 'set',
  date: '2026-01-02',
  wornOver: 'shift',
  measures: { waist: { length: 711.2 }, hip: { length: 965.2, depth: 190 } },
};

/** A diagram of 2,000 by 2,600 pixels, flat unless corners are given. */
export function sampleDiagram(more: Partial<Diagram> & { corners?: Quad } = {}): Diagram {
  const { corners, ...rest } = more;
  return {
    id: 'd',
    name: 'Plate',
    photoId: 'p',
    widthPx: 2000,
    heightPx: 2600,
    squareUp: corners ? { kind: 'rectangle', corners, sides: { kind: 'not-known' } } : { kind: 'flat' },
    quarterTurns: 0,
    knownLengths: [],
    placedAt: { x: 0, y: 0 },
    ...rest,
  };
}

/** A line from one place of the photo to another, said to be so many mm. */
export function known(id: string, from: KnownLength['from'], to: KnownLength['to'], length: number): KnownLength {
  return { id, from, to, says: { kind: 'length', length } };
}
