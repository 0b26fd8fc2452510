import { createCaller } from './call';
import type { PhotoCalls } from './photo-calls';

/** A worker that has rested this long gives its memory back; a photo costs it up to 64 MB. */
const REST_MS = 20_000;

function photoCaller() {
  return createCaller<PhotoCalls>(() => new Worker(new URL('./photo.worker.ts', import.meta.url), { type: 'module' }), {
    restMs: REST_MS,
  });
}

/** Opens photos and lays them flat in full. */
export const photoWork = photoCaller();

/** Lays small copies flat while a corner moves: a worker of its own, so that it never waits for the large work. */
export const quickWork = photoCaller();
