import type { Garment } from '../../../core/garment/garment';
import { currentSet } from '../../../core/garment/measure-value';
import type { LabelWords } from '../../../core/paper/label-words';
import { writeLength } from '../written';
import { measureNames } from './measures';
import { cutWords, dateWords, versionWords } from './paper-sheet';

/** Words of the envelope's label on the screen. */
export const labelCardWords = {
  title: 'For the envelope',
  help: 'A label with the picture of the shelf, the source, the version, the measures, and every piece with how often it is cut. Cut it out, fold it over, and hang it on the envelope.',
  picture: 'Picture',
  photo: 'the photo of the shelf',
  pieces: 'the pieces',
  make: 'Make the label (PDF)',
  making: 'Making the label…',
  made: (pages: number) => (pages === 1 ? 'The label is made, on 1 page.' : `The label is made, on ${pages} pages.`),
  noPhoto: 'The photo cannot be opened here; the pieces are drawn in its place.',
  failed: 'The label could not be made. Try again.',
  file: 'label',
} as const;

/** The measures an envelope is looked for by, the first that were taken. */
const MAIN = ['waist', 'hip', 'bust', 'chest', 'waistToHip', 'waistToFloorFront'] as const;
const MOST = 4;

/** Everything said on the label, in English. */
export function labelWords({ shownIn }: Pick<Garment, 'shownIn'>): LabelWords {
  const length = (mm: number) => writeLength(mm, { shownIn });
  return {
    unnamedGarment: 'Garment without a name',
    unnamedPiece: 'Piece without a name',
    source: ({ book, page, plate, year }) => {
      const place = [page && `page ${page}`, plate && `plate ${plate}`, year].filter(Boolean).join(', ');
      return [book, place].filter((line) => line !== '');
    },
    version: (version, date) => `${capital(versionWords(version))}, ${dateWords(date)}`,
    wearer: (garment) => {
      const set = currentSet(garment);
      const taken = MAIN.flatMap((name) => {
        const measure = set.measures[name];
        return measure ? [`${measureNames[name].toLowerCase()} ${length(measure.length)}`] : [];
      });
      const over = set.wornOver === '' ? '' : `, over ${set.wornOver}`;
      return [
        ...(garment.wearer.name === '' ? [] : [`For ${garment.wearer.name}`]),
        `Measures of ${dateWords(set.date)}${over}`,
        ...(taken.length > 0 ? [capital(taken.slice(0, MOST).join(' · '))] : []),
      ];
    },
    needs: ({ cloth = '', notions = '' }) =>
      [cloth && `Cloth: ${cloth}`, notions && `Notions: ${notions}`].filter((line) => line !== ''),
    inside: (pieces, cut) =>
      `${pieces === 1 ? '1 piece' : `${pieces} pieces`}, ${cut === 1 ? '1 part' : `${cut} parts`} to cut`,
    piecesTitle: 'Pieces in this envelope',
    goesOn: (garment) => `${garment}: more pieces`,
    cut: cutWords,
    howToFold:
      'Cut out along the line, fold back along the dashes, and hang it over the upper edge of the envelope: the list is then read from behind.',
  };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
