import type { Pleat } from '../../../core/garment/fullness';
import type { Garment } from '../../../core/garment/garment';
import type { Piece } from '../../../core/garment/piece';
import type { EdgeRef } from '../../../core/garment/seam';
import { withPiece } from '../../../core/garment/with-piece';
import { netEdgeLength } from '../../../core/seams/edge-length';
import { addGathers, gatherEdge, gatherSums } from '../../../core/shaping/gathers';
import { addPleats, pleatEdge, pleatSums } from '../../../core/shaping/pleats';
import { inches } from '../../../core/units/inch';
import { newId } from '../../state/new-id';
import type { Figure } from '../../trial/figures';
import { Choice } from '../../ui/choice';
import { CountField } from '../../ui/count-field';
import { LengthField } from '../../ui/length-field';
import { Pick } from '../../ui/pick';
import { reshapeWords } from '../../words/reshape';
import { writeLength } from '../../words/written';
import { acrossFrom } from '../across-from';
import type { Change, Tried, Trying } from '../change';
import { EdgeChoice, edgeAt, firstEdgeLike, lengthOf, notFold } from '../edge-choice';

const words = reshapeWords.fullness;
const LAYS = ['to-start', 'to-end', 'inverted', 'box'] as const satisfies readonly Pleat['laid'][];

interface Fullness {
  readonly edge: EdgeRef;
  readonly what: 'gathers' | 'pleats' | 'none';
  /** Whether the width is there already and is drawn up, or is let in first so that the edge is sewn as long as now. */
  readonly from: 'there' | 'added';
  /** What an edge that is wide enough is drawn up to. */
  readonly into: number;
  readonly more: number;
  readonly hinge: 'far' | 'none';
  readonly pleats: number;
  readonly laid: Pleat['laid'];
}

export const fullnessChange: Change = {
  name: 'fullness',
  icon: 'notch',
  begin(garment, chosen) {
    const found = firstEdgeLike(garment, chosen, 'waist');
    if (!found) return { kind: 'first', sentence: reshapeWords.noPieces };
    return trying(beginAt(found.piece, found.edgeId));
  },
};

function beginAt(piece: Piece, edgeId: string): Fullness {
  return {
    edge: { pieceId: piece.id, edgeId },
    what: 'gathers',
    from: 'there',
    into: lengthOf(piece, edgeId) / 2,
    more: inches(4),
    hinge: 'none',
    pleats: 4,
    laid: 'to-start',
  };
}

function trying(wish: Fullness): Trying {
  return {
    name: 'fullness',
    label: () => words.label[wish.what],
    make: (garment) => made(garment, wish),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    picks(garment, chosen) {
      const at = chosen.kind === 'edge' ? edgeAt(garment, chosen) : undefined;
      return at && at.edgeId !== wish.edge.edgeId
        ? trying({ ...beginAt(at.piece, at.edgeId), what: wish.what, from: wish.from })
        : undefined;
    },
  };
}

function made(garment: Garment, wish: Fullness): Tried {
  const at = edgeAt(garment, wish.edge);
  if (!at) return { kind: 'not-tried', sentence: reshapeWords.pieceGone };
  const bare = withoutFullness(at.piece, at.edgeId);
  const shaped = wish.what === 'none' ? bare : filled(bare, wish);
  if ('why' in shaped) return { kind: 'not-tried', sentence: words.refused[shaped.why] };
  return {
    kind: 'tried',
    garment: withPiece(garment, at.pieceId, () => shaped),
    figures: figuresOf(garment, shaped, wish),
  };
}

/** What was there before gives way: an edge is gathered or pleated anew, not twice. */
function withoutFullness(piece: Piece, edgeId: string): Piece {
  const { fullness = [], ...rest } = piece;
  const kept = fullness.filter((one) => one.edgeId !== edgeId);
  if (kept.length === fullness.length) return piece;
  return kept.length > 0 ? { ...rest, fullness: kept } : rest;
}

function filled(piece: Piece, { edge: { edgeId }, what, from, into, more, hinge, pleats, laid }: Fullness) {
  const slashes = { open: edgeId, far: acrossFrom(piece, edgeId), hinge } as const;
  if (what === 'gathers') {
    return from === 'there'
      ? gatherEdge(piece, { id: newId(), edgeId, into })
      : addGathers(piece, { ...slashes, id: newId(), more, places: 3 });
  }
  return from === 'there'
    ? pleatEdge(piece, { edgeId, pleats, by: { kind: 'into', into }, laid, newId })
    : addPleats(piece, { ...slashes, pleats, laid, newId, depth: more / (2 * pleats) });
}

function figuresOf(garment: Garment, piece: Piece, wish: Fullness): Figure[] {
  const { edgeId } = wish.edge;
  const write = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const cut = lengthOf(piece, edgeId);
  const sewn = netEdgeLength(piece, edgeId) ?? cut;
  const sum = { words: words.sum, value: words.intoOf(write(cut), write(sewn)) };
  if (wish.what === 'none') return [sum];
  if (wish.what === 'gathers') {
    const sums = gatherSums({ cut, into: sewn });
    return sums ? [sum, { words: words.ratio, value: words.times(sums.ratio) }] : [sum];
  }
  const sums = pleatSums({ cut, into: sewn, pleats: wish.pleats });
  if (!sums) return [sum];
  return [
    sum,
    { words: words.takes, value: write(sums.takes) },
    { words: words.depth, value: write(sums.depth) },
    { words: words.spacing, value: write(sums.spacing) },
    { words: words.visible, value: write(sums.visible) },
    ...(sums.overlapping ? [{ words: words.overlapping, value: words.layers }] : []),
  ];
}

interface FieldsProps {
  readonly wish: Fullness;
  readonly garment: Garment;
  readonly onChange: (wish: Fullness) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const { shownIn } = garment;
  const change = (next: Partial<Fullness>) => onChange({ ...wish, ...next });
  return (
    <>
      <EdgeChoice
        label={reshapeWords.edge}
        garment={garment}
        value={wish.edge}
        only={notFold}
        onChange={(edge) => {
          const at = edgeAt(garment, edge);
          if (at) onChange({ ...beginAt(at.piece, at.edgeId), what: wish.what, from: wish.from });
        }}
      />
      <Choice
        label={words.what}
        value={wish.what}
        options={(['gathers', 'pleats', 'none'] as const).map((value) => ({ value, words: words.whats[value] }))}
        onChange={(what) => change({ what })}
      />
      {wish.what !== 'none' && (
        <>
          <Choice
            label={words.from}
            value={wish.from}
            options={(['there', 'added'] as const).map((value) => ({ value, words: words.froms[value] }))}
            onChange={(from) => change({ from })}
          />
          {wish.from === 'there' ? (
            <LengthField
              label={words.into}
              value={wish.into}
              shownIn={shownIn}
              min={0}
              onCommit={(into) => into !== undefined && change({ into })}
            />
          ) : (
            <>
              <LengthField
                label={words.more}
                value={wish.more}
                shownIn={shownIn}
                min={0}
                onCommit={(more) => more !== undefined && change({ more })}
              />
              <Choice
                label={words.hinge}
                value={wish.hinge}
                options={(['none', 'far'] as const).map((value) => ({ value, words: words.hinges[value] }))}
                onChange={(hinge) => change({ hinge })}
              />
            </>
          )}
        </>
      )}
      {wish.what === 'pleats' && (
        <>
          <CountField label={words.pleats} value={wish.pleats} onCommit={(pleats) => change({ pleats })} />
          <Pick
            label={words.laid}
            value={wish.laid}
            options={LAYS.map((value) => ({ value, words: words.lays[value] }))}
            onChange={(laid) => change({ laid })}
          />
        </>
      )}
    </>
  );
}
