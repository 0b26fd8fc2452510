import type { Diagram } from '../garment/diagram';
import { type Box, boxOfPoints, commonBox } from '../geometry/bounds';
import type { PhotoPoint, Point, TablePoint } from '../geometry/point';
import { type DiagramMap, photoToTable, planeToTable, tableToPhoto } from './diagram-map';

/** How to make the flat picture that lies on the table. */
export interface SquaredPicturePlan {
  /** Where its top left corner lies, and how much of the table one of its pixels covers, across and down (mm). */
  readonly origin: TablePoint;
  readonly mmPerPx: { readonly across: number; readonly down: number };
  readonly width: number;
  readonly height: number;
  /** The table it is made for. */
  readonly map: DiagramMap;
}

/** Where a place of the flat picture (px) is seen in the whole photo (px); `undefined` behind the camera. */
export function flatToPhoto({ origin, mmPerPx, map }: SquaredPicturePlan, { x, y }: Point): PhotoPoint | undefined {
  return tableToPhoto(map, { x: origin.x + x * mmPerPx.across, y: origin.y + y * mmPerPx.down });
}

/** How far beyond the rectangle the picture is shown, as a share of its sides: perspective blows far parts up. */
const BEYOND = 0.6;

/** And of a page whose sides or squares are followed: the bend is only guessed beyond them. */
const BEYOND_BENT = 0.15;

const MOST_SIDE_PX = 4096;

/**
 * Plans the flat picture: all of the photo, or as much as lies within {@link BEYOND} of the rectangle, at about one pixel
 * for a pixel, with at most `mostPx` pixels in all and 4096 a side.
 */
export function planSquaredPicture(
  diagram: Diagram,
  map: DiagramMap,
  options: { readonly mostPx: number },
): SquaredPicturePlan | undefined {
  const box = shownBox(diagram, map);
  if (!box) return undefined;
  const [across, down] = [box.maxX - box.minX, box.maxY - box.minY];
  const natural = { across: across / map.across, down: down / map.down };
  const fit = Math.min(
    1,
    MOST_SIDE_PX / natural.across,
    MOST_SIDE_PX / natural.down,
    Math.sqrt(options.mostPx / (natural.across * natural.down)),
  );
  const width = Math.max(1, Math.floor(natural.across * fit));
  const height = Math.max(1, Math.floor(natural.down * fit));
  const mmPerPx = { across: across / width, down: down / height };
  return { origin: { x: box.minX, y: box.minY }, mmPerPx, width, height, map };
}

/** The part of the table the picture covers (mm); `undefined` when the rectangle lies far outside the picture. */
export function shownBox(diagram: Diagram, map: DiagramMap): Box | undefined {
  // A half that is laid onto another must not cover it with what lies beyond its own page.
  if (map.plane.aspectFrom === 'flat' || map.joint) return boxAround(map, 0);
  const { laid } = map.plane;
  const border = borderOf(diagram, laid.kind === 'plain' ? 1 : 8);
  const placed = border.flatMap((place) => photoToTable(map, place) ?? []);
  // With a place beyond the horizon the picture has no end that way.
  const seen = placed.length === border.length ? boxOfPoints(placed) : undefined;
  const limit = boxAround(map, laid.kind === 'plain' ? BEYOND : BEYOND_BENT);
  return seen ? commonBox(limit, seen) : limit;
}

/** The part of the table that the rectangle it was squared up by covers, or the whole flat picture, and a share more. */
export function boxAround(map: DiagramMap, beyond: number): Box {
  const { across, down } = map.plane;
  const corners = [-beyond, 1 + beyond].flatMap((u) =>
    [-beyond, 1 + beyond].map((v) => ({ x: u * across, y: v * down })),
  );
  return boxOfPoints(corners.map((corner) => planeToTable(map, corner))) as Box;
}

/** Places along the border of the picture, so many to a side. */
function borderOf({ widthPx, heightPx }: Diagram, steps: number): PhotoPoint[] {
  return Array.from({ length: steps }, (_, k) => k / steps).flatMap((t) => [
    { x: t * widthPx, y: 0 },
    { x: widthPx, y: t * heightPx },
    { x: (1 - t) * widthPx, y: heightPx },
    { x: 0, y: (1 - t) * heightPx },
  ]);
}
