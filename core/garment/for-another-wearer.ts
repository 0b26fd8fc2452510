import type { Garment } from './garment';
import type { MeasureSet } from './measure';

export interface AnotherWearerOptions {
  /** The new garment's id. */
  readonly id: string;
  readonly name: string;
  /** YYYY-MM-DD */
  readonly today: string;
  readonly wearer: string;
  /** Her measures as they are known; an empty set where none are. */
  readonly measures: MeasureSet;
}

/**
 * The garment taken up for another body: the pattern as it is, her measures alone. What belongs to the body or to the
 * paper of the first is left out: mock-ups and their pins, what was printed and cut, its versions, what was left as it is knowingly, levels at
 * which that body was measured, the proof of scale.
 */
export function forAnotherWearer(garment: Garment, options: AnotherWearerOptions): Garment {
  const { mockups: _m, printings: _p, cuttings: _c, drawnFrom: _d, knowingly: _k, scaleProof: _s, ...kept } = garment;
  return {
    ...kept,
    id: options.id,
    name: options.name,
    made: options.today,
    wearer: { name: options.wearer, sets: [options.measures], currentSetId: options.measures.id },
    rings: garment.rings.map((ring) => ({
      ...ring,
      levels: ring.levels.map(({ body: _body, ...level }) => level),
    })),
  };
}
