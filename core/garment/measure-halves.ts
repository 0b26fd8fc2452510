import type { GirthName, Measure, MeasureName } from './measure';

/** The girths that may be taped in two halves, each from centre front round the side to centre back. */
const HALVED: readonly MeasureName[] = [
  'waist',
  'highHip',
  'hip',
  'bust',
  'chest',
  'underbust',
] satisfies readonly GirthName[];

/** The two halves of a girth (mm). Stored is what a body with two such halves would measure all round. */
export interface Halves {
  readonly left: number;
  readonly right: number;
}

/** Whether a measure goes round the body, so that its two halves can be taped apart. */
export function canBeHalved(name: MeasureName): boolean {
  return HALVED.includes(name);
}

/** The halves of a girth that was taped in two; `undefined` where one figure stands for both. */
export function halvesOf({ length, right }: Measure): Halves | undefined {
  return right === undefined ? undefined : { left: length / 2, right: right / 2 };
}

/**
 * A girth with one of its halves taped (mm). The first to be taped leaves the rest of the girth to the other, so the whole
 * stays; after that each half is its own. `undefined` where nothing would be left for the other.
 */
export function withHalf(measure: Measure, side: 'left' | 'right', half: number): Measure | undefined {
  const { left, right } = halvesOf(measure) ?? { left: measure.length - half, right: measure.length - half };
  const halves = side === 'left' ? { left: half, right } : { left, right: half };
  if (!(halves.left > 0 && halves.right > 0)) return undefined;
  const { guessed: _, ...taped } = measure;
  return { ...taped, length: 2 * halves.left, right: 2 * halves.right };
}

/** A girth with its whole taped again (mm): its halves keep their difference, where it leaves both of them something. */
export function withWhole(measure: Measure, whole: number): Measure {
  const { guessed: _, right: __, ...taped } = measure;
  const halves = halvesOf(measure);
  const more = halves ? whole - halves.left - halves.right : 0;
  if (!halves || halves.left + more / 2 <= 0 || halves.right + more / 2 <= 0) return { ...taped, length: whole };
  return { ...taped, length: 2 * halves.left + more, right: 2 * halves.right + more };
}

/** A girth with both halves alike again; its whole stays. */
export function withHalvesAlike(measure: Measure): Measure {
  const { right, ...both } = measure;
  return right === undefined ? measure : { ...both, length: (measure.length + right) / 2 };
}
