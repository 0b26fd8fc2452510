import { useCallback, useMemo } from 'react';
import type { Differences } from '../../core/compare/differences';
import type { Piece } from '../../core/garment/piece';
import type { ShownIn } from '../../core/units/inch';
import type { Paint } from '../table/painted';
import { boxRound, pieceBoxes } from '../table/piece-boxes';
import { PiecesTable } from '../table/pieces-table';
import { compareWords as words } from '../words/compare';
import { compareTool } from './compare-tool';
import type { Pair } from './figures';
import { paintAlone, paintGaps, paintPair } from './paint-compare';
import { finely } from './write';

interface CompareTableProps {
  readonly shownIn: ShownIn;
  /** Another word than before shows everything again. */
  readonly anew: string;
  /** The piece of the garment, and the other where it was laid and where it is now; none while its place is sought. */
  readonly mine: Piece;
  readonly laid: Piece | undefined;
  readonly now: Piece | undefined;
  readonly pair: Pair | undefined;
  readonly differences: Differences | undefined;
}

const keepNothing = () => undefined;

/** One piece over the other at full size, with what differs filled and the widest gaps marked. */
export function CompareTable({ shownIn, anew, mine, laid, now, pair, differences }: CompareTableProps) {
  // Shown whole when another piece is laid, not while it is nudged.
  const fit = useMemo(() => {
    const boxes = pieceBoxes(laid ? [mine, laid] : [mine]);
    return boxRound(boxes, 45);
  }, [mine, laid]);
  const tool = useMemo(() => compareTool(shownIn, () => now), [shownIn, now]);
  const paint = useCallback<Paint>(
    (ink, ground) => {
      if (pair) paintPair(ink, pair, ground);
      else paintAlone(ink, mine, ground.px);
      if (differences) paintGaps(ink, differences, (mm) => finely(mm, shownIn), ground.px);
    },
    [mine, pair, differences, shownIn],
  );
  return (
    <PiecesTable
      key={anew}
      view={undefined}
      onView={keepNothing}
      fit={fit}
      tool={tool}
      label={words.tableLabel}
      shownIn={shownIn}
      pieces={now ? [mine, now] : [mine]}
      still={[paint]}
      moving={[]}
    />
  );
}
