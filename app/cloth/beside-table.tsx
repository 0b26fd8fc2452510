import { openedLength } from '../../core/cloth/cloth';
import { againstAtHand } from '../../core/cloth/cloth-sums';
import { keptLay, type Laying, layingOf } from '../../core/cloth/garment-laying';
import type { Lay } from '../../core/cloth/lay-task';
import { beforeShrinking } from '../../core/cloth/shrinkage';
import { chartLength } from '../../core/cloth/yardage-chart';
import { changeCloth, keepLay } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import styles from './cloth.module.css';
import { besideKey } from './cloth-store';
import { costSaid } from './cost';
import { stopLaying } from './laying';
import type { ShownLay } from './shown-lay';

/** The cloth with another grain or width, and what is laid on it then. */
export interface Variant {
  readonly cloth: GarmentCloth;
  readonly laying: Laying;
}

interface BesideTableProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
  readonly what: 'grains' | 'widths';
  readonly variants: readonly Variant[];
  readonly lays: ReadonlyMap<string, Lay>;
}

/** One row a grain or a width: what it takes, what is left over, what it costs; a press takes it. */
export function BesideTable({ garment, cloth, lay, what, variants, lays }: BesideTableProps) {
  const { shownIn } = garment;
  const length = (mm: number) => writeLength(mm, { shownIn, step: 'eighth' });
  const hasCost = cloth.price !== undefined;
  const rows = variants.map((variant) => rowOf(variant, { cloth, lay, lays }));
  const need = (grain: string) => rows.find(({ variant }) => variant.cloth.grain === grain)?.needed;
  const [straight, bias] = [need('straight'), need('bias')];
  const now = rows.find(({ isNow }) => isNow)?.needed;
  return (
    <>
      <table className={styles.beside}>
        <thead>
          <tr>
            <th scope="col">{what === 'grains' ? words.grainHead : words.widthHead}</th>
            <th scope="col">{words.lengthHead}</th>
            {cloth.atHand !== undefined && <th scope="col">{words.leftHead}</th>}
            {hasCost && <th scope="col">{words.costHead}</th>}
            <th scope="col">
              <span className="only-heard">{words.take('')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ variant, isNow, isLaid, needed, found }) => {
            const { width, grain } = variant.cloth;
            const opened = variant.cloth.folded !== cloth.folded ? `, ${words.foldedWays.open}` : '';
            const chart =
              what === 'widths' && !isNow && now !== undefined ? chartLength(now, cloth.width, width) : undefined;
            const name = what === 'grains' ? `${words.grains[grain]}${opened}` : `${length(width)}${opened}`;
            return (
              <tr key={name} data-now={isNow || undefined}>
                <th scope="row">{name}</th>
                {needed === undefined ? (
                  <td colSpan={1 + Number(cloth.atHand !== undefined) + Number(hasCost)}>
                    {whyNot(variant, length)}
                    {chart !== undefined && <span className={styles.small}> {words.byChart(chart)}</span>}
                  </td>
                ) : (
                  <>
                    <td>
                      {length(needed)}
                      <br />
                      <span className={styles.small}>
                        {words.bought(needed, shownIn)}
                        {chart !== undefined && `; ${words.byChart(chart)}`}
                      </span>
                    </td>
                    {cloth.atHand !== undefined && <td>{leftOf(needed, cloth.atHand, length)}</td>}
                    {hasCost && <td>{costSaid(variant.cloth, needed, shownIn)}</td>}
                  </>
                )}
                <td>
                  {isLaid ? (
                    words.layed
                  ) : found && needed !== undefined ? (
                    <Button label={words.take(name)} onPress={() => take(cloth, variant, found, what)}>
                      {words.takeIt}
                    </Button>
                  ) : null}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {what === 'grains' && straight !== undefined && bias !== undefined && (
        <p className={styles.small}>{words.ratio(bias / straight)}</p>
      )}
    </>
  );
}

/** What a way of laying needs of cloth, before washing; of the way it lies now, the lay that is kept if that is shorter. */
function rowOf(
  variant: Variant,
  { cloth, lay, lays }: Pick<BesideTableProps, 'cloth' | 'lay' | 'lays'>,
): {
  readonly variant: Variant;
  readonly isNow: boolean;
  /** The cloth lies so already, no longer than it was found to here. */
  readonly isLaid: boolean;
  readonly needed: number | undefined;
  readonly found: Lay | undefined;
} {
  const { width, grain, folded, shrinks } = variant.cloth;
  const isNow = width === cloth.width && grain === cloth.grain && folded === cloth.folded;
  const found = lays.get(besideKey(variant.cloth));
  const kept = isNow && !lay.standing?.changed ? lay.standing?.lay.length : undefined;
  const isLaid = kept !== undefined && kept <= (found?.length ?? kept);
  const length = isLaid ? kept : found?.length;
  const needed =
    length === undefined || variant.laying.made.kind !== 'task'
      ? undefined
      : beforeShrinking(openedLength(variant.cloth, length), shrinks?.along ?? 0);
  return { variant, isNow, isLaid, needed, found };
}

function whyNot({ laying: { made } }: Variant, length: (mm: number) => string): string {
  if (made.kind === 'task') return '';
  const lacking = made.reasons.flatMap((reason) => (reason.kind === 'too-wide' ? [reason.needs - reason.across] : []));
  return lacking.length > 0 ? words.tooWide(length(Math.max(...lacking))) : words.cannot;
}

function leftOf(needed: number, atHand: number, length: (mm: number) => string): string {
  const against = againstAtHand(needed, atHand);
  return against.kind === 'enough' ? length(against.over) : words.lacks(length(against.by));
}

/** Lays as the row says, with the lay that was found. */
function take(cloth: GarmentCloth, { cloth: other }: Variant, found: Lay, what: 'grains' | 'widths'): void {
  stopLaying();
  useGarment.getState().edit(what === 'grains' ? words.labels.grain : words.labels.width, (now) => {
    const { width, grain, folded } = other;
    const after = changeCloth(now, cloth.id, (one) => ({ ...one, width, grain, folded }));
    const changed = after.cloths?.find(({ id }) => id === cloth.id);
    const made = changed && layingOf(after, changed).made;
    if (made?.kind !== 'task') return after;
    return keepLay(after, keptLay(cloth.id, made.task, found, { made: today(), pinned: [] }));
  });
}
