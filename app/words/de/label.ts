import { currentSet } from '../../../core/garment/measure-value';
import type * as english from '../en/label';
import type { Said } from '../said';
import { writeLength } from '../written';
import { cutWords, dateWords, versionWords } from './paper-sheet';

export const labelCardWords: Said<typeof english.labelCardWords> = {
  title: 'Für den Umschlag',
  help: 'Ein Etikett mit dem Bild aus dem Regal, der Quelle, der Fassung, den Maßen und jedem Teil mit der Zahl, wie oft es zugeschnitten wird. Schneide es aus, falte es und hänge es über den Umschlag.',
  picture: 'Bild',
  photo: 'das Foto aus dem Regal',
  pieces: 'die Teile',
  make: 'Etikett machen (PDF)',
  making: 'Das Etikett wird gemacht …',
  made: (pages) => `Das Etikett ist fertig, auf ${pages === 1 ? '1 Blatt' : `${pages} Blättern`}.`,
  noPhoto: 'Das Foto lässt sich hier nicht öffnen; an seiner Stelle sind die Teile gezeichnet.',
  failed: 'Das Etikett konnte nicht gemacht werden. Versuche es noch einmal.',
  file: 'etikett',
};

/** The measures an envelope is looked for by, the first that were taken, as they are called there. */
const MAIN = {
  waist: 'Taille',
  hip: 'Hüfte',
  bust: 'Brust',
  chest: 'Oberbrust',
  waistToHip: 'Hüfttiefe',
  waistToFloorFront: 'Taille bis Boden vorn',
} as const;
const MOST = 4;

export const labelWords: typeof english.labelWords = ({ shownIn }) => {
  const length = (mm: number) => writeLength(mm, { shownIn });
  return {
    unnamedGarment: 'Kleidungsstück ohne Namen',
    unnamedPiece: 'Teil ohne Namen',
    source: ({ book, page, plate, year }) => {
      const place = [page && `Seite ${page}`, plate && `Tafel ${plate}`, year].filter(Boolean).join(', ');
      return [book, place].filter((line) => line !== '');
    },
    version: (version, date) => `${versionWords(version)}, ${dateWords(date)}`,
    wearer: (garment) => {
      const set = currentSet(garment);
      const taken = (Object.keys(MAIN) as (keyof typeof MAIN)[]).flatMap((name) => {
        const measure = set.measures[name];
        return measure ? [`${MAIN[name]} ${length(measure.length)}`] : [];
      });
      const over = set.wornOver === '' ? '' : `, über ${set.wornOver}`;
      return [
        ...(garment.wearer.name === '' ? [] : [`Für ${garment.wearer.name}`]),
        `Maße vom ${dateWords(set.date)}${over}`,
        ...(taken.length > 0 ? [taken.slice(0, MOST).join(' · ')] : []),
      ];
    },
    needs: ({ cloth = '', notions = '' }) =>
      [cloth && `Stoff: ${cloth}`, notions && `Zutaten: ${notions}`].filter((line) => line !== ''),
    inside: (pieces, cut) =>
      `${pieces === 1 ? '1 Schnittteil' : `${pieces} Schnittteile`}, ${cut === 1 ? '1 Stoffteil' : `${cut} Stoffteile`}`,
    piecesTitle: 'Teile in diesem Umschlag',
    goesOn: (garment) => `${garment}: weitere Teile`,
    cut: cutWords,
    howToFold:
      'An der Linie ausschneiden, an den Strichen nach hinten falten und über die obere Kante des Umschlags hängen: Die Liste liest man dann von hinten.',
  };
};
