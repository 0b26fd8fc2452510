import { useCallback, useMemo } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore';
import { girthsOf } from '../../core/fit/round-body';
import type { WaistNeed } from '../../core/fit/waist-needs';
import type { Garment, Ring } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { pathAtLength, pathLength } from '../../core/geometry/path';
import { useTable } from '../state/table-store';
import { Grid, RulerNumbers } from '../table/grid';
import { layPath, writeWords } from '../table/ink';
import { paintName, paintPiece } from '../table/paint-piece';
import { type Paint, Painted } from '../table/painted';
import { boxRound, pieceBoxes, withFoot } from '../table/piece-boxes';
import { SQUARES } from '../table/squares';
import type { Tool } from '../table/tool';
import { Viewport } from '../table/viewport';
import { canvasColours } from '../ui/canvas-colours';
import { fitWords as words } from '../words/fit';
import { writeLength } from '../words/written';

interface FitTableProps {
  readonly garment: Garment;
  readonly ring: Ring | undefined;
  readonly needs: readonly WaistNeed[];
}

/** Nothing is dragged here: pieces are reshaped in the Draft room, or by taking the curve. */
const lookOnly: Tool = { cursor: 'default', press: () => undefined };

/** The pieces with the levels drawn on them, and the waist they need over the waist they have. */
export function FitTable({ garment, ring, needs }: FitTableProps) {
  const view = useTable((table) => table.view.table);
  const setView = useTable((table) => table.setView);
  const squares = SQUARES[garment.shownIn];
  const box = useMemo(() => withFoot(boxRound(pieceBoxes(garment.pieces), 50)), [garment]);
  const paintPieces = useCallback<Paint>(
    (ink, { px }) => {
      for (const piece of garment.pieces) {
        paintPiece(ink, piece, px, 'quiet');
        paintName(ink, piece, px);
      }
    },
    [garment],
  );
  const paintLevels = useCallback<Paint>(
    (ink, { px }) => {
      if (!ring) return;
      for (const girth of girthsOf(garment, ring)) {
        for (const { line } of girth.pieces) {
          for (const run of line?.runs ?? []) {
            ink.beginPath();
            layPath(ink, run);
            ink.strokeStyle = canvasColours.chalk;
            ink.lineWidth = 1.5 * px;
            ink.setLineDash([7 * px, 5 * px]);
            ink.stroke();
            ink.setLineDash([]);
            const middle = pathAtLength(run, pathLength(run) / 2);
            const said = `${words.levelOf(girth.level)} ${writeLength(line?.length ?? 0, { shownIn: garment.shownIn })}`;
            writeWords(ink, said, { at: middle.point, px, colour: canvasColours.chalkDeep, offset: { x: 0, y: 13 } });
          }
        }
      }
    },
    [garment, ring],
  );
  const paintCurves = useCallback<Paint>(
    (ink, { px }) => {
      for (const need of needs) {
        if (need.kind !== 'needs-curve' || need.settled) continue;
        const { piece } = need.curve;
        const path = outlineOf(piece).edges[piece.edges.findIndex((edge) => edge.id === need.edgeId)];
        if (!path) continue;
        ink.beginPath();
        layPath(ink, path);
        ink.strokeStyle = canvasColours.chalk;
        ink.lineWidth = 3.5 * px;
        ink.stroke();
      }
    },
    [needs],
  );
  return (
    <Viewport
      view={view}
      onView={(next) => setView('table', next)}
      fit={box}
      tool={lookOnly}
      label={words.tableLabel}
      lying={{ pieces: () => garment.pieces, shownIn: garment.shownIn }}
      maxScale={40}
      minScale={0.05}
    >
      {() => (
        <>
          <Layer listening={false}>
            <Grid squares={squares} />
            <Painted paint={paintPieces} />
          </Layer>
          <Layer listening={false}>
            <Painted paint={paintLevels} />
            <Painted paint={paintCurves} />
            <RulerNumbers squares={squares} />
          </Layer>
        </>
      )}
    </Viewport>
  );
}
