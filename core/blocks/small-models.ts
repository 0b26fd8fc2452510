/**
 * Drafts printed as small models, to be drawn so many times as large: the multiplier is a measure over what it is on the
 * model, to the nearest whole number. Idabelle McGlauflin, Handicraft for Girls (1910), drawers and underwaist.
 */
import { distance } from '../geometry/point';
import { inches } from '../units/inch';
import type { DraftQuestion } from './draft-question';
import { type PrintedDraft, printedPlaces } from './printed-draft';

export interface SmallModel<Place extends string> {
  readonly kind: 'small-model';
  readonly times: number;
  readonly draft: PrintedDraft<Place>;
  readonly questions: readonly DraftQuestion[];
}

export interface NoSmallModel {
  readonly kind: 'no-small-model';
  /** `too-small`: the measure is nearer to nothing than to one model. */
  readonly why: 'too-small';
}

type DrawersPlace = 'foldTop' | 'backTop' | 'crotch' | 'legTurn' | 'legHem' | 'foldHem' | 'grainTop' | 'grainEnd';

/** What the side and the underarm seam are taken to be on the model by its rules (in); the side is drawn a sixteenth less. */
const MODEL_SIDE = 2.5;
const MODEL_UNDERARM = 1.25;

/**
 * One leg of the drawers, half on the fold, for a side length (mm); the back line, since of the front the plate gives only
 * that its seam lies half an inch inside at four times.
 */
export function smallModelDrawers({ side }: { readonly side: number }): SmallModel<DrawersPlace> | NoSmallModel {
  const times = Math.round(side / inches(MODEL_SIDE));
  if (!(times >= 1)) return { kind: 'no-small-model', why: 'too-small' };
  const unit = inches(times / 4);
  const draft: PrintedDraft<DrawersPlace> = {
    unit: { across: unit, down: unit },
    places: {
      foldTop: [0, 1.25],
      backTop: [6.25, 0],
      crotch: [7.5, 5.5],
      legTurn: [7.5, 8.5],
      legHem: [6, 11],
      foldHem: [0, 11],
      grainTop: [3, 2],
      grainEnd: [3, 10],
    },
    pieces: [
      {
        name: 'leg',
        cut: { how: 'fold', count: 2 },
        grain: ['grainTop', 'grainEnd'],
        edges: [
          { from: 'foldTop', role: 'waist' },
          { from: 'backTop', role: 'seam', name: 'back-seam' },
          { from: 'crotch', role: 'seam', name: 'inner-leg-seam', through: ['legTurn'] },
          { from: 'legHem', role: 'hem' },
          { from: 'foldHem', role: 'fold' },
        ],
      },
    ],
  };
  const { foldTop, foldHem, backTop } = printedPlaces(draft);
  const front: DraftQuestion = { kind: 'source-ends', piece: 'front', last: 'backTop', at: backTop };
  return { kind: 'small-model', times, draft, questions: [front, ...stepped(side, distance(foldTop, foldHem))] };
}

type UnderwaistPlace =
  | 'frontNeck'
  | 'frontNeckSide'
  | 'frontShoulder'
  | 'frontChest'
  | 'frontUnderarm'
  | 'frontSide'
  | 'frontWaist'
  | 'backNeck'
  | 'backNeckSide'
  | 'backShoulder'
  | 'backUnderarm'
  | 'backSide'
  | 'backWaist'
  | 'grainTop'
  | 'grainEnd';

/**
 * The underwaist for an underarm seam (mm): front on the fold, back as a pair, without the hem strip down its opening. Its
 * two shoulders are not of one length, which is asked about.
 */
export function smallModelUnderwaist({
  underarm,
}: {
  readonly underarm: number;
}): SmallModel<UnderwaistPlace> | NoSmallModel {
  const times = Math.round(underarm / inches(MODEL_UNDERARM));
  if (!(times >= 1)) return { kind: 'no-small-model', why: 'too-small' };
  const unit = inches(times / 4);
  const draft: PrintedDraft<UnderwaistPlace> = {
    unit: { across: unit, down: unit },
    places: {
      frontNeck: [0, 2.5],
      frontNeckSide: [2.5, 0],
      frontShoulder: [5, 1],
      frontChest: [4, 3.42],
      frontUnderarm: [6, 4.5],
      frontSide: [5.5, 9.5],
      frontWaist: [0, 9.5],
      backNeck: [1, 1],
      backNeckSide: [2.5, 0],
      backShoulder: [4.75, 1.25],
      backUnderarm: [6, 4],
      backSide: [5.5, 9],
      backWaist: [1, 9.5],
      grainTop: [3, 3],
      grainEnd: [3, 9],
    },
    pieces: [
      {
        name: 'bodice-front',
        cut: { how: 'fold', count: 1 },
        grain: ['grainTop', 'grainEnd'],
        edges: [
          { from: 'frontNeck', role: 'finished', through: [] },
          { from: 'frontNeckSide', role: 'seam', name: 'shoulder-seam' },
          { from: 'frontShoulder', role: 'finished', through: ['frontChest'] },
          { from: 'frontUnderarm', role: 'seam', name: 'side-seam' },
          { from: 'frontSide', role: 'seam', name: 'waist-seam' },
          { from: 'frontWaist', role: 'fold' },
        ],
      },
      {
        name: 'bodice-back',
        cut: { how: 'pair', count: 2 },
        grain: ['grainTop', 'grainEnd'],
        edges: [
          { from: 'backNeck', role: 'finished', through: [] },
          { from: 'backNeckSide', role: 'seam', name: 'shoulder-seam' },
          { from: 'backShoulder', role: 'finished', through: [] },
          { from: 'backUnderarm', role: 'seam', name: 'side-seam' },
          { from: 'backSide', role: 'seam', name: 'waist-seam' },
          { from: 'backWaist', role: 'opening' },
        ],
      },
    ],
  };
  const at = printedPlaces(draft);
  const shoulders = [distance(at.frontNeckSide, at.frontShoulder), distance(at.backNeckSide, at.backShoulder)];
  const made = distance(at.frontUnderarm, at.frontSide);
  return {
    kind: 'small-model',
    times,
    draft,
    questions: [{ kind: 'edges-differ', name: 'shoulder-seam', lengths: shoulders }, ...stepped(underarm, made)],
  };
}

/** Asked about from a sixteenth of an inch on, since a whole multiplier cannot meet every size. */
function stepped(asked: number, made: number): DraftQuestion[] {
  return Math.abs(asked - made) > inches(1 / 16) ? [{ kind: 'size-stepped', asked, made }] : [];
}
