import { useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import { type EdgeRef, isSameEdge, type Seam } from '../../core/garment/seam';
import { addSeam } from '../../core/garment/seam-edits';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { seamsWords as words } from '../words/seams';
import { EdgePick } from './edge-pick';
import { differenceWords, edgeName, seamName } from './seam-names';
import { seamWith } from './seam-sums';
import styles from './seams.module.css';
import { openSeam, pickEdges, useSeams } from './seams-store';

/** Two edges are paired: pressed one after another on the table, or chosen here. */
export function PairCard({ garment }: { readonly garment: Garment }) {
  const picked = useSeams((state) => state.picked);
  const [one, other] = picked;
  const seam = useMemo(() => one && other && seamOf(one, other), [one, other]);
  const walk = useMemo(() => seam && walkOfSeam(garment, seam), [garment, seam]);
  const taken = picked.filter((edge) => seamWith(garment, edge));
  return (
    <Card title={words.pair} about="pair-edges" step="pair">
      <p className={styles.help}>{words.pairHelp}</p>
      <div className={styles.pair}>
        <EdgePick
          label={words.firstEdge}
          garment={garment}
          value={one}
          none={words.notChosen}
          onChange={(edge) => pickEdges(edge ? [edge, ...(other ? [other] : [])] : [])}
        />
        {one && (
          <EdgePick
            label={words.secondEdge}
            garment={garment}
            value={other}
            none={words.notChosen}
            onChange={(edge) => pickEdges(edge ? [one, edge] : [one])}
          />
        )}
      </div>
      {seam && walk && (
        <p>
          {differenceWords(garment, {
            seam,
            walk,
            isOwnMirror: isSameEdge(seam.one[0] as EdgeRef, seam.other[0] as EdgeRef),
          })}
        </p>
      )}
      {taken.map((edge) => (
        <Note key={`${edge.pieceId} ${edge.edgeId}`} tone="warn">
          {words.inSeam(edgeName(garment, edge))}
        </Note>
      ))}
      {seam && (
        <Button tone="chalk" icon="done" onPress={() => pair(garment, seam)}>
          {words.pairThem}
        </Button>
      )}
    </Card>
  );
}

/** An edge sewn to itself is walked the same way on both sides: it is its own mirror image. */
function seamOf(one: EdgeRef, other: EdgeRef): Seam {
  const way = isSameEdge(one, other) ? 'same' : 'opposite';
  return { id: newId(), name: '', one: [one], other: [other], ease: 0, way };
}

function pair(garment: Garment, seam: Seam): void {
  useGarment.getState().edit(words.steps.pair, (before) => addSeam(before, seam));
  say(words.paired(seamName(garment, seam)));
  openSeam(seam.id);
}
