import { useMemo } from 'react';
import { ringPieces } from '../../core/fit/round-body';
import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import { addSeam } from '../../core/garment/seam-edits';
import { type ProposedSeam, proposedSeams } from '../../core/seams/proposed-seams';
import { isWithinMatch } from '../../core/seams/walk';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { say } from '../ui/say';
import { seamsWords as words } from '../words/seams';
import { finely, sideName, sidesName } from './seam-names';
import styles from './seams.module.css';

/** Pairs that can be seen in the names and lengths of the edges; she takes those that are right. */
export function ProposedCard({ garment }: { readonly garment: Garment }) {
  const proposed = useMemo(() => {
    const rings = garment.rings.map((ring) => ringPieces(garment, ring));
    return proposedSeams(garment, { newId, rings });
  }, [garment]);
  if (proposed.length === 0) return null;
  return (
    <Card title={words.proposed} about="proposed-pairs" aside={proposed.length} step="pair">
      {proposed.length > 1 && (
        <Button tone="chalk" icon="done" onPress={() => pairAll(proposed.map(({ seam }) => seam))}>
          {words.pairAll(proposed.length)}
        </Button>
      )}
      {proposed.map((each) => (
        <Proposal key={sidesName(garment, each.seam)} garment={garment} proposed={each} />
      ))}
    </Card>
  );
}

function Proposal({ garment, proposed }: { readonly garment: Garment; readonly proposed: ProposedSeam }) {
  const { seam, by, difference } = proposed;
  const sides = sidesName(garment, seam);
  return (
    <div className={styles.entry}>
      <strong>{sides}</strong>
      <small>
        {words.by[by]}
        {by !== 'own-mirror' && by !== 'next-copy' && `: ${said(garment, proposed)}`}
      </small>
      <div className={styles.row}>
        {seam.lap ? (
          <Button onPress={() => pair(garment, seam)}>{words.pairWithLap(finely(garment, seam.lap.length))}</Button>
        ) : (
          <Button label={words.pairThis(sides)} onPress={() => pair(garment, seam)}>
            {words.pairIt}
          </Button>
        )}
        {by === 'band' && !isWithinMatch(difference) && (
          <Button onPress={() => pair(garment, { ...seam, ease: difference })}>
            {words.pairWithEase(finely(garment, difference))}
          </Button>
        )}
      </div>
    </div>
  );
}

function said(garment: Garment, { seam, difference }: ProposedSeam): string {
  if (seam.lap) return words.differs.agreeLap(finely(garment, seam.lap.length));
  const by = finely(garment, Math.abs(difference));
  if (isWithinMatch(difference)) {
    return by === finely(garment, 0) ? words.differs.agree : words.differs.agreeWithin(by);
  }
  const [longer, shorter] = difference > 0 ? [seam.one, seam.other] : [seam.other, seam.one];
  return words.differs.longerThan(sideName(garment, longer), by, sideName(garment, shorter));
}

function pair(garment: Garment, seam: Seam): void {
  useGarment.getState().edit(words.steps.pair, (before) => addSeam(before, seam));
  say(words.paired(sidesName(garment, seam)));
}

function pairAll(seams: readonly Seam[]): void {
  useGarment.getState().edit(words.steps.pairAll, (before) => seams.reduce(addSeam, before));
  say(words.pairedAll(seams.length));
}
