import { layStanding } from '../cloth/lay-standing';
import { type GirthAtLevel, girthsOf } from '../fit/round-body';
import { cutPieces } from '../garment/cut-pieces';
import type { Garment, ScaleProof } from '../garment/garment';
import type { GarmentCloth } from '../garment/garment-cloth';
import type { Piece } from '../garment/piece';
import type { Printing } from '../garment/printed';
import { versionMark } from '../garment/version-mark';
import { beforeYouCut, type Finding } from './before-you-cut';
import { type LeftFinding, partKnowingly } from './left-knowingly';

/** What to be sure of before cutting, in the order of the job. */
const POINTS = [
  'measures',
  'scale-known',
  'outlines',
  'goes-round',
  'waist-curved',
  'seams-true',
  'pinned-settled',
  'allowances',
  'grain',
  'cut-counts',
  'scale-proved',
  'lay-made',
  'print-current',
] as const;
export type PointName = (typeof POINTS)[number];

/** `left` where all that is said against it is left knowingly; `not-looked-at` where nothing has been tried yet. */
export type PointState = 'settled' | 'open' | 'left' | 'not-looked-at';

/** The numbers behind a point, where it has any. Lengths in mm. */
export type PointFigures =
  | { readonly kind: 'none' }
  | { readonly kind: 'known-lengths'; readonly count: number }
  | { readonly kind: 'girths'; readonly girths: readonly GirthAtLevel[] }
  | { readonly kind: 'seams'; readonly count: number }
  | { readonly kind: 'pinned'; readonly noted: number; readonly carried: number; readonly declined: number }
  | { readonly kind: 'pieces'; readonly of: number; readonly with: number }
  | { readonly kind: 'cuts'; readonly pieces: readonly Piece[] }
  | { readonly kind: 'proof'; readonly proof: ScaleProof | undefined }
  | { readonly kind: 'cloth'; readonly said: string; readonly cloths: readonly ClothFigures[] }
  | { readonly kind: 'printing'; readonly last: Printing | undefined };

/** A cloth, and what the lay made on it takes (mm, before washing) where one was made of the pieces as they are. */
export interface ClothFigures {
  readonly cloth: GarmentCloth;
  readonly needed: number | undefined;
  readonly made: string | undefined;
  readonly version: number | undefined;
}

export interface PointToBeSureOf {
  readonly name: PointName;
  readonly state: PointState;
  readonly figures: PointFigures;
  readonly open: readonly Finding[];
  readonly left: readonly LeftFinding[];
}

/** Which point each finding speaks against; the compiler asks for every new kind. */
const pointOf: Readonly<Record<Finding['kind'], PointName>> = {
  'measure-unlikely': 'measures',
  'waist-over-hip': 'measures',
  'lengths-out-of-order': 'measures',
  'sides-differ': 'measures',
  'measure-guessed': 'measures',
  'measure-needed': 'measures',
  'not-squared-up': 'scale-known',
  'no-known-length': 'scale-known',
  'one-known-length': 'scale-known',
  'one-direction': 'scale-known',
  'known-length-zero': 'scale-known',
  'known-length-without-line': 'scale-known',
  'known-length-needs-measure': 'scale-known',
  'known-length-disagrees': 'scale-known',
  stretched: 'scale-known',
  'page-not-true': 'scale-known',
  'shared-scale-missing': 'scale-known',
  'halves-not-joined': 'scale-known',
  'halves-apart': 'scale-known',
  'short-known-length': 'scale-known',
  'no-piece': 'outlines',
  'outline-crosses': 'outlines',
  'not-worked-out': 'outlines',
  'check-broke-off': 'outlines',
  'figure-unsettled': 'outlines',
  'figure-not-met': 'outlines',
  'figures-clash': 'outlines',
  'whole-not-met': 'outlines',
  'seam-figures-clash': 'outlines',
  'figures-cannot-close': 'outlines',
  'no-name': 'outlines',
  'no-ring': 'goes-round',
  'girth-measure-missing': 'goes-round',
  'panel-missing': 'goes-round',
  'girth-too-small': 'goes-round',
  'girth-too-large': 'goes-round',
  'side-uneven': 'goes-round',
  'level-below-piece': 'goes-round',
  'hem-narrow': 'goes-round',
  'no-opening': 'goes-round',
  'opening-short': 'goes-round',
  'no-way-on': 'goes-round',
  'casing-narrow': 'goes-round',
  'hem-shows': 'goes-round',
  'thigh-narrow': 'goes-round',
  'no-waist-edge': 'waist-curved',
  'straight-waist': 'waist-curved',
  'waist-peak': 'waist-curved',
  'seam-off': 'seams-true',
  'seam-notches-off': 'seams-true',
  'edge-unpaired': 'seams-true',
  'pinned-not-carried': 'pinned-settled',
  'drawn-as-not-known': 'allowances',
  'allowance-not-said': 'allowances',
  'no-grain': 'grain',
  'fold-not-cut-on': 'cut-counts',
  'scale-not-proved': 'scale-proved',
  'scale-proof-stale': 'scale-proved',
  'scale-off': 'scale-proved',
  'cloth-short': 'lay-made',
  'lay-overlaps': 'lay-made',
  'lay-stale': 'lay-made',
  'pages-out-of-date': 'print-current',
  'printed-piece-gone': 'print-current',
  'squares-out-of-date': 'print-current',
  'changed-since-cut': 'print-current',
};

/** Everything to be sure of before cutting, each with its state and the numbers behind it. */
export function pointsToBeSureOf(
  garment: Garment,
  findings: readonly Finding[] = beforeYouCut(garment),
): PointToBeSureOf[] {
  const { open, left } = partKnowingly(garment, findings);
  return POINTS.map((name) => {
    const own = {
      open: open.filter(({ kind }) => pointOf[kind] === name),
      left: left.filter(({ finding }) => pointOf[finding.kind] === name),
    };
    const figures = figuresOf(garment, name, findings);
    const ownState = own.open.length > 0 ? 'open' : own.left.length > 0 ? 'left' : 'settled';
    return { name, ...own, figures, state: stateOf(garment, figures, name, ownState, own.open) };
  });
}

/** Where no finding speaks, the figures still may: what was never tried is not settled. */
function stateOf(
  garment: Garment,
  figures: PointFigures,
  name: PointName,
  state: PointState,
  open: readonly Finding[],
): PointState {
  const hasPieces = cutPieces(garment).length > 0;
  switch (figures.kind) {
    case 'pinned':
      if (figures.noted > 0) return 'open';
      return state === 'settled' && (garment.mockups ?? []).length === 0 ? 'not-looked-at' : state;
    case 'cloth':
      return figures.cloths.length === 0 || figures.cloths.some(({ made }) => made === undefined)
        ? state === 'open'
          ? 'open'
          : notYet(state)
        : state;
    case 'printing':
      if (!figures.last) return notYet(state);
      // Where nothing is known of how its pages lay, only the mark of the pieces can tell.
      return figures.last.laid || figures.last.squares || figures.last.mark === versionMark(garment) ? state : 'open';
    case 'proof':
      return open.some(({ kind }) => kind !== 'scale-not-proved') || figures.proof ? state : notYet(state);
    case 'known-lengths':
      return garment.diagrams.length === 0 ? 'not-looked-at' : state;
    case 'seams':
      return figures.count === 0 ? notYet(state) : state;
    case 'girths':
      return figures.girths.length === 0 ? notYet(state) : state;
    case 'pieces':
    case 'cuts':
      return hasPieces ? state : 'not-looked-at';
    case 'none':
      if (name === 'waist-curved' && garment.rings.length === 0) return notYet(state);
      return state;
  }
}

/** What has not been tried, unless it is left knowingly. */
function notYet(state: PointState): PointState {
  return state === 'left' ? 'left' : 'not-looked-at';
}

function figuresOf(garment: Garment, name: PointName, findings: readonly Finding[]): PointFigures {
  const pieces = cutPieces(garment);
  const without = (...kinds: readonly Finding['kind'][]) =>
    new Set(
      findings.flatMap(({ kind, place }) => (kinds.includes(kind) && place.kind === 'piece' ? [place.pieceId] : [])),
    ).size;
  switch (name) {
    case 'measures':
    case 'outlines':
    case 'waist-curved':
      return { kind: 'none' };
    case 'scale-known':
      return {
        kind: 'known-lengths',
        count: garment.diagrams.reduce((sum, { knownLengths }) => sum + knownLengths.length, 0),
      };
    case 'goes-round': {
      // A crossed outline has no inside to be measured across.
      if (findings.some(({ kind }) => kind === 'outline-crosses')) return { kind: 'girths', girths: [] };
      return { kind: 'girths', girths: garment.rings.flatMap((ring) => girthsOf(garment, ring)) };
    }
    case 'seams-true':
      return { kind: 'seams', count: garment.seams?.length ?? 0 };
    case 'pinned-settled': {
      const pinned = (garment.mockups ?? []).flatMap((mockup) => mockup.pinned);
      const count = (state: string) => pinned.filter((one) => one.state.kind === state).length;
      return { kind: 'pinned', noted: count('noted'), carried: count('carried'), declined: count('declined') };
    }
    case 'allowances':
      return {
        kind: 'pieces',
        of: pieces.length,
        with: pieces.length - without('drawn-as-not-known', 'allowance-not-said'),
      };
    case 'grain':
      return { kind: 'pieces', of: pieces.length, with: pieces.length - without('no-grain') };
    case 'cut-counts':
      return { kind: 'cuts', pieces };
    case 'scale-proved':
      return { kind: 'proof', proof: garment.scaleProof };
    case 'lay-made':
      return { kind: 'cloth', said: garment.cloth ?? '', cloths: clothFigures(garment) };
    case 'print-current':
      return { kind: 'printing', last: garment.printings?.at(-1) };
  }
}

function clothFigures(garment: Garment): ClothFigures[] {
  return (garment.cloths ?? []).map((cloth) => {
    const standing = layStanding(garment, cloth);
    const needed = standing && !standing.changed ? standing.needed : undefined;
    return { cloth, needed, made: standing?.lay.made, version: standing?.lay.version };
  });
}
