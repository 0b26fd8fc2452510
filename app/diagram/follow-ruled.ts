import type { PhotoPoint } from '../../core/geometry/point';
import { inkLine } from '../../core/picture/ink-line';
import { inkNear } from '../../core/picture/ink-meeting';
import { wayTo } from '../../core/picture/ink-tree';
import { straightRun } from '../../core/picture/straight-run';
import { ensureInk, inGrey, inkRead, inPicture, usePictureInk } from '../photo/picture-ink';
import type { ReadyPicture } from '../photo/picture-store';
import { inkWork } from '../workers/ink-calls';

/** How far from an end the line is looked for, in pixels of the grey picture. */
const REACH_PX = 8;

/** The printed line between two places of a picture, as places along its middle; the two ends alone where none is seen. */
export async function followRuled(
  { key, file }: ReadyPicture,
  from: PhotoPoint,
  to: PhotoPoint,
): Promise<readonly PhotoPoint[]> {
  const ends = [from, to];
  void ensureInk({ key, file });
  await inkRead();
  const { ink } = usePictureInk.getState();
  if (ink.kind !== 'read' || ink.key !== key) return ends;
  const onInk = (end: PhotoPoint) => inkNear(ink.grey, inGrey(ink, end), REACH_PX)?.at ?? inGrey(ink, end);
  const [seed, aim] = [onInk(from), onInk(to)];
  const grown = await inkWork.call('grow', { key, file, seed, followed: [], spared: [] });
  const way = grown.kind === 'grown' ? wayTo(grown.tree, aim) : undefined;
  const line = way && inkLine(ink.grey, way);
  return straightRun(line?.points ?? [], seed, aim)?.map((place) => inPicture(ink, place)) ?? ends;
}
