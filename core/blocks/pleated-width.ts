/** What is to be pleated away on each half of a skirt, so that it comes to the body (mm). */
export interface PleatedWidth {
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
}

/**
 * The width to pleat at each level of a skirt of joined straight breadths, on the half: the joined width less half of the
 * waist, of the hip and of the hem it is to hang like (A Complete Course in Dressmaking, vol. 5, Skirts, early 1920s). A
 * level that the cloth does not go round comes out below 0.
 */
export function pleatedWidth(skirt: {
  /** The width of the joined breadths on the half, seams taken off. */
  readonly joinedHalf: number;
  readonly waist: number;
  readonly hip: number;
  /** The hem of the plain skirt it is to hang like. */
  readonly hem: number;
}): PleatedWidth {
  const { joinedHalf, waist, hip, hem } = skirt;
  return { waist: joinedHalf - waist / 2, hip: joinedHalf - hip / 2, hem: joinedHalf - hem / 2 };
}
