import type { SizePx } from './header-said';

/** Tags of the camera's directory in EXIF. See: CIPA DC-008 / JEITA CP-3451 (EXIF 2.3), 4.6.5. */
const TAG = {
  focalMm: 0x920a,
  widthPx: 0xa002,
  heightPx: 0xa003,
  perUnit: 0xa20e,
  unit: 0xa210,
  zoom: 0xa404,
  filmMm: 0xa405,
} as const;

/** The diagonal of a frame of 35 mm film, 36 by 24 mm: what a focal length "in 35 mm film" is told against. */
const FILM_DIAGONAL_MM = Math.hypot(36, 24);

/** The sensor's pixels to a mm, by the unit they are told in: 2 for an inch, 3 for a centimetre. */
const MM_TO: Readonly<Record<number, number>> = { 2: 25.4, 3: 10 };

/** A focal length shorter or longer than so much of the longer side is of no camera that a page is taken with. */
const BELIEVABLE = { least: 0.3, most: 6 };

/** Sides that differ in proportion by more than this are of a picture that was cut after it was taken. */
const SAME_SHAPE = 0.01;

/**
 * The focal length in pixels of a picture of this size, by what the camera wrote: against 35 mm film, else in mm with the
 * fineness of its sensor. Nothing for a picture that was cut since, or drawn larger by the camera itself.
 */
export function exifFocalPx(tags: ReadonlyMap<number, readonly number[]>, size: SizePx): number | undefined {
  const said = (tag: number) => {
    const [value] = tags.get(tag) ?? [];
    return value !== undefined && Number.isFinite(value) && value > 0 ? value : undefined;
  };
  const [width, height] = [said(TAG.widthPx), said(TAG.heightPx)];
  if (width && height && Math.abs((width * size.heightPx) / (height * size.widthPx) - 1) > SAME_SHAPE) return undefined;
  if ((said(TAG.zoom) ?? 1) > 1) return undefined;
  const diagonal = Math.hypot(size.widthPx, size.heightPx);
  const [film, mm, perUnit] = [said(TAG.filmMm), said(TAG.focalMm), said(TAG.perUnit)];
  const unit = MM_TO[said(TAG.unit) ?? 2];
  let focalPx: number | undefined;
  if (film) focalPx = (film / FILM_DIAGONAL_MM) * diagonal;
  // The sensor's pixels are those of the picture as taken; it may have been made smaller since.
  else if (mm && perUnit && unit && width) focalPx = (mm * perUnit * size.widthPx) / (unit * width);
  const share = (focalPx ?? 0) / Math.max(size.widthPx, size.heightPx);
  return share > BELIEVABLE.least && share < BELIEVABLE.most ? focalPx : undefined;
}
