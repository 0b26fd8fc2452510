import { useEffect, useRef } from 'react';
import { edgesWithoutAllowance } from '../../core/garment/missing-allowances';
import { pieceOf } from '../../core/garment/with-piece';
import { useTable } from '../state/table-store';
import { chosenStop } from '../table/walk';
import { BodyTotals } from './body-totals';
import styles from './draft.module.css';
import { useDraft } from './draft-store';
import { EdgeCard } from './edge-card';
import { MarkCard } from './mark-cards';
import { OutlineCard } from './outline-card';
import { PieceCard } from './piece-card';
import { PiecesCard } from './pieces-card';
import { chosenPieceId } from './pieces-layer';
import { PointCard } from './point-card';
import { useRestedGarment } from './rested-garment';
import { TraceCard } from './trace-card';
import { WholesCard } from './wholes-card';

/** The notebook of the draft room: what is chosen first, then the piece it belongs to, then every piece. */
export function Notebook() {
  const tracing = useDraft((draft) => draft.mode === 'trace');
  const chosen = useTable((table) => table.chosen);
  const garment = useRestedGarment();
  const pieceId = chosenPieceId(chosen);
  const piece = garment && pieceId !== undefined ? pieceOf(garment, pieceId) : undefined;
  const top = useRef<HTMLDivElement>(null);
  // What is chosen on the table comes into sight; what is chosen from the list of points takes the focus to its card.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the choice is what this effect is about
  useEffect(() => {
    const now = document.activeElement;
    if (now?.closest('[data-outline]')) top.current?.focus();
    if (!top.current?.parentElement?.contains(now)) top.current?.scrollIntoView({ block: 'end' });
  }, [chosen]);
  if (tracing) {
    return (
      <>
        <TraceCard />
        <PiecesCard isTracing />
      </>
    );
  }
  const stop = piece && chosenStop(piece, chosen);
  const index = piece && chosen.kind === 'edge' ? piece.edges.findIndex(({ id }) => id === chosen.edgeId) : -1;
  const edge = piece?.edges[index];
  return (
    <>
      <div ref={top} tabIndex={-1} className={styles.top} />
      {piece && stop && <PointCard piece={piece} stop={stop} />}
      {piece && edge && <EdgeCard key={`edge ${edge.id}`} piece={piece} index={index} edge={edge} />}
      {piece && <MarkCard key={`mark ${JSON.stringify(chosen)}`} piece={piece} chosen={chosen} />}
      {piece && chosen.kind !== 'piece' && <BodyTotals pieceId={piece.id} />}
      {piece && (
        <PieceCard
          key={`piece ${piece.id}`}
          id={piece.id}
          name={piece.name}
          cut={piece.cut}
          drawnAs={piece.drawnAs}
          side={piece.side}
          missing={edgesWithoutAllowance(piece).length}
          remarks={piece.remarks}
        />
      )}
      {piece && <OutlineCard piece={piece} />}
      <PiecesCard />
      <WholesCard />
    </>
  );
}
