import { beforeEach, expect, it } from 'vitest';
import { writeProject } from '../../app/storage/project-file';
import type { Garment } from '../../core/garment/garment';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program } from './fresh';

const ID = 'linden-petticoat';
const photo = (id: string, ...bytes: number[]) => ({
  id,
  bytes: new Uint8Array(bytes).buffer,
  type: 'image/png',
  name: `${id}.png`,
  widthPx: 30,
  heightPx: 40,
});
const file = (garment: Garment, ...photos: ReturnType<typeof photo>[]) =>
  new File([writeProject({ garment, versions: [], photos }).slice()], 'linden.inchsquare.zip');

let program: Program;
beforeEach(async () => {
  program = await emptyBrowser();
});
const onTable = () => program.useGarment.getState().garment as Garment;

it('openProjectFile brings a garment and its pictures onto an empty shelf as they were', async () => {
  const reading = await program.openProjectFile(file(linden(), photo('photo-14', 7, 8), photo('photo-15', 9)));
  expect(reading).toMatchObject({ kind: 'project', missingPhotos: 2 });
  expect(onTable()).toEqual(linden());
  expect(new Uint8Array((await program.getPhoto('photo-14'))?.bytes ?? new ArrayBuffer(0))).toEqual(
    new Uint8Array([7, 8]),
  );
  expect((await program.listShelf()).map(({ id }) => id)).toEqual([ID]);
});

it('openProjectFile lays a garment that is on the shelf already beside it, and changes nothing of the other', async () => {
  await program.startGarment({ ...linden(), name: 'Mine' });
  await program.openProjectFile(file({ ...linden(), name: 'From the file' }));
  expect(onTable().id).not.toBe(ID);
  expect((await program.takeForSaving(ID))?.name).toBe('Mine');
  expect(await program.listShelf()).toHaveLength(2);
});

it('openProjectFile keeps a picture once, and another picture of the same id under a fresh one', async () => {
  await program.putPhoto(photo('photo-14', 1, 2, 3));
  await program.putPhoto(photo('photo-15', 4, 5));
  await program.openProjectFile(file(linden(), photo('photo-14', 6, 6, 6), photo('photo-15', 4, 5)));
  expect(await program.database.photos.count()).toBe(3);
  const [changed, same] = onTable().diagrams.map(({ photoId }) => photoId);
  expect(same).toBe('photo-15');
  expect(changed).not.toBe('photo-14');
  const bytes = async (id = '') => [...new Uint8Array((await program.getPhoto(id))?.bytes ?? new ArrayBuffer(0))];
  expect([await bytes('photo-14'), await bytes(changed)]).toEqual([
    [1, 2, 3],
    [6, 6, 6],
  ]);
});

it('a file that is refused changes neither the table nor the shelf', async () => {
  await program.startGarment(linden());
  expect(await program.openProjectFile(new File(['holiday'], 'holiday.zip'))).toEqual({ kind: 'not-a-project' });
  expect(onTable()).toEqual(linden());
  expect(await program.listShelf()).toHaveLength(1);
});

it('openProjectFile brings the versions along, under the id the garment has here', async () => {
  const { nextVersion } = await import('../../core/garment/version');
  const head = { name: 'as drafted', made: '2026-10-18', note: '' };
  const versions = [nextVersion(linden(), head, undefined)];
  await program.startGarment({ ...linden(), name: 'Mine' });
  await program.openProjectFile(
    new File([writeProject({ garment: linden(), versions, photos: [] }).slice()], 'linden.inchsquare.zip'),
  );
  expect(await program.versionsOf(ID)).toEqual([]);
  expect(await program.versionsOf(onTable().id)).toMatchObject([{ number: 1, name: 'as drafted' }]);
});
