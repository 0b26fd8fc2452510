import type { MeasureName } from '../../core/garment/measure';

/**
 * Where each measure runs on our own drawing of a body: 100 wide and 240 high, the head 30 high and the whole figure
 * seven and a half of those, standing on y = 232. Seen from the front her right hand is on the left of the drawing.
 */
export interface MeasureLine {
  readonly view: 'front' | 'back';
  /** The words of SVG's `d`. */
  readonly d: string;
}

/** The tape round the body, seen from one side: a shallow bow from side to side. */
function round(y: number, half: number, centre = 50): string {
  return `M${centre - half} ${y}q${half} ${half / 3} ${half * 2} 0`;
}

const front = (d: string): MeasureLine => ({ view: 'front', d });
const back = (d: string): MeasureLine => ({ view: 'back', d });

export const measureLines: Readonly<Record<MeasureName, MeasureLine>> = {
  waist: front(round(95, 11.5)),
  highHip: front(round(106, 15.5)),
  hip: front(round(118, 18)),
  bust: front(round(75, 15.5)),
  chest: front(round(66, 15)),
  underbust: front(round(83, 13)),
  neck: front(round(43, 5.5)),
  upperArm: front('M23.2 68.5q3.5 3.5 8 1.5'),
  thigh: front(round(134, 8.2, 58.7)),
  knee: front(round(170, 5, 58.2)),
  waistToHighHip: front('M61.5 95Q63 101 65.5 106'),
  waistToHip: front('M61.5 95Q64 106 68 118'),
  waistToKnee: front('M61.5 95Q67 108 68 120Q67 146 63.2 170'),
  waistToFloorFront: front('M50 95V232'),
  waistToFloorSide: front('M61.5 95Q69 110 69 122Q69 160 65 232'),
  waistToFloorBack: back('M50 95V119Q52 122 52 128V232'),
  bodyRise: back('M61.5 95Q66.5 110 68 119V127'),
  frontWaistLength: front('M55.5 46Q59 66 58.5 76Q57 86 56 96.5'),
  backWaistLength: back('M50 43V98'),
  shoulder: front('M56 45.5L69.5 51'),
  acrossFront: front('M35.5 60Q50 62.5 64.5 60'),
  acrossBack: back('M35 60Q50 62 65 60'),
  bustDepth: front('M55.5 46Q59 66 58.5 75'),
  bustSpan: front('M41.5 75.5Q50 78 58.5 75.5'),
  armLength: back('M70 51Q74.5 72 77 92Q80 106 82.5 122'),
};

/** One side of the body from the crown round to the toes and up the inside of the leg, a little over the middle so that it joins its mirror image without a gap. */
export const bodyHalf =
  'M49.5 8H50C56.5 8 59.5 13 59.2 21C59 27 57.5 31 54.8 34.5C54.5 38 54.7 40.5 55.5 43C58 46.5 65 47 68.5 49.5' +
  'C72 52 73.5 58 74.6 66C76 77 78 84 79.6 92C81.5 102 83.5 112 85 122C87.2 126 88 132 86.5 137C84.5 138 82 134 80.8 124' +
  'C78.5 114 76 105 74 95C72 86 69.5 77 66.3 67.5C66.8 73 66.5 78 64.5 83C62.5 88 61.2 91 61.5 95' +
  'C62.5 101 67 108 68 118C68.8 132 66 152 63.3 170C64.6 178 64.6 188 62.6 198C61 208 59.5 217 59.3 224' +
  'C60 228 63 230 63.5 232H54.5C53.8 229 54.5 226 54.3 223C53.8 212 53.2 200 52.8 190C52.4 182 53 176 53.2 170C52.6 156 51.4 142 50.5 128H49.5';

/** What tells the front from the back. */
export const bodyMarks = {
  front: 'M46.5 22.5h.1M53.5 22.5h.1M48 29q2 1 4 0M41 79q2.5 1.5 5 .5M54 79.5q2.5 1 5 -.5M50 128V124',
  back: 'M50 46V90M50 128V113M44 128q3 1.5 6 0q3 1.5 6 0M42 66q1.5 5 .5 10M58 66q-1.5 5 -.5 10',
} as const;
