import type { Garment } from './garment';
import type { Measure, MeasureName, MeasureSet, Wearer } from './measure';
import { withOne } from './with-piece';

/** The garment with one measure of the set in use changed, or taken out with `undefined`. */
export function setMeasure(garment: Garment, name: MeasureName, measure: Measure | undefined): Garment {
  return withCurrentSet(garment, (set) => {
    const { [name]: before, ...others } = set.measures;
    if (isSameMeasure(before, measure)) return set;
    return { ...set, measures: measure === undefined ? others : { ...set.measures, [name]: measure } };
  });
}

/** The garment with the set in use dated or described otherwise. */
export function describeSet(garment: Garment, words: Partial<Pick<MeasureSet, 'date' | 'wornOver'>>): Garment {
  return withCurrentSet(garment, (set) => {
    const described = { ...set, ...words };
    return described.date === set.date && described.wornOver === set.wornOver ? set : described;
  });
}

/** The garment with a copy of the set in use under a new date, which is in use from now on. The old one stays. */
export function copySet(garment: Garment, options: { readonly newId: () => string; readonly date: string }): Garment {
  const { sets, currentSetId } = garment.wearer;
  const current = sets.find((set) => set.id === currentSetId);
  if (!current) return garment;
  const copy = { ...current, id: options.newId(), date: options.date };
  return withWearer(garment, { ...garment.wearer, sets: [...sets, copy], currentSetId: copy.id });
}

/** The garment measured by another of its sets. */
export function chooseSet(garment: Garment, setId: string): Garment {
  const { wearer } = garment;
  if (wearer.currentSetId === setId || !wearer.sets.some((set) => set.id === setId)) return garment;
  return withWearer(garment, { ...wearer, currentSetId: setId });
}

function isSameMeasure(one: Measure | undefined, other: Measure | undefined): boolean {
  if (!one || !other) return one === other;
  return (
    one.length === other.length &&
    one.right === other.right &&
    one.depth === other.depth &&
    one.guessed === other.guessed
  );
}

function withCurrentSet(garment: Garment, change: (set: MeasureSet) => MeasureSet): Garment {
  const { wearer } = garment;
  const sets = withOne(wearer.sets, wearer.currentSetId, change);
  return sets === wearer.sets ? garment : withWearer(garment, { ...wearer, sets });
}

function withWearer(garment: Garment, wearer: Wearer): Garment {
  return { ...garment, wearer };
}
