import type { Garment } from '../../core/garment/garment';
import { type EdgeRef, isOwnMirror, type Seam, type SeamEdge } from '../../core/garment/seam';
import { pieceOf } from '../../core/garment/with-piece';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { isWithinMatch } from '../../core/seams/walk';
import { finestStep } from '../../core/units/write-length';
import { seamsWords as words } from '../words/seams';
import { trialWords } from '../words/trial';
import { writeLength } from '../words/written';
import { bandSide, notchesOff, type SeamLine } from './seam-sums';

/** An edge by its piece and its name. */
export function edgeName(garment: Garment, { pieceId, edgeId }: EdgeRef): string {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId);
  return piece && edge ? trialWords.edgeOf(piece, edge) : words.goneEdge;
}

/** A side of a seam by its first edge, and how many more there are. */
export function sideName(garment: Garment, side: readonly SeamEdge[]): string {
  const [first] = side;
  if (!first) return words.goneEdge;
  const name = edgeName(garment, first);
  return side.length === 1 ? name : words.andMore(name, side.length - 1);
}

/** What she calls a seam, or else its two sides. */
export function seamName(garment: Garment, seam: Pick<Seam, 'name' | 'one' | 'other'>): string {
  return seam.name.trim() || sidesName(garment, seam);
}

/** The two sides of a seam. */
export function sidesName(garment: Garment, { one, other }: Pick<Seam, 'one' | 'other'>): string {
  const first = sideName(garment, one);
  if (!isOwnMirror({ one, other })) return words.both(first, sideName(garment, other));
  return isOfCopies(garment, one) ? words.toNextCopy(first) : words.mirrored(first);
}

/** Whether a side sewn to its own like is sewn to the next piece cut from its drawing, not to its own mirrored half. */
export function isOfCopies(garment: Garment, [edge]: readonly SeamEdge[]): boolean {
  return edge !== undefined && pieceOf(garment, edge.pieceId)?.cut.how === 'fold';
}

/** A length in thirty-seconds of an inch or tenths of a millimetre: how differences are said. */
export function finely(garment: Garment, mm: number): string {
  const { shownIn } = garment;
  return writeLength(mm, { shownIn, step: finestStep(shownIn) });
}

/** How the sides of a seam differ, in words, its notches included. */
export function differenceWords(garment: Garment, { seam, walk, isOwnMirror }: SeamLine): string {
  if (!walk) return words.differs.gone;
  if (isOwnMirror) return words.differs.mirror;
  const missing = notchesOff(walk);
  const said = lengthWords(garment, seam, walk);
  return missing === 0 ? said : `${said}; ${words.differs.notchesOff(missing)}`;
}

/** How the lengths of the sides differ, in words, with the ease and the lap that is meant. */
export function lengthWords(garment: Garment, seam: Seam, walk: SeamWalk): string {
  if (!seam.lap) return easeWords(garment, seam, walk);
  const by = finely(garment, seam.lap.length);
  if (walk.agrees && seam.ease === 0) return words.differs.agreeLap(by);
  return words.differs.besideLap(easeWords(garment, seam, walk), by);
}

function easeWords(garment: Garment, seam: Seam, { totals }: SeamWalk): string {
  const { difference, beyondEase } = totals;
  const { ease } = seam;
  const nothing = finely(garment, 0);
  const longer = (length: number) => sideName(garment, length > 0 ? seam.one : seam.other);
  const isLap = ease !== 0 && bandSide(garment, seam) === (ease > 0 ? 'one' : 'other');
  if (isWithinMatch(beyondEase)) {
    if (ease !== 0) {
      const by = finely(garment, Math.abs(ease));
      return isLap ? words.differs.agreeLap(by) : words.differs.agreeEased(longer(ease), by);
    }
    const by = finely(garment, Math.abs(difference));
    return by === nothing ? words.differs.agree : words.differs.agreeWithin(by);
  }
  const by = finely(garment, Math.abs(difference));
  const said =
    by === nothing ? words.differs.equal : words.differs.longerThan(longer(difference), by, longer(-difference));
  if (ease === 0) return said;
  const off = finely(garment, Math.abs(beyondEase));
  const how = beyondEase > 0 === ease > 0 ? words.differs.beyond : words.differs.short;
  return how(said, off, isLap ? 'lap' : 'ease');
}
