import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { instanceIn } from '../../bench/lay.files';

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lay-'));
});

afterAll(() => rmSync(folder, { recursive: true }));

/** A set of ours in a file of the schema `nesting-instance/1`. */
function written(name: string): string {
  const path = join(folder, `${name}.json`);
  const triangle = {
    quantity: 3,
    rotationsDeg: [0, 180],
    vertices: [
      [0, 0],
      [7, 1.5],
      [2, 9],
    ],
  };
  writeFileSync(path, JSON.stringify({ name, strip: { height: 23 }, pieces: [triangle] }));
  return path;
}

describe('instanceIn(path)', () => {
  it('reads a set of shapes from a file, with what is published of a set of that name', () => {
    const shapes = [[3, [0, 180], '0,0 7,1.5 2,9']];
    expect(instanceIn(written('gores'))).toEqual({ name: 'gores', height: 23, shapes });
    expect(instanceIn(written('shirts'))).toMatchObject({ best: 90.92, greedy: 83.34, height: 23, shapes });
  });

  it('says so where there is no file, or one of another kind', () => {
    expect(() => instanceIn(join(folder, 'none.json'))).toThrow('There is no file');
    const path = join(folder, 'other.json');
    writeFileSync(path, '{ "name": "other" }');
    expect(() => instanceIn(path)).toThrow('is not of the schema nesting-instance/1');
  });
});
