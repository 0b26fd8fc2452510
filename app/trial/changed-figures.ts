import { whatChanges } from '../../core/check/what-changes';
import type { Garment } from '../../core/garment/garment';
import { trialWords as words } from '../words/trial';
import type { Figure } from './figures';

/**
 * What a change does, in numbers: girths all the way round, edge by edge, then the new pieces. A length that is written
 * the same before and after is left out: such a difference is none for the scissors.
 */
export function changedFigures(before: Garment, after: Garment, write: (mm: number) => string): Figure[] {
  const { girths, edges, added } = whatChanges(before, after);
  const lengths = [
    ...girths.map(({ level, ...rest }) => ({ said: words.round(level), ...rest })),
    ...edges.map(({ piece, edge, ...rest }) => ({ said: words.edgeOf(piece, edge), ...rest })),
  ].flatMap(({ said, before: was, after: is }): Figure[] =>
    write(was) === write(is) ? [] : [{ words: said, value: words.fromTo(write(was), write(is)) }],
  );
  return [...lengths, ...added.map((piece) => ({ words: words.newPiece(piece.name), value: words.cut(piece.cut) }))];
}
