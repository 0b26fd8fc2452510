/** Everything that can be drafted from a body's measures, behind one door. */
import type { MeasureName } from '../garment/measure';
import type { Piece } from '../garment/piece';
import { biasSlipPieces } from './bias-slip';
import { bloomersPieces, type NoBloomers } from './bloomers';
import { BODICE_MEASURES, type BodiceEase, bodice, type NoBodice } from './bodice';
import { type BodiceOpening, bodicePieces } from './bodice-pieces';
import type { DraftOptions } from './draft-names';
import type { DraftQuestion } from './draft-question';
import { childsDrawers, type DrawersLeg, type NoDrawers, schoolDrawers, yokeDrawers } from './drawers-on-fold';
import { drawersPieces } from './drawers-pieces';
import { fiveGoredUnderskirtPieces, type NoUnderskirt } from './five-gored-underskirt';
import type { GoreRule, HemAnswer, NoGoreShares } from './gore-shares';
import { goredSkirtPieces, type NoGore } from './gored-skirt';
import { plainSkirtPieces } from './plain-skirt';
import { printedPieces } from './printed-draft';
import { circleSizes, type NoSector, sectorPieces } from './sector';
import { shapedBandPieces } from './shaped-band';
import { sharedGores } from './shared-gores';
import { slip } from './slip';
import { type NoSmallModel, type SmallModel, smallModelDrawers, smallModelUnderwaist } from './small-models';
import { type NoTwoDartSkirt, twoDartSkirtPieces } from './two-dart-skirt';

/** A draft and what it is to be besides the body's measures. Lengths in mm; ease is all the way round. */
export type Block =
  /** `length` from waist to hem down the centre; `hem` all the way round, as wide as the hip unless said. */
  | { readonly kind: 'plain-skirt'; readonly length: number; readonly hem?: number; readonly ease: SkirtEase }
  /** The handout's own block, which has its ease in it. */
  | { readonly kind: 'two-dart-skirt'; readonly length: number }
  | {
      readonly kind: 'gored-skirt';
      readonly gores: number;
      readonly length: number;
      readonly hem: number;
      readonly ease: SkirtEase;
    }
  /** The lengths to the floor less `offFloor`. */
  | {
      readonly kind: 'shared-gores';
      readonly rule: GoreRule;
      readonly hem: number;
      readonly hemTaken?: HemAnswer;
      readonly offFloor: number;
      readonly ease: SkirtEase;
    }
  | { readonly kind: 'five-gored-underskirt'; readonly offFloor: number }
  /** `share` of a full circle: 1, 3/4, 1/2, 1/4 or any other. */
  | {
      readonly kind: 'circle-skirt';
      readonly share: number;
      readonly length: number;
      readonly sections: number;
      readonly waistEase: number;
    }
  /** Sewn on to something `top` long; from no measure of the body. */
  | {
      readonly kind: 'flounce';
      readonly top: number;
      readonly bottom: number;
      readonly depth: number;
      readonly sections: number;
    }
  | {
      readonly kind: 'shaped-band';
      readonly depth: number;
      readonly below?: number;
      readonly parts: number;
      readonly lap?: number;
      readonly on: 'fold' | 'whole';
      readonly ease: SkirtEase;
    }
  /** The side from the waist to the hem of the leg. */
  | { readonly kind: 'yoke-drawers'; readonly side: number }
  | { readonly kind: 'school-drawers'; readonly side: number }
  | { readonly kind: 'childs-drawers'; readonly leg: number }
  | { readonly kind: 'small-drawers'; readonly side: number }
  | { readonly kind: 'small-underwaist'; readonly underarm: number }
  | { readonly kind: 'bloomers'; readonly outside: number }
  | ({ readonly kind: 'bodice'; readonly ease: BodiceEase } & BodiceOpening)
  | ({
      readonly kind: 'slip';
      readonly joined: 'waist' | 'underbust';
      readonly length: number;
      readonly hem: number;
      readonly gores: number;
      readonly ease: BodiceEase & SkirtEase;
    } & BodiceOpening)
  | { readonly kind: 'bias-slip' };

export interface SkirtEase {
  readonly waist: number;
  readonly hip: number;
}

export type BlockKind = Block['kind'];

/** A body's measures in mm, those that were taken. */
export type BodyMeasures = Readonly<Partial<Record<MeasureName, number>>>;

/** Why a draft cannot be made; each draft has its own tags. */
export type NoBlock =
  | NoTwoDartSkirt
  | NoGore
  | NoGoreShares
  | NoUnderskirt
  | NoSector
  | NoDrawers
  | NoSmallModel
  | NoBloomers
  | NoBodice;

/** What came of a draft. */
export type DraftedBlock =
  | { readonly kind: 'drafted'; readonly pieces: readonly Piece[]; readonly questions: readonly DraftQuestion[] }
  | { readonly kind: 'measures-missing'; readonly missing: readonly MeasureName[] }
  | NoBlock;

const SKIRT = ['waist', 'hip', 'waistToHip'] as const;
const TO_FLOOR = ['waistToFloorFront', 'waistToFloorSide', 'waistToFloorBack'] as const;

const NEEDED = {
  'plain-skirt': SKIRT,
  'two-dart-skirt': SKIRT,
  'gored-skirt': SKIRT,
  'shared-gores': [...SKIRT, ...TO_FLOOR],
  'five-gored-underskirt': ['waist', 'hip', 'waistToFloorFront', 'waistToFloorSide'],
  'circle-skirt': ['waist'],
  flounce: [],
  'shaped-band': SKIRT,
  'yoke-drawers': ['waist', 'hip'],
  'school-drawers': ['hip'],
  'childs-drawers': [],
  'small-drawers': [],
  'small-underwaist': [],
  bloomers: ['waist', 'hip', 'bodyRise'],
  bodice: BODICE_MEASURES,
  slip: [...BODICE_MEASURES, 'hip', 'waistToHip'],
  'bias-slip': [],
} as const satisfies Readonly<Record<BlockKind, readonly MeasureName[]>>;

/** The measures a draft needs, in the order they are asked for. A slip joined below the bust needs the underbust besides. */
export function blockMeasures(kind: BlockKind): readonly MeasureName[] {
  return NEEDED[kind];
}

/**
 * The pieces of a block for a body, laid beside one another, with the questions its source leaves open; the measures that
 * are missing; or the draft's own refusal with its reason. Ids and names come from the options.
 */
export function draftBlock(block: Block, measures: BodyMeasures, options: DraftOptions): DraftedBlock {
  const needed: readonly MeasureName[] =
    block.kind === 'slip' && block.joined === 'underbust' ? [...NEEDED.slip, 'underbust'] : NEEDED[block.kind];
  const missing = needed.filter((name) => measures[name] === undefined);
  if (missing.length > 0) return { kind: 'measures-missing', missing };
  const result = drawn(block, measures as Readonly<Record<MeasureName, number>>, options);
  if ('why' in result) return result;
  const { pieces, questions } = 'pieces' in result ? result : { pieces: result, questions: [] };
  return { kind: 'drafted', pieces, questions };
}

type Result =
  | readonly Piece[]
  | { readonly pieces: readonly Piece[]; readonly questions: readonly DraftQuestion[] }
  | NoBlock;

function drawn(block: Block, body: Readonly<Record<MeasureName, number>>, options: DraftOptions): Result {
  const { newId, nameOf } = options;
  const hipDepth = body.waistToHip;
  const eased = (ease: SkirtEase) => ({ waist: body.waist + ease.waist, hip: body.hip + ease.hip, hipDepth });
  switch (block.kind) {
    case 'plain-skirt': {
      const { length, hem, ease } = block;
      return plainSkirtPieces({ ...eased(ease), length, ...(hem === undefined ? {} : { hem }) }, options);
    }
    case 'two-dart-skirt': {
      const { waist, hip, waistToHip } = body;
      const names = {
        back: nameOf('back'),
        front: nameOf('front'),
        side: nameOf('side-seam'),
        centreBack: nameOf('centre-back-seam'),
      };
      return twoDartSkirtPieces({ waist, hip, waistToHip, length: block.length }, { newId, names });
    }
    case 'gored-skirt': {
      const { gores, length, hem, ease } = block;
      const names = { name: nameOf('gore'), seamName: nameOf('gore-seam') };
      return goredSkirtPieces({ ...eased(ease), hem, length, gores }, { newId, ...names });
    }
    case 'shared-gores': {
      const { rule, hem, hemTaken, offFloor, ease } = block;
      const lengths = {
        front: body.waistToFloorFront - offFloor,
        side: body.waistToFloorSide - offFloor,
        back: body.waistToFloorBack - offFloor,
      };
      return sharedGores(rule, { ...eased(ease), hem, lengths }, hemTaken ? { ...options, hem: hemTaken } : options);
    }
    case 'five-gored-underskirt': {
      const { waist, hip, waistToFloorFront, waistToFloorSide } = body;
      const lengths = { front: waistToFloorFront - block.offFloor, side: waistToFloorSide - block.offFloor };
      return fiveGoredUnderskirtPieces({ waist, hip, ...lengths }, options);
    }
    case 'circle-skirt': {
      const { share, length, sections, waistEase } = block;
      const sizes = circleSizes({ waist: body.waist + waistEase, length, share });
      const names = { name: nameOf('skirt'), seamName: nameOf('end-seam') };
      return sectorPieces({ ...sizes, sections }, { newId, ...names, topRole: 'waist' });
    }
    case 'flounce':
      return sectorPieces(block, {
        newId,
        name: nameOf('flounce'),
        seamName: nameOf('end-seam'),
        topRole: 'seam',
      });
    case 'shaped-band':
      return shapedBandPieces({ ...block, ...eased(block.ease) }, options);
    case 'yoke-drawers':
      return leg(yokeDrawers({ waist: body.waist, hip: body.hip, side: block.side }), options);
    case 'school-drawers':
      return leg(schoolDrawers({ hip: body.hip, side: block.side }), options);
    case 'childs-drawers':
      return leg(childsDrawers({ leg: block.leg }), options);
    case 'small-drawers':
      return modelled(smallModelDrawers({ side: block.side }), options);
    case 'small-underwaist':
      return modelled(smallModelUnderwaist({ underarm: block.underarm }), options);
    case 'bloomers':
      return bloomersPieces({ waist: body.waist, hip: body.hip, rise: body.bodyRise, outside: block.outside }, options);
    case 'bodice': {
      const draft = bodice(body, block.ease);
      if (draft.kind === 'no-bodice') return draft;
      return { pieces: bodicePieces(draft, block, options), questions: draft.questions };
    }
    case 'slip': {
      const { joined, length, hem, gores, ease, opens } = block;
      const at =
        joined === 'waist' ? ({ at: 'waist' } as const) : ({ at: 'underbust', underbust: body.underbust } as const);
      return slip({ ...body, hipDepth, length, hem, gores, ease, opens, joined: at }, options);
    }
    case 'bias-slip':
      return biasSlipPieces(options);
  }
}

function leg(draft: DrawersLeg | NoDrawers, options: DraftOptions): readonly Piece[] | NoDrawers {
  return draft.kind === 'drawers' ? drawersPieces(draft, options) : draft;
}

function modelled<Place extends string>(model: SmallModel<Place> | NoSmallModel, options: DraftOptions): Result {
  if (model.kind === 'no-small-model') return model;
  return { pieces: printedPieces(model.draft, options), questions: model.questions };
}
