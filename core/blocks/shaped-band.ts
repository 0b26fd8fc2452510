import type { Piece } from '../garment/piece';
import { type ArcRun, arcPlace, bothHalves, reverseRun, squareEndedShape } from './arc-run';
import type { DraftOptions } from './draft-names';
import { type DraftedEdge, draftedPiece } from './drafted-piece';
import { laidBeside } from './lay-beside';
import { type NoSector, type SectorSizes, sector, sectorPieces } from './sector';

/** A body between waist and hip, or a skirt to be banded: an even slope. Lengths in mm, ease included. */
export interface BandBody {
  readonly waist: number;
  readonly hip: number;
  readonly hipDepth: number;
}

export interface ShapedBandSizes extends BandBody {
  /** How deep the finished band is. */
  readonly depth: number;
  /** How far below the waist its upper edge lies; 0 unless said. */
  readonly below?: number;
  /** Into how many equal parts it is cut. */
  readonly parts: number;
  /** What one end laps over the other, measured at the upper edge; 0 unless said. */
  readonly lap?: number;
  /** Each part half on the fold, or drawn whole. */
  readonly on: 'fold' | 'whole';
}

/** What a band comes to, and what a straight strip would be wrong by. */
export interface ShapedBand extends Omit<SectorSizes, 'sections'> {
  /** How much longer (or, below 0, shorter) than its upper edge the lower edge has to be: a straight strip is off by it. */
  readonly straightError: number;
}

/**
 * A shaped band that lies on the even slope from waist to hip: its edges are what the body measures at their levels. By
 * Laura I. Baldt, Clothing for Women (1916), who gives the rule for a flounce. A straight strip cut to one edge is off
 * by `straightError` at the other.
 */
export function shapedBand({
  waist,
  hip,
  hipDepth,
  depth,
  below = 0,
}: Omit<ShapedBandSizes, 'parts' | 'lap' | 'on'>): ShapedBand {
  const girthAt = (level: number) => waist + ((hip - waist) * level) / hipDepth;
  const [top, bottom] = [girthAt(below), girthAt(below + depth)];
  return { top, bottom, depth, straightError: bottom - top };
}

/**
 * The band as pieces, the parts equal. The lap runs on along the same curves: a single part on the fold has half of it at
 * each end; else one part is drawn whole and has all of it at one end. Where the lap begins there is a notch on both edges.
 */
export function shapedBandPieces(sizes: ShapedBandSizes, options: DraftOptions): Piece[] | NoSector {
  const { parts, lap = 0, on } = sizes;
  const { newId, nameOf } = options;
  const { top, bottom, depth } = shapedBand(sizes);
  if (!(sizes.hipDepth > 0 && lap >= 0 && (sizes.below ?? 0) >= 0)) return { kind: 'no-sector', why: 'not-positive' };
  const ring = { top, bottom, depth, sections: parts };
  if (on === 'fold' && lap === 0) {
    const names = { name: nameOf('band'), seamName: nameOf('end-seam') };
    return sectorPieces(ring, { newId, ...names, topRole: 'waist', bottomRole: 'seam' });
  }
  const drawn = sector({ ...ring, top: top + lap * parts, bottom: bottom * (1 + (lap * parts) / top) });
  const plain = sector(ring);
  if (drawn.kind === 'no-sector') return drawn;
  if (plain.kind === 'no-sector') return plain;
  const wholes = { plain: { runs: plain, lap: 0 }, lapped: { runs: drawn, lap } };
  if (on === 'fold' && parts === 1) return [foldedBand(wholes.lapped, depth, options)];
  const whole = (part: (typeof wholes)['plain'], name: 'band' | 'band-with-lap', count: number) =>
    wholeBand(part, { depth, name: nameOf(name), count, seamName: parts > 1 ? nameOf('end-seam') : '' }, newId);
  if (lap === 0) return [whole(wholes.plain, 'band', parts)];
  const lapped = whole(wholes.lapped, 'band-with-lap', 1);
  if (parts === 1) return [lapped];
  const others = {
    ...ring,
    top: (top * (parts - 1)) / parts,
    bottom: (bottom * (parts - 1)) / parts,
    sections: parts - 1,
  };
  if (on === 'whole') return laidBeside([lapped, whole(wholes.plain, 'band', parts - 1)]);
  const names = { name: nameOf('band'), seamName: nameOf('end-seam') };
  const folded = sectorPieces(others, { newId, ...names, topRole: 'waist', bottomRole: 'seam' });
  return Array.isArray(folded) ? laidBeside([lapped, ...folded]) : folded;
}

interface BandPart {
  readonly runs: { readonly top: ArcRun; readonly bottom: ArcRun };
  readonly lap: number;
}

/** Half of a single part, from its fold to an end with half of the lap. */
function foldedBand({ runs, lap }: BandPart, depth: number, { newId, nameOf }: DraftOptions): Piece {
  const { top, bottom } = runs;
  const ratio = bottom.length / top.length;
  return draftedPiece({
    newId,
    name: nameOf('band'),
    cut: { how: 'fold', count: 1 },
    grain: { from: { x: 0, y: depth * 0.2 }, to: { x: 0, y: depth * 0.8 } },
    edges: [
      edge(top, { role: 'waist', notches: [{ along: top.length - lap / 2, count: 1 }] }),
      { from: arcPlace(top, top.length).point, role: 'finished' },
      edge(reverseRun(bottom), { role: 'seam', notches: [{ along: (lap / 2) * ratio, count: 1 }] }),
      { from: bottom.start, role: 'fold' },
    ],
  });
}

/** A whole part; its right end carries the lap. */
function wholeBand(
  { runs, lap }: BandPart,
  make: { readonly depth: number; readonly name: string; readonly count: number; readonly seamName: string },
  newId: () => string,
): Piece {
  const [top, bottom] = [bothHalves(runs.top), bothHalves(runs.bottom)];
  const lapBelow = (lap * bottom.length) / top.length;
  const end = make.seamName === '' ? ({ role: 'finished' } as const) : ({ role: 'seam', name: make.seamName } as const);
  const notched = (along: number) => (lap > 0 ? { notches: [{ along, count: 1 as const }] } : {});
  return draftedPiece({
    newId,
    name: make.name,
    cut: { how: 'single', count: make.count },
    grain: { from: { x: 0, y: make.depth * 0.2 }, to: { x: 0, y: make.depth * 0.8 } },
    edges: [
      edge(top, { role: 'waist', ...notched(top.length - lap) }),
      { from: arcPlace(top, top.length).point, ...(lap > 0 ? ({ role: 'finished' } as const) : end) },
      edge(reverseRun(bottom), { role: 'seam', ...notched(lapBelow) }),
      { from: bottom.start, ...end },
    ],
  });
}

function edge(run: ArcRun, rest: Omit<DraftedEdge, 'from' | 'shape'>): DraftedEdge {
  return { from: run.start, shape: squareEndedShape(run), ...rest };
}
