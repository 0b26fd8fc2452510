import { type BrokenReference, brokenReference } from './broken-reference';
import { type Garment, SCHEMA } from './garment';
import { newGarment } from './new-garment';
import { type Misfit, misfits } from './schema';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** What newer programs add lies in a few layers; a file that is not a garment at all is given up sooner or later. */
const MOST_ROUNDS = 200;

/** A garment as far as this program knows its parts. */
export interface KnownParts {
  readonly garment: Garment;
  /** How many fields, or whole things, were left out because this program does not know them. */
  readonly leftOut: number;
}

/**
 * What this program can show of a garment made with a newer one: unknown fields are left out, an edge of an unknown shape
 * is drawn straight, and a thing that cannot be understood without what is unknown is left out whole, with whatever
 * speaks of it. `undefined` when nothing that is a garment remains. The value itself is not touched.
 */
export function knownParts(value: unknown): KnownParts | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const draft: Json = JSON.parse(JSON.stringify({ ...value, schema: SCHEMA }));
  let leftOut = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const found = misfits(draft);
    const troubles = found.length > 0 ? found : looseEnd(draft as unknown as Garment);
    if (troubles.length === 0) return { garment: draft as unknown as Garment, leftOut };
    // From the back, so that the places of those in front stay what they were.
    const cuts = new Map(troubles.flatMap(cutsFor).map((cut) => [cut.join('.'), cut]));
    const ordered = [...cuts.values()].sort((a, b) => compared(b, a));
    const gone = ordered.filter((cut) => cutOut(draft, cut)).length;
    if (gone === 0) return undefined;
    leftOut += gone;
  }
  return undefined;
}

function looseEnd(garment: Garment): readonly Misfit[] {
  const broken: BrokenReference | undefined = brokenReference(garment);
  return broken ? [{ path: broken.where.split('.').map(step), unknown: [] }] : [];
}

function step(name: string): string | number {
  return /^\d+$/.test(name) ? Number(name) : name;
}

type Path = readonly (string | number)[];

/** What to take out so that a misfit is gone: unknown fields by themselves, else the thing it is in. */
function cutsFor({ path, unknown }: Misfit): readonly Path[] {
  if (unknown.length > 0) return unknown.map((key) => [...path, key]);
  const inPiece = path.findIndex(
    (part, at) => (part === 'corners' || part === 'edges') && typeof path[at + 1] === 'number',
  );
  if (inPiece >= 0 && path[inPiece] === 'edges' && path[inPiece + 2] === 'shape') return [path.slice(0, inPiece + 3)];
  // Without one of its corners or edges a piece is another piece.
  const whole = inPiece >= 0 ? path.slice(0, inPiece) : path;
  const item = whole.findLastIndex((part) => typeof part === 'number');
  return [item >= 0 ? whole.slice(0, item + 1) : whole.slice(0, Math.max(1, whole.length))];
}

/** By place: numbers by size, so that a later item of a list comes after an earlier one, and what is inside after what holds it. */
function compared(a: Path, b: Path): number {
  for (const [at, part] of a.entries()) {
    const other = b[at];
    if (other === undefined) return 1;
    if (part === other) continue;
    if (typeof part === 'number' && typeof other === 'number') return part - other;
    return String(part) < String(other) ? -1 : 1;
  }
  return a.length - b.length;
}

/** Takes one thing out; whether it was there. */
function cutOut(draft: Json, path: Path): boolean {
  const last = path.at(-1);
  let holder: Json | undefined = draft;
  for (const part of path.slice(0, -1)) holder = (holder as Record<string | number, Json> | undefined)?.[part];
  if (last === undefined || typeof holder !== 'object' || holder === null) return false;
  if (Array.isArray(holder)) return typeof last === 'number' && holder.splice(last, 1).length > 0;
  if (path[0] === 'paper' && 'paper' in (draft as object)) {
    const { paper } = newGarment({ newId: () => 'none', today: '2000-01-01', name: '', shownIn: 'cm' });
    Object.assign(draft as object, { paper });
    return true;
  }
  if (!(last in holder)) return false;
  if (last === 'shape') holder.shape = { kind: 'straight' };
  else delete holder[last];
  return true;
}
