import { decodePicture, type WorkingCopy } from './decode-picture';
import { cornersOnEdges, cornersProposed, squaresWithin } from './find-corners';
import { MOST_SMALL_PX, type PhotoCalls, type PhotoFile, type PictureRefusal } from './photo-calls';
import { bitmapsOf, halvings, laidFlat, smallCopy } from './picture-levels';
import { serve, type WorkerPort } from './serve';

/** The photo opened last: laying it flat again and again should not decode it each time. */
let held: { readonly key: string; readonly copy: WorkingCopy } | undefined;

async function copyOf({ key, file }: PhotoFile): Promise<WorkingCopy | PictureRefusal> {
  if (held?.key === key) return held.copy;
  // The old one goes first, so that there are never two in memory.
  held = undefined;
  const copy = await decodePicture(file);
  if (copy.kind === 'decoded') held = { key, copy };
  return copy;
}

// The compiler takes `self` for a window; in a worker it is the port itself.
serve<PhotoCalls>(self as unknown as WorkerPort, {
  async open(photo) {
    const copy = await copyOf(photo);
    if (copy.kind !== 'decoded') return { answer: copy };
    const { format, widthPx, heightPx, onPaper, focalPx } = copy;
    const rasters = halvings(copy.raster);
    const levels = await bitmapsOf(rasters);
    const small = smallCopy(copy, rasters, MOST_SMALL_PX);
    const type = `image/${format}` as const;
    const said = { ...(onPaper ? { onPaper } : {}), ...(focalPx === undefined ? {} : { focalPx }) };
    return { answer: { kind: 'opened', type, widthPx, heightPx, ...said, levels, small }, transfer: levels };
  },

  async layFlat({ plan, ...photo }, tell) {
    const copy = await copyOf(photo);
    if (copy.kind !== 'decoded') return { answer: copy };
    const levels = await bitmapsOf(halvings(laidFlat(copy, plan, tell)));
    return { answer: { kind: 'flat', levels }, transfer: levels };
  },

  async proposeCorners({ small }, tell) {
    return { answer: cornersProposed(small, tell) };
  },

  async refineCorners({ corners, ...photo }, tell) {
    const copy = await copyOf(photo);
    if (copy.kind !== 'decoded') return { answer: copy };
    tell(0.3);
    return { answer: cornersOnEdges(copy, corners) };
  },

  async findSquares({ corners, ...photo }, tell) {
    const copy = await copyOf(photo);
    if (copy.kind !== 'decoded') return { answer: copy };
    tell(0.3);
    return { answer: squaresWithin(copy, corners) };
  },

  async layFlatQuickly({ small, plan }) {
    const levels = await bitmapsOf([laidFlat(small, plan)]);
    return { answer: { kind: 'flat', levels }, transfer: levels };
  },
});
