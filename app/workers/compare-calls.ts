import type { Piece } from '../../core/garment/piece';
import type { Affine } from '../../core/geometry/affine';
import { createCaller } from './call';

/** What the compare worker can be asked. */
export type CompareCalls = {
  readonly bestFit: {
    readonly args: { readonly under: Piece; readonly over: Piece; readonly mirrored: 'never' | 'allowed' };
    readonly answer: Affine;
  };
};

/** A worker that has rested this long is ended. */
const REST_MS = 60_000;

/** Lays one outline over another as near as it can off the main thread: large ones take a good part of a second. */
export const compareWork = createCaller<CompareCalls>(
  () => new Worker(new URL('./compare.worker.ts', import.meta.url), { type: 'module' }),
  { restMs: REST_MS },
);
