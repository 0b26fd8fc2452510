/** The part of libheif's bundle that is used here; its own types describe only the raw module. */
declare module 'libheif-js/libheif-wasm/libheif-bundle.mjs' {
  interface HeifPicture {
    get_width(): number;
    get_height(): number;
    /** Fills the pixels and gives them back, or nothing when the picture does not decode. */
    display(pixels: ImageData, done: (pixels: ImageData | null) => void): void;
    free(): void;
  }

  interface HeifLibrary {
    readonly HeifDecoder: new () => { decode(bytes: Uint8Array): HeifPicture[] };
  }

  export default function openLibrary(): HeifLibrary | Promise<HeifLibrary>;
}
