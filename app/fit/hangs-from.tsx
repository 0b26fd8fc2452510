import type { Garment, HangsFrom, Ring } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { setHangsFrom } from '../../core/garment/ring-edits';
import { useGarment } from '../state/garment-store';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Pick as PickOne } from '../ui/pick';
import { fitWords as words } from '../words/fit';
import styles from './fit-room.module.css';

interface HangsFromFieldsProps {
  readonly piece: Piece;
  readonly ring: Ring;
  readonly from: HangsFrom | undefined;
  readonly shownIn: Garment['shownIn'];
}

/** The edge a piece's levels are measured from, and where that edge lies on the body; folded away, as most need none. */
export function HangsFromFields({ piece, ring, from, shownIn }: HangsFromFieldsProps) {
  const set = (next: HangsFrom | undefined) =>
    useGarment.getState().edit(words.hangsLabel, (before) => setHangsFrom(before, ring.id, piece.id, next));
  const edges = piece.edges.flatMap(({ id, name, role }, i) =>
    role === 'fold' ? [] : [{ value: id, words: name || words.edgeNumber(i + 1) }],
  );
  const side = from && from.depth < 0 ? 'above' : 'below';
  const away = from ? Math.abs(from.depth) : 0;
  const put = (by: number, towards: 'below' | 'above') =>
    from && set({ ...from, depth: towards === 'above' && by > 0 ? -by : by });
  return (
    <details className={styles.more} open={from !== undefined}>
      <summary aria-label={words.hangsFromOf(piece.name || words.unnamedPiece)}>{words.hangsFrom}</summary>
      <div className={styles.fields}>
        <p className={styles.small}>{words.hangsFromHelp}</p>
        <PickOne
          label={words.hangsEdge}
          value={from?.edgeId ?? ''}
          options={[{ value: '', words: words.theWaist }, ...edges]}
          onChange={(edgeId) => set(edgeId === '' ? undefined : { edgeId, depth: from?.depth ?? 0 })}
        />
        {from && (
          <>
            <LengthField
              label={words.hangsDepth}
              value={away}
              shownIn={shownIn}
              min={0}
              onCommit={(by) => by !== undefined && put(by, side)}
            />
            {away > 0 && (
              <Choice
                label={words.hangsWhere}
                value={side}
                options={(['below', 'above'] as const).map((value) => ({ value, words: words.sides[value] }))}
                onChange={(towards) => put(away, towards)}
              />
            )}
          </>
        )}
      </div>
    </details>
  );
}
