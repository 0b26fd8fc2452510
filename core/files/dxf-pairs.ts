/** An ASCII DXF file as pairs of a code and a value, and those as entities. */
import type { FileRefusal } from './file-reading';

/** One entity with its pairs; `line` is where it begins, from 1. */
export interface DxfEntity {
  readonly kind: string;
  readonly pairs: readonly DxfPair[];
  readonly line: number;
}

export interface DxfPair {
  readonly code: number;
  readonly text: string;
  readonly line: number;
}

/** Entities, vertices among them, in one file at most. */
export const MOST_ENTITIES = 300_000;

/** How a binary DXF file begins (from memory). */
const BINARY = 'AutoCAD Binary DXF';

/**
 * The entities of a file one after another, with the structure between (SECTION, TABLE, BLOCK and their ends) as
 * entities too; ends early with a refusal for a code that is no number, a value that is missing, or too much of it all.
 */
export function* dxfEntities(text: string): Generator<DxfEntity, FileRefusal | undefined> {
  if (text.startsWith(BINARY)) return { kind: 'binary-dxf' };
  let entity: { kind: string; pairs: DxfPair[]; line: number } | undefined;
  let [at, line, count] = [text.startsWith('\ufeff') ? 1 : 0, 0, 0];
  const nextLine = (): string | undefined => {
    if (at >= text.length) return undefined;
    const found = text.indexOf('\n', at);
    const end = found < 0 ? text.length : found;
    const value = text.slice(at, text[end - 1] === '\r' ? end - 1 : end);
    at = end + 1;
    line += 1;
    return value;
  };
  for (;;) {
    const code = nextLine();
    if (code === undefined || (code.trim() === '' && at >= text.length)) break;
    if (!/^\s*-?\d{1,5}\s*$/.test(code))
      return count === 0 ? { kind: 'not-this-kind' } : { kind: 'broken-number', line };
    const value = nextLine();
    if (value === undefined) return { kind: 'broken-off', line };
    if (Number(code) !== 0) {
      entity?.pairs.push({ code: Number(code), text: value, line });
      continue;
    }
    if (entity) yield entity;
    count += 1;
    if (count > MOST_ENTITIES) return { kind: 'too-many', what: 'entities', limit: MOST_ENTITIES };
    entity = { kind: value.trim().toUpperCase(), pairs: [], line };
    if (entity.kind === 'EOF') return undefined;
  }
  return count === 0 ? { kind: 'not-this-kind' } : { kind: 'broken-off', line };
}

/** The text of the first pair with a code; empty without one. */
export function textOf({ pairs }: DxfEntity, code: number): string {
  return pairs.find((pair) => pair.code === code)?.text.trim() ?? '';
}

/** The number of the first pair with a code, in an entity without a broken one; `missing` without one. */
export function numberOf({ pairs }: DxfEntity, code: number, missing = 0): number {
  const pair = pairs.find((each) => each.code === code);
  return pair ? Number(pair.text) : missing;
}

/** All numbers with a code, in their order, in an entity without a broken one. */
export function numbersOf({ pairs }: DxfEntity, code: number): number[] {
  return pairs.filter((pair) => pair.code === code).map(({ text }) => Number(text));
}

const NUMBER = /^\s*[+-]?(?:\d{1,30}\.?\d{0,30}|\.\d{1,30})(?:[eE][+-]?\d{1,3})?\s*$/;

/** Further than this from nought is no drawing. */
const FAR = 1e12;

/** The line of the first value that should be a number and is none; codes 10 to 79 and 210 to 239 are numbers. */
export function brokenNumber({ pairs }: DxfEntity): number | undefined {
  return pairs.find(({ code, text }) => {
    const isNumber = (code >= 10 && code < 80) || (code >= 210 && code < 240);
    return isNumber && !(text.length < 80 && NUMBER.test(text) && Math.abs(Number(text)) <= FAR);
  })?.line;
}
