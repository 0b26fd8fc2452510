import type { Garment } from '../../core/garment/garment';
import { isOwnMirror, type Seam } from '../../core/garment/seam';
import type { SeamWalk } from '../../core/seams/seam-walk';
import { type SeamEnd, seamCorners } from '../../core/seams/true-corners';
import { Figures } from '../trial/figures';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { seamsWords as words } from '../words/seams';
import { anglesWords } from './angles';
import { roleAtEnd } from './seam-sums';
import { firstWay } from './seam-trial';
import styles from './seams.module.css';
import { trySeam } from './seams-store';

interface AgreeCardProps {
  readonly garment: Garment;
  readonly seam: Seam;
  readonly walk: SeamWalk;
}

const ENDS: readonly SeamEnd[] = ['at-start', 'at-end'];

/** What can be done so that a seam agrees; each is shown first. */
export function AgreeCard({ garment, seam, walk }: AgreeCardProps) {
  const mirror = isOwnMirror(seam);
  const hasNotches = walk.one.notches.length + walk.other.notches.length > 0;
  return (
    <Card title={words.agree} about="trueing">
      <Figures
        rows={ENDS.flatMap((end) => {
          const corners = seamCorners(garment, seam, end);
          const said = words.ends[end](words.beside(roleAtEnd(walk, end)));
          return corners ? [{ key: end, words: said, value: anglesWords(corners) }] : [];
        })}
      />
      <p className={styles.help}>{words.straightOn}</p>
      <div className={styles.row}>
        {!mirror && (
          <Button icon="ruler" onPress={() => trySeam({ kind: 'lengths', ...firstWay(garment, seam) })}>
            {words.trials.lengths}
          </Button>
        )}
        {!mirror && hasNotches && (
          <Button
            icon="notch"
            onPress={() => trySeam({ kind: 'notches', from: walk.one.notches.length > 0 ? 'one' : 'other' })}
          >
            {words.trials.notches}
          </Button>
        )}
        <Button icon="corner" onPress={() => trySeam({ kind: 'corners', end: worseEnd(garment, seam), how: 'blend' })}>
          {words.trials.corners}
        </Button>
      </div>
    </Card>
  );
}

/** The end at which the two angles are further from a straight line. */
function worseEnd(garment: Garment, seam: Seam): SeamEnd {
  const [start = 0, end = 0] = ENDS.map((at) => Math.abs(seamCorners(garment, seam, at)?.off ?? 0));
  return end > start ? 'at-end' : 'at-start';
}
