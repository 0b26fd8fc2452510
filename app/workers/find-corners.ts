import type { Quad } from '../../core/garment/diagram';
import type { Point } from '../../core/geometry/point';
import { proposedCorners } from '../../core/picture/corners';
import { type NotRefined, refinedCorners } from '../../core/picture/corners-refined';
import { greyOf } from '../../core/picture/grey';
import type { CornersProposed, CornersRefined, SmallCopy } from './photo-calls';

/** What may be squared up by, looked for in a small copy and told in pixels of the whole picture. */
export function cornersProposed(copy: SmallCopy, onProgress?: (share: number) => void): CornersProposed {
  const proposals = proposedCorners(greyIn(copy), onProgress).map(({ kind, sure, corners }) => ({
    kind,
    sure,
    corners: corners.map((corner) => inWhole(copy, corner)) as unknown as Quad,
  }));
  return { kind: 'proposed', proposals };
}

/** Corners of the whole picture brought onto the edges or printed lines seen between them. */
export function cornersOnEdges(copy: SmallCopy, corners: Quad): CornersRefined | NotRefined {
  const { across, down } = copy.pxToPx;
  const inCopy = corners.map(({ x, y }) => ({ x: x * across, y: y * down })) as unknown as Quad;
  const found = refinedCorners(greyIn(copy), inCopy, { sides: 'bowed' });
  if ('kind' in found) return found;
  return { kind: 'refined', corners: found.corners.map((corner) => inWhole(copy, corner)) as unknown as Quad };
}

function greyIn({ raster: { pixels, width, height } }: SmallCopy) {
  return greyOf(pixels, width, height);
}

function inWhole({ pxToPx }: SmallCopy, { x, y }: Point): Point {
  return { x: x / pxToPx.across, y: y / pxToPx.down };
}
