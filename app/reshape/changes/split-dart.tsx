import type { Garment } from '../../../core/garment/garment';
import type { Dart, Piece } from '../../../core/garment/piece';
import { withPiece } from '../../../core/garment/with-piece';
import { splitDart } from '../../../core/shaping/dart-split';
import { inches } from '../../../core/units/inch';
import { newId } from '../../state/new-id';
import { CountField } from '../../ui/count-field';
import { LengthField } from '../../ui/length-field';
import { reshapeWords } from '../../words/reshape';
import type { Change, Trying } from '../change';
import { DartChoice, dartAt, firstDart } from '../dart-choice';

const words = reshapeWords.splitDart;

interface SplitDart {
  readonly pieceId: string;
  readonly dartId: string;
  readonly parts: number;
  /** From the middle of one mouth to the next. */
  readonly apart: number;
}

export const splitDartChange: Change = {
  name: 'split-dart',
  icon: 'dart',
  begin(garment, chosen) {
    const found = firstDart(garment, chosen);
    if (!found) return { kind: 'first', sentence: reshapeWords.noDart };
    return trying(beginAt(found.piece, found.dart, 2));
  },
};

function beginAt(piece: Piece, dart: Dart, parts: number): SplitDart {
  return { pieceId: piece.id, dartId: dart.id, parts, apart: dart.width / parts + inches(1.5) };
}

function trying(wish: SplitDart): Trying {
  return {
    name: 'split-dart',
    label: () => words.label,
    make(garment: Garment) {
      const found = dartAt(garment, wish);
      if (!found) return { kind: 'not-tried', sentence: words.refused['no-dart'] };
      const { piece, dart } = found;
      const parts = Array.from({ length: wish.parts }, (_, i) => ({
        id: newId(),
        share: 1,
        at: { edgeId: dart.edgeId, along: dart.along + (i - (wish.parts - 1) / 2) * wish.apart },
      }));
      const split = splitDart(piece, dart.id, parts);
      if ('why' in split) return { kind: 'not-tried', sentence: words.refused[split.why] };
      return { kind: 'tried', garment: withPiece(garment, piece.id, () => split) };
    },
    fields: (garment, set) => (
      <>
        <DartChoice
          garment={garment}
          value={wish}
          onChange={(piece, dart) => set(trying(beginAt(piece, dart, wish.parts)))}
        />
        <CountField
          label={words.parts}
          value={wish.parts}
          least={2}
          onCommit={(parts) => set(trying({ ...wish, parts }))}
        />
        <LengthField
          label={words.apart}
          value={wish.apart}
          shownIn={garment.shownIn}
          min={0}
          onCommit={(apart) => apart !== undefined && set(trying({ ...wish, apart }))}
        />
      </>
    ),
  };
}
