import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { beforeEach, expect, it } from 'vitest';
import { readProject, writeProject } from '../../app/storage/project-file';
import { areTooMuch, readShelf, type Shelved, writeShelf } from '../../app/storage/whole-shelf';
import type { Garment } from '../../core/garment/garment';
import { newGarment } from '../../core/garment/new-garment';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program } from './fresh';

const bare = (id: string, name: string): Garment => ({
  ...newGarment({ newId: () => 'set', today: '2026-10-18', name, shownIn: 'in' }),
  id,
});
const project = (garment: Garment) => writeProject({ garment, versions: [], photos: [] });
const shelved = (garment: Garment, isPutAway = false): Shelved => ({
  name: garment.name,
  file: project(garment),
  isPutAway,
});
const asFile = (bytes: Uint8Array, name: string) => new File([bytes.slice()], name);

let program: Program & typeof import('../../app/storage/bring-many');
beforeEach(async () => {
  program = { ...(await emptyBrowser()), ...(await import('../../app/storage/bring-many')) };
});

it('readShelf gives back what writeShelf put in, in order, two of one name apart', () => {
  const all = [shelved(bare('a', 'Apron')), shelved(bare('b', 'Apron'), true), shelved(bare('c', 'Ärmel / 7'))];
  const read = readShelf(writeShelf(all));
  if (read.kind !== 'shelf') throw new Error(read.kind);
  const inside = read.garments.map(({ file, isPutAway }) => {
    const one = readProject(file);
    return [one.kind === 'project' && one.project.garment.id, isPutAway];
  });
  expect(inside).toEqual([
    ['a', false],
    ['b', true],
    ['c', false],
  ]);
});

it.skipIf(spawnSync('python3', ['--version']).status !== 0)(
  'a shelf file is a zip that Python opens too, and each garment in it another',
  () => {
    const path = join(mkdtempSync(join(tmpdir(), 'shelf-')), 'shelf.zip');
    writeFileSync(path, writeShelf([shelved(bare('a', 'Apron')), shelved(bare('b', 'Bodice'), true)]));
    const script = `
import io, json, sys, zipfile
outer = zipfile.ZipFile(sys.argv[1])
assert outer.testzip() is None
for name in outer.namelist():
    if name.endswith('.inchsquare.zip'):
        print(name, json.loads(zipfile.ZipFile(io.BytesIO(outer.read(name))).read('garment.json'))['id'])`;
    expect(execFileSync('python3', ['-c', script, path], { encoding: 'utf8' }).trim().split('\n')).toEqual([
      '1-apron.inchsquare.zip a',
      'put-away/2-bodice.inchsquare.zip b',
    ]);
  },
);

it('no garment is lost for its name, whatever it is called', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'grapheme', maxLength: 200 }), { minLength: 1, maxLength: 11 }), (names) => {
      const read = readShelf(
        writeShelf(names.map((name, i) => ({ name, file: Uint8Array.of(7, i), isPutAway: false }))),
      );
      if (read.kind !== 'shelf') throw new Error(read.kind);
      expect(read.garments.map(({ file }) => file[1])).toEqual(names.map((_, i) => i));
    }),
  );
  // Letters of two halves, one of which a cut by halves would leave.
  const old = readShelf(writeShelf([{ name: `a${'𐌰'.repeat(90)}`, file: Uint8Array.of(7), isPutAway: true }]));
  expect(old).toMatchObject({ kind: 'shelf', garments: [{ name: `1-a${'𐌰'.repeat(44)}`, isPutAway: true }] });
});

it('more garments than can be read back are not put into one file', () => {
  const many = (count: number) =>
    Array.from({ length: count }, () => ({ name: 'Apron', file: Uint8Array.of(7), isPutAway: false }));
  expect([areTooMuch(many(1000)), areTooMuch(many(1001))]).toEqual([false, true]);
});

it('one bit turned in one garment spoils that one and no other', async () => {
  const file = writeShelf([shelved(bare('a', 'Apron')), shelved(bare('b', 'Bodice'))]);
  const at = Buffer.from(file).indexOf('1-apron.inchsquare.zip') + 300;
  file[at] = (file[at] as number) ^ 4;
  const outcomes = await program.bringMany([asFile(file, 'shelf.zip')]);
  expect(outcomes).toEqual([
    { kind: 'refused', name: '1-apron', why: 'broken' },
    { kind: 'in', name: 'Bodice', missingPhotos: 0 },
  ]);
  expect((await program.listShelf()).map(({ name }) => name)).toEqual(['Bodice']);
});

it('what is no shelf is said to be none, and one cut short is broken', () => {
  expect(readShelf(strToU8('holiday'))).toEqual({ kind: 'not-a-shelf' });
  expect(readShelf(zipSync({ 'notes.txt': strToU8('x') }))).toEqual({ kind: 'not-a-shelf' });
  expect(readShelf(project(linden()))).toEqual({ kind: 'not-a-shelf' });
  const outside = zipSync({ '../a.inchsquare.zip': strToU8('x'), 'a/b/c.inchsquare.zip': strToU8('x') });
  expect(readShelf(outside)).toEqual({ kind: 'not-a-shelf' });
  const whole = writeShelf([shelved(bare('a', 'Apron'))]);
  expect(readShelf(whole.subarray(0, whole.length - 40))).toEqual({ kind: 'broken' });
  const tooMany = Object.fromEntries(Array.from({ length: 1001 }, (_, i) => [`${i}.inchsquare.zip`, strToU8('x')]));
  expect(readShelf(zipSync(tooMany))).toEqual({ kind: 'too-large' });
});

it('of twelve files eleven come in, and the one that cannot be read is named with its reason', async () => {
  const files = Array.from({ length: 11 }, (_, i) => asFile(project(bare(`g${i}`, `Garment ${i}`)), `${i}.zip`));
  files.splice(4, 0, asFile(strToU8('holiday'), 'holiday.jpg'));
  const outcomes = await program.bringMany(files);
  expect(outcomes.filter(({ kind }) => kind === 'in')).toHaveLength(11);
  expect(outcomes[4]).toEqual({ kind: 'refused', name: 'holiday.jpg', why: 'not-a-project' });
  expect(await program.listShelf()).toHaveLength(11);
  expect((await program.takeForSaving('g7'))?.name).toBe('Garment 7');
  expect(program.useGarment.getState().garment).toBeUndefined();
});

it('what is here already is left alone; another state of it is laid beside', async () => {
  await program.startGarment(bare('a', 'Apron'));
  await program.startGarment(bare('b', 'Mine'));
  const outcomes = await program.bringMany([
    asFile(project(bare('a', 'Apron')), 'a.zip'),
    asFile(project(bare('b', 'From the file')), 'b.zip'),
  ]);
  expect(outcomes.map(({ kind }) => kind)).toEqual(['here', 'beside']);
  expect((await program.listShelf()).map(({ name }) => name).sort()).toEqual(['Apron', 'From the file', 'Mine']);
  expect((await program.takeForSaving('b'))?.name).toBe('Mine');
});

it('a whole shelf comes back on an empty device as it was: garments, versions, pictures, and what was put away', async () => {
  const picture = {
    id: 'photo-14',
    bytes: new Uint8Array([7, 11, 13]).buffer,
    type: 'image/png',
    name: 'p.png',
    widthPx: 3,
    heightPx: 4,
  };
  await program.putPhoto(picture);
  await program.startGarment(bare('a', 'Apron'));
  await program.startGarment(linden());
  await program.keepVersion(linden(), { name: 'as drafted', made: '2026-10-18', note: '' });
  await program.putAway('a', true);
  const shelf = await program.wholeShelf();
  if (shelf.kind !== 'shelf') throw new Error(shelf.kind);
  const { file } = shelf;
  expect([shelf.ids.length, shelf.leftOut]).toEqual([2, []]);

  program = { ...(await emptyBrowser()), ...(await import('../../app/storage/bring-many')) };
  expect(await program.listShelf()).toEqual([]);
  const outcomes = await program.bringMany([asFile(file, 'shelf.zip')]);
  expect(outcomes.map(({ kind }) => kind)).toEqual(['in', 'in']);
  expect(await program.takeForSaving(linden().id)).toEqual(linden());
  expect(await program.versionsOf(linden().id)).toMatchObject([{ number: 1, name: 'as drafted' }]);
  expect(new Uint8Array((await program.getPhoto('photo-14'))?.bytes ?? new ArrayBuffer(0))).toEqual(
    new Uint8Array([7, 11, 13]),
  );
  const away = Object.fromEntries((await program.listShelf()).map(({ name, isPutAway }) => [name, isPutAway]));
  expect(away).toEqual({ Apron: true, [linden().name]: false });
  expect((await program.bringMany([asFile(file, 'shelf.zip')])).map(({ kind }) => kind)).toEqual(['here', 'here']);
});

it('a garment that cannot be read is left out of the file by its name', async () => {
  await program.startGarment(bare('a', 'Apron'));
  await program.database.shelf.put({ id: 'odd', name: 'Odd one', changed: 5, pieces: 0 });
  expect(await program.wholeShelf()).toMatchObject({ kind: 'shelf', ids: ['a'], leftOut: ['Odd one'] });
});
