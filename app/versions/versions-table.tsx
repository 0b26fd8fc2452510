import { useCallback, useMemo } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { useTable } from '../state/table-store';
import { Grid, RulerNumbers } from '../table/grid';
import { paintAsTraced, paintNowOver } from '../table/paint-other';
import { paintName, paintPiece } from '../table/paint-piece';
import { type Paint, Painted } from '../table/painted';
import { boxRound, pieceBoxes } from '../table/piece-boxes';
import { SQUARES } from '../table/squares';
import type { Tool } from '../table/tool';
import { Viewport } from '../table/viewport';
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
  const squares = SQUARES[garment.shownIn];
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
    <Viewport
      view={view}
      onView={(next) => setView('table', next)}
      fit={fit}
      tool={lookOnly}
      label={words.table}
      maxScale={40}
      minScale={0.02}
    >
      {() => (
        <>
          <Layer listening={false}>
            <Grid squares={squares} />
            <Painted paint={paintShown} />
          </Layer>
          <Layer listening={false}>
            <Painted paint={paintOver} />
            <RulerNumbers squares={squares} />
          </Layer>
        </>
      )}
    </Viewport>
  );
}
