/** Strips cut by numbers: placket strips and bindings, with the sums that say how much cloth they take. */
import { draftedPiece } from '../blocks/drafted-piece';
import type { Grain, Piece } from '../garment/piece';
import { inches } from '../units/inch';

/** A strip as it is cut, its turnings included; mm. */
export interface StripSizes {
  readonly length: number;
  readonly width: number;
  /** How wide it is once sewn. */
  readonly finished: number;
}

/** A placket strip is cut 2 1/2 in wide and finishes at 1 (Carrie Crane Ingalls, Text-Book on Domestic Art, 1911). */
const PLACKET = { width: inches(2.5), finished: inches(1) } as const;

/** A placket strip runs down one side of the slit and up the other: twice its length (Ingalls, 1911, as above). */
export function placketSizes({ slit }: { readonly slit: number }): StripSizes | undefined {
  return slit > 0 ? { ...PLACKET, length: 2 * slit } : undefined;
}

export interface BindingNeeds {
  /** The edges it finishes, all together (mm). */
  readonly edges: number;
  readonly finished: number;
  /** `folded-over` the edge and seen on both sides, or turned in as a `facing` with this allowance on either side. */
  readonly as: { readonly kind: 'folded-over' } | { readonly kind: 'facing'; readonly allowance: number };
  /** The longest strip the cloth gives; one strip unless said. */
  readonly longest?: number;
  /** What each join takes; 0 unless said. */
  readonly join?: number;
}

export interface BindingSizes extends StripSizes {
  /** How many strips are joined. */
  readonly strips: number;
  /** Cut on the bias: the side of a square of cloth that gives a strip as long as this, before any is lost (mm). */
  readonly square: number;
}

/**
 * A binding as it is cut: four times the finished width folded over an edge, or twice it and two allowances as a facing
 * (common practice), as long as the edges and the joins. A continuous bias strip is as long as the area of its square over
 * its width (common practice: allow 10 to 20 in 100 more for joins and corners). `undefined` when there is nothing to
 * bind, or the joins take all that a strip gives.
 */
export function bindingSizes({
  edges,
  finished,
  as,
  longest = Infinity,
  join = 0,
}: BindingNeeds): BindingSizes | undefined {
  if (!(edges > 0 && finished > 0 && join >= 0)) return undefined;
  // n strips of the longest give n × longest less n - 1 joins.
  const strips = edges <= longest ? 1 : Math.ceil((edges - join) / (longest - join) - 1e-9);
  if (!(longest > join) || !Number.isFinite(strips)) return undefined;
  const length = edges + (strips - 1) * join;
  const width = as.kind === 'folded-over' ? 4 * finished : 2 * finished + 2 * as.allowance;
  return { length, width, finished, strips, square: Math.sqrt(length * width) };
}

export interface StripPieceOptions {
  readonly newId: () => string;
  readonly name: string;
  readonly grain: 'straight' | 'bias';
  /** How often it is cut; once unless said. */
  readonly count?: number;
}

/**
 * A strip as a piece that lies along x from (0, 0), its turnings in the outline. The straight of the cloth runs along it,
 * or at half a right angle for the bias.
 */
export function stripPiece({ length, width }: StripSizes, { newId, name, grain, count = 1 }: StripPieceOptions): Piece {
  return draftedPiece({
    newId,
    name,
    cut: { how: 'single', count },
    drawnAs: 'included',
    grain: grain === 'straight' ? alongStrip(length, width) : acrossStrip(length, width),
    edges: [
      { from: { x: 0, y: 0 }, role: 'seam' },
      { from: { x: length, y: 0 }, role: 'finished' },
      { from: { x: length, y: width }, role: 'finished' },
      { from: { x: 0, y: width }, role: 'finished' },
    ],
  });
}

function alongStrip(length: number, width: number): Grain {
  return { from: { x: length * 0.2, y: width / 2 }, to: { x: length * 0.8, y: width / 2 } };
}

function acrossStrip(length: number, width: number): Grain {
  const half = Math.min(length, width) * 0.4;
  const [x, y] = [length / 2, width / 2];
  return { from: { x: x - half, y: y + half }, to: { x: x + half, y: y - half } };
}
