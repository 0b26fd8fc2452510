/** A picture turned and mirrored as tag 274 of TIFF 6.0 asks, 1 to 8. */
export async function turnedUpright(bitmap: ImageBitmap, turned: number): Promise<ImageBitmap> {
  if (turned === 1) return bitmap;
  const { width: w, height: h } = bitmap;
  const canvas = turned >= 5 ? new OffscreenCanvas(h, w) : new OffscreenCanvas(w, h);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas to draw on');
  const motions: Readonly<Record<number, readonly [number, number, number, number, number, number]>> = {
    2: [-1, 0, 0, 1, w, 0],
    3: [-1, 0, 0, -1, w, h],
    4: [1, 0, 0, -1, 0, h],
    5: [0, 1, 1, 0, 0, 0],
    6: [0, 1, -1, 0, h, 0],
    7: [0, -1, -1, 0, h, w],
    8: [0, -1, 1, 0, 0, w],
  };
  context.setTransform(...(motions[turned] ?? [1, 0, 0, 1, 0, 0]));
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  return canvas.transferToImageBitmap();
}
