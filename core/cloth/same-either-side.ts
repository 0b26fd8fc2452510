import { boxOfPoints } from '../geometry/bounds';
import { type Ring, ringArea, ringLength } from '../geometry/polygon';
import { areasWithout } from '../geometry/polygon-boolean';

/** Sides this near (mm) are the same: a chord may stand so far off its curve on either side. */
const NEAR = 1;

/** Whether an outline is its own mirror image in the grain (along x), so that two layers of cloth give two of it. */
export function sameEitherSide(outline: Ring): boolean {
  const box = boxOfPoints(outline);
  if (!box) return false;
  const mirrored = outline.map(({ x, y }) => ({ x, y: box.minY + box.maxY - y })).reverse();
  const differs = areasWithout([outline], [mirrored]);
  if (differs.kind === 'unsure') return false;
  // A strip as wide as that along half the outline is as good as nothing; a notch or a step is more.
  const off = Math.abs(differs.rings.reduce((sum, ring) => sum + ringArea(ring), 0));
  const deepest = differs.rings.reduce((most, ring) => Math.max(most, depthOf(ring)), 0);
  return deepest < 2 * NEAR && off < NEAR * (ringLength(outline) / 2);
}

/** Twice the area over the length round: about how thick a sliver is. */
function depthOf(ring: Ring): number {
  const round = ringLength(ring);
  return round > 0 ? (2 * Math.abs(ringArea(ring))) / round : 0;
}
