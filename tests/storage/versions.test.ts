import { beforeEach, expect, it } from 'vitest';
import { garmentOfVersion } from '../../core/garment/version';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program, reload } from './fresh';

const ID = 'linden-petticoat';
const head = (name: string) => ({ name, made: '2026-11-07', note: 'after the fitting' });

let program: Program;
beforeEach(async () => {
  program = await emptyBrowser();
  await program.startGarment(linden());
});

it('keepVersion counts on, and every version opens as it was after the page is loaded anew', async () => {
  await program.keepVersion(linden(), head('as drafted'));
  await program.keepVersion({ ...linden(), name: 'Second' }, head('second'));
  const again = await reload();
  const versions = await again.versionsOf(ID);
  expect(versions.map(({ number, name }) => [number, name])).toEqual([
    [1, 'as drafted'],
    [2, 'second'],
  ]);
  expect(versions[1]?.kept.kind).toBe('change');
  expect(garmentOfVersion(versions, 2)?.name).toBe('Second');
  expect(garmentOfVersion(versions, 1)).toEqual(linden());
});

it('keepVersion gives two that come at once two numbers', async () => {
  await Promise.all([program.keepVersion(linden(), head('one')), program.keepVersion(linden(), head('other'))]);
  expect((await program.versionsOf(ID)).map(({ number }) => number)).toEqual([1, 2]);
});

it('keepVersion keeps the next whole where the last cannot be read', async () => {
  await program.keepVersion(linden(), head('one'));
  await program.database.versions.update([ID, 1], { kept: { kind: 'whole', garment: 5 } });
  await program.keepVersion(linden(), head('two'));
  const versions = await program.versionsOf(ID);
  expect(versions.map(({ number }) => number)).toEqual([1, 2]);
  expect(garmentOfVersion(versions, 1)).toBeUndefined();
  expect(garmentOfVersion(versions, 2)).toEqual(linden());
});

it('describeVersion gives one version another name or note and leaves what it holds', async () => {
  await program.keepVersion(linden(), head('one'));
  await program.keepVersion({ ...linden(), name: 'Second' }, head('two'));
  await program.describeVersion(ID, 1, { name: 'as drafted' });
  await program.describeVersion(ID, 1, { note: 'hip snug' });
  const versions = await (await reload()).versionsOf(ID);
  expect(versions.map(({ name, note }) => [name, note])).toEqual([
    ['as drafted', 'hip snug'],
    ['two', 'after the fitting'],
  ]);
  expect(garmentOfVersion(versions, 2)?.name).toBe('Second');
});

it('removeFromShelf takes the versions along and leaves those of others', async () => {
  await program.keepVersion(linden(), head('one'));
  await program.keepVersion({ ...linden(), id: 'apron' }, head('apron'));
  await program.removeFromShelf(ID);
  expect(await program.versionsOf(ID)).toEqual([]);
  expect(await program.versionsOf('apron')).toHaveLength(1);
});

it('a picture that only an old version speaks of stays while that garment does', async () => {
  const photo = {
    id: 'plate',
    bytes: new Uint8Array([7, 11]).buffer,
    type: 'image/png',
    name: 'p',
    widthPx: 3,
    heightPx: 4,
  };
  await program.database.photos.put(photo);
  const [diagram] = linden().diagrams;
  if (diagram) {
    const apron = { ...linden(), id: 'apron', diagrams: [{ ...diagram, photoId: 'plate' }] };
    await program.keepVersion(apron, head('with the plate'));
  }
  await program.removeFromShelf(ID);
  expect(await program.database.photos.get('plate')).toBeDefined();
});
