import type { Piece } from './piece';

/** A stretch of an edge that sewing makes shorter, as lengths from the edge's start, and what is left of it when sewn. */
export interface Mouth {
  readonly from: number;
  readonly to: number;
  /** The sewn length of the stretch; nothing unless said: a dart's mouth or a pleat closes altogether. */
  readonly into?: number;
}

/**
 * What darts, pleats and gathers take up on an edge of that length (mm): stretches in order, cut off at its ends. Darts and
 * pleats are closed first, joined where they overlap; gathers then draw up evenly what lies free between them, the first
 * named where two overlap. Gathers never stretch an edge.
 */
export function takenUp(piece: Piece, edgeId: string, length: number): readonly Mouth[] {
  const inside = (along: number) => Math.min(length, Math.max(0, along));
  const closed: Mouth[] = [];
  for (const { edgeId: on, along, width } of piece.darts) {
    if (on === edgeId && width > 0) closed.push({ from: inside(along - width / 2), to: inside(along + width / 2) });
  }
  for (const one of piece.fullness ?? []) {
    if (one.edgeId !== edgeId || one.kind !== 'pleat' || !(one.takes > 0)) continue;
    closed.push({ from: inside(one.from), to: inside(one.from + one.takes) });
  }
  let mouths = joinedUp(closed);
  for (const one of piece.fullness ?? []) {
    if (one.edgeId !== edgeId || one.kind !== 'gathers') continue;
    const free = freeBetween(mouths, inside(one.from), inside(one.to));
    const room = free.reduce((sum, { from, to }) => sum + to - from, 0);
    if (!(room > one.into)) continue;
    const drawn = free.map(({ from, to }) => ({ from, to, into: ((to - from) * Math.max(0, one.into)) / room }));
    mouths = [...mouths, ...drawn].sort((a, b) => a.from - b.from);
  }
  return mouths;
}

/** A length along an edge once what is taken up before it is sewn; inside a closed mouth, where that mouth closes. */
export function netAlong(mouths: readonly Mouth[], along: number): number {
  return mouths.reduce((left, { from, to, into = 0 }) => {
    const passed = Math.max(0, Math.min(along, to) - from);
    return passed > 0 ? left - passed * (1 - into / (to - from)) : left;
  }, along);
}

function joinedUp(mouths: Mouth[]): Mouth[] {
  const apart: Mouth[] = [];
  for (const mouth of mouths.sort((a, b) => a.from - b.from)) {
    const last = apart[apart.length - 1];
    if (last && mouth.from <= last.to) apart[apart.length - 1] = { from: last.from, to: Math.max(last.to, mouth.to) };
    else apart.push(mouth);
  }
  return apart;
}

/** The stretches between two lengths that nothing has taken up. */
function freeBetween(mouths: readonly Mouth[], from: number, to: number): Mouth[] {
  const free: Mouth[] = [];
  let begin = from;
  for (const mouth of mouths) {
    if (mouth.to <= from || mouth.from >= to) continue;
    if (mouth.from > begin) free.push({ from: begin, to: mouth.from });
    begin = Math.max(begin, mouth.to);
  }
  if (to > begin) free.push({ from: begin, to });
  return free;
}
