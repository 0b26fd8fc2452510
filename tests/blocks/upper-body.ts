/** A body above the waist, no two measures alike (mm). */
export const upperBody = {
  bust: 912,
  waist: 703,
  backWaistLength: 408,
  frontWaistLength: 467,
  shoulder: 128,
  acrossBack: 344,
  acrossFront: 322,
  neck: 364,
  bustDepth: 262,
  bustSpan: 184,
};
