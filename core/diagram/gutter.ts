import type { Diagram, MatchingPlace, Quad } from '../garment/diagram';

/** The side of one half that meets the opposite side of the other. */
export const MEETING_SIDES = ['left', 'right', 'top', 'bottom'] as const;
export type MeetingSide = (typeof MEETING_SIDES)[number];

/** Corners of this half and of the other that come together, each side from end to end. */
const meeting: Readonly<Record<MeetingSide, readonly (readonly [here: 0 | 1 | 2 | 3, there: 0 | 1 | 2 | 3])[]>> = {
  left: [
    [0, 1],
    [3, 2],
  ],
  right: [
    [1, 0],
    [2, 3],
  ],
  top: [
    [0, 3],
    [1, 2],
  ],
  bottom: [
    [3, 0],
    [2, 1],
  ],
};

/** The matching places of two halves whose edges meet in the gutter: the ends of the edge, by their corners. */
export function gutterPlaces(here: Diagram, there: Diagram, side: MeetingSide): MatchingPlace[] {
  const [mine, theirs] = [cornersOf(here), cornersOf(there)];
  return meeting[side].map(([a, b]) => ({ here: mine[a], there: theirs[b] }));
}

/** The corners a picture is squared up by; of a flat one, its own. */
function cornersOf({ squareUp, widthPx, heightPx }: Diagram): Quad {
  if (squareUp.kind === 'rectangle') return squareUp.corners;
  return [
    { x: 0, y: 0 },
    { x: widthPx, y: 0 },
    { x: widthPx, y: heightPx },
    { x: 0, y: heightPx },
  ];
}
