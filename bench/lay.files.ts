/** Sets of shapes in files of the schema `nesting-instance/1`. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type LayInstance, layInstances } from './lay.instances';

/** Where further sets are kept beside the project. */
const SHARED = fileURLToPath(new URL('../../shared/data/lay', import.meta.url));

/** The sets kept beside the project that are not entered here; says so where there is no such folder. */
export function sharedInstances(): LayInstance[] {
  const known = layInstances.map(({ name }) => name);
  if (!existsSync(SHARED)) {
    console.error(`There is no folder ${SHARED}: only the sets entered here (${known.join(', ')}) are measured.`);
    return [];
  }
  const files = readdirSync(SHARED).filter((name) => name.endsWith('.json'));
  return files.map((name) => instanceIn(`${SHARED}/${name}`)).filter(({ name }) => !known.includes(name));
}

/** The set in a file, with what is published of a set of that name; where it is no such file, says so. */
export function instanceIn(path: string): LayInstance {
  if (!existsSync(path)) throw new Error(`There is no file ${path}.`);
  const { name, strip, pieces } = JSON.parse(readFileSync(path, 'utf8')) as {
    readonly name?: string;
    readonly strip?: { readonly height: number };
    readonly pieces?: readonly {
      readonly quantity: number;
      readonly rotationsDeg: readonly number[];
      readonly vertices: readonly (readonly [number, number])[];
    }[];
  };
  if (name === undefined || !strip || !pieces) throw new Error(`${path} is not of the schema nesting-instance/1.`);
  const shapes = pieces.map(({ quantity, rotationsDeg, vertices }) => {
    return [quantity, rotationsDeg, vertices.map((corner) => corner.join(',')).join(' ')] as const;
  });
  return { ...layInstances.find((known) => known.name === name), name, height: strip.height, shapes };
}
