import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { layPath } from '../table/ink';
import { boxRound, pieceBoxes } from '../table/piece-boxes';
import { canvasColours, inDaylight } from '../ui/canvas-colours';

/** A cover is at most this many pixels each way, sharp at the size of a row on a fine screen. */
const COVER_PX = 192;

/** A cover takes at most this much of the device (bytes). */
const MOST_BYTES = 40_000;

interface Made {
  readonly bytes: ArrayBuffer;
  readonly type: string;
}

/** A small copy of a photo; `undefined` when it cannot be opened. */
export async function photoCover(photo: Blob): Promise<Made | undefined> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(photo);
  } catch {
    return undefined;
  }
  const { width, height } = bitmap;
  const share = Math.min(1, COVER_PX / Math.max(width, height));
  try {
    return await small(Math.max(1, Math.round(width * share)), Math.max(1, Math.round(height * share)), (ink) => {
      ink.imageSmoothingQuality = 'high';
      ink.drawImage(bitmap, 0, 0, ink.canvas.width, ink.canvas.height);
    });
  } finally {
    bitmap.close();
  }
}

/** Room round the pieces, as a part of the cover. */
const MARGIN = 0.06;

/** The pieces of a garment as they lie on the table; `undefined` where there are none. */
export async function drawnCover(garment: Garment): Promise<Made | undefined> {
  const pieces = cutPieces(garment);
  if (pieces.length === 0) return undefined;
  const box = boxRound(pieceBoxes(pieces), 0);
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  const scale = (COVER_PX * (1 - 2 * MARGIN)) / Math.max(width, height, 1);
  return small(COVER_PX, COVER_PX, (ink) => {
    ink.translate(COVER_PX / 2, COVER_PX / 2);
    ink.scale(scale, scale);
    ink.translate(-(box.minX + box.maxX) / 2, -(box.minY + box.maxY) / 2);
    ink.strokeStyle = canvasColours.ink;
    ink.lineWidth = 2.5 / scale;
    ink.lineJoin = 'round';
    for (const piece of pieces) {
      ink.beginPath();
      layPath(ink, outlineOf(piece).whole);
      ink.fillStyle = canvasColours.chalkPale;
      ink.fill();
      ink.stroke();
    }
  });
}

/** Draws on the colour of the sheet, as by day since it is kept, and packs it small. */
async function small(
  width: number,
  height: number,
  draw: (ink: CanvasRenderingContext2D) => void,
): Promise<Made | undefined> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const ink = canvas.getContext('2d');
  if (!ink) return undefined;
  inDaylight(() => {
    ink.fillStyle = canvasColours.sheet;
    ink.fillRect(0, 0, width, height);
    draw(ink);
  });
  for (const quality of [0.85, 0.6, 0.3]) {
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
    if (blob && blob.size <= MOST_BYTES) return { bytes: await blob.arrayBuffer(), type: blob.type };
  }
  return undefined;
}

/** What a drawing of the pieces is made from: the same as long as their shapes and places are. */
export function drawnFrom(garment: Garment): string {
  const shapes = cutPieces(garment).map(({ corners, edges }) => [corners, edges]);
  return `pieces ${hash(JSON.stringify(shapes))}`;
}

/** 32 bits of FNV-1a (Fowler, Noll, Vo): enough to tell that something changed. */
function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return sum;
}
