import type { Block, BlockKind, BodyMeasures } from '../../core/blocks/block';
import type { Garment } from '../../core/garment/garment';
import { MEASURES } from '../../core/garment/measure';
import { currentSet, measureOf } from '../../core/garment/measure-value';
import { inches } from '../../core/units/inch';

/** The drafts that are a base pattern, in the order in which they are offered. */
export const BASE_KINDS = [
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

/** A draft of each kind with figures that suit most bodies; lengths to the floor are taken from hers where they are known. */
export function firstOf(kind: BlockKind, garment: Garment): Block {
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
export function bodyOf(garment: Garment): BodyMeasures {
  const set = currentSet(garment);
  return Object.fromEntries(
    MEASURES.flatMap((name) => {
      const value = measureOf(set, name);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
}
