import type { Gap } from '../../core/compare/gaps';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import type { ShownIn } from '../../core/units/inch';
import { compareWords as words } from '../words/compare';
import { midSentence } from '../words/written';
import { type Compared, edgeAt, type Pair } from './figures';
import { edgeName } from './names';
import { LEAST_SHOWN } from './paint-compare';
import { finely } from './write';

/** Where a gap is, by the edge of the lower piece. */
export function placeOf(piece: Piece, gap: Gap, shownIn: ShownIn): string {
  const { index, along } = edgeAt(piece, gap.from);
  const edge = edgeName(piece, index);
  const before = edgeName(piece, (index + piece.edges.length - 1) % piece.edges.length);
  if (along < LEAST_SHOWN) return words.atCorner(edge, before);
  const left = pathLength(outlineOf(piece).edges[index] ?? []) - along;
  if (left < LEAST_SHOWN) return words.atCorner(edgeName(piece, (index + 1) % piece.edges.length), edge);
  return words.place(edge, finely(along, shownIn), before);
}

/** How the two differ, in sentences: everything the table shows that cannot be heard. */
export function inWords(
  { under, over }: Pair,
  compared: Compared,
  names: { readonly under: string; readonly over: string },
  shownIn: ShownIn,
): string[] {
  const write = (mm: number) => finely(mm, shownIn);
  const { gap, gaps } = compared;
  const sentences = [words.lies(names.over, names.under)];
  if (gap.width < LEAST_SHOWN) sentences.push(words.same(write(LEAST_SHOWN * 2)));
  else {
    const side = gap === gaps.out ? 'out' : 'in';
    const opposite = side === 'out' ? 'in' : 'out';
    const second = gaps[opposite];
    sentences.push(words.largestAt(write(gap.width), placeOf(under, gap, shownIn), side));
    sentences.push(
      second && second.width >= LEAST_SHOWN
        ? words.otherSide(write(second.width), placeOf(under, second, shownIn), opposite)
        : words.noOtherSide(opposite),
    );
  }
  const differing = compared.edges.flatMap(({ one, other }) => {
    const [piece, edge] = one ? [under, one.edge] : [over, other?.edge];
    const name = edgeName(piece, edge ? piece.edges.indexOf(edge) : 0);
    const by = (other?.length ?? 0) - (one?.length ?? 0);
    return Math.abs(by) < LEAST_SHOWN ? [] : [`${name} ${words.signed(by, write(by))}`];
  });
  sentences.push(differing.length === 0 ? words.edgesAgree : words.edgesDiffer(differing.join('; ')));
  const round = compared.girths.flatMap(({ level, one, other }) => {
    if (one === undefined || other === undefined) return [];
    return [`${midSentence(words.level(level))} ${words.signed(other - one, write(other - one))}`];
  });
  if (round.length > 0) sentences.push(words.girthsDiffer(round.join('; ')));
  return sentences;
}
