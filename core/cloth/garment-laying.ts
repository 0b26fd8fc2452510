/** What of a garment is laid on which of its cloths, the lay that was kept of it, and whether that is still of these pieces. */
import { cutPieces } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import type { GarmentCloth, KeptLay } from '../garment/garment-cloth';
import { markOf } from '../garment/version-mark';
import type { Cloth } from './cloth';
import { type ClothTask, clothTask, type FromCloth } from './cloth-task';
import type { Lay, LayTask, Placed } from './lay-task';
import type { LayingChoice } from './piece-to-lay';
import { washedCloth } from './washed-cloth';

/** How far a laid outline may stand off the cut line, outside it: half a millimetre, less than chalk is wide. */
const TOLERANCE = 0.5;

/** Marks are made of lengths in steps of this (mm): no common fraction of an inch falls between two of them. */
const MARK_STEP = 0.0137;

/** A cloth with what is to be laid on it. */
export interface Laying {
  /** As it is when it is laid: washed, if it is to be. */
  readonly cloth: Cloth;
  readonly from: FromCloth;
  readonly choice: LayingChoice;
  readonly made: ClothTask;
}

const known = new WeakMap<GarmentCloth, { readonly pieces: Garment['pieces']; readonly laying: Laying }>();

/** What is laid on one of a garment's cloths. Remembered with the cloth and the pieces. */
export function layingOf(garment: Pick<Garment, 'pieces'>, cloth: GarmentCloth): Laying {
  const had = known.get(cloth);
  if (had?.pieces === garment.pieces) return had.laying;
  const washed = cloth.shrinks ? washedCloth(cloth, cloth.shrinks) : cloth;
  const from = { pieces: piecesFrom(garment, cloth), strips: cloth.strips };
  const choice: LayingChoice = {
    grain: cloth.grain,
    tolerance: TOLERANCE,
    ...(cloth.tilt ? { tilt: cloth.tilt } : {}),
    onFold: cloth.openedOut ? 'opened-out' : 'on-fold',
    ...(cloth.pieced ? { pieced: cloth.pieced } : {}),
  };
  const laying = { cloth: washed, from, choice, made: clothTask(from, washed, choice) };
  known.set(cloth, { pieces: garment.pieces, laying });
  return laying;
}

/** The pieces that are cut from a cloth. */
export function piecesFrom(garment: Pick<Garment, 'pieces'>, { pieceIds }: Pick<GarmentCloth, 'pieceIds'>) {
  return cutPieces(garment).filter(({ id }) => !pieceIds || pieceIds.includes(id));
}

/** The places of a kept lay that are pinned. */
export function pinnedOf(lay: Pick<KeptLay, 'placed'> | undefined): Placed[] {
  return (lay?.placed ?? []).filter(({ pinned }) => pinned).map(({ pinned: _, ...placed }) => placed);
}

/** A lay as it is kept in the document; what was pinned before stays pinned. */
export function keptLay(
  clothId: string,
  task: LayTask,
  lay: Lay,
  said: { readonly made: string; readonly version?: number; readonly pinned: readonly Placed[] },
): KeptLay {
  const { made, version, pinned } = said;
  const isPinned = ({ id, copy }: Placed) => pinned.some((pin) => pin.id === id && pin.copy === copy);
  return {
    clothId,
    made,
    ...(version === undefined ? {} : { version }),
    length: lay.length,
    placed: lay.placed.map((placed) => (isPinned(placed) ? { ...placed, pinned: true } : placed)),
    ...layMarks(task),
  };
}

/** What has changed since a lay was made: of the cloth, and the pieces that are new, gone or otherwise cut. */
export interface ChangedSince {
  readonly cloth: boolean;
  readonly ids: readonly string[];
}

/** What has changed since a lay was made; `undefined` where nothing has. A piece that was only moved has not changed. */
export function changedSince(lay: KeptLay, task: LayTask): ChangedSince | undefined {
  const now = layMarks(task);
  const cloth = now.clothMark !== lay.clothMark;
  const differ = (some: KeptLay['marks'], others: KeptLay['marks']) =>
    some.filter(({ id, mark }) => !others.some((one) => one.id === id && one.mark === mark)).map(({ id }) => id);
  const ids = [...new Set([...differ(now.marks, lay.marks), ...differ(lay.marks, now.marks)])];
  return cloth || ids.length > 0 ? { cloth, ids } : undefined;
}

function layMarks({ ground, toLay }: LayTask): Pick<KeptLay, 'clothMark' | 'marks'> {
  const step = (length: number) => Math.round(length / MARK_STEP);
  const ring = (points: readonly { readonly x: number; readonly y: number }[]) =>
    points.map(({ x, y }) => [step(x), step(y)]);
  return {
    clothMark: markOf({
      across: step(ground.across),
      kept: ground.kept.map(ring),
      repeat: ground.repeat ? [step(ground.repeat.along), step(ground.repeat.across)] : [],
    }),
    marks: toLay.map(({ id, outline, count, stances, onFold }) => {
      const minX = Math.min(...outline.map(({ x }) => x));
      const minY = Math.min(...outline.map(({ y }) => y));
      const shape = ring(outline.map(({ x, y }) => ({ x: x - minX, y: y - minY })));
      const turns = stances.map(({ turn, over }) => [Math.round(turn * 1e4), over ?? '']);
      return { id, mark: markOf({ shape, count, turns, onFold: onFold ?? '' }) };
    }),
  };
}
