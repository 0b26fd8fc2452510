import type { Piece } from '../garment/piece';
import { distance, move, type Point, quarterTurn, unit, vectorBetween } from '../geometry/point';
import { inches } from '../units/inch';
import { squareEndedShape } from './arc-run';
import type { DraftOptions } from './draft-names';
import { draftedPiece } from './drafted-piece';
import { laidBeside } from './lay-beside';

/** The lower piece of the slip, cut from a square, by the letters of its source: the corner at a, y down the cloth. */
export interface BiasSlip {
  readonly kind: 'bias-slip';
  readonly letters: Readonly<Record<'a' | 'b' | 'c' | 'd' | 'e' | 'f' | 'g', Point>>;
}

/** The printed figures: squares of 27 and 15 in, and the two offsets along the arc and along the edge. */
const SQUARE = inches(27);
const UPPER = inches(15);
const ALONG_ARC = inches(8);
const ALONG_EDGE = inches(3);

/** How far the new side curve bows out from its chord: by eye in the source, here a twelfth of it. */
const BOW = 1 / 12;

/**
 * The slip of a home-dressmaking leaflet of the 1930s, Magic Bias Slip (dressmakingresearch.com, 1930s under dress): four
 * lower pieces from 27 in squares and four 15 in squares above. One size for all, fitted on the body by deepening seams.
 */
export function biasSlip(): BiasSlip {
  const onArc = (angle: number) => ({ x: SQUARE * Math.sin(angle), y: SQUARE * Math.cos(angle) });
  return {
    kind: 'bias-slip',
    letters: {
      a: { x: 0, y: 0 },
      b: { x: 0, y: UPPER },
      c: { x: 0, y: SQUARE },
      d: onArc(ALONG_ARC / SQUARE),
      e: { x: SQUARE, y: 0 },
      f: { x: SQUARE - ALONG_EDGE, y: 0 },
      g: onArc(Math.PI / 4),
    },
  };
}

/** The lower piece and the upper square, four of each; grain along the edge of the square, so that it hangs on the bias. */
export function biasSlipPieces({ newId, nameOf }: DraftOptions): Piece[] {
  const { a, b, d, f, g } = biasSlip().letters;
  const outwards = unit(quarterTurn(vectorBetween(g, f))) ?? { dx: 0, dy: 0 };
  const bowed = move({ x: (f.x + g.x) / 2, y: (f.y + g.y) / 2 }, outwards, distance(f, g) * BOW);
  const arc = (Math.PI / 4 - ALONG_ARC / SQUARE) * SQUARE;
  // From g back to d the arc turns clockwise to the eye about a.
  const gToD = { start: g, direction: { dx: -Math.SQRT1_2, dy: Math.SQRT1_2 }, turning: 1 / SQUARE, length: arc };
  const lower = draftedPiece({
    newId,
    name: nameOf('lower-piece'),
    cut: { how: 'single', count: 4 },
    grain: { from: { x: inches(2), y: inches(3) }, to: { x: inches(2), y: inches(12) } },
    edges: [
      { from: a, role: 'seam', name: nameOf('waist-seam') },
      {
        from: f,
        role: 'seam',
        name: nameOf('side-seam'),
        shape: { kind: 'curve', through: [bowed], leaves: 'free', meets: 'free' },
      },
      { from: g, role: 'hem', shape: freeEnds(gToD) },
      { from: d, role: 'seam', name: nameOf('side-seam') },
      { from: b, role: 'seam', name: nameOf('centre-back-seam') },
    ],
  });
  const upper = draftedPiece({
    newId,
    name: nameOf('upper-square'),
    cut: { how: 'single', count: 4 },
    grain: { from: { x: UPPER / 2, y: UPPER * 0.2 }, to: { x: UPPER / 2, y: UPPER * 0.8 } },
    edges: [
      { from: { x: 0, y: 0 }, role: 'finished' },
      { from: { x: UPPER, y: 0 }, role: 'seam', name: nameOf('side-seam') },
      { from: { x: UPPER, y: UPPER }, role: 'seam', name: nameOf('waist-seam') },
      { from: { x: 0, y: UPPER }, role: 'seam', name: nameOf('side-seam') },
    ],
  });
  return laidBeside([lower, upper]);
}

/** The arc as an edge whose neighbours do not stand square to it. */
function freeEnds(run: Parameters<typeof squareEndedShape>[0]) {
  const shape = squareEndedShape(run);
  return shape.kind === 'curve' ? ({ ...shape, leaves: 'free', meets: 'free' } as const) : shape;
}
