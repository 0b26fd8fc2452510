import type { Garment } from '../../../core/garment/garment';
import type { Piece } from '../../../core/garment/piece';
import { addSeam } from '../../../core/garment/seam-edits';
import { pieceOf, withPiece } from '../../../core/garment/with-piece';
import { nearestOnPath, pathAtLength } from '../../../core/geometry/path';
import { line } from '../../../core/geometry/segment';
import { closeDart } from '../../../core/shaping/dart-move';
import { dartToGathers, dartToSeamEase } from '../../../core/shaping/dart-to-ease';
import { dartToGore } from '../../../core/shaping/dart-to-gore';
import { newId } from '../../state/new-id';
import { Choice } from '../../ui/choice';
import { LengthField } from '../../ui/length-field';
import { reshapeWords } from '../../words/reshape';
import { acrossFrom } from '../across-from';
import type { Change, Tried, Trying } from '../change';
import { DartChoice, dartAt, firstDart } from '../dart-choice';
import { EdgeChoice, edgePathOf, lengthOf } from '../edge-choice';
import { rounded } from '../rounded';

const words = reshapeWords.dartAway;
const INTOS = ['flare', 'gore', 'gathers', 'ease'] as const;

interface DartAway {
  readonly pieceId: string;
  readonly dartId: string;
  readonly into: (typeof INTOS)[number];
  /** Where flare opens, or the gore seam ends. */
  readonly edgeId: string;
  readonly along: number;
}

export const dartAwayChange: Change = {
  name: 'dart-away',
  icon: 'close',
  begin(garment, chosen) {
    const found = firstDart(garment, chosen);
    if (!found) return { kind: 'first', sentence: reshapeWords.noDart };
    return trying(beginAt(found.piece, found.dart.id, 'flare'));
  },
};

/** The place across from the dart that lies straight beyond its point. */
function beginAt(piece: Piece, dartId: string, into: DartAway['into']): DartAway {
  const dart = piece.darts.find(({ id }) => id === dartId);
  const edgeId = acrossFrom(piece, dart?.edgeId ?? '');
  return { pieceId: piece.id, dartId, into, edgeId, along: dart ? beyond(piece, edgeId, dart.point) : 0 };
}

function beyond(piece: Piece, edgeId: string, point: { readonly x: number; readonly y: number }): number {
  const path = edgePathOf(piece, edgeId);
  return path ? rounded(nearestOnPath(path, point).along) : 0;
}

function trying(wish: DartAway): Trying {
  return {
    name: 'dart-away',
    label: () => words.label[wish.into],
    make: (garment) => made(garment, wish),
    fields: (garment, set) => <Fields wish={wish} garment={garment} onChange={(next) => set(trying(next))} />,
    lines(garment) {
      const found = dartAt(garment, wish);
      const path = found && edgePathOf(found.piece, wish.edgeId);
      if (!found || !path || wish.into === 'gathers' || wish.into === 'ease') return [];
      return [{ path: [line(found.dart.point, pathAtLength(path, wish.along).point)], look: 'cut' }];
    },
    grips(garment) {
      const piece = pieceOf(garment, wish.pieceId);
      const path = piece && edgePathOf(piece, wish.edgeId);
      if (!path || wish.into === 'gathers' || wish.into === 'ease') return [];
      return [
        {
          at: pathAtLength(path, wish.along).point,
          moved: (to) => trying({ ...wish, along: rounded(nearestOnPath(path, to).along) }),
        },
      ];
    },
  };
}

function made(garment: Garment, wish: DartAway): Tried {
  const found = dartAt(garment, wish);
  if (!found) return { kind: 'not-tried', sentence: words.refused['no-dart'] };
  const { piece, dart } = found;
  const to = { edgeId: wish.edgeId, along: wish.along };
  const changed = (next: Piece): Tried => ({
    kind: 'tried',
    garment: withPiece(garment, piece.id, () => next),
  });
  switch (wish.into) {
    case 'ease':
      return { kind: 'tried', garment: dartToSeamEase(garment, piece.id, dart.id) };
    case 'gathers': {
      const length = lengthOf(piece, dart.edgeId);
      const reach = Math.max(2 * dart.width, 50);
      const [from, end] = [Math.max(0, dart.along - reach), Math.min(length, dart.along + reach)];
      const eased = dartToGathers(piece, dart.id, { id: newId(), from, to: end });
      return 'why' in eased ? { kind: 'not-tried', sentence: words.refused[eased.why] } : changed(eased);
    }
    case 'flare': {
      const closed = closeDart(piece, dart.id, to);
      return 'why' in closed ? { kind: 'not-tried', sentence: words.refused[closed.why] } : changed(closed);
    }
    case 'gore': {
      const names = words.halves(piece.name);
      const gore = dartToGore(piece, dart.id, { to, through: [], names, seamName: words.seamName, newId });
      if (gore.kind === 'no-gore-seam') return { kind: 'not-tried', sentence: words.refused[gore.why] };
      return { kind: 'tried', garment: withGore(garment, piece, gore) };
    }
  }
}

/** Both pieces on the table, side by side in the rings the whole one was in, and sewn to one another. */
function withGore(garment: Garment, whole: Piece, gore: Extract<ReturnType<typeof dartToGore>, { kind: 'gore-seam' }>) {
  const [first, second] = gore.pieces;
  const cut = withPiece(garment, whole.id, () => first);
  const index = cut.pieces.findIndex(({ id }) => id === first.id);
  const rings = cut.rings.map((ring) => {
    const at = ring.members.findIndex(({ pieceId }) => pieceId === first.id);
    const member = ring.members[at];
    return member ? { ...ring, members: ring.members.toSpliced(at + 1, 0, { ...member, pieceId: second.id }) } : ring;
  });
  const both = { ...cut, pieces: cut.pieces.toSpliced(index + 1, 0, second), rings };
  const [one, other] = gore.edges;
  return addSeam(both, { id: newId(), name: words.seamName, one: [one], other: [other], ease: 0, way: 'opposite' });
}

interface FieldsProps {
  readonly wish: DartAway;
  readonly garment: Garment;
  readonly onChange: (wish: DartAway) => void;
}

function Fields({ wish, garment, onChange }: FieldsProps) {
  const piece = pieceOf(garment, wish.pieceId);
  const hasPlace = wish.into === 'flare' || wish.into === 'gore';
  return (
    <>
      <DartChoice garment={garment} value={wish} onChange={(of, dart) => onChange(beginAt(of, dart.id, wish.into))} />
      <Choice
        label={words.into}
        value={wish.into}
        options={INTOS.map((value) => ({ value, words: words.intos[value] }))}
        onChange={(into) => onChange({ ...wish, into })}
      />
      {hasPlace && (
        <>
          <EdgeChoice
            label={words.to}
            garment={garment}
            value={{ pieceId: wish.pieceId, edgeId: wish.edgeId }}
            only={(of, edge) => of.id === wish.pieceId && edge.role !== 'fold'}
            onChange={({ edgeId }) => {
              const dart = piece?.darts.find(({ id }) => id === wish.dartId);
              if (piece && dart) onChange({ ...wish, edgeId, along: beyond(piece, edgeId, dart.point) });
            }}
          />
          <LengthField
            label={reshapeWords.moveDart.along}
            value={wish.along}
            shownIn={garment.shownIn}
            min={0}
            onCommit={(along) => along !== undefined && onChange({ ...wish, along })}
          />
        </>
      )}
    </>
  );
}
