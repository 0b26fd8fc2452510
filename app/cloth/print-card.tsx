import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { Card } from '../ui/card';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import type { ShownLay } from './shown-lay';

interface PrintCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

export function PrintCard(_: PrintCardProps) {
  return (
    <Card title={words.print}>
      <p className={styles.small}>{words.printHelp}</p>
    </Card>
  );
}
