import type { Garment } from '../../../core/garment/garment';
import { pieceOf } from '../../../core/garment/with-piece';
import { leftAndRight } from '../../../core/shaping/half-pieces';
import { onTheFold } from '../../../core/shaping/on-the-fold';
import { newId } from '../../state/new-id';
import { Choice } from '../../ui/choice';
import { Pick } from '../../ui/pick';
import { reshapeWords } from '../../words/reshape';
import type { Change, Tried, Trying } from '../change';
import { chosenPiece } from '../edge-choice';

const words = reshapeWords.sidesApart;

interface SidesApart {
  readonly pieceId: string;
  readonly way: 'apart' | 'fold';
}

export const sidesApartChange: Change = {
  name: 'sides-apart',
  icon: 'mirror',
  begin(garment, chosen) {
    const piece = chosenPiece(garment, chosen) ?? garment.pieces[0];
    if (!piece) return { kind: 'first', sentence: reshapeWords.noPieces };
    return trying({ pieceId: piece.id, way: piece.cut.how === 'single' ? 'fold' : 'apart' });
  },
};

function trying(wish: SidesApart): Trying {
  return {
    name: 'sides-apart',
    label: () => words.label[wish.way],
    make: (garment) => made(garment, wish),
    fields: (garment, set) => (
      <>
        <Pick
          label={reshapeWords.piece}
          value={wish.pieceId}
          options={garment.pieces.map(({ id, name }) => ({ value: id, words: name }))}
          onChange={(pieceId) => set(trying({ ...wish, pieceId }))}
        />
        <Choice
          label={words.way}
          value={wish.way}
          options={(['apart', 'fold'] as const).map((value) => ({ value, words: words.ways[value] }))}
          onChange={(way) => set(trying({ ...wish, way }))}
        />
      </>
    ),
    picks: (_, chosen) => ('pieceId' in chosen ? trying({ ...wish, pieceId: chosen.pieceId }) : undefined),
  };
}

function made(garment: Garment, { pieceId, way }: SidesApart): Tried {
  const name = pieceOf(garment, pieceId)?.name ?? '';
  const next =
    way === 'apart'
      ? leftAndRight(garment, pieceId, { newId, names: { left: words.left(name), right: words.right(name) } })
      : onTheFold(garment, pieceId, { newId });
  return 'why' in next ? { kind: 'not-tried', sentence: words.refused[next.why] } : { kind: 'tried', garment: next };
}
