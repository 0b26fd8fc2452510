import { inches, type ShownIn } from '../units/inch';
import { type Garment, SCHEMA } from './garment';

export interface NewGarmentOptions {
  /** Gives a fresh id at each call. */
  readonly newId: () => string;
  /** YYYY-MM-DD */
  readonly today: string;
  readonly name: string;
  readonly shownIn: ShownIn;
}

/** An empty garment with one empty set of measures, ready for a picture. */
export function newGarment({ newId, today, name, shownIn }: NewGarmentOptions): Garment {
  const setId = newId();
  return {
    schema: SCHEMA,
    id: newId(),
    name,
    made: today,
    shownIn,
    source: { book: '', page: '', plate: '', year: '', remarks: '' },
    remarks: '',
    wearer: { name: '', sets: [{ id: setId, date: today, wornOver: '', measures: {} }], currentSetId: setId },
    diagrams: [],
    pieces: [],
    rings: [],
    paper: {
      size: shownIn === 'in' ? 'letter' : 'a4',
      turned: 'upright',
      margin: 10,
      overlap: shownIn === 'in' ? inches(0.5) : 10,
      step: shownIn === 'in' ? 'sixteenth' : 'millimetre',
    },
  };
}
