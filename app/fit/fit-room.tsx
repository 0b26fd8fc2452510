import { Fragment, useMemo } from 'react';
import type { Finding } from '../../core/check/before-you-cut';
import { girthsOf } from '../../core/fit/round-body';
import { waistNeeds } from '../../core/fit/waist-needs';
import type { Garment, Ring } from '../../core/garment/garment';
import { useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { NoPieces } from '../table/no-pieces';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { RoomLayout } from '../ui/room-layout';
import { fitWords as words } from '../words/fit';
import { CurvedWaistCard } from './curved-waist-card';
import { EaseCard } from './ease-card';
import { useFit } from './fit-store';
import { FitTable } from './fit-table';
import { GirthNote } from './girth-note';
import { LeaveOpenForm } from './leave-open-form';
import { LevelsCard } from './levels-card';
import { addNewRing } from './new-ring';
import { OuterCard } from './outer-card';
import { RingCard } from './ring-card';
import { WearingCard } from './wearing-card';

/** Which pieces go round the body, and how they fit it, level by level. */
export function FitRoom() {
  const garment = useGarment((state) => state.garment);
  if (!garment) return null;
  if (garment.pieces.length > 0) return <WithPieces garment={garment} />;
  const notebook = (
    <Card title={words.roundTheBody} about="ring">
      <p>{words.roundHelp}</p>
    </Card>
  );
  return <NoPieces words={words} notebook={notebook} />;
}

function WithPieces({ garment }: { readonly garment: Garment }) {
  const ringId = useFit((state) => state.ringId);
  const ring = garment.rings.find(({ id }) => id === ringId) ?? garment.rings[0];
  const needs = useMemo(() => (ring ? waistNeeds(garment, ring) : []), [garment, ring]);
  return (
    <RoomLayout
      table={<FitTable garment={garment} ring={ring} needs={needs} />}
      notebook={
        ring ? (
          <>
            <RingChoice rings={garment.rings} ring={ring} />
            <FindingsCard garment={garment} ring={ring} />
            <CurvedWaistCard garment={garment} ring={ring} needs={needs} />
            <LevelsCard garment={garment} ring={ring} />
            <EaseCard garment={garment} ring={ring} />
            <WearingCard garment={garment} ring={ring} />
            <OuterCard garment={garment} ring={ring} />
            <RingCard garment={garment} ring={ring} />
          </>
        ) : (
          <NoRing />
        )
      }
    />
  );
}

function NoRing() {
  return (
    <Card title={words.roundTheBody} about="ring">
      <p>{words.noRing}</p>
      <Button tone="chalk" step="ring" onPress={() => addNewRing('below')}>
        {words.propose}
      </Button>
      <Button onPress={() => addNewRing('above')}>{words.proposeAbove}</Button>
    </Card>
  );
}

interface RingChoiceProps {
  readonly rings: readonly Ring[];
  readonly ring: Ring;
}

/** Which ring is looked at, where there are several. */
function RingChoice({ rings, ring }: RingChoiceProps) {
  if (rings.length < 2) return null;
  return (
    <Card title={words.whichRing}>
      <Choice
        label={words.whichRing}
        labelHidden
        value={ring.id}
        options={rings.map(({ id, name }) => ({ value: id, words: name || words.unnamedRing }))}
        onChange={(ringId) => useFit.setState({ ringId })}
      />
    </Card>
  );
}

interface FindingsCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

function FindingsCard({ garment, ring }: FindingsCardProps) {
  const findings = useFindings((state) => state.findings);
  const here = findings.filter((finding) => isOf(finding, ring));
  const isCompared = girthsOf(garment, ring).some((girth) => girth.kind === 'measured' && girth.total > 0);
  return (
    <Card title={words.findings} about="fit-findings">
      {here.length === 0 && (
        <Note tone={isCompared ? 'good' : 'plain'}>{isCompared ? words.allWell : words.nothingCompared}</Note>
      )}
      {here.map((finding) => (
        <Fragment key={JSON.stringify(finding)}>
          <GirthNote finding={finding} garment={garment} ring={ring} />
          {finding.kind === 'no-opening' && <LeaveOpenForm garment={garment} ring={ring} needed={finding.depth} />}
        </Fragment>
      ))}
    </Card>
  );
}

/** Whether a finding is about this ring: its girths, or the waist or opening of one of its pieces. */
function isOf({ kind, place }: Finding, ring: Ring): boolean {
  if (place.kind === 'ring') return place.ringId === ring.id;
  if (place.kind !== 'edge' || (kind !== 'straight-waist' && kind !== 'opening-short')) return false;
  return ring.members.some(({ pieceId }) => pieceId === place.pieceId);
}
