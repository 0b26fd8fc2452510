/** What a draft has names for: its pieces, and the seams that two of its edges share. */
export type PieceName =
  | 'front'
  | 'back'
  | 'side-gore'
  | 'gore'
  | 'skirt'
  | 'flounce'
  | 'band'
  | 'band-with-lap'
  | 'leg'
  | 'bodice-front'
  | 'bodice-back'
  | 'upper-square'
  | 'lower-piece';
export type SeamName =
  | 'side-seam'
  | 'shoulder-seam'
  | 'waist-seam'
  | 'gore-seam'
  | 'end-seam'
  | 'inner-leg-seam'
  | 'centre-back-seam'
  | 'front-seam'
  | 'back-seam';
export type DraftName = PieceName | SeamName;

/** What turns a draft into pieces: fresh ids, and the words for its names, the `number`th of several where there are more. */
export interface DraftOptions {
  readonly newId: () => string;
  readonly nameOf: (name: DraftName, number?: number) => string;
}
