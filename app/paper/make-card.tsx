import { useState } from 'react';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import type { VersionSaid } from '../../core/garment/version-said';
import { mockupFindings } from '../../core/mockup/mockup-findings';
import { planPages } from '../../core/paper/page-plan';
import { useFindings } from '../state/findings-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Switch } from '../ui/switch';
import { paperWords as words } from '../words/paper';
import { Outstanding } from './outstanding-card';
import styles from './paper-room.module.css';
import type { Making } from './use-making';

interface MakeCardProps {
  readonly garment: Garment;
  readonly chosen: readonly Piece[];
  readonly version: VersionSaid;
  readonly making: Making;
  readonly onToggle: (pieceId: string, on: boolean) => void;
}

/** What is printed, how many pages that is, and the buttons that make it. */
export function MakeCard({ garment, chosen, version, making, onToggle }: MakeCardProps) {
  const stops = useFindings((state) => state.open.filter((finding) => finding.weight === 'stop').length);
  const goTo = useTable((table) => table.goTo);
  const { share, trouble, make, stop } = making;
  const [asked, setAsked] = useState<'pages' | 'squares'>();
  const hasOutstanding = mockupFindings(garment).length > 0;
  const ask = (what: 'pages' | 'squares') => (hasOutstanding ? setAsked(what) : make(what));
  const counts = chosen.map((piece) => planPages(pieceDrawing(piece), garment.paper));
  const total = counts.reduce((sum, plan) => sum + (plan?.pages.length ?? 0), 1);
  return (
    <Card title={words.what}>
      {stops > 0 && (
        <Note tone="stop" action={{ words: words.toCheck, onPress: () => goTo('check') }}>
          {words.openCount(stops)}
        </Note>
      )}
      <div>
        {cutPieces(garment).map((piece) => {
          const plan = counts[chosen.indexOf(piece)];
          return (
            <div key={piece.id} className={styles.piece}>
              <Switch
                label={piece.name || words.unnamed}
                on={chosen.includes(piece)}
                onChange={(on) => onToggle(piece.id, on)}
              />
              {plan && <span>{words.pages(plan.pages.length)}</span>}
            </div>
          );
        })}
      </div>
      <p className={styles.small}>{words.version(version)}</p>
      {asked && hasOutstanding ? (
        <Outstanding
          garment={garment}
          onGoOn={() => {
            setAsked(undefined);
            make(asked);
          }}
        />
      ) : share === undefined ? (
        <>
          <p className={styles.small}>
            {words.printHelp} {words.total(total)}
          </p>
          <Button tone="chalk" icon="page" disabled={chosen.length === 0} onPress={() => ask('pages')}>
            {words.makePages}
          </Button>
          <p className={styles.small}>{words.squaresHelp}</p>
          <Button icon="square" disabled={chosen.length === 0} onPress={() => ask('squares')}>
            {words.makeSquares}
          </Button>
        </>
      ) : (
        <div className={styles.making}>
          <progress value={share} max={1} aria-label={words.making(share)} />
          <span>{words.making(share)}</span>
          <Button onPress={stop}>{words.stop}</Button>
        </div>
      )}
      {trouble && <Note tone="stop">{trouble}</Note>}
    </Card>
  );
}
