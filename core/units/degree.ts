/** One degree in radians: angles are radians everywhere but in what is read or written for a person. */
export const DEGREE = Math.PI / 180;
