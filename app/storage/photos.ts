import { connected } from './connection';
import { database, type PhotoRow } from './database';
import { lookAtRoom } from './device-room';

/** Pictures the device would not take: here until the page is closed. */
const held = new Map<string, PhotoRow>();

/**
 * Keeps a picture as it came, byte for byte. A picture once kept is never written over: the same one again changes
 * nothing, another one under its id throws. Throws too when the device will not take it.
 */
export async function putPhoto(photo: PhotoRow): Promise<void> {
  const other = await connected(() => database.photos.get(photo.id));
  if (other) {
    if (hasSameBytes(other, photo)) return;
    throw new Error(`another picture is kept under ${photo.id}`);
  }
  // One more try: some browsers fail to take a large picture at the first.
  await connected(() => database.photos.add(photo)).catch(() => database.photos.add(photo));
  void lookAtRoom('now');
}

/** Keeps a picture, or, when the device will not take it, holds it until the page is closed. */
export async function keepOrHoldPhoto(photo: PhotoRow): Promise<void> {
  try {
    await putPhoto(photo);
  } catch {
    holdPhoto(photo);
  }
}

/** Holds a picture until the page is closed, where none is kept under its id. */
export function holdPhoto(photo: PhotoRow): void {
  held.set(photo.id, photo);
}

/** A kept picture; `undefined` when it is not on this device. */
export async function getPhoto(id: string): Promise<PhotoRow | undefined> {
  return held.get(id) ?? connected(() => database.photos.get(id));
}

/** Whether two pictures are the same, byte for byte. */
export function hasSameBytes(one: PhotoRow, other: PhotoRow): boolean {
  if (one.bytes.byteLength !== other.bytes.byteLength) return false;
  const [a, b] = [new Uint8Array(one.bytes), new Uint8Array(other.bytes)];
  return a.every((byte, index) => byte === b[index]);
}

/** The ids of every picture on this device. */
export async function photoIds(): Promise<string[]> {
  return connected(() => database.photos.toCollection().primaryKeys());
}
