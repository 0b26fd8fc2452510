import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { expect, it } from 'vitest';
import type { PhotoRow } from '../../app/storage/database';
import { readProject, writeProject } from '../../app/storage/project-file';
import { SCHEMA } from '../../core/garment/garment';
import { nextVersion } from '../../core/garment/version';
import { linden } from '../garment/linden';
import { seeded } from './random-edits';

const random = seeded(13);
const photo = (id: string, type: string, size: number): PhotoRow => ({
  id,
  bytes: Uint8Array.from({ length: size }, () => Math.floor(random() * 256)).buffer,
  type,
  name: `Tafel für ${id} – 14.jpg`,
  widthPx: 2400,
  heightPx: 3200,
});
const photos = [photo('photo-14', 'image/jpeg', 20_011), photo('photo-15', 'image/png', 3_007)];
const first = nextVersion(linden(), { name: 'as drafted', made: '2026-10-18', note: '' }, undefined);
const second = nextVersion(
  { ...linden(), name: 'Linden petticoat, let out' },
  { name: 'after the fitting', made: '2026-10-21', note: 'hip' },
  { number: 1, garment: linden() },
);
const versions = [first, second];
const file = writeProject({ garment: linden(), versions, photos });

it('readProject gives back what writeProject put in, pictures byte for byte', () => {
  expect(readProject(file)).toEqual({
    kind: 'project',
    project: { garment: linden(), versions, photos },
    missingPhotos: 2,
  });
});

it('a project read and written again is the same file, byte for byte', () => {
  const read = readProject(file);
  if (read.kind !== 'project') throw new Error(read.kind);
  expect(Buffer.from(writeProject(read.project)).equals(Buffer.from(file))).toBe(true);
});

const hasPython = spawnSync('python3', ['--version']).status === 0;

it.skipIf(!hasPython)(
  'the file is a zip that Python opens too, with pictures under endings that others can show',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'project-'));
    const path = join(folder, 'linden.inchsquare.zip');
    writeFileSync(path, file);
    const python = (code: string) => execFileSync('python3', ['-c', code, path, folder], { encoding: 'utf8' });
    const names = python('import sys, zipfile; z = zipfile.ZipFile(sys.argv[1]); print(z.testzip(), *z.namelist())');
    expect(names.trim()).toBe(
      'None read-me.txt garment.json versions.json photos.json photos/photo-14.jpg photos/photo-15.png',
    );
    python('import sys, zipfile; zipfile.ZipFile(sys.argv[1]).extractall(sys.argv[2])');
    expect(readFileSync(join(folder, 'photos/photo-14.jpg')).equals(Buffer.from((photos[0] as PhotoRow).bytes))).toBe(
      true,
    );
    expect(JSON.parse(readFileSync(join(folder, 'garment.json'), 'utf8'))).toEqual(linden());
  },
);

it('readProject opens a garment whose pictures are missing, and says how many', () => {
  const without = writeProject({ garment: linden(), versions: [], photos: photos.slice(1) });
  expect(readProject(without)).toMatchObject({
    kind: 'project',
    project: { photos: [{ id: 'photo-15' }] },
    missingPhotos: 3,
  });
});

it('readProject refuses a file cut short at any twentieth, and one of no length', () => {
  for (let part = 0; part < 20; part++) {
    const cut = file.slice(0, Math.floor((file.length * part) / 20));
    expect(['not-a-project', 'broken'], `${part}/20`).toContain(readProject(cut).kind);
  }
});

it('readProject sees one wrong bit in a picture or in the draft', () => {
  for (const share of [0.02, 0.1, 0.3, 0.6, 0.9]) {
    const spoilt = file.slice();
    const at = Math.floor(file.length * share);
    spoilt[at] = (spoilt[at] ?? 0) ^ 4;
    expect(readProject(spoilt).kind, `bit at ${share}`).toBe('broken');
  }
});

it('readProject answers 300 files of chance, and the file itself with chance in it, without a fault', () => {
  for (let i = 0; i < 300; i++) {
    const noise = Uint8Array.from({ length: 4 + Math.floor(random() * 400) }, () => Math.floor(random() * 256));
    if (i % 2) noise.set([0x50, 0x4b, 3, 4]);
    expect(['not-a-project', 'broken']).toContain(readProject(noise).kind);
    const spoilt = file.slice();
    for (let n = 0; n < 9; n++) spoilt[Math.floor(random() * file.length)] = Math.floor(random() * 256);
    expect(['not-a-project', 'broken', 'project', 'too-large', 'not-a-garment']).toContain(readProject(spoilt).kind);
  }
});

const zip = (garment: string) => zipSync({ 'garment.json': strToU8(garment) });

it.each([
  ['a zip of something else', zipSync({ 'holiday.jpg': new Uint8Array(9) }), { kind: 'not-a-project' }],
  ['an empty zip', zipSync({}), { kind: 'not-a-project' }],
  ['words that are no JSON', zip('{"schema": 1,'), { kind: 'not-a-garment', where: 'schema', why: 'value' }],
  ['a newer shape', zip(`{"schema": ${SCHEMA + 1}}`), { kind: 'newer' }],
  ['a shape that never was', zip('{"schema": -3}'), { kind: 'not-a-garment', where: 'schema', why: 'value' }],
  ['a garment without pieces', zip('{"schema": 1}'), { kind: 'not-a-garment', where: 'id', why: 'value' }],
])('readProject refuses %s', (_, bytes, refusal) => {
  expect(readProject(bytes)).toEqual(refusal);
});

it('readProject refuses more entries than a garment can have, and never unpacks names that lead elsewhere', () => {
  const many = Object.fromEntries(
    Array.from({ length: 450 }, (_, index) => [`photos/p${index}.jpg`, new Uint8Array(1)] as const),
  );
  expect(readProject(zipSync({ ...many, 'garment.json': strToU8('{}') })).kind).toBe('too-large');
  const sly = zipSync({
    'garment.json': strToU8(JSON.stringify(linden())),
    'photos.json': strToU8(JSON.stringify([{ ...photos[0], id: '../photo-14', bytes: undefined }])),
    'photos/../photo-14.jpg': new Uint8Array(5),
  });
  expect(readProject(sly)).toMatchObject({ kind: 'project', project: { photos: [] }, missingPhotos: 4 });
});

it('readProject does not unpack what says it comes to more than 300 MB', () => {
  const bomb = zipSync({ 'garment.json': new Uint8Array(1000), 'photos/a.jpg': new Uint8Array(1000) });
  const view = new DataView(bomb.buffer, bomb.byteOffset, bomb.byteLength);
  // The size unpacked stands 24 bytes into each entry of the directory (APPNOTE.TXT 4.3.12).
  for (let at = 0; at < bomb.length - 4; at++) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 200 * 1024 * 1024, true);
  }
  expect(readProject(bomb).kind).toBe('too-large');
});

it('readProject does not unpack a drawing of more than 64 MB, however small it is packed', () => {
  const long = new Uint8Array(64 * 1024 * 1024 + 1);
  const file = zipSync({ 'garment.json': [long, { level: 1 }] });
  expect(file.length).toBeLessThan(1_000_000);
  expect(readProject(file)).toEqual({ kind: 'too-large' });
});

it('a version that is damaged does not hold the garment back', () => {
  const spoilt = {
    ...second,
    kept: { kind: 'change', change: [{ kind: 'value', at: ['name'], before: 'x', after: 5 }] },
  };
  const read = readProject(writeProject({ garment: linden(), versions: [first, spoilt as never], photos: [] }));
  expect(read).toMatchObject({ kind: 'project', project: { versions: [{ number: 1 }] } });
  if (read.kind === 'project') expect(read.project.versions).toHaveLength(1);
});

it('readProject refuses a file cut short at every byte of its end, where the directory is, and at any other', () => {
  const places = Array.from({ length: 400 }, (_, i) => file.length - 1 - i);
  for (const length of [...places, ...Array.from({ length: 60 }, (_, i) => Math.floor((i * file.length) / 61))]) {
    expect(['broken', 'not-a-project']).toContain(readProject(file.subarray(0, length)).kind);
  }
});

it('readProject names a field that it does not know, wherever it stands, and a shape from the future', () => {
  const withMore = (change: object) =>
    readProject(writeProject({ garment: { ...linden(), ...change } as never, versions: [], photos: [] })).kind;
  expect(withMore({ tomorrow: 1 })).toBe('unknown-field');
  expect(withMore({ paper: { ...linden().paper, scent: 'lavender' } })).toBe('unknown-field');
  expect(withMore({ pieces: linden().pieces.map((piece) => ({ ...piece, weight: 3 })) })).toBe('unknown-field');
  expect(withMore({ schema: SCHEMA + 40 })).toBe('newer');
  expect(withMore({ schema: -1 })).toBe('not-a-garment');
});
