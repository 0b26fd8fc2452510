import { girthsOf, levelDepth } from '../../../core/fit/round-body';
import type { Garment } from '../../../core/garment/garment';
import { currentSet } from '../../../core/garment/measure-value';
import type { EdgeRef } from '../../../core/garment/seam';
import { withPiece } from '../../../core/garment/with-piece';
import { netEdgeLength } from '../../../core/seams/edge-length';
import { drawWaist, type WaistDrawn, type WaistWay } from '../../../core/shaping/waist-ways';
import { inches } from '../../../core/units/inch';
import type { Figure } from '../../trial/figures';
import { Choice } from '../../ui/choice';
import { LengthField } from '../../ui/length-field';
import { reshapeWords } from '../../words/reshape';
import { trialWords } from '../../words/trial';
import { writeLength, writeNumber } from '../../words/written';
import type { Change, Trying } from '../change';
import { EdgeChoice, edgeAt, firstEdge } from '../edge-choice';
import styles from '../reshape.module.css';

const words = reshapeWords.waist;
const WAYS = ['cone', 'side-seam', 'typed', 'straight'] as const;

interface Waist {
  readonly edge: EdgeRef;
  readonly way: (typeof WAYS)[number];
  /** As sewn, on this piece; for a waist by its rise and dip it may be left as it comes. */
  readonly length: number | undefined;
  readonly hipDepth: number;
  readonly rise: number;
  readonly dip: number;
}

export const waistChange: Change = {
  name: 'waist',
  icon: 'curve',
  begin(garment, chosen) {
    const found = firstEdge(garment, chosen, (_, edge) => edge.role === 'waist');
    if (!found) return { kind: 'first', sentence: words.noWaist };
    return trying(beginAt(garment, { pieceId: found.pieceId, edgeId: found.edgeId }));
  },
};

/** To begin with the cone, as long as this piece's share of the waist and its ease. */
function beginAt(garment: Garment, edge: EdgeRef): Waist {
  const at = edgeAt(garment, edge);
  const ring = garment.rings.find(({ members }) => members.some(({ pieceId }) => pieceId === edge.pieceId));
  const girth = ring && girthsOf(garment, ring).find(({ level }) => level.girth === 'waist');
  const hip = ring?.levels.find(({ girth }) => girth === 'hip');
  const hipDepth = hip && levelDepth(hip, currentSet(garment));
  const sewn = at ? (netEdgeLength(at.piece, at.edgeId) ?? 0) : 0;
  const share = girth?.kind === 'measured' && girth.total > 0 ? girth.wanted / girth.total : 1;
  return {
    edge,
    way: 'cone',
    length: sewn * share,
    hipDepth: typeof hipDepth === 'number' ? hipDepth : inches(7),
    rise: inches(1 / 2),
    dip: 0,
  };
}

function wayOf({ way, length, hipDepth, rise, dip }: Waist, sewn: number): WaistWay {
  switch (way) {
    case 'straight':
      return { kind: 'straight' };
    case 'cone':
      return { kind: 'cone', length: length ?? sewn, hipDepth, dip };
    case 'side-seam':
      return { kind: 'side-seam', length: length ?? sewn, dip };
    case 'typed':
      return { kind: 'typed', rise, dip, ...(length === undefined ? {} : { length: { length, hipDepth } }) };
  }
}

function trying(wish: Waist): Trying {
  return {
    name: 'waist',
    label: () => words.label[wish.way],
    make(garment) {
      const at = edgeAt(garment, wish.edge);
      if (!at) return { kind: 'not-tried', sentence: reshapeWords.pieceGone };
      const way = wayOf(wish, netEdgeLength(at.piece, at.edgeId) ?? 0);
      const drawn = drawWaist(at.piece, { waistEdgeId: at.edgeId }, way);
      if (drawn.kind === 'no-waist-drawn') {
        const reach = drawn.reach?.map((mm) => writeLength(mm, { shownIn: garment.shownIn })) as [string, string];
        return { kind: 'not-tried', sentence: reach ? words.outOfReach(...reach) : words.refused[drawn.why] };
      }
      return {
        kind: 'tried',
        garment: withPiece(garment, at.pieceId, () => drawn.piece),
        figures: figuresOf(garment, drawn),
      };
    },
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    picks(garment, chosen) {
      const at = chosen.kind === 'edge' ? edgeAt(garment, chosen) : undefined;
      return at?.edge.role === 'waist'
        ? trying({ ...beginAt(garment, { pieceId: at.pieceId, edgeId: at.edgeId }), way: wish.way })
        : undefined;
    },
  };
}

function figuresOf(
  { shownIn }: Garment,
  { rise, dip, length, straightLength, lengthBefore, angles }: WaistDrawn,
): Figure[] {
  const write = (mm: number) => writeLength(mm, { shownIn });
  const degrees = (angle: number) => `${writeNumber((angle * 180) / Math.PI, 1)}°`;
  return [
    { words: words.sewn, value: trialWords.fromTo(write(lengthBefore), write(length)) },
    { words: words.straightWould, value: write(straightLength) },
    { words: words.rise, value: write(rise) },
    ...(Math.abs(dip) > 0.05 ? [{ words: words.dip, value: write(dip) }] : []),
    { words: words.angles, value: words.both(degrees(angles.start), degrees(angles.end)) },
  ];
}

interface FieldsProps {
  readonly wish: Waist;
  readonly garment: Garment;
  readonly onChange: (wish: Waist) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const { shownIn } = garment;
  const change = (next: Partial<Waist>) => onChange({ ...wish, ...next });
  return (
    <>
      <EdgeChoice
        label={reshapeWords.edge}
        garment={garment}
        value={wish.edge}
        only={(_, edge) => edge.role === 'waist'}
        onChange={(edge) => onChange({ ...beginAt(garment, edge), way: wish.way })}
      />
      <Choice
        label={words.way}
        value={wish.way}
        options={WAYS.map((value) => ({ value, words: words.ways[value] }))}
        onChange={(way) =>
          change(way === 'typed' ? { way, length: undefined } : { ...beginAt(garment, wish.edge), way })
        }
      />
      {wish.way !== 'straight' && (
        <div className={styles.pair}>
          <LengthField
            label={words.length}
            value={wish.length}
            shownIn={shownIn}
            allowEmpty={wish.way === 'typed'}
            min={0}
            onCommit={(length) => change({ length })}
          />
          {wish.way === 'typed' && (
            <LengthField
              label={words.rise}
              value={wish.rise}
              shownIn={shownIn}
              onCommit={(rise) => rise !== undefined && change({ rise })}
            />
          )}
          <LengthField
            label={words.dip}
            value={wish.dip}
            shownIn={shownIn}
            onCommit={(dip) => dip !== undefined && change({ dip })}
          />
        </div>
      )}
    </>
  );
}
