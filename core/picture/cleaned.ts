/** The ways a picture can be cleaned up for the eye, made strip by strip. */
import { blackAndWhite, contrasted, evened, levelsOf, paperLight, type Rows } from './clean-up';
import { type Grey, reducedTo } from './grey';

/** Light and shadow evened out; that, and black ink on white paper; or nothing but black and white. */
export type CleanUp = 'even' | 'contrast' | 'black-and-white';

/** Levels are taken from a copy no larger than this. */
const LEVELS_SIDE = 1000;

/** Half the side of the square about each pixel by which it is judged, as a share of the longer side. */
const REACH = 1 / 80;

/** Between what suits thin lines and what suits type. */
const STRICTNESS = 0.3;

/** Gives the rows of a cleaned-up picture, as light, whichever are asked for; together the strips are the picture. */
export function cleanedRows(grey: Grey, how: CleanUp): (rows: Rows) => Grey {
  if (how === 'black-and-white') {
    const reach = Math.max(6, Math.round(REACH * Math.max(grey.width, grey.height)));
    return (rows) => blackAndWhite(grey, { reach, strictness: STRICTNESS }, rows);
  }
  const light = paperLight(grey);
  if (how === 'even') return (rows) => evened(grey, light, rows);
  const small = reducedTo(grey, LEVELS_SIDE).grey;
  // Of the evened picture: else what lies in shadow would turn black.
  const levels = levelsOf(evened(small, paperLight(small)));
  return (rows) => contrasted(evened(grey, light, rows), levels);
}
