import { type Block, type BlockKind, type BodyMeasures, draftBlock } from '../../../core/blocks/block';
import type { Garment } from '../../../core/garment/garment';
import { MEASURES } from '../../../core/garment/measure';
import { currentSet, measureOf } from '../../../core/garment/measure-value';
import type { Piece } from '../../../core/garment/piece';
import { withNewPieces } from '../../../core/garment/with-new-pieces';
import { inches } from '../../../core/units/inch';
import { writeLength } from '../../../core/units/write-length';
import { newId } from '../../state/new-id';
import { Choice } from '../../ui/choice';
import { Pick } from '../../ui/pick';
import { blockWords as words } from '../../words/blocks';
import { fieldOf } from '../../words/measures';
import { BaseFields } from '../base-fields';
import type { Change, Tried, Trying } from '../change';
import styles from '../reshape.module.css';

interface Base {
  readonly block: Block;
  readonly as: 'pieces' | 'guide';
}

const KINDS = [
  'plain-skirt',
  'two-dart-skirt',
  'gored-skirt',
  'shared-gores',
  'five-gored-underskirt',
  'circle-skirt',
  'flounce',
  'yoke-drawers',
  'school-drawers',
  'childs-drawers',
  'small-drawers',
  'small-underwaist',
  'bloomers',
  'bodice',
  'slip',
  'bias-slip',
] as const satisfies readonly BlockKind[];

export const baseChange: Change = {
  name: 'base',
  icon: 'piece',
  begin: (garment) =>
    trying({ block: firstOf('plain-skirt', garment), as: garment.pieces.length === 0 ? 'pieces' : 'guide' }),
};

/** A draft of each kind with figures that suit most bodies; lengths to the floor are taken from hers where they are known. */
function firstOf(kind: BlockKind, garment: Garment): Block {
  const body = bodyOf(garment);
  const hip = body.hip ?? inches(38);
  const ease = { waist: inches(1 / 2), hip: inches(2) };
  const length = inches(28);
  switch (kind) {
    case 'plain-skirt':
      return { kind, length, ease };
    case 'two-dart-skirt':
      return { kind, length };
    case 'gored-skirt':
      return { kind, gores: 6, length, hem: hip * 1.75, ease };
    case 'shared-gores':
      return { kind, rule: 'five-equal', hem: inches(81), offFloor: inches(2), ease: { waist: 0, hip: 0 } };
    case 'five-gored-underskirt':
      return { kind, offFloor: inches(3) };
    case 'circle-skirt':
      return { kind, share: 0.5, length, sections: 1, waistEase: inches(1 / 2) };
    case 'flounce':
      return { kind, top: inches(72), bottom: inches(112), depth: inches(12), sections: 1 };
    case 'shaped-band':
      return { kind, depth: inches(2), parts: 1, on: 'fold', ease };
    case 'yoke-drawers':
      return { kind, side: inches(17) };
    case 'school-drawers':
    case 'small-drawers':
      return { kind, side: inches(23) };
    case 'childs-drawers':
      return { kind, leg: inches(17) };
    case 'small-underwaist':
      return { kind, underarm: inches(6) };
    case 'bloomers':
      return { kind, outside: inches(26) };
    case 'bodice':
      return { kind, opens: 'back', ease: { bust: inches(2), waist: inches(1) } };
    case 'slip': {
      const slipEase = { bust: inches(2.5), waist: inches(1.5), hip: inches(2.5) };
      return { kind, joined: 'waist', length, hem: hip * 1.6, gores: 6, opens: 'back', ease: slipEase };
    }
    case 'bias-slip':
      return { kind };
  }
}

/** Every measure that was taken. */
function bodyOf(garment: Garment): BodyMeasures {
  const set = currentSet(garment);
  return Object.fromEntries(
    MEASURES.flatMap((name) => {
      const value = measureOf(set, name);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
}

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
        value={wish.block.kind as (typeof KINDS)[number]}
        options={KINDS.map((kind) => ({ value: kind, words: words.kinds[kind] }))}
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
