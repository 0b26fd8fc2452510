import { type Block, draftBlock } from '../../../core/blocks/block';
import type { Garment } from '../../../core/garment/garment';
import type { Piece } from '../../../core/garment/piece';
import { withNewPieces } from '../../../core/garment/with-new-pieces';
import { BaseFields } from '../../base/base-fields';
import { BASE_KINDS, bodyOf, firstOf } from '../../base/first-block';
import { newId } from '../../state/new-id';
import { Choice } from '../../ui/choice';
import { Pick } from '../../ui/pick';
import { blockWords as words } from '../../words/blocks';
import { fieldOf } from '../../words/measures';
import { writeLength } from '../../words/written';
import type { Change, Tried, Trying } from '../change';
import styles from '../reshape.module.css';

interface Base {
  readonly block: Block;
  readonly as: 'pieces' | 'guide';
}

export const baseChange: Change = {
  name: 'base',
  icon: 'piece',
  begin: (garment) =>
    trying({ block: firstOf('plain-skirt', garment), as: garment.pieces.length === 0 ? 'pieces' : 'guide' }),
};

function trying(wish: Base): Trying {
  return {
    name: 'base',
    label: () => words.label,
    make: (garment) => made(garment, wish),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
  };
}

function made(garment: Garment, wish: Base): Tried {
  const drafted = draftBlock(wish.block, bodyOf(garment), { newId, nameOf: words.nameOf });
  if (drafted.kind === 'measures-missing') {
    return { kind: 'not-tried', sentence: words.missing(drafted.missing.map(fieldOf).join(', ')) };
  }
  if (drafted.kind !== 'drafted') return { kind: 'not-tried', sentence: words.refusal(drafted) };
  const asGuide = (piece: Piece): Piece => ({ ...piece, use: 'guide' });
  const pieces = wish.as === 'guide' ? drafted.pieces.map(asGuide) : drafted.pieces;
  const questions = drafted.questions.map((question) =>
    words.question(question, (mm) => writeLength(mm, { shownIn: garment.shownIn })),
  );
  return { kind: 'tried', garment: withNewPieces(garment, pieces), questions };
}

interface FieldsProps {
  readonly wish: Base;
  readonly garment: Garment;
  readonly onChange: (wish: Base) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const { shownIn } = garment;
  return (
    <>
      <Pick
        label={words.block}
        value={wish.block.kind as (typeof BASE_KINDS)[number]}
        options={BASE_KINDS.map((kind) => ({ value: kind, words: words.kinds[kind] }))}
        onChange={(kind) => onChange({ ...wish, block: firstOf(kind, garment) })}
      />
      <p className={styles.help}>{words.sources[wish.block.kind]}</p>
      <BaseFields block={wish.block} shownIn={shownIn} onChange={(block) => onChange({ ...wish, block })} />
      <Choice
        label={words.as}
        value={wish.as}
        options={(['pieces', 'guide'] as const).map((value) => ({ value, words: words.ases[value] }))}
        onChange={(as) => onChange({ ...wish, as })}
      />
    </>
  );
}
