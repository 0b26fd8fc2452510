import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { forgetPrinter, setPrinter, setScaleProof } from '../../core/garment/paper-edits';
import { paperFindings, printerReading } from '../../core/paper/paper-findings';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { findingSentence } from '../words/findings';
import { paperWords as words } from '../words/paper';

/** What the ruler says of the printed square. Both ways are needed before anything is proved. */
export function ProofCard({ garment }: { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  const [half, setHalf] = useState<{ across?: number; down?: number }>({});
  const { scaleProof: proof, shownIn, paper } = garment;
  const findings = paperFindings(garment);
  const stale = findings.find((finding) => finding.kind === 'scale-proof-stale');
  const read = (way: 'across' | 'down', length: number | undefined) => {
    if (length === undefined) return;
    // Of a proof that is out of date nothing is kept: both ways are read anew.
    const both = { ...(stale ? half : (proof ?? half)), [way]: length };
    if (both.across === undefined || both.down === undefined) {
      setHalf(both);
      return;
    }
    const { across, down } = both;
    edit(words.proofLabel, (before) =>
      setScaleProof(before, {
        date: today(),
        across,
        down,
        on: { size: paper.size, ...(paper.printer ? { printer: paper.printer } : {}) },
      }),
    );
    setHalf({});
  };
  const off = findings.find((finding) => finding.kind === 'scale-off');
  const reading = printerReading(garment);
  return (
    <Card title={words.proof}>
      <p>{words.proofHelp}</p>
      <LengthField
        label={words.across}
        value={stale ? half.across : (proof?.across ?? half.across)}
        shownIn={shownIn}
        min={1}
        onCommit={(length) => read('across', length)}
      />
      <LengthField
        label={words.down}
        value={stale ? half.down : (proof?.down ?? half.down)}
        shownIn={shownIn}
        min={1}
        onCommit={(length) => read('down', length)}
      />
      {off && <Note tone="stop">{findingSentence(off, garment)}</Note>}
      {reading?.kind === 'not-the-printer' && <p>{words.notThePrinter}</p>}
      {reading?.kind === 'factors' && (
        <>
          <p>{words.printerOff(reading.printer)}</p>
          <Button onPress={() => edit(words.correctLabel, (before) => setPrinter(before, reading.printer))}>
            {words.correct}
          </Button>
        </>
      )}
      {stale && <Note tone="warn">{findingSentence(stale, garment)}</Note>}
      {paper.printer && <p>{words.corrected(paper.printer)}</p>}
      {(paper.printer || proof) && (
        <Button onPress={() => edit(words.otherPrinterLabel, forgetPrinter)}>{words.otherPrinter}</Button>
      )}
      {proof && !off && !stale && <Note tone="good">{words.proved(proof.date)}</Note>}
    </Card>
  );
}
