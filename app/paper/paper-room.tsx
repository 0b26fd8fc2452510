import { useState } from 'react';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import { versionSaid } from '../../core/garment/version-said';
import { useGarment } from '../state/garment-store';
import { useVersionsOf } from '../storage/use-versions';
import { NoPieces } from '../table/no-pieces';
import { RoomLayout } from '../ui/room-layout';
import { paperWords as words } from '../words/paper';
import { FilesCard } from './files-card';
import { LabelCard } from './label-card';
import { MakeCard } from './make-card';
import { PagesPreview } from './pages-preview';
import { PaperCard } from './paper-card';
import { PrintedCard } from './printed-card';
import { ProofCard } from './proof-card';
import { ScreenCard } from './screen-card';
import { SquaresCard } from './squares-card';
import { useMaking } from './use-making';

/** From the draft to paper: true-size pages, or the squares sheet. */
export function PaperRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  if (cutPieces(garment).length > 0) return <WithPieces garment={garment} />;
  return <NoPieces words={words} notebook={<PaperCard garment={garment} />} />;
}

function WithPieces({ garment }: { readonly garment: Garment }) {
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const chosen = cutPieces(garment).filter((piece) => !left.has(piece.id));
  const { versions } = useVersionsOf(garment.id);
  const version = versionSaid(versions, garment);
  const making = useMaking(garment, chosen);
  const toggle = (pieceId: string, on: boolean) => {
    const next = new Set(left);
    if (on) next.delete(pieceId);
    else next.add(pieceId);
    setLeft(next);
  };
  return (
    <RoomLayout
      table={<PagesPreview pieces={chosen} paper={garment.paper} shownIn={garment.shownIn} />}
      notebook={
        <>
          <MakeCard garment={garment} chosen={chosen} version={version} making={making} onToggle={toggle} />
          <PrintedCard garment={garment} making={making} />
          <PaperCard garment={garment} />
          <ProofCard garment={garment} />
          <SquaresCard garment={garment} chosen={chosen} />
          <ScreenCard garment={garment} chosen={chosen} />
          <LabelCard garment={garment} />
          <FilesCard garment={garment} />
        </>
      }
    />
  );
}
