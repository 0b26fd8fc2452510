/**
 * Real bodies of ANSUR II, the survey of the US Army Natick Soldier Research, Development and Engineering Center of 2012
 * (Gordon et al.), women; mm. Rows are waist and hip girth and the heights of waist and hip over the floor, as measured.
 */
import type { BodyMeasures } from '../../core/blocks/block';

export type LowerRow = readonly [waist: number, hip: number, waistHeight: number, hipHeight: number, stature: number];

/**
 * The measures of a body. What the survey's lower body does not say is set by rule: the bust 947 + 0.7 of what the waist
 * has over 861, both means of the survey; lengths of the trunk in proportion to stature and widths to the bust, about its
 * means; the front 60 longer than the back; bust points a fifth of the bust apart.
 */
export function bodyOf([waist, hip, waistHeight, hipHeight, stature]: LowerRow): BodyMeasures {
  const bust = 947 + 0.7 * (waist - 861);
  const tall = stature / 1628;
  return {
    waist,
    hip,
    waistToHip: waistHeight - hipHeight,
    waistToFloorFront: waistHeight - 4,
    waistToFloorSide: waistHeight + 8,
    waistToFloorBack: waistHeight + 12,
    bodyRise: waistHeight * 0.28,
    bust,
    underbust: bust * 0.86,
    neck: 371 + 0.15 * (bust - 947),
    backWaistLength: 425 * tall,
    frontWaistLength: 425 * tall + 60,
    shoulder: 135 * tall,
    acrossBack: 373 + 0.2 * (bust - 947),
    acrossFront: 353 + 0.2 * (bust - 947),
    bustDepth: 255 * tall,
    bustSpan: bust / 5,
  };
}

/** All seventeen women of the survey whose waist is larger than the hip. */
export const WAIST_OVER_HIP: readonly LowerRow[] = [
  [1137, 1107, 837, 770, 1517],
  [1057, 1052, 959, 860, 1617],
  [1334, 1306, 990, 908, 1720],
  [1036, 1008, 948, 845, 1610],
  [1002, 998, 930, 795, 1624],
  [1073, 1060, 964, 818, 1639],
  [1050, 1045, 971, 837, 1680],
  [1157, 1148, 1040, 952, 1693],
  [1085, 1078, 994, 891, 1666],
  [1113, 1110, 953, 833, 1639],
  [1174, 1170, 1024, 887, 1788],
  [1121, 1015, 878, 793, 1570],
  [1045, 1042, 966, 842, 1635],
  [1305, 1261, 1020, 898, 1711],
  [1112, 1078, 972, 911, 1678],
  [1176, 1161, 963, 869, 1668],
  [917, 887, 925, 768, 1594],
];

/** The smallest and largest of the survey in stature, waist, hip, chest and hip depth, its middle, and some between. */
export const SPREAD: readonly LowerRow[] = [
  [716, 815, 805, 670, 1409],
  [777, 997, 1142, 948, 1829],
  [611, 853, 926, 762, 1567],
  [615, 798, 891, 720, 1479],
  [1198, 1341, 1005, 865, 1658],
  [812, 1159, 1043, 884, 1674],
  [742, 917, 808, 656, 1446],
  [887, 1089, 1104, 983, 1749],
  [860, 1022, 974, 811, 1620],
  [700, 898, 985, 847, 1625],
  [796, 964, 977, 819, 1613],
  [847, 1017, 972, 810, 1628],
  [923, 1071, 979, 849, 1630],
  [1042, 1160, 964, 873, 1630],
  [1024, 1100, 990, 836, 1671],
  [750, 1037, 959, 770, 1613],
  [673, 872, 874, 711, 1464],
  [838, 950, 946, 824, 1593],
  [820, 1060, 983, 808, 1595],
  [752, 918, 946, 794, 1560],
];

/** Chest and waist girth, back waist length, shoulder, across the back, neck base, and nape down to the bust point. */
export type UpperRow = readonly [
  bust: number,
  waist: number,
  backWaist: number,
  shoulder: number,
  acrossBack: number,
  neck: number,
  napeToBust: number,
];

/** The same extremes and middles, as measured above the waist. */
export const UPPER: readonly UpperRow[] = [
  [824, 716, 384, 120, 340, 341, 177],
  [915, 777, 447, 150, 344, 362, 224],
  [791, 611, 410, 128, 330, 326, 223],
  [1161, 1334, 532, 157, 421, 402, 254],
  [695, 615, 365, 128, 307, 326, 175],
  [1141, 1198, 468, 132, 420, 450, 237],
  [1266, 1305, 509, 139, 478, 438, 274],
  [988, 812, 411, 144, 374, 377, 247],
  [1063, 1121, 467, 120, 421, 429, 283],
  [832, 742, 400, 128, 369, 334, 208],
  [934, 887, 450, 132, 356, 364, 217],
  [959, 860, 448, 157, 358, 366, 251],
  [784, 700, 400, 140, 324, 357, 178],
  [887, 796, 400, 129, 345, 360, 229],
  [910, 847, 447, 151, 376, 379, 250],
  [847, 923, 463, 139, 336, 353, 218],
  [1077, 1042, 431, 116, 380, 369, 250],
];

/**
 * What a bodice needs of such a body, by rule where the survey has it not: bust points a fifth of the bust apart, the
 * front 50 longer than the back, across the front 20 less than the back, and the bust 25 further down from the shoulder's
 * neck end than from the nape.
 */
export function upperBodyOf([bust, waist, backWaist, shoulder, acrossBack, neck, napeToBust]: UpperRow): BodyMeasures {
  return {
    bust,
    waist,
    backWaistLength: backWaist,
    frontWaistLength: backWaist + 50,
    shoulder,
    acrossBack,
    acrossFront: acrossBack - 20,
    neck,
    bustDepth: napeToBust + 25,
    bustSpan: bust / 5,
  };
}
