import { create } from 'zustand';
import type { Point } from '../../core/geometry/point';
import { type InkNear, inkNear } from '../../core/picture/ink-meeting';
import { inkWork, type ReadInk } from '../workers/ink-calls';
import type { ReadyPicture } from './picture-store';

/** The ink of the one picture whose lines are being followed. */
type PictureInk =
  | { readonly kind: 'none' }
  | { readonly kind: 'reading'; readonly key: string; readonly share: number }
  | { readonly kind: 'unreadable'; readonly key: string }
  | (ReadInk & { readonly key: string });

export const usePictureInk = create<{ readonly ink: PictureInk }>(() => ({ ink: { kind: 'none' } }));

let stopReading = new AbortController();

/** Begins to read the ink of a picture, once, however often it is asked. */
export async function ensureInk({ key, file }: Pick<ReadyPicture, 'key' | 'file'>): Promise<void> {
  const { ink } = usePictureInk.getState();
  if (ink.kind !== 'none' && ink.key === key) return;
  leaveInk();
  const { signal } = stopReading;
  const isWanted = () => !signal.aborted;
  usePictureInk.setState({ ink: { kind: 'reading', key, share: 0 } });
  const answer = await inkWork.call(
    'read',
    { key, file },
    {
      signal,
      onProgress: (share) => isWanted() && usePictureInk.setState({ ink: { kind: 'reading', key, share } }),
    },
  );
  if (!isWanted()) return;
  usePictureInk.setState({ ink: answer.kind === 'read' ? { ...answer, key } : { kind: 'unreadable', key } });
}

/** Stops reading ink, or forgets what was read. */
export function leaveInk(): void {
  stopReading.abort();
  stopReading = new AbortController();
  if (usePictureInk.getState().ink.kind !== 'none') usePictureInk.setState({ ink: { kind: 'none' } });
}

/** When the ink that is being read has been read, or was given up; at once when none is. */
export function inkRead(): Promise<void> {
  return new Promise((resolve) => {
    if (usePictureInk.getState().ink.kind !== 'reading') {
      resolve();
      return;
    }
    const stop = usePictureInk.subscribe(({ ink }) => {
      if (ink.kind === 'reading') return;
      stop();
      resolve();
    });
  });
}

/** A place of the whole picture in the grey one, and back. */
export const inGrey = ({ pxToPx }: Pick<ReadInk, 'pxToPx'>, { x, y }: Point): Point => ({
  x: x * pxToPx.across,
  y: y * pxToPx.down,
});
export const inPicture = ({ pxToPx }: Pick<ReadInk, 'pxToPx'>, { x, y }: Point): Point => ({
  x: x / pxToPx.across,
  y: y / pxToPx.down,
});

/** Ink is looked for at least and at most this far off, in pixels of the grey picture. */
const LEAST_REACH_PX = 2;
const MOST_REACH_PX = 24;

/** The ink near a place of a picture, within `reachPx` of its pixels; nothing while it has not been read. */
export function inkNearby(key: string, place: Point, reachPx: number): InkNear | undefined {
  const { ink } = usePictureInk.getState();
  if (ink.kind !== 'read' || ink.key !== key) return undefined;
  const reach = Math.min(MOST_REACH_PX, Math.max(LEAST_REACH_PX, reachPx * ink.pxToPx.across));
  const found = inkNear(ink.grey, inGrey(ink, place), reach);
  return found && { ...found, at: inPicture(ink, found.at) };
}
