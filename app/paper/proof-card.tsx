import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { forgetPrinter, setPrinter, setScaleProof } from '../../core/garment/paper-edits';
import { checkRules } from '../../core/paper/check-sheet';
import { paperFindings, printerReading } from '../../core/paper/paper-findings';
import { finestStep } from '../../core/units/write-length';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { download } from '../storage/download';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { findingSentence } from '../words/findings';
import { paperWords as words } from '../words/paper';
import { fontAddresses, pdfWork } from '../workers/pdf-calls';
import styles from './paper-room.module.css';

/** What the ruler says of the printed square. Both ways are needed before anything is proved. */
export function ProofCard({ garment }: { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  const step = finestStep(garment.shownIn);
  const [half, setHalf] = useState<{ across?: number; down?: number }>({});
  const [typed, setTyped] = useState<'rules' | 'square'>();
  const [failed, setFailed] = useState(false);
  const { scaleProof: proof, shownIn, paper } = garment;
  const findings = paperFindings(garment);
  const stale = findings.find((finding) => finding.kind === 'scale-proof-stale');
  const measured = typed ?? (proof && !proof.wanted ? 'square' : 'rules');
  const rules = checkRules(paper);
  // What was measured otherwise says nothing of these.
  const kept = !stale && measured === (proof?.wanted ? 'rules' : 'square') ? proof : undefined;
  const read = (way: 'across' | 'down', length: number | undefined) => {
    if (length === undefined) return;
    // Of a proof that is out of date nothing is kept: both ways are read anew.
    const both = { ...(kept ?? half), [way]: length };
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
        ...(measured === 'rules' && { wanted: rules }),
        on: { size: paper.size, ...(paper.printer ? { printer: paper.printer } : {}) },
      }),
    );
    setHalf({});
  };
  const makeSheet = async () => {
    setFailed(false);
    const answer = await pdfWork.call('check', { paper, shownIn, today: today(), fonts: fontAddresses() });
    if (answer.kind !== 'made') setFailed(true);
    else download(new Uint8Array(answer.bytes), `${words.checkFile}-${paper.size}.pdf`, 'application/pdf');
  };
  const off = findings.find((finding) => finding.kind === 'scale-off');
  const reading = printerReading(garment);
  return (
    <Card title={words.proof} about="proof" step="proof">
      <p className={styles.small}>{words.proofHelp}</p>
      <Button icon="page" onPress={() => void makeSheet()}>
        {words.makeCheck}
      </Button>
      {failed && <Note tone="stop">{words.failed}</Note>}
      <Choice
        label={words.measured}
        value={measured}
        options={[
          { value: 'rules', words: words.measuredRules },
          { value: 'square', words: words.measuredSquare },
        ]}
        onChange={setTyped}
      />
      <LengthField
        label={measured === 'rules' ? words.ruleAcross(rules.across, shownIn) : words.across}
        value={kept?.across ?? half.across}
        shownIn={shownIn}
        min={1}
        step={step}
        onCommit={(length) => read('across', length)}
      />
      <LengthField
        label={measured === 'rules' ? words.ruleDown(rules.down, shownIn) : words.down}
        value={kept?.down ?? half.down}
        shownIn={shownIn}
        min={1}
        step={step}
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
