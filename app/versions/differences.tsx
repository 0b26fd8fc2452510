import { useMemo } from 'react';
import { type DraftDifferences, draftDifferences } from '../../core/check/draft-differences';
import type { Garment } from '../../core/garment/garment';
import { type Figure, Figures } from '../trial/figures';
import { trialWords } from '../words/trial';
import { versionsWords as words } from '../words/versions';
import { writeLength } from '../words/written';

interface DifferencesProps {
  readonly before: Garment;
  readonly after: Garment;
}

/** How the draft now differs from what lies on the table, piece by piece and edge by edge. */
export function Differences({ before, after }: DifferencesProps) {
  const rows = useMemo(
    () => rowsOf(draftDifferences(before, after), (mm) => writeLength(mm, { shownIn: after.shownIn })),
    [before, after],
  );
  return (
    <>
      <h3>{words.differs}</h3>
      {rows.length === 0 ? <p>{words.same}</p> : <Figures rows={rows} label={words.differs} />}
    </>
  );
}

function rowsOf({ added, removed, changed }: DraftDifferences, write: (mm: number) => string): Figure[] {
  const named = (id: string, name: string) => name || id;
  return [
    ...added.map(({ id, name }) => ({ key: id, words: named(id, name), value: words.pieceAdded })),
    ...removed.map(({ id, name }) => ({ key: id, words: named(id, name), value: words.pieceRemoved })),
    ...changed.flatMap(({ piece, edges, edgesGone, moved }): Figure[] => {
      const rows = edges.map(({ edge, before, after }) => ({
        key: `${piece.id} ${edge.id}`,
        words: trialWords.edgeOf(piece, edge),
        value:
          before === undefined
            ? `${words.edgeNew}, ${write(after)}`
            : write(before) === write(after)
              ? words.edgeReshaped(write(after))
              : trialWords.fromTo(write(before), write(after)),
      }));
      const whole = (value: string) => ({ key: `${piece.id} ${value}`, words: named(piece.id, piece.name), value });
      if (edgesGone > 0) return [...rows, whole(words.edgesGone(edgesGone))];
      return rows.length > 0 ? rows : [whole(moved ? words.pieceMoved : words.pieceOther)];
    }),
  ];
}
