import type { Garment } from '../../../core/garment/garment';
import { outlineOf } from '../../../core/garment/outline';
import type { Dart, Piece } from '../../../core/garment/piece';
import type { EdgeRef } from '../../../core/garment/seam';
import { pieceOf, withPiece } from '../../../core/garment/with-piece';
import { nearestOnPath, pathAtLength } from '../../../core/geometry/path';
import { distance } from '../../../core/geometry/point';
import { line } from '../../../core/geometry/segment';
import { moveDart } from '../../../core/shaping/dart-move';
import { LengthField } from '../../ui/length-field';
import { reshapeWords } from '../../words/reshape';
import { trialWords } from '../../words/trial';
import { writeLength } from '../../words/written';
import type { Change, Trying } from '../change';
import { DartChoice, dartAt, firstDart } from '../dart-choice';
import { EdgeChoice, edgePathOf, lengthOf } from '../edge-choice';
import { rounded } from '../rounded';

const words = reshapeWords.moveDart;

interface MoveDart {
  readonly pieceId: string;
  readonly dartId: string;
  readonly edgeId: string;
  readonly along: number;
}

export const moveDartChange: Change = {
  name: 'move-dart',
  icon: 'turn',
  begin(garment, chosen) {
    const found = firstDart(garment, chosen);
    if (!found) return { kind: 'first', sentence: reshapeWords.noDart };
    return trying({ ...beginAt(found.piece, found.dart) });
  },
};

/** To begin with, the middle of another edge, or of the other half of its own. */
function beginAt(piece: Piece, dart: Dart): MoveDart {
  const others = piece.edges.filter(({ id, role }) => id !== dart.edgeId && role !== 'fold');
  const to = others.find(({ role }) => role === 'seam') ?? others[0];
  const edgeId = to?.id ?? dart.edgeId;
  return { pieceId: piece.id, dartId: dart.id, edgeId, along: rounded(lengthOf(piece, edgeId) / 2) };
}

function trying(wish: MoveDart): Trying {
  const place = { edgeId: wish.edgeId, along: wish.along };
  const withPlace = (garment: Garment, edgeId: string, along: number) => {
    const piece = pieceOf(garment, wish.pieceId);
    return piece ? trying({ ...wish, edgeId, along: Math.min(along, lengthOf(piece, edgeId)) }) : trying(wish);
  };
  return {
    name: 'move-dart',
    label: () => words.label,
    make(garment) {
      const piece = pieceOf(garment, wish.pieceId);
      const moved = piece && moveDart(piece, wish.dartId, place);
      if (!moved) return { kind: 'not-tried', sentence: words.refused['no-dart'] };
      if ('kind' in moved) return { kind: 'not-tried', sentence: words.refused[moved.why] };
      const [was, is] = [piece, moved].map((one) => one.darts.find(({ id }) => id === wish.dartId)?.width ?? 0);
      const figure = { words: words.width, value: fromTo(was ?? 0, is ?? 0, garment) };
      return { kind: 'tried', garment: withPiece(garment, piece.id, () => moved), figures: [figure] };
    },
    fields: (garment, set) => (
      <>
        <DartChoice garment={garment} value={wish} onChange={(piece, dart) => set(trying(beginAt(piece, dart)))} />
        <EdgeChoice
          label={words.to}
          garment={garment}
          value={{ pieceId: wish.pieceId, edgeId: wish.edgeId }}
          only={(piece, edge) => piece.id === wish.pieceId && edge.role !== 'fold'}
          onChange={({ edgeId }: EdgeRef) => {
            const piece = pieceOf(garment, wish.pieceId);
            if (piece) set(withPlace(garment, edgeId, rounded(lengthOf(piece, edgeId) / 2)));
          }}
        />
        <LengthField
          label={words.along}
          value={wish.along}
          shownIn={garment.shownIn}
          min={0}
          onCommit={(along) => along !== undefined && set(withPlace(garment, wish.edgeId, along))}
        />
      </>
    ),
    lines(garment) {
      const found = dartAt(garment, wish);
      const path = found && edgePathOf(found.piece, wish.edgeId);
      return path ? [{ path: [line(found.dart.point, pathAtLength(path, wish.along).point)], look: 'cut' }] : [];
    },
    grips(garment) {
      const piece = pieceOf(garment, wish.pieceId);
      const path = piece && edgePathOf(piece, wish.edgeId);
      if (!piece || !path) return [];
      return [
        {
          at: pathAtLength(path, wish.along).point,
          moved(to) {
            const near = nearestEdge(piece, to);
            return near ? trying({ ...wish, edgeId: near.edgeId, along: rounded(near.along) }) : trying(wish);
          },
        },
      ];
    },
    picks: (garment, chosen) =>
      chosen.kind === 'edge' && chosen.pieceId === wish.pieceId
        ? withPlace(garment, chosen.edgeId, wish.along)
        : undefined,
  };
}

/** The place on the edges of a piece, folds left out, that lies nearest. */
function nearestEdge(piece: Piece, to: { readonly x: number; readonly y: number }) {
  const { edges } = outlineOf(piece);
  return piece.edges
    .flatMap(({ id, role }, index) => {
      const path = edges[index];
      if (!path || role === 'fold') return [];
      const { along, point } = nearestOnPath(path, to);
      return [{ edgeId: id, along, off: distance(point, to) }];
    })
    .sort((a, b) => a.off - b.off)[0];
}

function fromTo(was: number, is: number, { shownIn }: Garment): string {
  return trialWords.fromTo(writeLength(was, { shownIn }), writeLength(is, { shownIn }));
}
