import openLibrary from 'libheif-js/libheif-wasm/libheif-bundle.mjs';

/**
 * The first picture of a HEIC file, upright: the library turns it as the file says. Throws where it cannot be decoded.
 * It takes seconds and its memory is only given back with the worker.
 */
export async function decodeHeic(file: Blob): Promise<ImageData> {
  const library = await openLibrary();
  const [picture, ...others] = new library.HeifDecoder().decode(new Uint8Array(await file.arrayBuffer()));
  for (const other of others) other.free();
  if (!picture) throw new Error('no picture in the file');
  const [width, height] = [picture.get_width(), picture.get_height()];
  try {
    return await new Promise((resolve, reject) => {
      picture.display(new ImageData(width, height), (pixels) =>
        pixels ? resolve(pixels) : reject(new Error('the picture does not decode')),
      );
    });
  } finally {
    picture.free();
  }
}
