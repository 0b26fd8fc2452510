import { longestOpening, openingNeeded } from '../../core/fit/opening';
import { girthsOf, hemSweep } from '../../core/fit/round-body';
import { casingGirth, WALKING_ROOM } from '../../core/fit/wearing';
import { SHOULDERS_TO_BUST } from '../../core/garment/body-figures';
import type { Garment, Ring } from '../../core/garment/garment';
import { currentSet, measureOf } from '../../core/garment/measure-value';
import { pieceOf } from '../../core/garment/with-piece';
import { Card } from '../ui/card';
import { fitWords as words } from '../words/fit';
import { writeLength } from '../words/written';
import styles from './fit-room.module.css';

interface WearingCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** The numbers behind getting it on and walking in it: what must pass, through what, and how wide the hem is. */
export function WearingCard({ garment, ring }: WearingCardProps) {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const rows = wearingFigures(garment, ring).map(([said, figure]) => (
    <div key={said}>
      <dt>{said}</dt>
      <dd>{typeof figure === 'number' ? length(figure) : figure}</dd>
    </div>
  ));
  if (rows.length === 0) return null;
  return (
    <Card title={words.wearing} about="wearing">
      <dl className={styles.figures}>{rows}</dl>
      {hemSweep(garment, ring) > 0 && (
        <p className={styles.small}>{words.walkingHelp(length(WALKING_ROOM.least), length(WALKING_ROOM.easy))}</p>
      )}
    </Card>
  );
}

type Figure = readonly [words: string, figure: number | string];

function wearingFigures(garment: Garment, ring: Ring): Figure[] {
  const set = currentSet(garment);
  const girths = girthsOf(garment, ring);
  const [hip, bust] = [measureOf(set, 'hip'), measureOf(set, 'bust')];
  const isUpper = girths.some(({ level }) => level.girth === 'bust' || level.girth === 'chest');
  const totals = girths.flatMap((girth) => (girth.kind === 'no-depth' || girth.total === 0 ? [] : [girth.total]));
  const opening = longestOpening(garment, ring);
  const openingName = opening && openingWords(garment, opening);
  const figures: Figure[] = [];
  if (totals.length > 0) figures.push([words.narrowest, Math.min(...totals)]);
  if (isUpper && bust !== undefined) figures.push([words.shoulders, bust * SHOULDERS_TO_BUST]);
  if (hip !== undefined) figures.push([words.hipToPass, hip]);
  const casing = isUpper || opening ? undefined : casingGirth(garment, ring);
  if (casing !== undefined) figures.push([words.casing, casing]);
  if (opening) figures.push([openingName ?? words.opening, opening.length]);
  else if (casing === undefined) figures.push([words.opening, words.noOpening]);
  if (!isUpper && casing === undefined && hip !== undefined && totals.length > 0) {
    figures.push([words.openingNeeded, openingNeeded(girths, hip)]);
  }
  const sweep = hemSweep(garment, ring);
  if (sweep > 0) {
    figures.push([words.hemRound, sweep]);
    if (hip !== undefined) figures.push([words.beyondHip, sweep - hip]);
  }
  return figures;
}

function openingWords(garment: Garment, { pieceId, edgeId }: { readonly pieceId: string; readonly edgeId: string }) {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId)?.name;
  return words.openingOf(piece?.name || words.unnamedPiece, edge);
}
