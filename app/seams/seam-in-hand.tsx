import { useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Seam } from '../../core/garment/seam';
import { walkOfSeam } from '../../core/seams/seam-walk';
import { useLeaveByUndo } from '../trial/use-leave-by-undo';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { RoomLayout } from '../ui/room-layout';
import tableStyles from '../ui/room-table.module.css';
import { seamsWords as words } from '../words/seams';
import { AgreeCard } from './agree-card';
import { SeamCard } from './seam-card';
import { seamName } from './seam-names';
import { triedOn } from './seam-trial';
import styles from './seams.module.css';
import { leaveTrial, openSeam, useSeams } from './seams-store';
import { SeamsTable } from './seams-table';
import { TrialCard } from './trial-card';
import { WalkBar } from './walk-bar';
import { WalkedCard } from './walked-card';

interface SeamInHandProps {
  readonly garment: Garment;
  readonly seam: Seam;
}

/** One seam: walked over the table, and trued in the notebook. */
export function SeamInHand({ garment, seam }: SeamInHandProps) {
  const trying = useSeams((state) => state.trying);
  useLeaveByUndo(trying !== undefined, leaveTrial);
  const tried = trying && triedOn(garment, seam, trying);
  const after = tried?.kind === 'tried' && tried.garment !== garment ? tried.garment : undefined;
  const walk = useMemo(() => walkOfSeam(garment, seam), [garment, seam]);
  const walkAfter = useMemo(() => (after ? walkOfSeam(after, seam) : undefined), [after, seam]);
  const shown = walkAfter ?? walk;
  return (
    <RoomLayout
      page={trying?.kind}
      table={
        <div className={tableStyles.table}>
          <h1 className="only-heard">{words.walk(seamName(garment, seam))}</h1>
          {shown && <WalkBar garment={garment} seam={seam} walk={shown} />}
          <SeamsTable garment={garment} after={after} walk={shown} />
        </div>
      }
      notebook={
        trying && walk ? (
          <TrialCard garment={garment} seam={seam} walk={walk} trial={trying} />
        ) : (
          <>
            <div className={styles.row}>
              <Button icon="left" onPress={() => openSeam(undefined)}>
                {words.allSeams}
              </Button>
            </div>
            <h2>{seamName(garment, seam)}</h2>
            {walk ? (
              <>
                <WalkedCard garment={garment} seam={seam} walk={walk} />
                <AgreeCard garment={garment} seam={seam} walk={walk} />
              </>
            ) : (
              <Note tone="warn">{words.refused['no-edge']}</Note>
            )}
            <SeamCard garment={garment} seam={seam} />
          </>
        )
      }
    />
  );
}
