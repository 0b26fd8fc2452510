import { useCallback, useMemo } from 'react';
import { whatChanges } from '../../core/check/what-changes';
import type { Garment } from '../../core/garment/garment';
import { pieceOf } from '../../core/garment/with-piece';
import type { Box } from '../../core/geometry/bounds';
import { useTable } from '../state/table-store';
import type { Paint } from '../table/painted';
import { boxRound, pieceBoxes, withFoot } from '../table/piece-boxes';
import { PiecesTable } from '../table/pieces-table';
import { paintChange } from '../trial/paint-change';
import { reshapeWords as words } from '../words/reshape';
import { paintChosen, paintLengths, paintPieces, paintTrial } from './paint-trial';
import { useReshape } from './reshape-store';
import { trialTool } from './trial-tool';
import { triedOn } from './tried';

/** The pieces, and over them the change being tried. */
export function ReshapeTable({ garment }: { readonly garment: Garment }) {
  const view = useTable((table) => table.view.table);
  const setView = useTable((table) => table.setView);
  const chosen = useTable((table) => table.chosen);
  const trying = useReshape((state) => state.trying);
  const tried = trying && triedOn(garment, trying);
  const after = tried?.kind === 'tried' ? tried.garment : undefined;
  const fit = useFit(after ?? garment);
  // New pieces are laid where there is room, and a half is opened to its other side: that may be out of sight.
  const added = Math.max(0, (after?.pieces.length ?? 0) - garment.pieces.length);
  const opened = after ? Math.max(0, foldCount(garment.pieces) - foldCount(after.pieces)) : 0;
  const tool = useMemo(trialTool, []);
  const inHand = 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
  const edgeId = chosen.kind === 'edge' ? chosen.edgeId : undefined;
  const quiet = useCallback<Paint>((ink, { px }) => paintPieces(ink, garment, after, px), [garment, after]);
  // Worked out when the change is another one, not whenever the table moves.
  const marks = useMemo(
    () => ({
      edges: after ? whatChanges(garment, after).edges : [],
      lines: trying?.lines?.(garment) ?? [],
      grips: trying?.grips?.(garment) ?? [],
    }),
    [garment, after, trying],
  );
  const live = useCallback<Paint>(
    (ink, { px }) => {
      if (inHand && !(after && !after.pieces.includes(inHand))) paintChosen(ink, inHand, edgeId, px);
      if (after) paintChange(ink, garment, after, px);
      paintLengths(ink, marks.edges, garment.shownIn, px);
      paintTrial(ink, marks.lines, marks.grips, px);
    },
    [garment, after, marks, inHand, edgeId],
  );
  return (
    <PiecesTable
      view={view}
      onView={(next) => setView('table', next)}
      fit={fit}
      fitAgain={added + opened}
      tool={tool}
      label={words.tableLabel}
      shownIn={garment.shownIn}
      pieces={(after ?? garment).pieces}
      still={[quiet]}
      moving={[live]}
    />
  );
}

/** How many edges lie on a fold: a half that is opened to the whole piece has one less, and more to show. */
function foldCount(pieces: Garment['pieces']): number {
  return pieces.reduce((sum, { edges }) => sum + edges.filter(({ role }) => role === 'fold').length, 0);
}

/** Everything on the table, as it was when a piece or a fold last came or went. */
function useFit({ pieces }: Garment): Box {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the view must not jump while a piece changes its shape
  return useMemo(() => {
    return withFoot(boxRound(pieceBoxes(pieces), 60));
  }, [pieces.length, foldCount(pieces)]);
}
