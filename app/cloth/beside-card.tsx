import { useEffect, useMemo, useRef } from 'react';
import { layingOf } from '../../core/cloth/garment-laying';
import type { Lay } from '../../core/cloth/lay-task';
import type { LaidGrain } from '../../core/cloth/piece-to-lay';
import { WIDTHS_BESIDE } from '../../core/cloth/usual-widths';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { markOf } from '../../core/garment/version-mark';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { clothWords as words } from '../words/cloth';
import { layWork } from '../workers/lay-calls';
import { BesideTable, type Variant } from './beside-table';
import styles from './cloth.module.css';
import { besideKey, useCloth } from './cloth-store';
import { stopLaying } from './laying';
import type { ShownLay } from './shown-lay';

const GRAINS: readonly LaidGrain[] = ['straight', 'cross', 'bias'];

/** How long each is laid, in seconds. */
const SECONDS = { grains: 3, widths: 2 } as const;

const NONE: ReadonlyMap<string, Lay> = new Map();

interface BesideCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
  readonly what: 'grains' | 'widths';
}

/** The same pieces laid in several ways, with what each takes, leaves over and costs. */
export function BesideCard({ garment, cloth, lay, what }: BesideCardProps) {
  const share = useCloth((state) => state.besideShare);
  const beside = useCloth((state) => state.beside);
  const stopper = useRef<AbortController>(undefined);
  useEffect(() => () => stopper.current?.abort(), []);
  const { pieces } = garment;
  const variants = useMemo(() => variantsOf({ pieces }, cloth, what), [pieces, cloth, what]);
  const mark = markOfRest(cloth);
  const isOf = beside !== undefined && beside.pieces === garment.pieces && beside.mark === mark;
  if (cloth.shape) return null;
  const run = async () => {
    stopLaying();
    stopper.current = new AbortController();
    useCloth.setState({
      besideShare: 0,
      ...(isOf ? {} : { beside: { mark, pieces: garment.pieces, lays: new Map() } }),
    });
    const tasks = variants.flatMap(({ cloth: other, laying: { made } }) =>
      made.kind === 'task' ? [{ key: besideKey(other), task: made.task }] : [],
    );
    await layWork.call(
      'beside',
      { tasks, seconds: SECONDS[what] },
      {
        signal: stopper.current.signal,
        onProgress: (besideShare) => useCloth.setState({ besideShare }),
        onPart: ({ key, lay: found }) => {
          const { beside: now } = useCloth.getState();
          if (!now || !found || now.pieces !== useGarment.getState().garment?.pieces) return;
          const had = now.lays.get(key);
          const best = had && had.length < found.length ? had : found;
          useCloth.setState({ beside: { ...now, lays: new Map(now.lays).set(key, best) } });
        },
      },
    );
    useCloth.setState({ besideShare: undefined });
  };
  return (
    <Card title={what === 'grains' ? words.besideGrains : words.besideWidths} about="beside">
      <p className={styles.small}>{what === 'grains' ? words.besideGrainsHelp : words.besideWidthsHelp}</p>
      <BesideTable {...{ garment, cloth, lay, what, variants }} lays={isOf ? beside.lays : NONE} />
      <div className={styles.row}>
        {share === undefined ? (
          <Button icon="copy" onPress={() => void run()}>
            {words.setBeside}
          </Button>
        ) : (
          <>
            <progress value={share} max={1} aria-label={words.besideRuns(share)} />
            <Button icon="close" onPress={() => stopper.current?.abort()}>
              {words.stop}
            </Button>
          </>
        )}
      </div>
    </Card>
  );
}

/** Each grain on this width, or this grain on each of the usual widths, where flaws lie nobody knows where. */
function variantsOf(
  garment: Pick<Garment, 'pieces'>,
  cloth: GarmentCloth,
  what: 'grains' | 'widths',
): readonly Variant[] {
  const others =
    what === 'grains'
      ? GRAINS.map((grain) => openedIfNeeded(garment, { ...cloth, grain }))
      : [...new Set([...WIDTHS_BESIDE, cloth.width])]
          .sort((a, b) => a - b)
          .map((width) => (width === cloth.width ? cloth : { ...cloth, width, flaws: [] }))
          .map((other) => openedIfNeeded(garment, other));
  return others.map((other) => ({ cloth: other, laying: layingOf(garment, other) }));
}

/** The cloth opened out where it lets nothing be laid as it is folded: so it is with the bias. */
function openedIfNeeded(garment: Pick<Garment, 'pieces'>, cloth: GarmentCloth): GarmentCloth {
  if (cloth.folded === 'open' || layingOf(garment, cloth).made.kind === 'task') return cloth;
  const opened: GarmentCloth = { ...cloth, folded: 'open' };
  return layingOf(garment, opened).made.kind === 'task' ? opened : cloth;
}

/** A word for all of a cloth that matters to its lays but its grain, its width and how it is folded. */
function markOfRest({
  name: _name,
  price: _price,
  atHand: _atHand,
  grain: _grain,
  width: _width,
  folded: _folded,
  ...rest
}: GarmentCloth) {
  return markOf(rest);
}
