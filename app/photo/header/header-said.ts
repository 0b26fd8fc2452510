/** What the first bytes of a picture file say of it. */

export type PictureFormat = 'jpeg' | 'png' | 'webp' | 'avif' | 'gif' | 'bmp' | 'tiff' | 'heic';

/** Pixels to a millimetre of paper, across and down. */
export interface Fineness {
  readonly across: number;
  readonly down: number;
}

/** A file that can be read, with its size as stored: a phone photo may still have to be turned upright. */
export interface PictureHeader {
  readonly kind: 'picture';
  readonly format: PictureFormat;
  readonly widthPx: number;
  readonly heightPx: number;
  /** How finely a scan was scanned, where the file says so; across and down as stored. */
  readonly fineness?: Fineness;
  /** The way the stored picture is to be turned, 1 to 8 as in TIFF 6.0 and EXIF; upright unless said. */
  readonly turned?: number;
  /** The focal length in pixels of the stored picture, where the camera noted it. */
  readonly focalPx?: number;
}

/** Kinds of file that are known but are no single picture that can be read here. */
export type OtherFormat = 'pdf' | 'big-tiff' | 'jpeg-xl' | 'svg';

export type HeaderRefusal =
  | { readonly kind: 'empty-file' }
  | { readonly kind: 'not-a-picture' }
  | { readonly kind: 'other-format'; readonly format: OtherFormat }
  /** The file stops before the picture does: a copy or a download that was cut short. */
  | { readonly kind: 'cut-short' }
  | { readonly kind: 'too-many-pixels'; readonly widthPx: number; readonly heightPx: number };

/** The most pixels a picture may have: above it, opening alone takes over 400 MB. */
export const MOST_PIXELS = 100e6;

export interface SizePx {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A file without its end: the size it claims is still worth saying when that alone is too much. */
export function tooManyOrCut(size: SizePx): HeaderRefusal {
  return size.widthPx * size.heightPx > MOST_PIXELS
    ? { kind: 'too-many-pixels', widthPx: size.widthPx, heightPx: size.heightPx }
    : { kind: 'cut-short' };
}

const MM_PER_INCH = 25.4;

/** What programs write that do not know: 72 and 96 to the inch stand in files that were never on paper. */
const LEAST_TO_THE_INCH = 100;
const MOST_TO_THE_INCH = 9600;

/** A fineness that a scanner may have written; nothing where it is one that only stands in for not knowing. */
export function believed(perMm: Fineness | undefined): { readonly fineness?: Fineness } {
  if (!perMm) return {};
  const sound = [perMm.across, perMm.down].every((n) => {
    const toTheInch = n * MM_PER_INCH;
    return toTheInch >= LEAST_TO_THE_INCH - 0.5 && toTheInch <= MOST_TO_THE_INCH;
  });
  return sound ? { fineness: perMm } : {};
}

/** Dots to the inch as {@link Fineness}. */
export function perInch(across: number, down: number): Fineness {
  return { across: across / MM_PER_INCH, down: down / MM_PER_INCH };
}
