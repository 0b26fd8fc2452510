import type { LetOut } from '../../../core/fit/let-out';
import { takeInSeam } from '../../../core/fit/take-in-seam';
import type { Garment } from '../../../core/garment/garment';
import { outlineOf } from '../../../core/garment/outline';
import type { Piece } from '../../../core/garment/piece';
import { type EdgeRef, seamOfEdge } from '../../../core/garment/seam';
import { withPiece } from '../../../core/garment/with-piece';
import { nearestOnPath, pathAtLength, signedArea } from '../../../core/geometry/path';
import { dot, move, quarterTurn, scaleVector, vectorBetween } from '../../../core/geometry/point';
import { takeIn } from '../../../core/shaping/take-in';
import { inches } from '../../../core/units/inch';
import { Button } from '../../ui/button';
import { Choice } from '../../ui/choice';
import { LengthField } from '../../ui/length-field';
import { NumberField } from '../../ui/number-field';
import { reshapeWords } from '../../words/reshape';
import { trialWords } from '../../words/trial';
import { writeLength } from '../../words/written';
import type { Change, Tried, Trying } from '../change';
import { chosenEdge, EdgeChoice, edgeAt, firstEdge, lengthOf, notFold } from '../edge-choice';
import styles from '../reshape.module.css';
import { rounded } from '../rounded';

const words = reshapeWords.takeIn;

interface TakeIn {
  readonly edge: EdgeRef;
  readonly way: 'in' | 'out';
  /** At least one; `by` is never less than 0. */
  readonly pins: readonly { readonly along: number; readonly by: number }[];
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** The whole of it from this edge, or shared with the edge it is sewn to; `share` parts in a hundred from this one. */
  readonly of: 'edge' | 'seam';
  readonly share: number;
}

/** A quarter of an inch in the middle of the edge, to begin with. */
const AT_FIRST = inches(1 / 4);

export const takeInChange: Change = {
  name: 'take-in',
  icon: 'pin',
  begin(garment, chosen) {
    const edge = firstEdge(garment, chosen);
    if (!edge) return { kind: 'first', sentence: reshapeWords.noPieces };
    const begun = beginAt(edge, lengthOf(edge.piece, edge.edgeId));
    return trying({ ...begun, of: seamOfEdge(garment.seams, edge) ? 'seam' : 'edge' });
  },
};

/** A seam let out at one place, as another room has worked it out. */
export function lettingOut({ edge, along, by, of }: LetOut): Trying {
  return trying({ edge, way: 'out', pins: [{ along, by }], from: undefined, to: undefined, of, share: 50 });
}

function beginAt(edge: EdgeRef, length: number): TakeIn {
  const pins = [{ along: rounded(length / 2), by: AT_FIRST }];
  return {
    edge: { pieceId: edge.pieceId, edgeId: edge.edgeId },
    way: 'in',
    pins,
    from: undefined,
    to: undefined,
    of: 'edge',
    share: 50,
  };
}

function trying(wish: TakeIn): Trying {
  return {
    name: 'take-in',
    label(garment) {
      const at = edgeAt(garment, wish.edge);
      return words.label(wish.way, at ? trialWords.edgeOf(at.piece, at.edge) : '');
    },
    make: (garment) => made(garment, wish),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    grips(garment) {
      const at = edgeAt(garment, wish.edge);
      const path = at && outlineOf(at.piece).edges[at.piece.edges.indexOf(at.edge)];
      if (!at || !path) return [];
      const sign = inwards(at.piece) * (wish.way === 'in' ? 1 : -1);
      return wish.pins.map((pin, index) => {
        const { point, tangent } = pathAtLength(path, pin.along);
        return {
          at: move(point, scaleVector(quarterTurn(tangent), sign), pin.by),
          moved(to) {
            const near = nearestOnPath(path, to);
            const square = quarterTurn(pathAtLength(path, near.along).tangent);
            const by = dot(vectorBetween(near.point, to), square) * inwards(at.piece);
            const moved = { along: rounded(near.along), by: Math.abs(rounded(by)) };
            return trying({ ...wish, way: by < 0 ? 'out' : 'in', pins: wish.pins.with(index, moved) });
          },
        };
      });
    },
    picks(garment, chosen) {
      const edge = chosenEdge(garment, chosen);
      return edge && edge.edgeId !== wish.edge.edgeId
        ? trying(beginAt(edge, lengthOf(edge.piece, edge.edgeId)))
        : undefined;
    },
  };
}

function made(garment: Garment, wish: TakeIn): Tried {
  const at = edgeAt(garment, wish.edge);
  if (!at) return { kind: 'not-tried', sentence: words.refused['no-edge'] };
  const sign = wish.way === 'in' ? 1 : -1;
  const still = (along: number | undefined) => (along === undefined ? [] : [{ along, by: 0 }]);
  const pins = [...still(wish.from), ...wish.pins.map((pin) => ({ ...pin, by: sign * pin.by })), ...still(wish.to)];
  const seam = wish.of === 'seam' ? seamOfEdge(garment.seams, wish.edge) : undefined;
  if (seam) {
    const taken = takeInSeam(garment, seam, { pins, shareOfOne: wish.share / 100 });
    if (!('why' in taken)) return { kind: 'tried', garment: taken };
    return { kind: 'not-tried', sentence: taken.why === 'no-seam' ? words.noSeam : words.refused[taken.why] };
  }
  const taken = takeIn(at.piece, at.edgeId, pins);
  if ('kind' in taken) return { kind: 'not-tried', sentence: words.refused[taken.why] };
  return { kind: 'tried', garment: withPiece(garment, at.pieceId, () => taken) };
}

/** 1 where a quarter turn clockwise from the run of the outline leads into the piece, else -1. */
function inwards(piece: Piece): number {
  return signedArea(outlineOf(piece).whole) > 0 ? 1 : -1;
}

interface FieldsProps {
  readonly wish: TakeIn;
  readonly garment: Garment;
  readonly onChange: (wish: TakeIn) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const { shownIn } = garment;
  const at = edgeAt(garment, wish.edge);
  const change = (next: Partial<TakeIn>) => onChange({ ...wish, ...next });
  const setPin = (index: number, pin: Partial<TakeIn['pins'][number]>) =>
    change({ pins: wish.pins.map((now, i) => (i === index ? { ...now, ...pin } : now)) });
  const length = at ? lengthOf(at.piece, at.edgeId) : 0;
  return (
    <>
      <EdgeChoice
        label={reshapeWords.edge}
        garment={garment}
        value={wish.edge}
        only={notFold}
        onChange={(edge) => {
          const to = edgeAt(garment, edge);
          if (to) onChange(beginAt(edge, lengthOf(to.piece, to.edgeId)));
        }}
      />
      {at && (
        <p className={styles.help}>
          {words.edgeIs(
            writeLength(length, { shownIn }),
            reshapeWords.cornerNumber(at.piece.edges.indexOf(at.edge) + 1),
          )}
        </p>
      )}
      {seamOfEdge(garment.seams, wish.edge) && (
        <Choice
          label={words.of}
          value={wish.of}
          options={(['edge', 'seam'] as const).map((value) => ({ value, words: words.ofs[value] }))}
          onChange={(of) => change({ of })}
        />
      )}
      {wish.of === 'seam' && seamOfEdge(garment.seams, wish.edge) && (
        <NumberField
          label={words.share}
          value={wish.share}
          least={0}
          most={100}
          onCommit={(share) => change({ share })}
        />
      )}
      <Choice
        label={words.way}
        value={wish.way}
        options={(['in', 'out'] as const).map((way) => ({ value: way, words: words.ways[way] }))}
        onChange={(way) => change({ way })}
      />
      {wish.pins.map((pin, index) => (
        <div key={pinKey(index)} className={styles.pair}>
          <LengthField
            label={words.pin(index + 1)}
            value={pin.along}
            shownIn={shownIn}
            min={0}
            onCommit={(along) => along !== undefined && setPin(index, { along: Math.min(along, length) })}
          />
          <LengthField
            label={words.by}
            value={pin.by}
            shownIn={shownIn}
            min={0}
            onCommit={(by) => by !== undefined && setPin(index, { by })}
          />
        </div>
      ))}
      <div className={styles.row}>
        <Button
          icon="plus"
          onPress={() => change({ pins: [...wish.pins, { along: rounded((3 * length) / 4), by: AT_FIRST }] })}
        >
          {words.add}
        </Button>
        {wish.pins.length > 1 && (
          <Button icon="minus" onPress={() => change({ pins: wish.pins.slice(0, -1) })}>
            {words.drop}
          </Button>
        )}
      </div>
      <p className={styles.help}>{words.fadeHint}</p>
      <div className={styles.pair}>
        <LengthField
          label={words.from}
          value={wish.from}
          shownIn={shownIn}
          allowEmpty
          min={0}
          onCommit={(from) => change({ from })}
        />
        <LengthField
          label={words.to}
          value={wish.to}
          shownIn={shownIn}
          allowEmpty
          min={0}
          onCommit={(to) => change({ to })}
        />
      </div>
    </>
  );
}

/** Pins have no name of their own but their place in the list. */
function pinKey(index: number): string {
  return `pin ${index}`;
}
