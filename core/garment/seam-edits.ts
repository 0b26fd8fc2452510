import type { Garment } from './garment';
import type { EdgeRef, Seam, SeamEdge, SeamLap } from './seam';

/** The garment with one more seam. */
export function addSeam(garment: Garment, seam: Seam): Garment {
  return { ...garment, seams: [...(garment.seams ?? []), seam] };
}

/** The garment with a seam changed. */
export function changeSeam(garment: Garment, seamId: string, change: (seam: Seam) => Seam): Garment {
  const { seams = [] } = garment;
  const index = seams.findIndex(({ id }) => id === seamId);
  const seam = seams[index];
  if (!seam) return garment;
  const changed = change(seam);
  return changed === seam ? garment : { ...garment, seams: seams.with(index, changed) };
}

/** The seam with a lap, or with none. What was written as ease of the lapping side stood for it and is left out. */
export function withLap(seam: Seam, lap: SeamLap | undefined, side: SeamLap['side']): Seam {
  const { lap: _, ...bare } = seam;
  const ease = (side === 'one' ? seam.ease > 0 : seam.ease < 0) ? 0 : seam.ease;
  return lap ? { ...bare, ease, lap } : { ...bare, ease };
}

/** The garment without a seam; its edges stay as they are. */
export function removeSeam(garment: Garment, seamId: string): Garment {
  const { seams = [] } = garment;
  const kept = seams.filter(({ id }) => id !== seamId);
  return kept.length === seams.length ? garment : { ...garment, seams: kept };
}

/** The garment without the seams that speak of a piece which is no longer there. */
export function withoutLooseSeams(garment: Garment): Garment {
  return seamsFollow(garment, garment);
}

/**
 * The garment after a change of its pieces, its seams and printed figures led after it: where an edge was cut in two the seam takes both
 * halves, where two became one it takes that one, and a seam that has lost all edges of one side is no more.
 */
export function seamsFollow(before: Garment, after: Garment): Garment {
  return wholesFollow(before, pairsFollow(before, after));
}

/** Figures printed for several edges follow them in the same way; one that has lost every edge stays, to be given others. */
function wholesFollow(before: Garment, after: Garment): Garment {
  if (!after.wholes?.length) return after;
  const wholes = after.wholes.map((whole) => {
    const edges = sideFollows(whole.edges, before, after);
    return edges === whole.edges ? whole : { ...whole, edges };
  });
  return wholes.every((whole, k) => whole === after.wholes?.[k]) ? after : { ...after, wholes };
}

function pairsFollow(before: Garment, after: Garment): Garment {
  if (!after.seams?.length) return after;
  let changed = false;
  const seams = after.seams.flatMap((seam) => {
    const [one, other] = [sideFollows(seam.one, before, after), sideFollows(seam.other, before, after)];
    if (one === seam.one && other === seam.other) return [seam];
    changed = true;
    return one.length > 0 && other.length > 0 ? [{ ...seam, one, other }] : [];
  });
  return changed ? { ...after, seams } : after;
}

function sideFollows(side: readonly SeamEdge[], before: Garment, after: Garment): readonly SeamEdge[] {
  const next = side.flatMap((seamEdge) => edgeFollows(seamEdge, edgesOf(before, seamEdge), edgesOf(after, seamEdge)));
  const once = next.filter((seamEdge, at) => next.findIndex(({ edgeId }) => edgeId === seamEdge.edgeId) === at);
  return once.length === side.length && once.every((seamEdge, at) => seamEdge === side[at]) ? side : once;
}

/** An edge, with the new ones that follow it where it was cut in two. */
function edgeFollows(seamEdge: SeamEdge, old: readonly string[], now: readonly string[]): readonly SeamEdge[] {
  const at = now.indexOf(seamEdge.edgeId);
  if (at < 0) {
    const before = old.at(old.indexOf(seamEdge.edgeId) - 1);
    return before !== undefined && now.includes(before) ? [{ ...seamEdge, edgeId: before }] : [];
  }
  if (old === now || now.length !== old.length + 1) return [seamEdge];
  const next = now[(at + 1) % now.length];
  return next === undefined || old.includes(next) ? [seamEdge] : [seamEdge, { ...seamEdge, edgeId: next }];
}

function edgesOf(garment: Garment, { pieceId }: EdgeRef): readonly string[] {
  return garment.pieces.find(({ id }) => id === pieceId)?.edges.map(({ id }) => id) ?? [];
}
