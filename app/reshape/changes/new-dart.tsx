import type { EdgeRef } from '../../../core/garment/seam';
import { withPiece } from '../../../core/garment/with-piece';
import { nearestOnPath, pathAtLength } from '../../../core/geometry/path';
import { placeDart } from '../../../core/shaping/dart-place';
import { inches } from '../../../core/units/inch';
import { newId } from '../../state/new-id';
import { LengthField } from '../../ui/length-field';
import { reshapeWords } from '../../words/reshape';
import type { Change, Trying } from '../change';
import { EdgeChoice, edgeAt, edgePathOf, firstEdgeLike, lengthOf, notFold } from '../edge-choice';
import styles from '../reshape.module.css';
import { rounded } from '../rounded';

const words = reshapeWords.newDart;

interface NewDart {
  readonly edge: EdgeRef;
  readonly along: number;
  readonly width: number;
  readonly length: number;
}

export const newDartChange: Change = {
  name: 'new-dart',
  icon: 'dart',
  begin(garment, chosen) {
    const found = firstEdgeLike(garment, chosen, 'waist');
    if (!found) return { kind: 'first', sentence: reshapeWords.noPieces };
    const { pieceId, edgeId, piece } = found;
    const along = rounded(lengthOf(piece, edgeId) / 2);
    return trying({ edge: { pieceId, edgeId }, along, width: inches(3 / 4), length: inches(4) });
  },
};

function trying(wish: NewDart): Trying {
  return {
    name: 'new-dart',
    label: () => words.label,
    make(garment) {
      const at = edgeAt(garment, wish.edge);
      if (!at) return { kind: 'not-tried', sentence: reshapeWords.pieceGone };
      const { along, width, length } = wish;
      const placed = placeDart(at.piece, { id: newId(), edgeId: at.edgeId, along, width, length, runs: 'square' });
      if ('why' in placed) return { kind: 'not-tried', sentence: words.refused[placed.why] };
      return { kind: 'tried', garment: withPiece(garment, at.pieceId, () => placed) };
    },
    fields: (garment, set) => {
      const change = (next: Partial<NewDart>) => set(trying({ ...wish, ...next }));
      const field = (label: string, key: 'along' | 'width' | 'length') => (
        <LengthField
          label={label}
          value={wish[key]}
          shownIn={garment.shownIn}
          min={0}
          onCommit={(mm) => mm !== undefined && change({ [key]: mm })}
        />
      );
      return (
        <>
          <EdgeChoice
            label={reshapeWords.edge}
            garment={garment}
            value={wish.edge}
            only={notFold}
            onChange={(edge) => change({ edge })}
          />
          {field(words.along, 'along')}
          <div className={styles.pair}>
            {field(words.width, 'width')}
            {field(words.length, 'length')}
          </div>
        </>
      );
    },
    grips(garment) {
      const at = edgeAt(garment, wish.edge);
      const path = at && edgePathOf(at.piece, at.edgeId);
      if (!path) return [];
      return [
        {
          at: pathAtLength(path, wish.along).point,
          moved: (to) => trying({ ...wish, along: rounded(nearestOnPath(path, to).along) }),
        },
      ];
    },
    picks(garment, chosen) {
      const at = chosen.kind === 'edge' ? edgeAt(garment, chosen) : undefined;
      if (!at || at.edgeId === wish.edge.edgeId || at.edge.role === 'fold') return undefined;
      const along = rounded(lengthOf(at.piece, at.edgeId) / 2);
      return trying({ ...wish, edge: { pieceId: at.pieceId, edgeId: at.edgeId }, along });
    },
  };
}
