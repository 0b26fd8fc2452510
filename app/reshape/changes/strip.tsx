import { ringPieces } from '../../../core/fit/round-body';
import type { Garment } from '../../../core/garment/garment';
import type { Piece } from '../../../core/garment/piece';
import type { EdgeRef } from '../../../core/garment/seam';
import { withNewPieces } from '../../../core/garment/with-new-pieces';
import { waistFacing } from '../../../core/seams/band-from-pattern';
import { netEdgeLength } from '../../../core/seams/edge-length';
import { joinedPanels } from '../../../core/seams/joined-panels';
import { bindingSizes, placketSizes, stripPiece } from '../../../core/seams/strips';
import { inches } from '../../../core/units/inch';
import { newId } from '../../state/new-id';
import type { Figure } from '../../trial/figures';
import { Choice } from '../../ui/choice';
import { LengthField } from '../../ui/length-field';
import { reshapeWords } from '../../words/reshape';
import { writeLength } from '../../words/written';
import type { Change, Tried, Trying } from '../change';
import { EdgeChoice, edgeAt, firstEdge, notFold } from '../edge-choice';
import styles from '../reshape.module.css';

const words = reshapeWords.strip;
const KINDS = ['placket', 'binding', 'waist-facing'] as const;
const HOWS = ['folded-over', 'facing'] as const;

interface Strip {
  readonly kind: (typeof KINDS)[number];
  readonly edge: EdgeRef;
  /** How often the edge comes in the whole garment. */
  readonly times: number;
  /** What a slit is long, where no edge of the piece is the opening. */
  readonly slit: number | undefined;
  readonly how: (typeof HOWS)[number];
  readonly grain: 'straight' | 'bias';
  readonly finished: number;
  readonly turnings: number;
  readonly longest: number;
  readonly depth: number;
}

export const stripChange: Change = {
  name: 'strip',
  icon: 'ruler',
  begin(garment, chosen) {
    const edge = firstEdge(garment, chosen);
    if (!edge) return { kind: 'first', sentence: reshapeWords.noPieces };
    const opening = edge.edge.role === 'opening';
    return trying({
      kind: opening ? 'placket' : 'binding',
      edge: { pieceId: edge.pieceId, edgeId: edge.edgeId },
      times: edge.piece.cut.how === 'fold' ? 2 * edge.piece.cut.count : edge.piece.cut.count,
      slit: undefined,
      how: 'folded-over',
      grain: 'bias',
      finished: inches(1 / 2),
      turnings: inches(1 / 4),
      longest: inches(36),
      depth: inches(3),
    });
  },
};

function trying(wish: Strip): Trying {
  return {
    name: 'strip',
    label: () => words.label[wish.kind],
    make: (garment) => made(garment, wish),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    picks: (garment, chosen) => {
      if (chosen.kind !== 'edge' || !edgeAt(garment, chosen)) return undefined;
      return trying({ ...wish, edge: { pieceId: chosen.pieceId, edgeId: chosen.edgeId }, slit: undefined });
    },
  };
}

function made(garment: Garment, wish: Strip): Tried {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const done = (pieces: readonly Piece[], figures: readonly Figure[]): Tried => ({
    kind: 'tried',
    garment: withNewPieces(garment, pieces),
    figures,
  });
  if (wish.kind === 'waist-facing') {
    const ring = garment.rings[0];
    const joined = ring && joinedPanels(garment, ringPieces(garment, ring), { over: wish.depth });
    if (joined?.kind !== 'joined-panels') return { kind: 'not-tried', sentence: words.noRing };
    const facing = waistFacing(joined, { depth: wish.depth, newId, name: words.name[wish.kind] });
    if ('kind' in facing) return { kind: 'not-tried', sentence: words.tooDeep };
    return done(facing, [{ words: words.waistInAll, value: length(joined.length * joined.repeats) }]);
  }
  const at = edgeAt(garment, wish.edge);
  const edge = at && netEdgeLength(at.piece, at.edgeId);
  if (wish.kind === 'placket') {
    const sizes = placketSizes({ slit: wish.slit ?? edge ?? 0 });
    if (!sizes) return { kind: 'not-tried', sentence: words.noLength };
    const piece = stripPiece(sizes, { newId, name: words.name.placket, grain: 'straight' });
    return done([piece], [{ words: words.cutSize, value: words.by(length(sizes.length), length(sizes.width)) }]);
  }
  const sizes = bindingSizes({
    edges: (wish.slit ?? edge ?? 0) * wish.times,
    finished: wish.finished,
    as: wish.how === 'facing' ? { kind: 'facing', allowance: wish.turnings } : { kind: 'folded-over' },
    longest: wish.longest,
    join: 2 * wish.turnings,
  });
  if (!sizes) return { kind: 'not-tried', sentence: words.noLength };
  const each = { ...sizes, length: Math.min(sizes.length, wish.longest) };
  const piece = stripPiece(each, { newId, name: words.name.binding, grain: wish.grain, count: sizes.strips });
  return done(
    [piece],
    [
      { words: words.cutSize, value: words.by(length(sizes.length), length(sizes.width)) },
      { words: words.strips, value: words.stripsOf(sizes.strips, length(each.length)) },
      ...(wish.grain === 'bias' ? [{ words: words.square, value: length(sizes.square) }] : []),
    ],
  );
}

interface FieldsProps {
  readonly wish: Strip;
  readonly garment: Garment;
  readonly onChange: (wish: Strip) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const { shownIn } = garment;
  const change = (next: Partial<Strip>) => onChange({ ...wish, ...next });
  const length = (label: string, key: 'finished' | 'turnings' | 'longest' | 'depth') => (
    <LengthField
      label={label}
      value={wish[key]}
      shownIn={shownIn}
      min={0}
      onCommit={(mm) => mm !== undefined && change({ [key]: mm })}
    />
  );
  return (
    <>
      <Choice
        label={words.kind}
        value={wish.kind}
        options={KINDS.map((value) => ({ value, words: words.kinds[value] }))}
        onChange={(kind) => change({ kind })}
      />
      {wish.kind === 'waist-facing' ? (
        length(words.depth, 'depth')
      ) : (
        <>
          <EdgeChoice
            label={words.edge[wish.kind]}
            garment={garment}
            value={wish.edge}
            only={notFold}
            onChange={(edge) => change({ edge, slit: undefined })}
          />
          <LengthField
            label={words.slit[wish.kind]}
            value={wish.slit}
            shownIn={shownIn}
            allowEmpty
            min={0}
            hint={words.slitHint}
            onCommit={(slit) => change({ slit })}
          />
        </>
      )}
      {wish.kind === 'binding' && (
        <>
          <Choice
            label={words.how}
            value={wish.how}
            options={HOWS.map((value) => ({ value, words: words.hows[value] }))}
            onChange={(how) => change({ how })}
          />
          <Choice
            label={words.grain}
            value={wish.grain}
            options={(['bias', 'straight'] as const).map((value) => ({ value, words: words.grains[value] }))}
            onChange={(grain) => change({ grain })}
          />
          <div className={styles.pair}>
            {length(words.finished, 'finished')}
            {length(words.turnings, 'turnings')}
            {length(words.longest, 'longest')}
          </div>
        </>
      )}
    </>
  );
}
