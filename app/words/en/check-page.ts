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
        ? ['There is no diagram.']
        : [`Known lengths on the diagram: ${figures.count}.`];
    case 'girths':
      return figures.girths.flatMap((girth) => {
        const level = fitWords.levelOf(girth.level);
        if (girth.kind === 'no-depth') return [];
        if (girth.kind === 'no-body') return [`${level}: ${length(girth.total)} round.`];
        const room = girth.total - girth.body;
        return [
          `${level}: ${length(girth.total)} round, the body ${length(girth.body)}, ${length(Math.abs(room))} ${room < 0 ? 'too little' : 'of room'}.`,
        ];
      });
    case 'seams':
      return [figures.count === 0 ? 'No seams are paired yet.' : `Seams paired: ${figures.count}.`];
    case 'pinned':
      return figures.noted + figures.carried + figures.declined === 0
        ? ['No pinned change is noted.']
        : [`Pinned changes: ${figures.noted} outstanding, ${figures.carried} carried, ${figures.declined} declined.`];
    case 'pieces':
      return [`${figures.with} of ${figures.of} ${figures.of === 1 ? 'piece' : 'pieces'}.`];
    case 'cuts':
      return figures.pieces.map((piece) => `${piece.name || 'Piece without a name'}: ${cutWords(piece.cut)}.`);
    case 'proof': {
      const { proof } = figures;
      if (!proof) return ['The test square has not been measured yet.'];
      const read = {
        shownIn: garment.shownIn,
        step: finestStep(garment.shownIn),
      } as const;
      return [
        `The test square measured ${writeLength(proof.across, read)} across and ${writeLength(proof.down, read)} down on ${dateWords(proof.date)}.`,
      ];
    }
    case 'cloth':
      return [
        ...(figures.cloths.length === 0 ? ['No lay has been made, so whether the cloth is enough is not known.'] : []),
        ...figures.cloths.map((one) => clothSentence(one, length)),
        ...(figures.said === '' ? [] : [`Your note on the cloth: ${figures.said}`]),
      ];
    case 'printing':
      if (!figures.last) return ['No printing is on record.'];
      return [
        `Printed last on ${dateWords(figures.last.date)}, mark ${figures.last.mark}.${
          state === 'settled' ? ' Its pages are as the pattern is now.' : ''
        }`,
      ];
  }
}

/** What the lay of a cloth takes, of what there is. */
function clothSentence({ cloth, needed, made, version }: ClothFigures, length: (mm: number) => string): string {
  const name = clothNames.cloth(cloth.name);
  if (made === undefined) return `${name}: not laid yet, so whether it is enough is not known.`;
  if (needed === undefined) return `${name}: the lay of ${dateWords(made)} is out of date.`;
  const of = cloth.atHand === undefined ? '' : ` of the ${length(cloth.atHand)} at hand`;
  return `${name}: the lay of ${dateWords(made)}${version === undefined ? '' : `, made from version ${version},`} takes ${length(needed)}${of}.`;
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
