import { SEWING_TOLERANCE } from '../../core/fit/fit-findings';
import { girthsOf } from '../../core/fit/round-body';
import { Card } from '../ui/card';
import { draftWords as words } from '../words/draft';
import { measureNames } from '../words/measures';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { useRestedGarment } from './rested-garment';

/** What a change to one piece makes of the whole garment, at every level that can be measured. */
export function BodyTotals({ pieceId }: { readonly pieceId: string }) {
  const garment = useRestedGarment();
  const ring = garment?.rings.find(({ members }) => members.some((member) => member.pieceId === pieceId));
  if (!garment || !ring) return null;
  const measured = girthsOf(garment, ring).flatMap((girth) => (girth.kind === 'measured' ? [girth] : []));
  if (measured.length === 0) return null;
  const write = (length: number) => writeLength(length, { shownIn: garment.shownIn });
  return (
    <Card title={words.bodyTotals} about="whole-garment" aside={ring.name}>
      <dl className={styles.numbers}>
        {measured.map(({ level, total, wanted }) => {
          const off = total - wanted;
          const says =
            Math.abs(off) <= SEWING_TOLERANCE
              ? words.fits
              : off > 0
                ? words.over(write(off))
                : words.short(write(-off));
          return [
            <dt key={`${level.id} name`}>
              {measureNames[level.girth]}
              <span className={styles.aside}> {words.wanted(write(wanted))}</span>
            </dt>,
            <dd key={`${level.id} total`}>
              {write(total)}
              <span className={styles.aside}> {says}</span>
            </dd>,
          ];
        })}
      </dl>
    </Card>
  );
}
