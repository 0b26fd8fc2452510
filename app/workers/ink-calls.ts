import type { Point } from '../../core/geometry/point';
import type { Grey } from '../../core/picture/grey';
import type { InkTree } from '../../core/picture/ink-tree';
import { createCaller } from './call';
import type { PhotoFile, PictureRefusal, SmallCopy } from './photo-calls';

/** A picture in grey, small enough to follow its ink in. */
export interface ReadInk {
  readonly kind: 'read';
  readonly grey: Grey;
  /** Pixels of it to one of the whole upright picture, across and down. */
  readonly pxToPx: SmallCopy['pxToPx'];
}

export interface GrownInk {
  readonly kind: 'grown';
  readonly tree: InkTree;
}

/** Places of the grey picture: where the ways begin, and what was followed before, with the places it may lead back to. */
export interface GrowPlan {
  readonly seed: Point;
  readonly followed: readonly Point[];
  readonly spared: readonly Point[];
}

export type InkCalls = {
  /** Reads the ink of a picture. The worker keeps the last. */
  read: { args: PhotoFile; answer: ReadInk | PictureRefusal };
  /** Grows the cheapest ways from a place of the grey picture, along lines other than those followed already. */
  grow: { args: PhotoFile & GrowPlan; answer: GrownInk | PictureRefusal };
};

/** The largest copy in which ink is followed: a page of 12 megapixels at half its size each way. */
export const MOST_INK_PX = 3.2e6;

/** A worker that has rested this long gives its memory back. */
const REST_MS = 120_000;

/** Reads and follows ink: a worker of its own, so that a line is never held up by a picture being laid flat. */
export const inkWork = createCaller<InkCalls>(
  () => new Worker(new URL('./ink.worker.ts', import.meta.url), { type: 'module' }),
  { restMs: REST_MS },
);
