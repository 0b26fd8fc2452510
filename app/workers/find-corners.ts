import type { Quad, SidePlaces } from '../../core/garment/diagram';
import { distance, type Point } from '../../core/geometry/point';
import { proposedCorners } from '../../core/picture/corners';
import { type NotRefined, refinedCorners, refinedSides } from '../../core/picture/corners-refined';
import { bowOf, placesOn } from '../../core/picture/curl-side';
import { greyOf } from '../../core/picture/grey';
import { foundGrid, type NoGrid } from '../../core/picture/grid';
import { squaresMap } from '../../core/picture/grid-map';
import type { Sides } from '../../core/picture/page-outline';
import type { CornersProposed, CornersRefined, SidesFound, SmallCopy, SquaresFound } from './photo-calls';

/** What may be squared up by, looked for in a small copy and told in pixels of the whole picture. */
export function cornersProposed(copy: SmallCopy, onProgress?: (share: number) => void): CornersProposed {
  const grey = greyIn(copy);
  const proposals = proposedCorners(grey, onProgress).map((each) => {
    const { sides } = refinedSides(grey, each) ?? each;
    return { kind: each.kind, sure: each.sure, ...sidesInWhole(copy, sides) };
  });
  return { kind: 'proposed', proposals };
}

/** Corners of the whole picture brought onto the edges or printed lines seen between them. */
export function cornersOnEdges(copy: SmallCopy, corners: Quad): CornersRefined | NotRefined {
  const found = refinedCorners(greyIn(copy), inCopy(copy, corners), { sides: 'bowed' });
  return 'kind' in found ? found : { kind: 'refined', ...sidesInWhole(copy, found.sides) };
}

/** The printed squares within four corners of the whole picture. */
export function squaresWithin(copy: SmallCopy, corners: Quad): SquaresFound | NoGrid {
  const found = foundGrid(greyIn(copy), inCopy(copy, corners));
  if (found.kind === 'no-grid') return found;
  const map = squaresMap(found.crossings.map((each) => ({ ...each, at: inWhole(copy, each.at) })));
  return map.kind === 'squares-map' ? { kind: 'squares', map } : { kind: 'no-grid', why: map.why };
}

/** A side that bows by less than this share of its length, or by less than these pixels of the copy, may be straight. */
const BOWED = { share: 0.004, px: 1.5 };

function sidesInWhole(copy: SmallCopy, sides: Sides): SidesFound {
  const whole = (place: Point) => inWhole(copy, place);
  return {
    corners: sides.map(({ from }) => whole(from)) as unknown as Quad,
    through: sides.map((side) => placesOn(side).map(whole)) as unknown as SidePlaces,
    bowed: sides.some((side) => bowOf(side) > Math.max(BOWED.px, BOWED.share * distance(side.from, side.to))),
  };
}

function greyIn({ raster: { pixels, width, height } }: SmallCopy) {
  return greyOf(pixels, width, height);
}

function inCopy({ pxToPx: { across, down } }: SmallCopy, corners: Quad): Quad {
  return corners.map(({ x, y }) => ({ x: x * across, y: y * down })) as unknown as Quad;
}

function inWhole({ pxToPx }: SmallCopy, { x, y }: Point): Point {
  return { x: x / pxToPx.across, y: y / pxToPx.down };
}
