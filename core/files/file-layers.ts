/**
 * What the lines of a file mean: the layers of our own SVG files, their names in files from elsewhere, and the layer
 * numbers of sewn-product DXF.
 */
import type { LineKind } from '../drawing/drawing';

/** The layers of an SVG file, from the ground up. `outline` is the stitch line as one closed line, for programs. */
export const FILE_LAYERS = ['outline', 'stitch', 'cut', 'fold', 'grain', 'notches', 'marks', 'words'] as const;
export type FileLayer = (typeof FILE_LAYERS)[number];

/** On which layer each kind of line goes. */
export const layerOfLine: Readonly<Record<LineKind, FileLayer>> = {
  cut: 'cut',
  stitch: 'stitch',
  fold: 'fold',
  grain: 'grain',
  notch: 'notches',
  opening: 'notches',
  dart: 'marks',
  gathers: 'marks',
  'pleat-fold': 'marks',
  'pleat-placement': 'marks',
  level: 'marks',
  centre: 'marks',
  drill: 'marks',
  upright: 'marks',
  corner: 'marks',
};

/**
 * Layer numbers of DXF for sewn products, after ASTM D6673-10 and ANSI/AAMA-292, as two public summaries of their layer
 * tables give them alike (1 to 14; one of them also 15 and the notches 80 to 83; the standard itself was not to be had).
 * Turn and curve points are those of layers 1, 8, 11 and 14. The curves for checking, 84 to 87, are from memory.
 */
export const DXF_LAYERS = {
  boundary: '1',
  turnPoints: '2',
  curvePoints: '3',
  notches: '4',
  mirrorLine: '6',
  grain: '7',
  internalLines: '8',
  drillHoles: '13',
  sewLines: '14',
  annotation: '15',
} as const;

/**
 * What a line of a file is, as far as its layer says. A `boundary` is an outline of which nobody says whether it is cut or
 * sewn; `unsaid` may be the outline of a piece.
 */
export type LineMeaning = FileLayer | 'boundary' | 'drill' | 'unsaid';

const NUMBERED: ReadonlyMap<string, LineMeaning> = new Map([
  [DXF_LAYERS.boundary, 'boundary'],
  [DXF_LAYERS.notches, 'notches'],
  [DXF_LAYERS.mirrorLine, 'fold'],
  [DXF_LAYERS.grain, 'grain'],
  [DXF_LAYERS.drillHoles, 'drill'],
  [DXF_LAYERS.sewLines, 'stitch'],
]);

/** Internal lines, stripe and plaid lines, annotation, other notches and the curves for checking: no outlines. */
const NUMBERED_MARKS = /^(2|3|5|8|9|10|11|12|15|8[0-7])$/;

const NAMED: ReadonlyMap<string, LineMeaning> = new Map([
  ['outline', 'outline'],
  ['boundary', 'boundary'],
  ['cut', 'cut'],
  ['cutting', 'cut'],
  ['stitch', 'stitch'],
  ['stitching', 'stitch'],
  ['sew', 'stitch'],
  ['sewing', 'stitch'],
  ['seam', 'stitch'],
  ['fold', 'fold'],
  ['grain', 'grain'],
  ['notch', 'notches'],
  ['notches', 'notches'],
  ['drill', 'drill'],
  ['drill holes', 'drill'],
  ['marks', 'marks'],
  ['dart', 'marks'],
  ['darts', 'marks'],
  ['internal', 'marks'],
  ['words', 'words'],
  ['text', 'words'],
]);

/** What a layer's name says in trade words, with or without `line`; `undefined` for any other name. */
export function meaningOfName(name: string): LineMeaning | undefined {
  const plain = name
    .toLowerCase()
    .replace(/^piece-\d+-/, '')
    .replace(/[\s_-]+/g, ' ')
    .trim();
  return NAMED.get(plain) ?? NAMED.get(plain.replace(/ ?lines?$/, ''));
}

/** What a layer of a DXF file says: by its number, else by its name. */
export function meaningOfDxfLayer(layer: string): LineMeaning {
  return NUMBERED.get(layer) ?? (NUMBERED_MARKS.test(layer) ? 'marks' : (meaningOfName(layer) ?? 'unsaid'));
}
