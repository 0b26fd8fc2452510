import type { Garment } from '../../core/garment/garment';
import type { PinnedChange } from '../../core/garment/mockup';
import { type EdgeRef, isSameEdge } from '../../core/garment/seam';
import type { PinnedOnEdge } from '../../core/mockup/pin-places';
import { seamFrom } from '../../core/mockup/pinned-edge';
import { Button } from '../ui/button';
import { Choice } from '../ui/choice';
import { LengthStepper } from '../ui/length-stepper';
import { Pick } from '../ui/pick';
import { mockupWords as words } from '../words/mockup';
import { trialWords } from '../words/trial';
import { FadeFields } from './fade-fields';
import styles from './mockup.module.css';
import { note, useMockup } from './mockup-store';
import { pinnableEdge, pinnableEdges, STEPS, stepped, withPin } from './new-change';

interface EdgeFormProps {
  readonly shown: Garment;
  readonly draft: Garment;
  readonly noting: PinnedChange;
  readonly what: PinnedOnEdge;
}

/** What was pinned along an edge: which edge, each pin's place and amount, where it fades, and which edge gives it. */
export function EdgeForm({ shown, draft, noting, what }: EdgeFormProps) {
  const held = useMockup((state) => state.pin);
  const edges = pinnableEdges(shown, draft);
  const at = pinnableEdge(shown, what.edge) ?? pinnableEdge(draft, what.edge);
  const { shownIn } = shown;
  const step = STEPS[shownIn];
  const pinNumber = Math.min(held, what.pins.length - 1);
  const pin = what.pins[pinNumber];
  const set = (next: Partial<PinnedOnEdge>, at?: number) => note({ ...noting, what: { ...what, ...next } }, at);
  const counted = (along: number) => (at?.isTurned ? at.length - along : along);
  const setPin = (next: Partial<PinnedOnEdge['pins'][number]>) => {
    if (!pin) return;
    const moved = { ...pin, ...next };
    const pins = what.pins.with(pinNumber, moved).toSorted((a, b) => a.along - b.along);
    set({ pins }, pins.indexOf(moved));
  };
  const addPin = () => {
    if (!at) return;
    const along = stepped(freePlace(what, at.length), step.along, at);
    const made = withPin(noting, along, pin?.by ?? step.by);
    note(made.change, made.pin);
  };
  const pinsInOrder = at?.isTurned ? what.pins.map((_, i) => i).reverse() : what.pins.map((_, i) => i);
  const choose = (
    <Pick
      label={words.edge}
      value={keyOf(what.edge)}
      options={[
        ...(at ? [] : [{ value: keyOf(what.edge), words: words.noEdge }]),
        ...edges.map((edge) => ({ value: keyOf(edge), words: edgeWords(shown, draft, edge) })),
      ]}
      onChange={(key) => {
        const edge = edges.find((one) => keyOf(one) === key);
        const { from: _, to: __, ...bare } = what;
        if (edge) note({ ...noting, what: { ...bare, edge, pins: [] } }, 0);
      }}
    />
  );
  return (
    <>
      {!at && (
        <>
          {choose}
          <p className={styles.help}>{words.chooseEdge}</p>
        </>
      )}
      {at && (
        <>
          {!pin && <p className={styles.help}>{words.pressAlong}</p>}
          {pin && (
            <div className={styles.thumbs}>
              <LengthStepper
                label={words.by}
                value={Math.abs(pin.by)}
                step={step.by}
                shownIn={shownIn}
                min={step.by / 4}
                onCommit={(by) => by !== undefined && setPin({ by: pin.by < 0 ? -by : by })}
              />
              <LengthStepper
                label={
                  at.beyond.start === 'waist' || at.isTurned ? words.place.waist : words.place.other(at.beyond.start)
                }
                value={counted(pin.along)}
                step={step.along}
                max={at.length}
                shownIn={shownIn}
                onCommit={(place) => place !== undefined && setPin({ along: counted(place) })}
              />
              <Choice
                label={words.way}
                value={pin.by < 0 ? 'out' : 'in'}
                options={(['in', 'out'] as const).map((way) => ({ value: way, words: words.ways[way] }))}
                onChange={(way) => setPin({ by: way === 'in' ? Math.abs(pin.by) : -Math.abs(pin.by) })}
              />
            </div>
          )}
          {/* biome-ignore lint/a11y/useSemanticElements: pins are buttons, not fields of a form */}
          <div className={styles.pins} role="group" aria-label={words.pins}>
            {pinsInOrder.map((index, i) => (
              <Button key={pinKey(index)} pressed={index === pinNumber} onPress={() => note(noting, index)}>
                {words.pin(i + 1)}
              </Button>
            ))}
            <Button icon="plus" onPress={addPin}>
              {words.anotherPin}
            </Button>
          </div>
          {pin && (
            <div className={styles.thumbs}>
              {what.pins.length > 1 && (
                <Button icon="minus" onPress={() => set({ pins: what.pins.toSpliced(pinNumber, 1) }, 0)}>
                  {words.dropPin}
                </Button>
              )}
              <FadeFields at={at} what={what} shownIn={shownIn} onChange={(next) => note({ ...noting, what: next })} />
            </div>
          )}
          {choose}
          <ShareChoice shown={shown} draft={draft} what={what} onChange={(share) => set({ share })} />
        </>
      )}
    </>
  );
}

interface ShareChoiceProps {
  readonly shown: Garment;
  readonly draft: Garment;
  readonly what: PinnedOnEdge;
  readonly onChange: (share: number) => void;
}

/** Which edge of the seam gives the cloth; nothing to choose where an edge is sewn to nothing or to its mirror image. */
function ShareChoice({ shown, draft, what, onChange }: ShareChoiceProps) {
  const partner = seamFrom(shown, what.edge)?.other[0];
  if (!partner || isSameEdge(partner, what.edge)) return null;
  const name = (edge: EdgeRef) => edgeWords(shown, draft, edge);
  const known = what.share === 0.5 ? 'half' : what.share === 1 ? 'own' : what.share === 0 ? 'partner' : 'other';
  const options = [
    { value: 'half' as const, words: words.shares.half },
    { value: 'own' as const, words: words.shares.own(name(what.edge)) },
    { value: 'partner' as const, words: words.shares.partner(name(partner)) },
    ...(known === 'other' ? [{ value: 'other' as const, words: words.shares.other(what.share) }] : []),
  ];
  return (
    <Choice
      label={words.share}
      value={known}
      options={options}
      onChange={(value) => onChange({ half: 0.5, own: 1, partner: 0, other: what.share }[value])}
    />
  );
}

/** In the middle of the longest stretch without a pin. */
function freePlace({ pins }: PinnedOnEdge, length: number): number {
  const stops = [0, ...pins.map(({ along }) => along), length];
  const gaps = stops.slice(1).map((stop, i) => ({ from: stops[i] ?? 0, wide: stop - (stops[i] ?? 0) }));
  const widest = gaps.reduce((best, gap) => (gap.wide > best.wide ? gap : best));
  return widest.from + widest.wide / 2;
}

function edgeWords(shown: Garment, draft: Garment, edge: EdgeRef): string {
  const at = pinnableEdge(shown, edge) ?? pinnableEdge(draft, edge);
  return at ? trialWords.edgeOf(at.piece, at.edge) : words.noEdge;
}

function keyOf({ pieceId, edgeId }: EdgeRef): string {
  return `${pieceId} ${edgeId}`;
}

/** Pins have no name of their own but their place in the list. */
function pinKey(index: number): string {
  return `pin ${index}`;
}
