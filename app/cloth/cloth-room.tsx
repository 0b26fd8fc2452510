import { useEffect } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { NoPieces } from '../table/no-pieces';
import { RoomLayout } from '../ui/room-layout';
import tableStyles from '../ui/room-table.module.css';
import { clothWords as words } from '../words/cloth';
import { shellWords } from '../words/shell';
import { BesideCard } from './beside-card';
import { BiasCard } from './bias-card';
import { BudgetCard } from './budget-card';
import { ClothCard } from './cloth-card';
import { useCloth } from './cloth-store';
import { DrawingBar } from './drawing-bar';
import { FirstCloth } from './first-cloth';
import { HowCard } from './how-card';
import { LayStrip } from './lay-strip';
import { LayTable } from './lay-table';
import { stopLaying } from './laying';
import { PlacesCard } from './places-card';
import { PrintCard } from './print-card';
import { useShownLay } from './shown-lay';
import { SumsCard } from './sums-card';
import { WhatCard } from './what-card';

/** The room where the pieces are laid on the cloth: how much of it they take, and how. */
export function ClothRoom() {
  const garment = useGarment((state) => state.garment);
  const clothId = useCloth((state) => state.clothId);
  const chosen = useTable((table) => table.chosen);
  // What is being laid is stopped on leaving; the best lay is kept.
  useEffect(() => stopLaying, []);
  if (!garment) return null;
  const cloths = garment.cloths ?? [];
  const wanted = clothId ?? (chosen.kind === 'cloth' ? chosen.clothId : undefined);
  const cloth = cloths.find(({ id }) => id === wanted) ?? cloths[0];
  if (garment.pieces.length === 0) return <NoPieces words={words} notebook={null} />;
  if (!cloth) return <FirstCloth shownIn={garment.shownIn} />;
  return <OneCloth key={cloth.id} garment={garment} cloth={cloth} />;
}

function OneCloth({ garment, cloth }: { readonly garment: Garment; readonly cloth: GarmentCloth }) {
  const lay = useShownLay(garment, cloth);
  const here = { garment, cloth, lay };
  return (
    <RoomLayout
      tableFirst
      page={cloth.id}
      table={
        <div className={tableStyles.table}>
          <h1 className="only-heard">{shellWords.rooms.cloth}</h1>
          <LayStrip {...here} />
          <DrawingBar {...here} />
          <div className={tableStyles.canvas}>
            <LayTable {...here} />
          </div>
        </div>
      }
      notebook={
        <>
          <ClothCard garment={garment} cloth={cloth} />
          <WhatCard garment={garment} cloth={cloth} />
          <HowCard {...here} />
          <SumsCard {...here} />
          <PlacesCard {...here} />
          <BesideCard {...here} what="grains" />
          <BesideCard {...here} what="widths" />
          <BudgetCard {...here} />
          <BiasCard garment={garment} cloth={cloth} />
          <PrintCard {...here} />
        </>
      }
    />
  );
}
