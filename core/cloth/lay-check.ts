/**
 * Whether a lay holds what a lay must, worked out apart from the laying: outlines are put in their places and their areas
 * clipped against one another. Nothing of the no-fit areas is used.
 */
import { type Box, boxesMeet, boxOfPoints } from '../geometry/bounds';
import { type Ring, ringArea, ringLength } from '../geometry/polygon';
import { commonAreas } from '../geometry/polygon-boolean';
import { commonArea } from './common-area';
import type { Lay, LayTask, Placed, ToLay } from './lay-task';
import { boxInStance, inStance, placedOutline } from './stance-outline';

/** What is wrong with a lay, with its amount. */
export type LayFault =
  | {
      readonly kind: 'overlap';
      readonly ids: readonly [string, string];
      readonly area: number;
      readonly at: readonly Ring[];
    }
  | { readonly kind: 'on-kept'; readonly id: string; readonly area: number }
  | { readonly kind: 'off-cloth'; readonly id: string; readonly by: number }
  | { readonly kind: 'off-fold'; readonly id: string; readonly by: number }
  | { readonly kind: 'unmatched'; readonly id: string; readonly by: number }
  | { readonly kind: 'no-such-stance'; readonly id: string }
  | { readonly kind: 'count'; readonly id: string; readonly wanted: number; readonly laid: number };

/** What is overlooked: areas in mm², distances in mm. */
export interface Overlooked {
  readonly area: number;
  readonly distance: number;
}

/** A hundredth of a square millimetre, and a thousandth of a millimetre: finer than chalk, far finer than shears. */
export const OVERLOOKED: Overlooked = { area: 0.01, distance: 0.001 };

/** Everything wrong with a lay; empty for a good one. Pieces she moves by hand are judged in the same way. */
export function layFaults(task: LayTask, lay: Lay, overlooked: Overlooked = OVERLOOKED): LayFault[] {
  const faults: LayFault[] = [];
  const pieces = new Map(task.toLay.map((piece) => [piece.id, piece]));
  const laid = lay.placed.flatMap((placed) => {
    const piece = pieces.get(placed.id);
    const ring = piece ? placedOutline(piece, placed) : [];
    if (!piece || ring.length === 0) {
      faults.push({ kind: 'no-such-stance', id: placed.id });
      return [];
    }
    faults.push(...placeFaults(task, lay, piece, placed, ring, overlooked));
    return [laidOnce(piece, placed, ring)];
  });
  for (const { id, count } of task.toLay) {
    const copies = new Set(lay.placed.filter((one) => one.id === id).map(({ copy }) => copy)).size;
    const times = lay.placed.filter((one) => one.id === id).length;
    if (copies !== count || times !== count) faults.push({ kind: 'count', id, wanted: count, laid: copies });
  }
  laid.forEach((one, i) => {
    for (const other of laid.slice(i + 1)) {
      if (!one.box || !other.box || !boxesMeet(one.box, other.box)) continue;
      const { area, rings } = commonOnce(one, other);
      if (area > overlooked.area) faults.push({ kind: 'overlap', ids: [one.id, other.id], area, at: rings });
    }
    for (const kept of task.ground.kept) {
      const { area } = common(one.ring, kept);
      if (area > overlooked.area) faults.push({ kind: 'on-kept', id: one.id, area });
    }
  });
  return faults;
}

/** A piece as it lies, with what it was found to have in common with others: in a drag only one of them moves. */
interface Laid {
  readonly piece: ToLay;
  readonly id: string;
  readonly ring: Ring;
  readonly box: Box | undefined;
  readonly shared: WeakMap<Laid, Common>;
}

const known = new WeakMap<Placed, Laid>();

function laidOnce(piece: ToLay, placed: Placed, ring: Ring): Laid {
  const had = known.get(placed);
  if (had?.piece === piece) return had;
  const laid = { piece, id: piece.id, ring, box: boxOfPoints(ring), shared: new WeakMap<Laid, Common>() };
  known.set(placed, laid);
  return laid;
}

function commonOnce(one: Laid, other: Laid): Common {
  const had = one.shared.get(other);
  if (had) return had;
  const found = common(one.ring, other.ring);
  one.shared.set(other, found);
  return found;
}

interface Common {
  readonly area: number;
  readonly rings: readonly Ring[];
}

/** Areas this thin on the whole, in mm, may be the clipping's own grid. */
const GRID = 2e-4;

/** An area that cannot be made out counts as infinite: it is never let pass. A sliver is worked out on no grid. */
function common(a: Ring, b: Ring): Common {
  const areas = commonAreas([a], [b]);
  if (areas.kind === 'unsure') return { area: Number.MAX_VALUE, rings: [] };
  const { rings } = areas;
  const area = Math.abs(rings.reduce((sum, ring) => sum + ringArea(ring), 0));
  const length = rings.reduce((sum, ring) => sum + ringLength(ring), 0) / 2;
  return { area: area < GRID * length ? commonArea(a, b) : area, rings };
}

function placeFaults(
  { ground }: LayTask,
  lay: Lay,
  piece: ToLay,
  { at, id, stance }: Placed,
  ring: Ring,
  { distance }: Overlooked,
): LayFault[] {
  const box = boxOfPoints(ring);
  if (!box) return [];
  const faults: LayFault[] = [];
  const by = Math.max(-box.minX, -box.minY, box.maxX - lay.length, box.maxY - ground.across);
  if (by > distance) faults.push({ kind: 'off-cloth', id, by });
  const fold = piece.onFold === 'along' ? box.minY : piece.onFold === 'across' ? box.minX : 0;
  if (Math.abs(fold) > distance) faults.push({ kind: 'off-fold', id, by: Math.abs(fold) });
  const how = piece.stances[stance];
  const corner = how && boxInStance(piece.outline, how);
  if (piece.match && ground.repeat && how && corner) {
    const matched = inStance(piece.match, how);
    const alongOff = offRepeat(at.x + matched.x - corner.minX, piece.onFold === 'across' ? 0 : ground.repeat.along);
    const acrossOff = offRepeat(at.y + matched.y - corner.minY, piece.onFold === 'along' ? 0 : ground.repeat.across);
    if (Math.max(alongOff, acrossOff) > distance)
      faults.push({ kind: 'unmatched', id, by: Math.max(alongOff, acrossOff) });
  }
  return faults;
}

function offRepeat(place: number, repeat: number): number {
  return repeat > 0 ? Math.abs(place - Math.round(place / repeat) * repeat) : 0;
}
