import type { Garment } from '../../core/garment/garment';
import { isSameEdge, type Seam, type SeamEdge } from '../../core/garment/seam';
import { changeSeam } from '../../core/garment/seam-edits';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { CountField } from '../ui/count-field';
import { seamsWords as words } from '../words/seams';
import { EdgePick } from './edge-pick';
import { edgeName } from './seam-names';
import styles from './seams.module.css';

interface SideEdgesProps {
  readonly garment: Garment;
  readonly seam: Seam;
  readonly side: 'one' | 'other';
}

/** The edges of a side in their order, how often each comes, and one more: a band is sewn to the waists of several panels. */
export function SideEdges({ garment, seam, side }: SideEdgesProps) {
  const edges = seam[side];
  const set = (how: (edges: readonly SeamEdge[]) => readonly SeamEdge[]) =>
    useGarment
      .getState()
      .edit(words.steps.side, (before) => changeSeam(before, seam.id, (now) => ({ ...now, [side]: how(now[side]) })));
  return (
    <fieldset className={styles.side}>
      <legend>{words.side[side]}</legend>
      {edges.map((edge) => {
        const name = edgeName(garment, edge);
        return (
          <div key={`${edge.pieceId} ${edge.edgeId}`} className={styles.edge}>
            <CountField
              label={words.comesTimes(name)}
              value={edge.times ?? 1}
              onCommit={(times) =>
                set((now) => now.map((each) => (isSameEdge(each, edge) ? withTimes(each, times) : each)))
              }
            />
            {edges.length > 1 && (
              <Button
                tone="quiet"
                icon="close"
                title={words.drop(name)}
                onPress={() => set((now) => now.filter((each) => !isSameEdge(each, edge)))}
              />
            )}
          </div>
        );
      })}
      <EdgePick
        label={words.addEdge[side]}
        garment={garment}
        value={undefined}
        none={words.addNone}
        leaveOut={[...seam.one, ...seam.other]}
        onChange={(edge) => edge && set((now) => [...now, edge])}
      />
    </fieldset>
  );
}

function withTimes({ pieceId, edgeId }: SeamEdge, times: number): SeamEdge {
  return times === 1 ? { pieceId, edgeId } : { pieceId, edgeId, times };
}
