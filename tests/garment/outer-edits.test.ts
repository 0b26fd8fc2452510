import { expect, it } from 'vitest';
import { removeOuter, setOuterLength, setShorterBy } from '../../core/garment/outer-edits';
import { readGarment } from '../../core/garment/schema';
import { linden } from './linden';

/** Nothing worn over it yet. */
const bare = () => removeOuter(linden());

it('setOuterLength says a length at one place; this garment then stays an inch shorter, 25.4 mm', () => {
  const after = setOuterLength(bare(), 'back', 1016);
  expect(after.outer).toEqual({ back: 1016, shorterBy: 25.4 });
  expect(setOuterLength(after, 'front', 990.6).outer).toEqual({ front: 990.6, back: 1016, shorterBy: 25.4 });
  expect(readGarment(after).kind).toBe('garment');
});

it('setOuterLength takes a length out and keeps the others and how much shorter this one stays', () => {
  const said = setShorterBy(setOuterLength(setOuterLength(bare(), 'side', 1003), 'back', 1010), 38.1);
  expect(setOuterLength(said, 'side', undefined).outer).toEqual({ back: 1010, shorterBy: 38.1 });
});

it('removeOuter leaves nothing over it', () => {
  expect(removeOuter(setOuterLength(bare(), 'front', 980))).not.toHaveProperty('outer');
});

it('outer edits give the same garment back when nothing changes', () => {
  const none = bare();
  const said = setOuterLength(none, 'front', 985);
  expect(setOuterLength(said, 'front', 985)).toBe(said);
  expect(setOuterLength(none, 'side', undefined)).toBe(none);
  expect(setShorterBy(said, 25.4)).toBe(said);
  expect(setShorterBy(none, 30)).toBe(none);
  expect(removeOuter(none)).toBe(none);
});
