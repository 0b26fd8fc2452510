import { isGuide } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import { isOwnMirror, type Seam } from '../garment/seam';
import { pieceOf, withPiece } from '../garment/with-piece';
import { drawnPlace, type SeamSide, type SeamStretch, seamSides } from '../seams/seam-sides';
import { type NotTakenIn, type Pinned, takeIn } from '../shaping/take-in';

/** What is taken out of a seam (mm; less than 0 lets out), and how its two sides share it. */
export interface SeamTakenIn {
  /** Places along the sewn length of the seam's first side, and what goes there from both sides together. */
  readonly pins: readonly Pinned[];
  /** How much of it, 0 to 1, the first side gives; a half unless said. */
  readonly shareOfOne?: number;
}

export interface SeamNotTakenIn {
  readonly kind: 'seam-not-taken-in';
  readonly why: NotTakenIn['why'] | 'no-seam';
  readonly pieceId?: string;
}

/** Shares nearer to nothing than this leave an edge as it is. */
const NOTHING = 1e-9;

/**
 * The garment with a seam taken in or let out on both its sides: graded evenly from pin to pin and to nothing at the ends
 * of the seam, at the places that meet when it is sewn. A piece sewn to its own mirror image gives half on each half,
 * which is drawn once, whatever the shares. An edge that comes several times in the seam is changed once.
 */
export function takeInSeam(garment: Garment, seam: Seam, wish: SeamTakenIn): Garment | SeamNotTakenIn {
  const sides = seamSides(garment, seam);
  if (!sides) return { kind: 'seam-not-taken-in', why: 'no-seam' };
  const { one, other } = sides;
  const share = isOwnMirror(seam) ? 0.5 : (wish.shareOfOne ?? 0.5);
  const onOne = changesOn(one, one.length, wish.pins, share);
  const onOther = changesOn(other, one.length, wish.pins, 1 - share);
  const done = new Set<string>();
  let changed = garment;
  for (const { pieceId, edgeId, pins } of [...onOne, ...onOther]) {
    const piece = pieceOf(changed, pieceId);
    const key = `${pieceId}\n${edgeId}`;
    if (done.has(key) || !piece || isGuide(piece)) continue;
    done.add(key);
    const taken = takeIn(piece, edgeId, pins);
    if ('why' in taken) return { kind: 'seam-not-taken-in', why: taken.why, pieceId };
    changed = withPiece(changed, pieceId, () => taken);
  }
  return changed === garment ? { kind: 'seam-not-taken-in', why: 'no-pins' } : changed;
}

/** The pins of every edge on one side, its own share of them, by its drawn line. */
function changesOn(side: SeamSide, walk: number, pins: readonly Pinned[], share: number) {
  if (share < NOTHING) return [];
  const scale = walk > 0 ? side.length / walk : 1;
  const here = pins
    .map(({ along, by }) => ({ along: along * scale, by: by * share }))
    .filter(({ along }) => along >= 0 && along <= side.length + NOTHING)
    .toSorted((a, b) => a.along - b.along);
  return side.stretches.flatMap((stretch) => {
    const own = pinsOn(stretch, here, side.length);
    return own.some(({ by }) => Math.abs(by) > NOTHING) ? [{ ...stretch, pins: own }] : [];
  });
}

/** The pins on one stretch, and what the grading comes to at its ends where the change runs on over them. */
function pinsOn(stretch: SeamStretch, pins: readonly Pinned[], total: number): Pinned[] {
  const { from, length } = stretch;
  const inside = pins.filter(({ along }) => along >= from - NOTHING && along <= from + length + NOTHING);
  const ends = [from, from + length]
    .filter((along) => inside.every((pin) => Math.abs(pin.along - along) > NOTHING))
    .map((along) => ({ along, by: gradedAt(pins, along, total) }))
    .filter(({ by }) => by !== 0);
  return [...inside, ...ends].map(({ along, by }) => ({ along: drawnPlace(stretch, along), by }));
}

/** The amount at a place: straight between neighbouring pins, to nothing at both ends of the seam. */
function gradedAt(pins: readonly Pinned[], along: number, total: number): number {
  const graded = [{ along: 0, by: 0 }, ...pins, { along: total, by: 0 }];
  const next = graded.findIndex((pin) => pin.along > along);
  const [a, b] = [graded[next - 1], graded[next]];
  if (!a || !b) return 0;
  return a.by + ((b.by - a.by) * (along - a.along)) / (b.along - a.along);
}
