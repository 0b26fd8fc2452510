import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { setScaleProof } from '../../core/garment/paper-edits';
import { paperFindings } from '../../core/paper/paper-findings';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { findingSentence } from '../words/findings';
import { paperWords as words } from '../words/paper';

/** What the ruler says of the printed square. Both ways are needed before anything is proved. */
export function ProofCard({ garment }: { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  const [half, setHalf] = useState<{ across?: number; down?: number }>({});
  const { scaleProof: proof, shownIn } = garment;
  const read = (way: 'across' | 'down', length: number | undefined) => {
    if (length === undefined) return;
    const both = { ...(proof ?? half), [way]: length };
    if (both.across === undefined || both.down === undefined) {
      setHalf(both);
      return;
    }
    const { across, down } = both;
    edit(words.proofLabel, (before) => setScaleProof(before, { date: today(), across, down }));
    setHalf({});
  };
  const [off] = paperFindings(garment).filter((finding) => finding.kind === 'scale-off');
  return (
    <Card title={words.proof}>
      <p>{words.proofHelp}</p>
      <LengthField
        label={words.across}
        value={proof?.across ?? half.across}
        shownIn={shownIn}
        min={1}
        onCommit={(length) => read('across', length)}
      />
      <LengthField
        label={words.down}
        value={proof?.down ?? half.down}
        shownIn={shownIn}
        min={1}
        onCommit={(length) => read('down', length)}
      />
      {off && <Note tone="stop">{findingSentence(off, garment)}</Note>}
      {proof && !off && <Note tone="good">{words.proved(proof.date)}</Note>}
    </Card>
  );
}
