import type { EdgeRole, Piece } from '../garment/piece';
import type { Point } from '../geometry/point';
import { coneOf } from '../shaping/cone';
import { type ArcRun, arcCentre, arcEnd, reverseRun, squareEndedShape } from './arc-run';
import { draftedPiece } from './drafted-piece';

/** A band that widens or narrows evenly: a flounce, a yoke, a circular skirt. Lengths in mm, all the way round. */
export interface SectorSizes {
  readonly top: number;
  readonly bottom: number;
  readonly depth: number;
  /** Cut in this many equal parts. */
  readonly sections: number;
}

/**
 * One section, hanging from the middle of its top edge at (0, 0), the other half its mirror image. The runs go from the
 * middle outwards.
 */
export interface Sector {
  readonly kind: 'sector';
  readonly top: ArcRun;
  readonly bottom: ArcRun;
  readonly topEnd: Point;
  readonly bottomEnd: Point;
  /** The centre both edges are swung from; `undefined` for a straight band. */
  readonly centre: Point | undefined;
  /** From the centre to the top and to the bottom edge; negative when the band narrows and the centre lies below. */
  readonly radii: { readonly top: number; readonly bottom: number } | undefined;
  /** The angle of the whole section (radians). */
  readonly angle: number;
}

export interface NoSector {
  readonly kind: 'no-sector';
  /** `overlaps-itself`: a section would go more than once round its centre; it needs more sections. */
  readonly why: 'not-positive' | 'overlaps-itself';
}

/**
 * A flounce or circular skirt laid flat, by the rule of Laura I. Baldt, Clothing for Women (1916), circular flounce:
 * radius = top × depth / (bottom - top), the widths laid along the arcs. Bands that do not widen, or narrow, work too.
 */
export function sector({ top, bottom, depth, sections }: SectorSizes): Sector | NoSector {
  const isWhole = Number.isInteger(sections) && sections > 0;
  if (!(top > 0 && bottom > 0 && depth > 0 && isWhole)) return { kind: 'no-sector', why: 'not-positive' };
  const cone = coneOf({ waist: top, hip: bottom, depth });
  const angle = cone.angle / sections;
  if (Math.abs(angle) > 2 * Math.PI) return { kind: 'no-sector', why: 'overlaps-itself' };
  const right = { dx: 1, dy: 0 };
  const topRun: ArcRun = {
    start: { x: 0, y: 0 },
    direction: right,
    turning: -cone.curvature,
    length: top / sections / 2,
  };
  const bottomRun: ArcRun = {
    start: { x: 0, y: depth },
    direction: right,
    turning: (-cone.curvature * top) / bottom,
    length: bottom / sections / 2,
  };
  const centre = arcCentre(topRun);
  return {
    kind: 'sector',
    top: topRun,
    bottom: bottomRun,
    topEnd: arcEnd(topRun),
    bottomEnd: arcEnd(bottomRun),
    centre,
    radii: centre && { top: -centre.y, bottom: depth - centre.y },
    angle,
  };
}

/** The sizes of a circular skirt: `share` of a full circle (1, 3/4, 1/2, 1/4) with this waist and length (mm). */
export function circleSizes(skirt: { readonly waist: number; readonly length: number; readonly share: number }) {
  const { waist, length, share } = skirt;
  return { top: waist, bottom: waist + 2 * Math.PI * share * length, depth: length };
}

export interface SectorPieceOptions {
  readonly newId: () => string;
  readonly name: string;
  /** `waist` for a skirt that hangs from it, `seam` for a flounce sewn on. */
  readonly topRole: Extract<EdgeRole, 'waist' | 'seam'>;
  /** `seam` for a band or yoke that a skirt is sewn to; `hem` unless said. */
  readonly bottomRole?: Extract<EdgeRole, 'hem' | 'seam'>;
  /** Carried by the ends, which are sewn to one another; none unless said. */
  readonly seamName?: string;
}

/** The section as a piece: half of it on the fold, cut once for every section; its ends are seams. */
export function sectorPieces(sizes: SectorSizes, options: SectorPieceOptions): Piece[] | NoSector {
  const { newId, name, topRole, bottomRole = 'hem', seamName = '' } = options;
  const drawn = sector(sizes);
  if (drawn.kind === 'no-sector') return drawn;
  const { depth, sections } = sizes;
  const piece = draftedPiece({
    newId,
    name,
    cut: { how: 'fold', count: sections },
    grain: { from: { x: 0, y: depth * 0.2 }, to: { x: 0, y: depth * 0.8 } },
    edges: [
      { from: drawn.top.start, role: topRole, shape: squareEndedShape(drawn.top) },
      { from: drawn.topEnd, role: 'seam', name: seamName },
      { from: drawn.bottomEnd, role: bottomRole, shape: squareEndedShape(reverseRun(drawn.bottom)) },
      { from: drawn.bottom.start, role: 'fold' },
    ],
  });
  return [piece];
}
