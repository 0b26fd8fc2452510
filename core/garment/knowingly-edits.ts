import type { Garment, LeftKnowingly } from './garment';

/** The garment with a finding left as it is, in place of what was said of the very same finding before. */
export function leaveKnowingly(garment: Garment, left: LeftKnowingly): Garment {
  const others = (garment.knowingly ?? []).filter(({ finding }) => finding !== left.finding);
  return { ...garment, knowingly: [...others, left] };
}

/** The garment with a finding taken up again that was left as it is. */
export function takeUpAgain(garment: Garment, left: LeftKnowingly): Garment {
  return { ...garment, knowingly: (garment.knowingly ?? []).filter(({ finding }) => finding !== left.finding) };
}
