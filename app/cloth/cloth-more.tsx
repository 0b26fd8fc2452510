import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { inches, type ShownIn } from '../../core/units/inch';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { NumberField } from '../ui/number-field';
import { clothWords as words } from '../words/cloth';
import { midSentence } from '../words/written';
import styles from './cloth.module.css';
import { useCloth } from './cloth-store';
import { editCloth, newRemnant, without } from './new-cloth';

interface MoreProps {
  readonly shownIn: ShownIn;
  readonly cloth: GarmentCloth;
}

/** Stripes to match, what it loses in the wash, flaws, and the corners of an odd shape. */
export function MoreOfCloth({ shownIn, cloth }: MoreProps) {
  const repeat = cloth.repeat ?? { along: 0, across: 0 };
  const shrinks = cloth.shrinks ?? { along: 0, across: 0 };
  const setRepeat = (next: Partial<typeof repeat>) =>
    editCloth(cloth, (now) => {
      const after = { ...repeat, ...next };
      return after.along === 0 && after.across === 0 ? without(now, 'repeat') : { ...now, repeat: after };
    });
  const setShrinks = (next: Partial<typeof shrinks>) =>
    editCloth(cloth, (now) => {
      const after = { ...shrinks, ...next };
      return after.along === 0 && after.across === 0 ? without(now, 'shrinks') : { ...now, shrinks: after };
    });
  return (
    <>
      <div className={styles.pair}>
        <LengthField
          label={words.repeatAlong}
          value={repeat.along || undefined}
          shownIn={shownIn}
          min={0}
          allowEmpty
          onCommit={(along = 0) => setRepeat({ along })}
        />
        <LengthField
          label={words.repeatAcross}
          value={repeat.across || undefined}
          shownIn={shownIn}
          min={0}
          allowEmpty
          onCommit={(across = 0) => setRepeat({ across })}
        />
      </div>
      <p className={styles.small}>{words.repeatHint}</p>
      <div className={styles.pair}>
        <NumberField
          label={words.shrinksAlong}
          value={100 * shrinks.along}
          least={0}
          most={30}
          onCommit={(along) => setShrinks({ along: along / 100 })}
        />
        <NumberField
          label={words.shrinksAcross}
          value={100 * shrinks.across}
          least={0}
          most={30}
          onCommit={(across) => setShrinks({ across: across / 100 })}
        />
      </div>
      <p className={styles.small}>{words.shrinkHint(shownIn)}</p>
      <Flaws shownIn={shownIn} cloth={cloth} />
      <Shape shownIn={shownIn} cloth={cloth} />
    </>
  );
}

/** A flaw to begin with, two inches square, six inches from the end and the selvedge. */
const FLAW = { at: inches(6), size: inches(2) };

function Flaws({ shownIn, cloth }: MoreProps) {
  const setFlaw = (i: number, ring: readonly Point[]) =>
    editCloth(cloth, (now) => ({ ...now, flaws: now.flaws.with(i, ring) }));
  return (
    <>
      <h3 className={styles.part}>{words.flaws}</h3>
      {cloth.flaws.map((ring, i) => {
        const box = boxOfPoints(ring);
        if (!box) return null;
        const [x, y] = [box.minX, box.minY];
        const [long, wide] = [box.maxX - x, box.maxY - y];
        const set = (next: Partial<{ x: number; y: number; long: number; wide: number }>) => {
          const to = { x, y, long, wide, ...next };
          setFlaw(
            i,
            ring.map((point) => ({
              x: to.x + ((point.x - x) * to.long) / long,
              y: to.y + ((point.y - y) * to.wide) / wide,
            })),
          );
        };
        const field = (label: string, value: number, commit: (length: number) => void, min: number) => (
          <LengthField
            label={label}
            value={value}
            shownIn={shownIn}
            min={min}
            onCommit={(length) => length !== undefined && commit(length)}
          />
        );
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: flaws have nothing but their place in the list
          <fieldset key={i} className={styles.fields}>
            <legend>{words.flaw(i)}</legend>
            <div className={styles.pair}>
              {field(words.fromEnd, x, (next) => set({ x: next }), 0)}
              {field(words.fromSelvedge, y, (next) => set({ y: next }), 0)}
              {field(words.long, long, (next) => set({ long: next }), 1)}
              {field(words.wide, wide, (next) => set({ wide: next }), 1)}
            </div>
            <Button
              tone="quiet"
              icon="bin"
              onPress={() => editCloth(cloth, (now) => ({ ...now, flaws: now.flaws.filter((_, k) => k !== i) }))}
            >
              {words.takeAway(midSentence(words.flaw(i)))}
            </Button>
          </fieldset>
        );
      })}
      <div className={styles.row}>
        <Button
          icon="plus"
          onPress={() => editCloth(cloth, (now) => ({ ...now, flaws: [...now.flaws, squareAt(FLAW.at, FLAW.size)] }))}
        >
          {words.addFlaw}
        </Button>
        <Button icon="curve" onPress={() => useCloth.setState({ drawing: { what: 'flaw', corners: [] } })}>
          {words.drawFlaw}
        </Button>
      </div>
    </>
  );
}

function squareAt(at: number, size: number): Point[] {
  const far = at + size;
  return [
    { x: at, y: at },
    { x: far, y: at },
    { x: far, y: far },
    { x: at, y: far },
  ];
}

function Shape({ shownIn, cloth }: MoreProps) {
  const { shape } = cloth;
  const set = (next: readonly Point[]) => editCloth(cloth, (now) => ({ ...now, shape: next }));
  return (
    <>
      <h3 className={styles.part}>{words.shape}</h3>
      <p className={styles.small}>{words.shapeHelp}</p>
      {shape ? (
        <>
          {shape.map((point, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: corners have nothing but their place in the round
            <fieldset key={i} className={styles.fields}>
              <legend>{words.corner(i)}</legend>
              <div className={styles.corner}>
                {(['x', 'y'] as const).map((axis) => (
                  <LengthField
                    key={axis}
                    label={axis === 'x' ? words.along : words.across}
                    value={point[axis]}
                    shownIn={shownIn}
                    onCommit={(length) => length !== undefined && set(shape.with(i, { ...point, [axis]: length }))}
                  />
                ))}
                {shape.length > 3 && (
                  <Button
                    tone="quiet"
                    icon="bin"
                    title={words.takeAway(midSentence(words.corner(i)))}
                    onPress={() => set(shape.filter((_, k) => k !== i))}
                  />
                )}
              </div>
            </fieldset>
          ))}
          <div className={styles.row}>
            <Button icon="plus" onPress={() => set([...shape, between(shape)])}>
              {words.addCorner}
            </Button>
            <Button icon="curve" onPress={() => useCloth.setState({ drawing: { what: 'shape', corners: [] } })}>
              {words.shapeDraw}
            </Button>
            <Button tone="quiet" onPress={() => editCloth(cloth, (now) => without(now, 'shape'))}>
              {words.shapeStraight}
            </Button>
          </div>
        </>
      ) : (
        <div className={styles.row}>
          <Button icon="plus" onPress={newRemnant}>
            {words.addRemnant}
          </Button>
        </div>
      )}
    </>
  );
}

/** Half way between the last corner and the first. */
function between(shape: readonly Point[]): Point {
  const [first, last] = [shape[0], shape.at(-1)];
  return { x: ((first?.x ?? 0) + (last?.x ?? 0)) / 2, y: ((first?.y ?? 0) + (last?.y ?? 0)) / 2 };
}
