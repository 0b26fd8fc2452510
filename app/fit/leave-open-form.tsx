import { useState } from 'react';
import { leaveOpen, seamsFromWaist } from '../../core/fit/leave-open';
import type { Garment, Ring } from '../../core/garment/garment';
import { pieceOf } from '../../core/garment/with-piece';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { fitWords as words } from '../words/fit';
import { trialWords } from '../words/trial';
import { writeLength } from '../words/written';
import styles from './fit-room.module.css';

interface LeaveOpenFormProps {
  readonly garment: Garment;
  readonly ring: Ring;
  /** The least that lets her in, in mm. */
  readonly needed: number;
}

/** Leaves the top of a seam open: which seam, how deep, done. */
export function LeaveOpenForm({ garment, ring, needed }: LeaveOpenFormProps) {
  const { shownIn } = garment;
  const [chosen, setChosen] = useState('');
  const [wanted, setWanted] = useState<number>();
  const seams = seamsFromWaist(garment, ring);
  const at = seams.find(({ edgeId }) => edgeId === chosen) ?? seams[0];
  if (!at) return null;
  const step = shownIn === 'in' ? inches(0.5) : 10;
  const depth = wanted ?? Math.ceil(needed / step) * step;
  const leave = () => {
    useGarment.getState().edit(words.leaveOpenLabel, (now) => leaveOpen(now, ring, at, depth, newId));
    say(words.leftOpen(writeLength(depth, { shownIn })));
  };
  return (
    <>
      <div className={styles.row}>
        {seams.length > 1 && (
          <Pick
            label={words.whichSeam}
            value={at.edgeId}
            options={seams.map(({ pieceId, edgeId }) => ({ value: edgeId, words: seamName(garment, pieceId, edgeId) }))}
            onChange={setChosen}
          />
        )}
        <LengthField
          label={words.openTo}
          value={depth}
          shownIn={shownIn}
          min={inches(1)}
          max={at.length}
          onCommit={setWanted}
        />
        <Button tone="chalk" step="opening" onPress={leave}>
          {words.leaveOpen}
        </Button>
      </div>
      <p className={styles.small}>{words.leaveOpenHelp}</p>
    </>
  );
}

function seamName(garment: Garment, pieceId: string, edgeId: string): string {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId);
  return piece && edge ? trialWords.edgeOf(piece, edge) : '';
}
