import { beforeEach, expect, it } from 'vitest';
import { drawnFrom } from '../../app/shelf/make-cover';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program } from './fresh';

type WithCovers = Program & typeof import('../../app/storage/covers');

let program: WithCovers;
beforeEach(async () => {
  program = { ...(await emptyBrowser()), ...(await import('../../app/storage/covers')) };
  await program.startGarment(linden());
});

const ID = 'linden-petticoat';
const cover = (id: string) => ({
  id,
  changed: 7,
  madeFrom: 'pieces 11',
  bytes: new Uint8Array([7, 11, 13]).buffer,
  type: 'image/jpeg',
});

it('a kept cover is given back; one that was lost or is damaged is none, so that it is made anew', async () => {
  expect(await program.keptCover(ID)).toBeUndefined();
  await program.keepCover(cover(ID));
  expect(await program.keptCover(ID)).toMatchObject({ changed: 7, madeFrom: 'pieces 11', type: 'image/jpeg' });
  await program.database.covers.update(ID, { bytes: new ArrayBuffer(0) });
  expect(await program.keptCover(ID)).toBeUndefined();
  await program.database.covers.put({ id: ID } as never);
  expect(await program.keptCover(ID)).toBeUndefined();
});

it('a cover goes with its garment, and none is kept of a garment that is gone', async () => {
  await program.keepCover(cover(ID));
  await program.removeFromShelf(ID);
  expect(await program.database.covers.count()).toBe(0);
  await program.keepCover(cover(ID));
  expect(await program.database.covers.count()).toBe(0);
});

it('a drawing is made anew when a piece changes its shape, and not for a word or a measure', () => {
  const garment = linden();
  const [piece, ...others] = garment.pieces;
  if (!piece) throw new Error('the sample has a piece');
  const [corner, ...corners] = piece.corners;
  if (!corner) throw new Error('a piece has a corner');
  const moved = { ...corner, at: { x: corner.at.x + 0.7, y: corner.at.y } };
  expect(drawnFrom({ ...garment, remarks: 'hem once more', name: 'Ash' })).toBe(drawnFrom(garment));
  expect(
    drawnFrom({ ...garment, pieces: [{ ...piece, corners: [moved, ...corners] }, ...others] } as typeof garment),
  ).not.toBe(drawnFrom(garment));
});
