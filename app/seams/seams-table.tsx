import { useCallback, useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { transformPath } from '../../core/geometry/affine';
import type { Box } from '../../core/geometry/bounds';
import { pathBounds } from '../../core/geometry/path';
import { type SeamWalk, sewnPlaces, walkPose } from '../../core/seams/seam-walk';
import { useTable } from '../state/table-store';
import type { Paint } from '../table/painted';
import { boxRound, pieceBoxes } from '../table/piece-boxes';
import { PiecesTable } from '../table/pieces-table';
import { paintChange } from '../trial/paint-change';
import tableStyles from '../ui/room-table.module.css';
import { seamsWords as words } from '../words/seams';
import { paintPicked, paintPieces, paintRolled, paintSewn, paintSides } from './paint-seams';
import { useSeams } from './seams-store';
import { seamsTool } from './seams-tool';

interface SeamsTableProps {
  readonly garment: Garment;
  /** The garment with the change being tried. */
  readonly after: Garment | undefined;
  /** The walk of the seam in hand, in the garment as it would be. */
  readonly walk: SeamWalk | undefined;
}

/** The pieces with their seams; with a seam in hand the second piece rolled along the first. */
export function SeamsTable({ garment, after, walk }: SeamsTableProps) {
  const tableView = useTable((table) => table.view.table);
  const setView = useTable((table) => table.setView);
  const seamId = useSeams((state) => state.seamId);
  const picked = useSeams((state) => state.picked);
  const along = useSeams((state) => state.along);
  const fit = useFit(garment, walk, seamId);
  const tool = useMemo(seamsTool, []);
  const quiet = useCallback<Paint>((ink, { px }) => paintPieces(ink, garment, px), [garment]);
  const seams = useCallback<Paint>(
    (ink, { px }) => {
      if (after) paintChange(ink, garment, after, px);
      if (walk) paintSides(ink, garment, walk, px);
      else paintSewn(ink, garment, px);
      paintPicked(ink, garment, picked, px);
    },
    [garment, after, walk, picked],
  );
  const rolled = useCallback<Paint>(
    (ink, { px }) => {
      if (walk && !after) paintRolled(ink, garment, walk, Math.min(along, walk.one.length), px);
    },
    [garment, after, walk, along],
  );
  return (
    <div className={tableStyles.canvas}>
      <PiecesTable
        // A seam just taken in hand is shown whole, with all places the second piece is rolled through.
        key={seamId ?? ''}
        view={seamId === undefined ? tableView : undefined}
        onView={(next) => seamId === undefined && setView('table', next)}
        fit={fit}
        tool={tool}
        label={words.tableLabel}
        shownIn={garment.shownIn}
        pieces={garment.pieces}
        still={[quiet, seams]}
        moving={[rolled]}
      />
    </div>
  );
}

/** The pieces of the seam in hand with the second rolled along; without a seam everything on the table. */
function useFit(garment: Garment, walk: SeamWalk | undefined, seamId: string | undefined): Box {
  const ids = garment.pieces.map(({ id }) => id).join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the view must not jump while a piece changes its shape
  return useMemo(() => {
    return boxRound(walk ? walkBoxes(walk) : pieceBoxes(garment.pieces), 60);
  }, [ids, seamId]);
}

function walkBoxes(walk: SeamWalk): Box[] {
  const drawn = [...walk.one.stretches, ...walk.other.stretches].map(({ piece }) => pathBounds(outlineOf(piece).whole));
  const rolled = [0, 0.5, 1].map((share) => {
    const along = share * walk.one.length;
    const { piece } = sewnPlaces(walk, along).other;
    return pathBounds(transformPath(walkPose(walk, along), outlineOf(piece).whole));
  });
  return [...drawn, ...rolled];
}
