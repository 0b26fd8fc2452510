import { type ClothFigures, type PointToBeSureOf, pointsToBeSureOf } from '../../../core/check/points-to-be-sure-of';
import type { Garment } from '../../../core/garment/garment';
import { currentSet } from '../../../core/garment/measure-value';
import type { VersionSaid } from '../../../core/garment/version-said';
import type { ListedLine, ListedPage } from '../../../core/paper/list-pdf';
import { finestStep } from '../../../core/units/write-length';
import { writeLength } from '../written';
import { checkWords as words } from './check';
import { clothNames } from './cloth-names';
import { findingSentence } from './findings';
import { fitWords } from './fit';
import { cutWords, dateWords, paperSheetWords, versionWords } from './paper-sheet';

/** The figures behind a point, in sentences. */
export function pointFigures({ figures, state }: PointToBeSureOf, garment: Garment): string[] {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (figures.kind) {
    case 'none':
      return [];
    case 'known-lengths':
      return garment.diagrams.length === 0
        ? ['Es gibt keine Vorlage.']
        : [`Bekannte Längen auf der Vorlage: ${figures.count}.`];
    case 'girths':
      return figures.girths.flatMap((girth) => {
        const level = fitWords.levelOf(girth.level);
        if (girth.kind === 'no-depth') return [];
        if (girth.kind === 'no-body') return [`${level}: ${length(girth.total)} ringsum.`];
        const room = girth.total - girth.body;
        return [
          `${level}: ${length(girth.total)} ringsum, der Körper ${length(girth.body)}, ${length(Math.abs(room))} ${room < 0 ? 'zu wenig' : 'Luft'}.`,
        ];
      });
    case 'seams':
      return [figures.count === 0 ? 'Noch ist keine Naht gepaart.' : `Gepaarte Nähte: ${figures.count}.`];
    case 'pinned':
      return figures.noted + figures.carried + figures.declined === 0
        ? ['Keine gesteckte Änderung ist notiert.']
        : [
            `Gesteckte Änderungen: ${figures.noted} offen, ${figures.carried} übertragen, ${figures.declined} abgelehnt.`,
          ];
    case 'pieces':
      return [`${figures.with} von ${figures.of} ${figures.of === 1 ? 'Schnittteil' : 'Schnittteilen'}.`];
    case 'cuts':
      return figures.pieces.map((piece) => `${piece.name || 'Schnittteil ohne Namen'}: ${cutWords(piece.cut)}.`);
    case 'proof': {
      const { proof } = figures;
      if (!proof) return ['Das Prüfquadrat ist noch nicht gemessen.'];
      const read = {
        shownIn: garment.shownIn,
        step: finestStep(garment.shownIn),
      } as const;
      return [
        `Das Prüfquadrat maß am ${dateWords(proof.date)} ${writeLength(proof.across, read)} in der Breite und ${writeLength(proof.down, read)} in der Höhe.`,
      ];
    }
    case 'cloth':
      return [
        ...(figures.cloths.length === 0
          ? ['Noch ist kein Zuschneideplan gemacht; ob der Stoff reicht, ist also nicht bekannt.']
          : []),
        ...figures.cloths.map((one) => clothSentence(one, length)),
        ...(figures.said === '' ? [] : [`Deine Notiz zum Stoff: ${figures.said}`]),
      ];
    case 'printing':
      if (!figures.last) return ['Es ist kein Druck vermerkt.'];
      return [
        `Zuletzt gedruckt am ${dateWords(figures.last.date)}, Kennzeichen ${figures.last.mark}.${
          state === 'settled' ? ' Die Blätter sind so, wie der Schnitt jetzt ist.' : ''
        }`,
      ];
  }
}

/** What the lay of a cloth takes, of what there is. */
function clothSentence({ cloth, needed, made, version }: ClothFigures, length: (mm: number) => string): string {
  const name = clothNames.cloth(cloth.name);
  if (made === undefined) return `${name}: noch nicht aufgelegt; ob der Stoff reicht, ist also nicht bekannt.`;
  if (needed === undefined) return `${name}: Der Zuschneideplan vom ${dateWords(made)} ist veraltet.`;
  const of = cloth.atHand === undefined ? '' : `, vorhanden sind ${length(cloth.atHand)}`;
  return `${name}: Der Zuschneideplan vom ${dateWords(made)}${version === undefined ? '' : `, nach Fassung ${version},`} braucht ${length(needed)}${of}.`;
}

/** The list before cutting, worded for paper. */
export function listedWords(garment: Garment, version: VersionSaid, today: string): ListedPage {
  const paper = paperSheetWords(garment.shownIn, garment.paper.step);
  const name = garment.name === '' ? paper.unnamedGarment : garment.name;
  const set = currentSet(garment);
  const points = pointsToBeSureOf(garment);
  return {
    title: `${words.title}: ${name}`,
    head: [
      `${paper.date(today)}, ${versionWords(version)}`,
      paper.first.wearerLine(paper.date(set.date), set.wornOver) +
        (garment.wearer.name === '' ? '' : `, ${garment.wearer.name}`),
    ],
    parts: [
      { heading: words.points, lines: points.map((point) => listedPoint(point, garment)) },
      { heading: words.cautions, lines: words.cautionLines.map((text) => ({ box: 'none', text, under: [] })) },
    ],
    foot: (page, of) => `${paper.garmentLine(name, paper.date(today), version)}, ${paper.pageOf(page, of)}`,
  };
}

function listedPoint(point: PointToBeSureOf, garment: Garment): ListedLine {
  return {
    box: point.state === 'settled' ? 'ticked' : 'empty',
    text: `${words.point[point.name]}: ${words.state[point.state]}`,
    under: [
      ...pointFigures(point, garment),
      ...point.open.map((finding) => findingSentence(finding, garment)),
      ...point.left.flatMap(({ finding, left }) => [
        findingSentence(finding, garment),
        words.leftSince(left.date, left.why),
      ]),
    ],
  };
}
