import { useCallback } from 'react';
import type { Box } from '../../core/geometry/bounds';
import { type Paint, Painted } from '../table/painted';

/** A picture laid somewhere in the world of a canvas. */
export interface LaidPicture {
  /** The picture and its halvings, the finest first. */
  readonly levels: readonly ImageBitmap[];
  /** Where the finest of them lies. */
  readonly box: Box;
}

interface PictureShapeProps extends LaidPicture {
  /** 1 is the picture as it is, 0 nothing of it. */
  readonly strength?: number;
}

/** A picture on a canvas, painted from the level that suits the zoom, which makes moving a large photo cheap. */
export function PictureShape({ levels, box, strength = 1 }: PictureShapeProps) {
  const paint = useCallback<Paint>(
    (pen, { px, pixelRatio }) => {
      const size = { width: box.maxX - box.minX, height: box.maxY - box.minY };
      const finest = levels[0];
      const at = levelFor(levels, (size.width / px) * pixelRatio);
      const level = levels[at];
      // A bitmap that was closed in the meantime has no width and must not be painted.
      if (!finest || !level || finest.width === 0 || level.width === 0) return;
      pen.globalAlpha = strength;
      // Seen pixel by pixel, a pixel is a square.
      pen.imageSmoothingEnabled = size.width / px < 4 * finest.width;
      pen.imageSmoothingQuality = 'medium';
      // A halving leaves an odd last row or column off, and covers that much less.
      const across = (level.width * 2 ** at) / finest.width;
      const down = (level.height * 2 ** at) / finest.height;
      pen.drawImage(level, box.minX, box.minY, size.width * across, size.height * down);
    },
    [levels, box, strength],
  );
  return <Painted paint={paint} />;
}

/** The place of the smallest level at least as wide as wanted, or of the finest. */
export function levelFor(levels: readonly { readonly width: number }[], wantedPx: number): number {
  let best = 0;
  for (const [at, { width }] of levels.entries()) if (width >= wantedPx) best = at;
  return best;
}
