import { useState } from 'react';
import { putWhole } from '../../core/garment/printed-whole-edits';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { draftWords } from '../words/draft';
import { useRestedGarment } from './rested-garment';
import { WholeEntry } from './whole-entry';

const words = draftWords.wholes;

/** Figures printed for several edges together, and how the single ones add up to them. */
export function WholesCard() {
  const garment = useRestedGarment();
  const [open, setOpen] = useState(false);
  if (!garment || garment.pieces.length === 0) return null;
  const { wholes = [] } = garment;

  function add() {
    const whole = { id: newId(), name: '', length: 254, edges: [], rules: 'unsettled' } as const;
    useGarment.getState().edit(words.step, (now) => putWhole(now, whole));
  }

  return (
    <Card title={words.title} about="printed-sums" open={open} onToggle={setOpen} aside={wholes.length || undefined}>
      <p>{words.help}</p>
      {wholes.map((whole) => (
        <WholeEntry key={whole.id} garment={garment} whole={whole} />
      ))}
      <div>
        <Button icon="plus" onPress={add}>
          {words.add}
        </Button>
      </div>
    </Card>
  );
}
