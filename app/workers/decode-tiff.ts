import { decode, decodeImage, type IFD, toRGBA8 } from 'utif2';

/** The first picture of a TIFF file; throws where it cannot be decoded. Pages after the first are left alone. */
export async function decodeTiff(file: Blob): Promise<ImageData> {
  const buffer = await file.arrayBuffer();
  // A thumbnail may stand before or after the picture: the largest of them is meant.
  const picture = decode(buffer).reduce<IFD | undefined>(
    (largest, each) => (largest && areaOf(largest) >= areaOf(each) ? largest : each),
    undefined,
  );
  if (!picture || areaOf(picture) === 0) throw new Error('no picture in the file');
  decodeImage(buffer, picture);
  const { width, height } = picture;
  // The library turns inks into colours only where there is a window, and a worker has none.
  const pixels = tagOf(picture, 262) === INKS ? fromInks(picture) : toRGBA8(picture);
  return new ImageData(new Uint8ClampedArray(pixels), width, height);
}

/** The value of tag 262 that means cyan, magenta, yellow and black. */
const INKS = 5;

/** Ink by ink, 0 none and 255 full, as plain multiplication has it; what else a sample carries is left out. */
function fromInks(picture: IFD): Uint8Array {
  const samples = tagOf(picture, 277) ?? 4;
  if (tagOf(picture, 258) !== 8 || samples < 4) throw new Error('inks of other than 8 bits');
  const { width, height, data } = picture;
  const pixels = new Uint8Array(width * height * 4);
  for (let to = 0, from = 0; to < pixels.length; to += 4, from += samples) {
    const paper = 255 - (data[from + 3] ?? 0);
    for (let part = 0; part < 3; part++) pixels[to + part] = ((255 - (data[from + part] ?? 0)) * paper) / 255;
    pixels[to + 3] = 255;
  }
  return pixels;
}

/** Width by height, as its tags say it. */
function areaOf(picture: IFD): number {
  return (tagOf(picture, 256) ?? 0) * (tagOf(picture, 257) ?? 0);
}

/** The first value of a tag by its number in TIFF 6.0. */
function tagOf(picture: IFD, tag: number): number | undefined {
  const values = picture[`t${tag}`];
  const [value] = Array.isArray(values) ? values : [];
  return typeof value === 'number' ? value : undefined;
}
