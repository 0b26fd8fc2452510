import { useMemo } from 'react';
import { proposedRing } from '../../core/fit/default-ring';
import { girthsOf } from '../../core/fit/round-body';
import { waistNeeds } from '../../core/fit/waist-needs';
import type { Garment } from '../../core/garment/garment';
import { addRing } from '../../core/garment/ring-edits';
import { useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { EmptySheet } from '../ui/empty-sheet';
import { Note } from '../ui/note';
import { RoomLayout } from '../ui/room-layout';
import { findingSentence } from '../words/findings';
import { fitWords as words } from '../words/fit';
import { CurvedWaistCard } from './curved-waist-card';
import { FitTable } from './fit-table';
import { LevelsCard } from './levels-card';
import { RingCard } from './ring-card';

/** Which pieces go round the body, and how they fit it, level by level. */
export function FitRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  return garment.pieces.length === 0 ? <NoPieces /> : <WithPieces garment={garment} />;
}

function NoPieces() {
  const goTo = useTable((table) => table.goTo);
  return (
    <RoomLayout
      tableFirst
      table={
        <EmptySheet title={words.noPiecesTitle}>
          <p>{words.noPieces}</p>
          <Button tone="chalk" onPress={() => goTo('draft')}>
            {words.toDraft}
          </Button>
        </EmptySheet>
      }
      notebook={
        <Card title={words.roundTheBody}>
          <p>{words.roundHelp}</p>
        </Card>
      }
    />
  );
}

function WithPieces({ garment }: { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  const findings = useFindings((state) => state.findings);
  const ring = garment.rings[0];
  const needs = useMemo(() => (ring ? waistNeeds(garment, ring) : []), [garment, ring]);
  const here = findings.filter((finding) => finding.place.kind === 'ring' || finding.kind === 'straight-waist');
  const isCompared = ring !== undefined && girthsOf(garment, ring).some((girth) => girth.kind === 'measured');
  if (!ring) {
    const propose = () =>
      edit(words.ringLabel, (before) =>
        addRing(before, proposedRing(before, { newId: () => crypto.randomUUID(), name: words.ringName })),
      );
    return (
      <RoomLayout
        table={<FitTable garment={garment} ring={undefined} needs={[]} />}
        notebook={
          <Card title={words.roundTheBody}>
            <p>{words.noRing}</p>
            <Button tone="chalk" onPress={propose}>
              {words.propose}
            </Button>
          </Card>
        }
      />
    );
  }
  return (
    <RoomLayout
      table={<FitTable garment={garment} ring={ring} needs={needs} />}
      notebook={
        <>
          <Card title={words.findings}>
            {here.length === 0 && (
              <Note tone={isCompared ? 'good' : 'plain'}>{isCompared ? words.allWell : words.nothingCompared}</Note>
            )}
            {here.map((finding) => (
              <Note key={`${finding.kind} ${JSON.stringify(finding.place)}`} tone={finding.weight}>
                {findingSentence(finding, garment)}
              </Note>
            ))}
          </Card>
          <LevelsCard garment={garment} ring={ring} />
          <CurvedWaistCard garment={garment} ring={ring} needs={needs} />
          <RingCard garment={garment} ring={ring} />
        </>
      }
    />
  );
}
