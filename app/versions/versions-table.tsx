import { useCallback, useMemo } from 'react';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { useTable } from '../state/table-store';
import { paintAsTraced, paintNowOver } from '../table/paint-other';
import { paintName, paintPiece } from '../table/paint-piece';
import type { Paint } from '../table/painted';
import { boxRound, pieceBoxes } from '../table/piece-boxes';
import { PiecesTable } from '../table/pieces-table';
import type { Tool } from '../table/tool';
import { versionsWords as words } from '../words/versions';
import { type LookedAt, useLooking } from './looked-at';

interface VersionsTableProps {
  readonly garment: Garment;
  readonly at: LookedAt;
  readonly version: Garment | undefined;
  readonly traced: readonly Piece[];
}

/** A version is only looked at. */
const lookOnly: Tool = { cursor: 'default', press: () => undefined };

const NONE: readonly Piece[] = [];

/** What is looked at in full lines, and over it the draft as it is now in dashes. */
export function VersionsTable({ garment, at, version, traced }: VersionsTableProps) {
  const view = useTable((table) => table.view.table);
  const setView = useTable((table) => table.setView);
  const beneath = useLooking((looking) => looking.tracedBeneath);
  const now = cutPieces(garment);
  const shown = at.kind === 'traced' ? traced : at.kind === 'version' ? (version?.pieces ?? NONE) : now;
  const over = at.kind === 'now' ? NONE : now;
  const under = at.kind === 'now' && beneath ? traced : NONE;
  const fit = useMemo(() => boxRound(pieceBoxes([...shown, ...over, ...under]), 50), [shown, over, under]);
  const paintShown = useCallback<Paint>(
    (ink, { px }) => {
      paintAsTraced(ink, under, px);
      for (const piece of shown) {
        paintPiece(ink, piece, px, 'quiet');
        paintName(ink, piece, px);
      }
    },
    [shown, under],
  );
  const paintOver = useCallback<Paint>((ink, { px }) => paintNowOver(ink, over, px), [over]);
  return (
    <PiecesTable
      view={view}
      onView={(next) => setView('table', next)}
      fit={fit}
      tool={lookOnly}
      label={words.table}
      shownIn={garment.shownIn}
      pieces={shown}
      still={[paintShown]}
      moving={[paintOver]}
    />
  );
}
