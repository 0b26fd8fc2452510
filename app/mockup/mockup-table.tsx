import { useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Mockup } from '../../core/garment/mockup';
import { useTable } from '../state/table-store';
import { paintName, paintPiece } from '../table/paint-piece';
import type { Paint } from '../table/painted';
import { boxRound, pieceBoxes } from '../table/piece-boxes';
import { PiecesTable } from '../table/pieces-table';
import { paintChange } from '../trial/paint-change';
import { mockupWords as words } from '../words/mockup';
import { useMockup } from './mockup-store';
import { mockupTool } from './mockup-tool';
import { paintPinned } from './paint-pins';

interface MockupTableProps {
  /** The pieces that lie there: as the mock-up was cut, or as the draft is while a change is carried over. */
  readonly shown: Garment;
  readonly mockup: Mockup | undefined;
  /** The draft as it would be, while a change is carried over. */
  readonly after: Garment | undefined;
}

/** The pieces with what was pinned on them; while a change is carried over, the draft before and after. */
export function MockupTable({ shown, mockup, after }: MockupTableProps) {
  const view = useTable((table) => table.view.table);
  const setView = useTable((table) => table.setView);
  const noting = useMockup((state) => state.noting);
  const pin = useMockup((state) => state.pin);
  const carrying = useMockup((state) => state.carrying);
  const latest = useRef({ shown, mockup });
  useLayoutEffect(() => {
    latest.current = { shown, mockup };
  });
  const tool = useMemo(
    () =>
      mockupTool(
        () => latest.current.shown,
        () => latest.current.mockup !== undefined,
      ),
    [],
  );
  const fit = useMemo(() => boxRound(pieceBoxes(shown.pieces), 60), [shown.pieces]);
  const quiet = useCallback<Paint>(
    (ink, { px }) => {
      for (const piece of shown.pieces) {
        if (after && !after.pieces.includes(piece)) continue;
        paintPiece(ink, piece, px, 'quiet');
        paintName(ink, piece, px);
      }
    },
    [shown, after],
  );
  const pins = useCallback<Paint>(
    (ink, { px }) => {
      if (after) paintChange(ink, shown, after, px);
      mockup?.pinned.forEach((change, i) => {
        const isShown = carrying ? carrying.ids.includes(change.id) : change.id !== noting?.id;
        if (!isShown || change.state.kind === 'declined' || after) return;
        const look = change.state.kind === 'carried' ? 'carried' : 'noted';
        paintPinned(ink, shown, change, { look, number: i + 1, px });
      });
      if (noting) paintPinned(ink, shown, noting, { look: 'in-hand', number: undefined, pin, px });
    },
    [shown, after, mockup, noting, pin, carrying],
  );
  return (
    <PiecesTable
      view={view}
      onView={(next) => setView('table', next)}
      fit={fit}
      tool={tool}
      label={words.tableLabel}
      shownIn={shown.shownIn}
      pieces={shown.pieces}
      still={[quiet]}
      moving={[pins]}
    />
  );
}
