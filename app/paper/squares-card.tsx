import { useState } from 'react';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment, SquaresChoice } from '../../core/garment/garment';
import { setBaseLine, setPaper, setSquares } from '../../core/garment/paper-edits';
import type { Piece } from '../../core/garment/piece';
import { baseLineOf } from '../../core/paper/base-line';
import { SQUARES } from '../../core/paper/squares-sheet';
import { inches } from '../../core/units/inch';
import { ByPoints } from '../by-points/by-points';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Pick } from '../ui/pick';
import { paperWords } from '../words/paper';
import { squaresWords as words } from '../words/squares';
import { writeLength } from '../words/written';
import styles from './paper-room.module.css';

/** What figures in inches can be rounded to; centimetres are told to a millimetre. */
const STEPS = { sixteenth: inches(1 / 16), eighth: inches(1 / 8) } as const;

interface SquaresCardProps {
  readonly garment: Garment;
  readonly chosen: readonly Piece[];
}

/** How the squares sheet is drawn and told, and the same on the screen, one point after another. */
export function SquaresCard({ garment, chosen }: SquaresCardProps) {
  const edit = useGarment((state) => state.edit);
  const [shown, setShown] = useState<string>();
  const [isOpen, setOpen] = useState(false);
  const { paper, shownIn } = garment;
  const { square, from = 'zero', print = 'usual' } = paper.squares ?? {};
  const change = (choice: Partial<SquaresChoice>) => edit(words.label, (now) => setSquares(now, choice));
  const piece = cutPieces(garment).find(({ id }) => id === shown);
  return (
    <Card title={words.title} about="squares-sheet" open={isOpen} onToggle={setOpen}>
      <p className={styles.small}>{words.help}</p>
      <Pick
        label={words.square}
        value={square === undefined ? 'fine' : String(square)}
        options={[
          { value: 'fine', words: words.asFine },
          ...SQUARES[shownIn].map((mm) => ({ value: String(mm), words: writeLength(mm, { shownIn }) })),
        ]}
        onChange={(value) =>
          edit(words.label, (now) => setSquares(now, { square: value === 'fine' ? undefined : Number(value) }))
        }
      />
      {shownIn === 'in' && (
        <Pick
          label={paperWords.step}
          value={paper.step === 'eighth' ? 'eighth' : 'sixteenth'}
          options={(['sixteenth', 'eighth'] as const).map((value) => ({
            value,
            words: paperWords.toStep(writeLength(STEPS[value], { shownIn })),
          }))}
          onChange={(step) => edit(paperWords.paperLabel, (now) => setPaper(now, { step }))}
        />
      )}
      <Choice
        label={words.from}
        value={from}
        options={[
          { value: 'zero', words: words.fromZero },
          { value: 'base-line', words: words.fromLine },
        ]}
        onChange={(value) => change({ from: value })}
      />
      {from === 'base-line' && chosen.map((one) => <BasePick key={one.id} garment={garment} piece={one} />)}
      <Choice
        label={words.print}
        value={print}
        options={[
          { value: 'usual', words: words.usual },
          { value: 'large', words: words.large },
        ]}
        onChange={(value) => change({ print: value })}
      />
      <p className={styles.small}>{words.onScreenHelp}</p>
      {chosen.map(({ id, name }) => (
        <Button key={id} icon="corner" onPress={() => setShown(id)}>
          {words.onScreen(name)}
        </Button>
      ))}
      {piece && <ByPoints garment={garment} piece={piece} onClose={() => setShown(undefined)} />}
    </Card>
  );
}

function BasePick({ garment, piece }: { readonly garment: Garment; readonly piece: Piece }) {
  const edit = useGarment((state) => state.edit);
  const chosen = garment.paper.squares?.base?.find(({ pieceId }) => pieceId === piece.id)?.edgeId;
  const auto = baseLineOf(piece);
  return (
    <Pick
      label={words.baseOf(piece.name)}
      value={chosen ?? ''}
      options={[
        { value: '', words: words.ownBase(auto?.from ?? '', auto?.to ?? '') },
        ...piece.edges.map((edge) => {
          const base = baseLineOf(piece, edge.id);
          return { value: edge.id, words: words.base(base?.from ?? '', base?.to ?? '', edge.name) };
        }),
      ]}
      onChange={(edgeId) => edit(words.label, (now) => setBaseLine(now, piece.id, edgeId === '' ? undefined : edgeId))}
    />
  );
}
