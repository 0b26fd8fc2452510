import { useEffect } from 'react';
import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { NoPieces } from '../table/no-pieces';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { RoomLayout } from '../ui/room-layout';
import tableStyles from '../ui/room-table.module.css';
import { seamsWords as words } from '../words/seams';
import { shellWords } from '../words/shell';
import { PairCard } from './pair-card';
import { ProposedCard } from './proposed-card';
import { SeamInHand } from './seam-in-hand';
import { seamInFront, sewableEdges } from './seam-sums';
import { LooseCard, SeamsList } from './seams-list';
import { openSeam, pickEdges, useSeams } from './seams-store';
import { SeamsTable } from './seams-table';

/** The room where edges are paired as they are sewn, walked one along the other, and trued. */
export function SeamsRoom() {
  const garment = useGarment((state) => state.garment);
  const seamId = useSeams((state) => state.seamId);
  useEffect(takeUpChosen, []);
  if (!garment) return null;
  if (garment.pieces.length === 0) {
    const notebook = (
      <Card title={words.seams} about="seams">
        <p>{words.noSeams}</p>
      </Card>
    );
    return <NoPieces words={words} notebook={notebook} />;
  }
  const seam = garment.seams?.find(({ id }) => id === seamId);
  if (seam) return <SeamInHand key={seam.id} garment={garment} seam={seam} />;
  const isNothingNamed = !sewableEdges(garment).some(({ edge }) => edge.role === 'seam' || edge.role === 'waist');
  return (
    <RoomLayout
      tableFirst
      table={
        <div className={tableStyles.table}>
          <h1 className="only-heard">{shellWords.rooms.seams}</h1>
          <SeamsTable garment={garment} after={undefined} walk={undefined} />
        </div>
      }
      notebook={
        <>
          {isNothingNamed ? (
            <Card title={words.seams} about="seams">
              <p>{words.noEdges}</p>
              <ToDraft />
            </Card>
          ) : (
            <SeamsList garment={garment} />
          )}
          <ProposedCard garment={garment} />
          <PairCard garment={garment} />
          <LooseCard garment={garment} />
        </>
      }
    />
  );
}

function ToDraft() {
  const goTo = useTable((table) => table.goTo);
  return (
    <Button tone="chalk" onPress={() => goTo('draft')}>
      {words.toDraft}
    </Button>
  );
}

/** Where something to be mended led here, its seam is taken in hand, or its edge is the first to be paired. */
function takeUpChosen(): void {
  const { garment } = useGarment.getState();
  const { chosen } = useTable.getState();
  const { seamId, picked } = useSeams.getState();
  if (!garment || chosen.kind !== 'edge' || seamId !== undefined || picked.length > 0) return;
  const seam = seamInFront(garment, chosen);
  if (seam) openSeam(seam.id);
  else if (isSeamEdge(garment, chosen)) pickEdges([{ pieceId: chosen.pieceId, edgeId: chosen.edgeId }]);
}

function isSeamEdge(garment: Garment, { pieceId, edgeId }: { readonly pieceId: string; readonly edgeId: string }) {
  return sewableEdges(garment).some(
    (ref) => ref.pieceId === pieceId && ref.edgeId === edgeId && ref.edge.role === 'seam',
  );
}
