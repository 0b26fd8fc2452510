import type { Garment } from '../../core/garment/garment';
import { chosenFrom, type EditKind, type Random } from './edit-kind';
import { editsOfGarment } from './edits-of-garment';
import { editsOfPieces } from './edits-of-pieces';
import { editsOfShape } from './edits-of-shape';
import { INFINITE, mutated } from './mutated';

/** Every kind of edit by its name. */
export const EDITS: Readonly<Record<string, EditKind>> = { ...editsOfPieces, ...editsOfShape, ...editsOfGarment };

/** One thing done: an edit and what it is told, or the last one taken back or done again. */
export type Doing =
  | { readonly kind: 'edit'; readonly name: string; readonly told: unknown }
  | { readonly kind: 'undo' | 'redo' };

/** So many things at most are done to one garment. */
const LONGEST = 14;

/** Edits that are sound for a garment as it stands, with some taken back and done again, and then spoilt. */
export function spoiltSequence(garment: Garment, random: Random): Doing[] {
  const names = Object.keys(EDITS);
  const doings: Doing[] = [];
  for (let i = 2 + Math.floor(random() * (LONGEST - 1)); i > 0; i--) {
    const chosen = chosenFrom(garment, random);
    const name = names[Math.floor(random() * names.length)] as string;
    const back = random();
    if (back < 0.08) doings.push({ kind: back < 0.05 ? 'undo' : 'redo' });
    else if (chosen) doings.push({ kind: 'edit', name, told: EDITS[name]?.told(chosen) });
  }
  return spoilt(doings, garment, random);
}

/** Some of it told otherwise, and some of it left out, done twice, or done in another order. */
function spoilt(doings: readonly Doing[], garment: Garment, random: Random): Doing[] {
  const ids = idsIn(garment);
  const at = () => Math.floor(random() * doings.length);
  const all = doings.map((doing): Doing => {
    if (doing.kind !== 'edit' || random() < 0.4) return doing;
    const told = withNumbers(mutated(doing.told, random, { gentle: true }));
    return { ...doing, told: random() < 0.3 ? withOtherIds(told, ids, random) : told };
  });
  if (random() < 0.3) all.splice(at(), 1);
  if (random() < 0.3) all.splice(at(), 0, ...all.slice(at(), at() + 1));
  if (random() < 0.3) all.push(...all.splice(0, at()));
  return all;
}

/** The ids of everything in a garment. */
function idsIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(idsIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === 'id' ? [String(inner)] : idsIn(inner)));
}

/** What is told with an id in it that is another's, or nobody's. */
function withOtherIds(told: unknown, ids: readonly string[], random: Random): unknown {
  if (Array.isArray(told)) return told.map((one) => withOtherIds(one, ids, random));
  if (typeof told !== 'object' || told === null) return told;
  return Object.fromEntries(
    Object.entries(told).map(([key, inner]) => {
      if (!/id$|^open$|^far$/i.test(key) || typeof inner !== 'string') return [key, withOtherIds(inner, ids, random)];
      return [key, random() < 0.2 ? 'nobody' : (ids[Math.floor(random() * ids.length)] ?? inner)];
    }),
  );
}

/** What is told of a number stays one, if not a usable one: the program's own calls cannot mistake it for words. */
function withNumbers(told: unknown): unknown {
  if (Array.isArray(told)) return told.map(withNumbers);
  if (told === INFINITE) return Number.POSITIVE_INFINITY;
  if (typeof told === 'string') return told.trim() !== '' && !Number.isNaN(Number(told)) ? Number.NaN : told;
  if (typeof told !== 'object' || told === null) return told;
  return Object.fromEntries(Object.entries(told).map(([key, inner]) => [key, withNumbers(inner)]));
}
