import type { CleanUp } from '../../core/picture/cleaned';
import { createCaller } from './call';

/** What the clean-up worker can be asked. */
export type CleanCalls = {
  /** The cleaned-up picture and its halves, the finest first. */
  readonly clean: {
    readonly args: { readonly picture: ImageBitmap; readonly how: CleanUp };
    readonly answer: { readonly kind: 'cleaned'; readonly levels: readonly ImageBitmap[] };
  };
};

/** A worker that has rested this long is ended. */
const REST_MS = 5_000;

/** Cleans pictures up for the eye: a worker of its own, so that stopping it costs no decoded photo. */
export const cleanWork = createCaller<CleanCalls>(
  () => new Worker(new URL('./clean.worker.ts', import.meta.url), { type: 'module' }),
  { restMs: REST_MS },
);
