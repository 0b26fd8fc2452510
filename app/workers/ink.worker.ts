import { type Grey, greyOf, halved } from '../../core/picture/grey';
import { costsBeside, type InkCosts, inkCosts } from '../../core/picture/ink-costs';
import { inkTree } from '../../core/picture/ink-tree';
import { decodePicture } from './decode-picture';
import { type InkCalls, MOST_INK_PX, type ReadInk } from './ink-calls';
import type { PhotoFile, PictureRefusal } from './photo-calls';
import { serve, type WorkerPort } from './serve';

/** How far from where it begins a line is followed, in pixels of the grey picture: most of a page. */
const REACH_PX = 1600;

/** The share of the reading that decoding takes. */
const DECODED = 0.4;

let held: { readonly key: string; readonly costs: InkCosts } | undefined;

async function readInk(
  { key, file }: PhotoFile,
  tell: (share: number) => void,
): Promise<{ readonly read: ReadInk; readonly costs: InkCosts } | PictureRefusal> {
  held = undefined;
  const copy = await decodePicture(file);
  if (copy.kind !== 'decoded') return copy;
  tell(DECODED);
  const { grey, pxToPx } = smallEnough(greyOf(copy.raster.pixels, copy.raster.width, copy.raster.height), copy.pxToPx);
  const costs = inkCosts(grey, (share) => tell(DECODED + (1 - DECODED) * share));
  held = { key, costs };
  return { read: { kind: 'read', grey, pxToPx }, costs };
}

function smallEnough(grey: Grey, pxToPx: ReadInk['pxToPx']): Pick<ReadInk, 'grey' | 'pxToPx'> {
  if (grey.width * grey.height <= MOST_INK_PX) return { grey, pxToPx };
  return smallEnough(halved(grey), { across: pxToPx.across / 2, down: pxToPx.down / 2 });
}

// The compiler takes `self` for a window; in a worker it is the port itself.
serve<InkCalls>(self as unknown as WorkerPort, {
  async read(photo, tell) {
    const done = await readInk(photo, tell);
    if ('kind' in done) return { answer: done };
    return { answer: done.read, transfer: [done.read.grey.data.buffer] };
  },

  async grow({ seed, followed, spared, ...photo }, tell) {
    // After a rest the worker is a new one, and reads the picture again.
    const again = held?.key === photo.key ? undefined : await readInk(photo, tell);
    if (again && 'kind' in again) return { answer: again };
    const costs = again?.costs ?? held?.costs;
    if (!costs) throw new Error('the ink was read a moment ago');
    const tree = inkTree(costsBeside(costs, followed, spared), seed, { reach: REACH_PX, onProgress: tell });
    return { answer: { kind: 'grown', tree }, transfer: [tree.step.buffer] };
  },
});
