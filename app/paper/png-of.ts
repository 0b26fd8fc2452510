/** The longer side of the picture, in pixels. */
const LONGER_SIDE = 2400;

/** A drawing file as a picture; throws where the browser cannot draw it. */
export async function pngOf(svg: Blob): Promise<Blob> {
  const url = URL.createObjectURL(svg);
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const share = LONGER_SIDE / Math.max(image.naturalWidth, image.naturalHeight);
    const canvas = new OffscreenCanvas(Math.round(image.naturalWidth * share), Math.round(image.naturalHeight * share));
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas to draw on');
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await canvas.convertToBlob({ type: 'image/png' });
  } finally {
    URL.revokeObjectURL(url);
  }
}
