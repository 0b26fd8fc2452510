import type { SquareProof } from './square-proof';
import type { SquaresLength, SquaresMark, SquaresPoint, SquaresSheet } from './squares-sheet';

/** One thing to do on the large paper, in the order in which a piece is drawn. `key` names it within its sheet. */
export type DrawingStep = { readonly key: string } & (
  | { readonly kind: 'right-angle'; readonly proof: SquareProof }
  | { readonly kind: 'frame'; readonly proof: SquareProof }
  | { readonly kind: 'point'; readonly point: SquaresPoint }
  | { readonly kind: 'mark'; readonly mark: SquaresMark }
  | { readonly kind: 'measure'; readonly length: SquaresLength }
);

/** First the paper is proved square, then come the points round the piece, its marks, and what must measure right in the end. */
export function drawingSteps({ points, marks, diagonals, proof }: SquaresSheet, byLine: boolean): DrawingStep[] {
  return [
    { kind: 'right-angle', key: 'right-angle', proof },
    // With a base line there is no rectangle to go round.
    ...(byLine ? [] : [{ kind: 'frame', key: 'frame', proof } as const]),
    ...points.map((point) => ({ kind: 'point', key: point.name, point }) as const),
    ...marks.map((mark, index) => ({ kind: 'mark', key: `mark ${index + 1}`, mark }) as const),
    ...diagonals.map((length) => ({ kind: 'measure', key: `${length.from} to ${length.to}`, length }) as const),
  ];
}
