import { beforeEach, expect, it, vi } from 'vitest';
import { emptyBrowser, type Program, reload } from './fresh';
import { seeded } from './random-edits';

const random = seeded(11);
const photo = (id: string, size = 5000) => ({
  id,
  bytes: Uint8Array.from({ length: size }, () => Math.floor(random() * 256)).buffer,
  type: 'image/jpeg',
  name: 'plate 14.jpg',
  widthPx: 2400,
  heightPx: 3200,
});

let program: Program;
beforeEach(async () => {
  program = await emptyBrowser();
});

it('getPhoto gives back after a reload what putPhoto kept, byte for byte', async () => {
  const kept = photo('plate', 300_001);
  await program.putPhoto(kept);
  const back = await (await reload()).getPhoto('plate');
  expect(back).toMatchObject({ type: 'image/jpeg', name: 'plate 14.jpg', widthPx: 2400, heightPx: 3200 });
  expect(Buffer.from(back?.bytes ?? new ArrayBuffer(0)).equals(Buffer.from(kept.bytes))).toBe(true);
});

it('getPhoto gives nothing for a picture that is not on this device', async () => {
  expect(await program.getPhoto('gone')).toBeUndefined();
});

it('putPhoto never writes over a picture', async () => {
  const first = photo('plate');
  await program.putPhoto(first);
  await program.putPhoto({ ...first });
  await expect(program.putPhoto(photo('plate'))).rejects.toThrow(/another picture/);
  expect((await program.getPhoto('plate'))?.bytes).toEqual(first.bytes);
});

it('putPhoto tries once more, as some browsers refuse a large picture at first', async () => {
  vi.spyOn(program.database.photos, 'add').mockRejectedValueOnce(new DOMException('Error preparing Blob', 'DataError'));
  const kept = photo('plate');
  await program.putPhoto(kept);
  expect((await program.getPhoto('plate'))?.bytes).toEqual(kept.bytes);
});

it('putPhoto says when the device will not take it; keepOrHoldPhoto holds it until the page is closed', async () => {
  vi.spyOn(program.database.photos, 'add').mockRejectedValue(new DOMException('no room', 'QuotaExceededError'));
  const held = photo('plate');
  await expect(program.putPhoto(held)).rejects.toThrow('no room');
  expect(await program.getPhoto('plate')).toBeUndefined();
  await program.keepOrHoldPhoto(held);
  expect(await program.getPhoto('plate')).toBe(held);
  expect(await (await reload()).getPhoto('plate')).toBeUndefined();
});

it('a connection lost under the program is opened anew', async () => {
  const kept = photo('plate');
  await program.putPhoto(kept);
  program.database.close();
  expect((await program.getPhoto('plate'))?.bytes).toEqual(kept.bytes);
});
