import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { ScreenPaper } from '../screen-paper/screen-paper';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { screenPaperWords as words } from '../words/screen-paper';
import styles from './paper-room.module.css';

interface ScreenCardProps {
  readonly garment: Garment;
  readonly chosen: readonly Piece[];
}

/** The screen, or a beam, in the place of paper. */
export function ScreenCard({ garment, chosen }: ScreenCardProps) {
  const [isOpen, setOpen] = useState(false);
  const [kind, setKind] = useState<'screen' | 'beam'>();
  return (
    <Card title={words.card} about="screen-paper" open={isOpen} onToggle={setOpen}>
      <p className={styles.small}>{words.help}</p>
      <Button icon="fit" disabled={chosen.length === 0} onPress={() => setKind('screen')}>
        {words.onScreen}
      </Button>
      <Button icon="fit" disabled={chosen.length === 0} onPress={() => setKind('beam')}>
        {words.byBeam}
      </Button>
      {kind && chosen.length > 0 && (
        <ScreenPaper garment={garment} pieces={chosen} kind={kind} onClose={() => setKind(undefined)} />
      )}
    </Card>
  );
}
