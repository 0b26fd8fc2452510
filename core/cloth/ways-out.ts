/** What would do where pieces cannot be laid as she wants: the cloth opened out, another grain, wider cloth, a join. */

import type { PieceJoin } from '../garment/garment-cloth';
import { biasRun } from './bias-strips';
import type { Cloth } from './cloth';
import { clothTask, type FromCloth } from './cloth-task';
import { otherHand } from './lay-task';
import { type LaidGrain, type LayingChoice, pieceToLay } from './piece-to-lay';
import { joinsForWidth } from './piecing';
import type { Strip } from './strip-to-lay';
import { WIDTHS_BESIDE } from './usual-widths';

const GRAINS: readonly LaidGrain[] = ['straight', 'cross', 'bias'];

export interface WaysOut {
  /** Everything goes on the same cloth opened out. */
  readonly openedOut: boolean;
  /** Everything goes with the grain so. */
  readonly grains: readonly LaidGrain[];
  /** The narrowest of the usual widths on which everything goes. */
  readonly width: number | undefined;
}

/** Which one change would let everything be laid. */
export function waysOut(from: FromCloth, cloth: Cloth, choice: LayingChoice): WaysOut {
  const goes = (other: Cloth, how: LayingChoice) => clothTask(from, other, how).kind === 'task';
  return {
    openedOut: cloth.folded !== 'open' && goes({ ...cloth, folded: 'open' }, choice),
    grains: GRAINS.filter((grain) => grain !== choice.grain && goes(cloth, { ...choice, grain })),
    width: cloth.shape
      ? undefined
      : WIDTHS_BESIDE.find((width) => width > cloth.width && goes({ ...cloth, width }, choice)),
  };
}

/** Where a piece too wide for the cloth, laid on the straight, may be joined along its grain. */
export function joinForWidth(
  from: FromCloth,
  cloth: Cloth,
  choice: LayingChoice,
  { id, across, allowance }: { readonly id: string; readonly across: number; readonly allowance: number },
): PieceJoin | undefined {
  const piece = from.pieces.find((one) => one.id === id || otherHand(one.id) === id);
  if (!piece || choice.grain !== 'straight') return undefined;
  const laid = pieceToLay(piece, cloth, choice);
  const entry = laid.kind === 'to-lay' ? laid.entries.find((one) => one.id === piece.id) : undefined;
  const [join] = entry ? joinsForWidth(entry, across, allowance) : [];
  return join && { id: piece.id, at: join.at, allowance };
}

/** A bias strip too long for the cloth as several that are joined on the straight grain, each long enough. */
export function stripInLengths(strip: Strip, across: number, allowance: number): Strip | undefined {
  const most = biasRun(across) - strip.width;
  const perJoin = 2 * allowance * Math.SQRT2;
  if (strip.cut !== 'bias' || most <= perJoin || strip.length <= most) return undefined;
  const lengths = Math.ceil((strip.length - perJoin) / (most - perJoin) - 1e-9);
  return { ...strip, length: (strip.length + (lengths - 1) * perJoin) / lengths, count: strip.count * lengths };
}
