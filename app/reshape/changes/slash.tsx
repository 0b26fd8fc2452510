import type { Garment } from '../../../core/garment/garment';
import type { Piece } from '../../../core/garment/piece';
import { pieceOf, withPiece } from '../../../core/garment/with-piece';
import { pathAtLength } from '../../../core/geometry/path';
import { line } from '../../../core/geometry/segment';
import { slash } from '../../../core/shaping/slashes';
import { inches } from '../../../core/units/inch';
import { Choice } from '../../ui/choice';
import { CountField } from '../../ui/count-field';
import { LengthField } from '../../ui/length-field';
import { NumberField } from '../../ui/number-field';
import { reshapeWords } from '../../words/reshape';
import { acrossFrom } from '../across-from';
import type { Change, TrialLine, Trying } from '../change';
import { EdgeChoice, edgePathOf, firstEdgeLike, lengthOf } from '../edge-choice';

const words = reshapeWords.slash;

interface Slash {
  readonly pieceId: string;
  /** The edge that opens, and the edge where the slashes end. */
  readonly open: string;
  readonly far: string;
  readonly hinge: 'far' | 'none';
  readonly count: number;
  readonly way: 'spread' | 'overlap';
  readonly by:
    | { readonly kind: 'length'; readonly total: number }
    | { readonly kind: 'angle'; readonly degrees: number };
}

export const slashChange: Change = {
  name: 'slash',
  icon: 'fold',
  begin(garment, chosen) {
    const found = firstEdgeLike(garment, chosen, 'hem');
    if (!found) return { kind: 'first', sentence: reshapeWords.noPieces };
    return trying(beginAt(found.piece, found.edgeId));
  },
};

function beginAt(piece: Piece, open: string): Slash {
  const by = { kind: 'length', total: inches(2) } as const;
  return { pieceId: piece.id, open, far: acrossFrom(piece, open), hinge: 'far', count: 3, way: 'spread', by };
}

function trying(wish: Slash): Trying {
  const sign = wish.way === 'spread' ? 1 : -1;
  return {
    name: 'slash',
    label: () => words.label[wish.way],
    make(garment) {
      const piece = pieceOf(garment, wish.pieceId);
      if (!piece) return { kind: 'not-tried', sentence: reshapeWords.pieceGone };
      const by =
        wish.by.kind === 'angle'
          ? ({ kind: 'angle', angle: (sign * wish.by.degrees * Math.PI) / 180 } as const)
          : ({ kind: 'length', total: sign * wish.by.total } as const);
      const slashed = slash(piece, { open: wish.open, far: wish.far, hinge: wish.hinge, places: wish.count, by });
      if ('why' in slashed) return { kind: 'not-tried', sentence: words.refused[slashed.why] };
      return { kind: 'tried', garment: withPiece(garment, piece.id, () => slashed) };
    },
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    lines: (garment) => slashLines(garment, wish),
    picks(garment, chosen) {
      const piece = chosen.kind === 'edge' ? pieceOf(garment, chosen.pieceId) : undefined;
      return piece && chosen.kind === 'edge' && chosen.edgeId !== wish.open
        ? trying({ ...beginAt(piece, chosen.edgeId), count: wish.count, way: wish.way, by: wish.by })
        : undefined;
    },
  };
}

/** Evenly shared along the opened edge, as the change itself shares them. */
function slashLines(garment: Garment, wish: Slash): TrialLine[] {
  const piece = pieceOf(garment, wish.pieceId);
  const [open, far] = [piece && edgePathOf(piece, wish.open), piece && edgePathOf(piece, wish.far)];
  if (!piece || !open || !far) return [];
  const [length, farLength] = [lengthOf(piece, wish.open), lengthOf(piece, wish.far)];
  return Array.from({ length: wish.count }, (_, i) => {
    const share = (i + 1) / (wish.count + 1);
    const [from, to] = [pathAtLength(open, length * share).point, pathAtLength(far, farLength * (1 - share)).point];
    return { path: [line(from, to)], look: 'cut' as const };
  });
}

interface FieldsProps {
  readonly wish: Slash;
  readonly garment: Garment;
  readonly onChange: (wish: Slash) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const change = (next: Partial<Slash>) => onChange({ ...wish, ...next });
  const { by } = wish;
  return (
    <>
      <EdgeChoice
        label={words.open}
        garment={garment}
        value={{ pieceId: wish.pieceId, edgeId: wish.open }}
        onChange={({ pieceId, edgeId }) => {
          const piece = pieceOf(garment, pieceId);
          if (piece) change({ ...beginAt(piece, edgeId), count: wish.count, way: wish.way, by });
        }}
      />
      <EdgeChoice
        label={words.far}
        garment={garment}
        value={{ pieceId: wish.pieceId, edgeId: wish.far }}
        only={(piece, edge) => piece.id === wish.pieceId && edge.id !== wish.open}
        onChange={({ edgeId }) => change({ far: edgeId })}
      />
      <CountField label={words.count} value={wish.count} onCommit={(count) => change({ count })} />
      <Choice
        label={words.hinge}
        value={wish.hinge}
        options={(['far', 'none'] as const).map((value) => ({ value, words: words.hinges[value] }))}
        onChange={(hinge) =>
          change(
            hinge === 'none' && by.kind === 'angle' ? { hinge, by: { kind: 'length', total: inches(2) } } : { hinge },
          )
        }
      />
      <Choice
        label={words.way}
        value={wish.way}
        options={(['spread', 'overlap'] as const).map((value) => ({ value, words: words.ways[value] }))}
        onChange={(way) => change({ way })}
      />
      {wish.hinge === 'far' && (
        <Choice
          label={words.by}
          value={by.kind}
          options={(['length', 'angle'] as const).map((value) => ({ value, words: words.bys[value] }))}
          onChange={(kind) =>
            change({ by: kind === 'angle' ? { kind, degrees: 5 } : { kind: 'length', total: inches(2) } })
          }
        />
      )}
      {by.kind === 'length' ? (
        <LengthField
          label={words.total[wish.way]}
          value={by.total}
          shownIn={garment.shownIn}
          min={0}
          onCommit={(total) => total !== undefined && change({ by: { kind: 'length', total } })}
        />
      ) : (
        <NumberField
          label={words.degrees}
          value={by.degrees}
          least={0}
          most={90}
          onCommit={(degrees) => change({ by: { kind: 'angle', degrees } })}
        />
      )}
    </>
  );
}
