import { useMemo } from 'react';
import type { Finding } from '../../core/check/before-you-cut';
import { letOutAt } from '../../core/fit/let-out';
import type { Garment, Level, Ring } from '../../core/garment/garment';
import { pieceOf } from '../../core/garment/with-piece';
import { inches } from '../../core/units/inch';
import { askToLetOut } from '../state/asked-store';
import { Note } from '../ui/note';
import { findingSentence } from '../words/findings';
import { fitWords as words } from '../words/fit';
import { trialWords } from '../words/trial';
import { writeLength } from '../words/written';

/** A finding of a ring; a girth that is short below the waist with the way to let a seam out as far as it lacks. */
export function GirthNote({ finding, garment, ring }: GirthNoteProps) {
  const letOut = useMemo(() => letOutFor(finding, garment, ring), [finding, garment, ring]);
  const piece = letOut && pieceOf(garment, letOut.edge.pieceId);
  const edge = piece?.edges.find(({ id }) => id === letOut?.edge.edgeId);
  const level = finding.place.kind === 'ring' && levelOf(ring, finding.place.levelId);
  const action = letOut &&
    piece &&
    edge &&
    level && {
      words: words.letOut(
        trialWords.edgeOf(piece, edge),
        writeLength(letOut.by, { shownIn: garment.shownIn }),
        words.levelOf(level),
        letOut.of,
      ),
      onPress: () => askToLetOut(letOut),
    };
  return (
    <Note tone={finding.weight} {...(action && { action })}>
      {findingSentence(finding, garment)}
    </Note>
  );
}

interface GirthNoteProps {
  readonly finding: Finding;
  readonly garment: Garment;
  readonly ring: Ring;
}

function levelOf(ring: Ring, levelId: string | undefined): Level | undefined {
  return ring.levels.find(({ id }) => id === levelId);
}

/** A waist that is short has its own curve to be taken. */
function letOutFor(finding: Finding, garment: Garment, ring: Ring) {
  if (finding.kind !== 'girth-too-small' || finding.depth <= 0 || finding.place.kind !== 'ring') return undefined;
  const { levelId } = finding.place;
  const step = garment.shownIn === 'in' ? inches(1 / 16) : 1;
  return levelId === undefined ? undefined : letOutAt(garment, ring, levelId, step);
}
