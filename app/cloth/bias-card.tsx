import { useState } from 'react';
import { biasStrips, squareForStrip, stripFromSquare } from '../../core/cloth/bias-strips';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { inches } from '../../core/units/inch';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import styles from './cloth.module.css';
import { addStrip } from './what-card';

interface BiasCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
}

/** Taken by each join, on each side of it: a quarter of an inch, common practice. */
const JOIN = inches(0.25);

/** Sums for bias strips: from a square, for a square, and cut across this cloth. */
export function BiasCard({ garment, cloth }: BiasCardProps) {
  const { shownIn } = garment;
  const [open, setOpen] = useState(false);
  const [wanted, setWanted] = useState(inches(100));
  const [width, setWidth] = useState(inches(1.5));
  const [side, setSide] = useState(inches(20));
  const length = (mm: number) => writeLength(mm, { shownIn, step: 'eighth' });
  const square = squareForStrip(wanted, width);
  const whole = shownIn === 'in' ? inches(1) : 10;
  const across = biasStrips(cloth.width - 2 * cloth.selvedge, { length: wanted, width, joinAllowance: JOIN });
  const field = (label: string, value: number, set: (length: number) => void) => (
    <LengthField
      label={label}
      value={value}
      shownIn={shownIn}
      min={1}
      onCommit={(next) => next !== undefined && set(next)}
    />
  );
  return (
    <Card title={words.bias} about="bias-strips" open={open} onToggle={setOpen}>
      <p className={styles.small}>{words.biasHelp}</p>
      <div className={styles.pair}>
        {field(words.biasLength, wanted, setWanted)}
        {field(words.biasWidth, width, setWidth)}
      </div>
      <p>
        {words.biasSquare} <strong>{length(square)}</strong>{' '}
        {words.biasSquareFor(length(Math.ceil(square / whole - 1e-9) * whole))}.
      </p>
      {!cloth.shape && (
        <p>
          {across
            ? words.biasAcross(across.strips, across.joins, length(across.each), length(across.clothLength))
            : words.biasNone}
        </p>
      )}
      {field(words.biasSide, side, setSide)}
      <p>{words.biasFrom(length(side), length(stripFromSquare(side, width)))}</p>
      <p className={styles.small}>{words.biasExtra}</p>
      <div className={styles.row}>
        <Button
          icon="plus"
          onPress={() => addStrip(cloth, { name: words.stripNew.binding, length: wanted, width, cut: 'bias' })}
        >
          {words.biasAdd}
        </Button>
      </div>
    </Card>
  );
}
