import type { Block } from '../../core/blocks/block';
import type { ShownIn } from '../../core/units/inch';
import { Choice } from '../ui/choice';
import { CountField } from '../ui/count-field';
import { LengthField } from '../ui/length-field';
import { Pick } from '../ui/pick';
import { blockWords as words } from '../words/blocks';
import styles from './base.module.css';

const RULES = ['five-equal', 'five-proportional', 'nine', 'four-panels', 'six-panels'] as const;
const SHARES = ['1', '0.75', '0.5', '0.25'] as const;

interface BaseFieldsProps {
  readonly block: Block;
  readonly shownIn: ShownIn;
  readonly onChange: (block: Block) => void;
}

/** What a draft is to be besides the measures of the body. */
export function BaseFields({ block, shownIn, onChange }: BaseFieldsProps) {
  const length = (label: string, value: number | undefined, put: (mm: number) => Block) => (
    <LengthField
      label={label}
      value={value}
      shownIn={shownIn}
      min={0}
      onCommit={(mm) => mm !== undefined && onChange(put(mm))}
    />
  );
  switch (block.kind) {
    case 'plain-skirt':
      return (
        <>
          {length(words.length, block.length, (mm) => ({ ...block, length: mm }))}
          <SkirtEaseFields ease={block.ease} length={length} put={(ease) => ({ ...block, ease })} />
        </>
      );
    case 'two-dart-skirt':
      return length(words.length, block.length, (mm) => ({ ...block, length: mm }));
    case 'gored-skirt':
      return (
        <>
          <CountField
            label={words.gores}
            value={block.gores}
            least={2}
            onCommit={(gores) => onChange({ ...block, gores })}
          />
          <div className={styles.pair}>
            {length(words.length, block.length, (mm) => ({ ...block, length: mm }))}
            {length(words.hem, block.hem, (mm) => ({ ...block, hem: mm }))}
          </div>
          <SkirtEaseFields ease={block.ease} length={length} put={(ease) => ({ ...block, ease })} />
        </>
      );
    case 'shared-gores':
      return (
        <>
          <Pick
            label={words.rule}
            value={block.rule}
            options={RULES.map((value) => ({ value, words: words.rules[value] }))}
            onChange={(rule) => onChange({ ...block, rule })}
          />
          <div className={styles.pair}>
            {length(words.hem, block.hem, (mm) => ({ ...block, hem: mm }))}
            {length(words.offFloor, block.offFloor, (mm) => ({ ...block, offFloor: mm }))}
          </div>
          {block.rule === 'five-equal' && (
            <Choice
              label={words.hemTaken}
              value={block.hemTaken ?? 'as-asked'}
              options={(['as-asked', 'as-printed'] as const).map((value) => ({
                value,
                words: words.hemTakens[value],
              }))}
              onChange={(hemTaken) => onChange({ ...block, hemTaken })}
            />
          )}
          <SkirtEaseFields ease={block.ease} length={length} put={(ease) => ({ ...block, ease })} />
        </>
      );
    case 'five-gored-underskirt':
      return length(words.offFloor, block.offFloor, (mm) => ({ ...block, offFloor: mm }));
    case 'circle-skirt':
      return (
        <>
          <Choice
            label={words.share}
            value={SHARES.find((share) => Number(share) === block.share) ?? '1'}
            options={SHARES.map((value) => ({ value, words: words.shares[value] }))}
            onChange={(share) => onChange({ ...block, share: Number(share) })}
          />
          {length(words.length, block.length, (mm) => ({ ...block, length: mm }))}
          <CountField
            label={words.sections}
            value={block.sections}
            onCommit={(sections) => onChange({ ...block, sections })}
          />
          {length(words.easeWaist, block.waistEase, (mm) => ({ ...block, waistEase: mm }))}
        </>
      );
    case 'flounce':
      return (
        <>
          {length(words.top, block.top, (mm) => ({ ...block, top: mm }))}
          {length(words.bottom, block.bottom, (mm) => ({ ...block, bottom: mm }))}
          {length(words.depth, block.depth, (mm) => ({ ...block, depth: mm }))}
          <CountField
            label={words.sections}
            value={block.sections}
            onCommit={(sections) => onChange({ ...block, sections })}
          />
        </>
      );
    case 'yoke-drawers':
    case 'school-drawers':
    case 'small-drawers':
      return length(words.side, block.side, (mm) => ({ ...block, side: mm }));
    case 'childs-drawers':
      return length(words.leg, block.leg, (mm) => ({ ...block, leg: mm }));
    case 'small-underwaist':
      return length(words.underarm, block.underarm, (mm) => ({ ...block, underarm: mm }));
    case 'bloomers':
      return length(words.outside, block.outside, (mm) => ({ ...block, outside: mm }));
    case 'bodice':
      return (
        <>
          <Opens value={block.opens} onChange={(opens) => onChange({ ...block, opens })} />
          <div className={styles.pair}>
            {length(words.easeBust, block.ease.bust, (bust) => ({ ...block, ease: { ...block.ease, bust } }))}
            {length(words.easeWaist, block.ease.waist, (waist) => ({ ...block, ease: { ...block.ease, waist } }))}
          </div>
        </>
      );
    case 'slip':
      return (
        <>
          <Choice
            label={words.joined}
            value={block.joined}
            options={(['waist', 'underbust'] as const).map((value) => ({ value, words: words.joins[value] }))}
            onChange={(joined) => onChange({ ...block, joined })}
          />
          <Opens value={block.opens} onChange={(opens) => onChange({ ...block, opens })} />
          <CountField
            label={words.gores}
            value={block.gores}
            least={2}
            onCommit={(gores) => onChange({ ...block, gores })}
          />
          <div className={styles.pair}>
            {length(words.length, block.length, (mm) => ({ ...block, length: mm }))}
            {length(words.hem, block.hem, (mm) => ({ ...block, hem: mm }))}
            {length(words.easeBust, block.ease.bust, (bust) => ({ ...block, ease: { ...block.ease, bust } }))}
            {length(words.easeWaist, block.ease.waist, (waist) => ({ ...block, ease: { ...block.ease, waist } }))}
            {length(words.easeHip, block.ease.hip, (hip) => ({ ...block, ease: { ...block.ease, hip } }))}
          </div>
        </>
      );
    case 'shaped-band':
    case 'bias-slip':
      return null;
  }
}

interface SkirtEaseFieldsProps {
  readonly ease: { readonly waist: number; readonly hip: number };
  readonly length: (label: string, value: number, put: (mm: number) => Block) => React.ReactNode;
  readonly put: (ease: { readonly waist: number; readonly hip: number }) => Block;
}

function SkirtEaseFields({ ease, length, put }: SkirtEaseFieldsProps) {
  return (
    <div className={styles.pair}>
      {length(words.easeWaist, ease.waist, (waist) => put({ ...ease, waist }))}
      {length(words.easeHip, ease.hip, (hip) => put({ ...ease, hip }))}
    </div>
  );
}

interface OpensProps {
  readonly value: 'back' | 'front';
  readonly onChange: (opens: 'back' | 'front') => void;
}

function Opens({ value, onChange }: OpensProps) {
  return (
    <Choice
      label={words.opens}
      value={value}
      options={(['back', 'front'] as const).map((side) => ({ value: side, words: words.openings[side] }))}
      onChange={onChange}
    />
  );
}
