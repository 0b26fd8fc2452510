import type { ComponentProps } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore';
import type { Piece } from '../../core/garment/piece';
import type { ShownIn } from '../../core/units/inch';
import { Grid, RulerNumbers } from './grid';
import { type Paint, Painted } from './painted';
import { SQUARES } from './squares';
import { Viewport } from './viewport';

type PiecesTableProps = Omit<
  ComponentProps<typeof Viewport>,
  'children' | 'maxScale' | 'minScale' | 'overlay' | 'lying'
> & {
  readonly shownIn: ShownIn;
  /** The pieces that lie there, to be gone over by keys. */
  readonly pieces: readonly Piece[];
  /** What lies still, from the ground up. */
  readonly still: readonly Paint[];
  /** What moves with the hand or the room's own step, over it. */
  readonly moving: readonly Paint[];
  /** Whether the numbers across are counted from the right. */
  readonly leftwards?: boolean;
};

/** A table of numbered squares with pieces painted on it: what moves has a layer of its own, so that the rest stays. */
export function PiecesTable({ shownIn, pieces, still, moving, leftwards = false, ...viewport }: PiecesTableProps) {
  const squares = SQUARES[shownIn];
  return (
    <Viewport {...viewport} lying={{ pieces: () => pieces, shownIn }} maxScale={60} minScale={0.02}>
      {() => (
        <>
          <Layer listening={false}>
            <Grid squares={squares} />
            <PaintedInOrder paints={still} />
          </Layer>
          <Layer listening={false}>
            <PaintedInOrder paints={moving} />
            <RulerNumbers squares={squares} leftwards={leftwards} />
          </Layer>
        </>
      )}
    </Viewport>
  );
}

function PaintedInOrder({ paints }: { readonly paints: readonly Paint[] }) {
  // biome-ignore lint/suspicious/noArrayIndexKey: a place in the order is all that tells them apart
  return paints.map((paint, place) => <Painted key={place} paint={paint} />);
}
