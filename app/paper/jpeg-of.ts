/** The longer side of a picture on a label (px): 56 by 98 mm at over 300 to the inch. */
const LONGER_SIDE = 1200;

/** A photo as a JPEG no larger than a label needs, in the colours of the screen; `undefined` when it cannot be opened. */
export async function jpegOf(photo: Blob): Promise<Uint8Array | undefined> {
  try {
    const bitmap = await createImageBitmap(photo);
    const share = Math.min(1, LONGER_SIDE / Math.max(bitmap.width, bitmap.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(bitmap.width * share));
    canvas.height = Math.max(1, Math.round(bitmap.height * share));
    const ink = canvas.getContext('2d');
    if (!ink) return undefined;
    // Paper is white where a picture has holes.
    ink.fillStyle = '#fff';
    ink.fillRect(0, 0, canvas.width, canvas.height);
    ink.imageSmoothingQuality = 'high';
    ink.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    bitmap.close();
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.88));
    return blob ? new Uint8Array(await blob.arrayBuffer()) : undefined;
  } catch {
    return undefined;
  }
}
