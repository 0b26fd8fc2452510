import type { Garment } from '../../core/garment/garment';
import type { Printing } from '../../core/garment/printed';
import { printedFindings } from '../../core/paper/pages-out-of-date';
import { setUnused } from '../../core/paper/printing-of';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Switch } from '../ui/switch';
import { findingSentence } from '../words/findings';
import { paperWords as words } from '../words/paper';
import styles from './paper-room.module.css';
import type { Making } from './use-making';

interface PrintedCardProps {
  readonly garment: Garment;
  readonly making: Making;
}

/** What was printed, and which of its pages are no longer as the draft is. */
export function PrintedCard({ garment, making }: PrintedCardProps) {
  const { printings = [] } = garment;
  const findings = printedFindings(garment);
  if (printings.length === 0) return null;
  const stale = findings.some(({ kind }) => kind === 'pages-out-of-date');
  const inUse = printings.some(({ unused }) => unused === undefined);
  return (
    <Card title={words.printed} aside={String(printings.length)}>
      {findings.length === 0 && inUse && <Note tone="good">{words.allCurrent}</Note>}
      {findings.map((finding) => (
        <Note key={JSON.stringify(finding)} tone={finding.weight}>
          {findingSentence(finding, garment)}
        </Note>
      ))}
      {stale && (
        <Button
          tone="chalk"
          icon="page"
          disabled={making.share !== undefined}
          onPress={() => making.make('out-of-date')}
        >
          {words.makeStale}
        </Button>
      )}
      <ul className={styles.printings}>
        {printings.toReversed().map((printing) => (
          <li key={printing.id}>
            <PrintingRow printing={printing} />
          </li>
        ))}
      </ul>
    </Card>
  );
}

function PrintingRow({ printing }: { readonly printing: Printing }) {
  const edit = useGarment((state) => state.edit);
  const { id, unused, pages, laid = [], squares = [] } = printing;
  const set = (on: boolean) => edit(words.unusedLabel, (now) => setUnused(now, id, on ? today() : undefined));
  return (
    <>
      <strong>{words.printingOf(printing)}</strong>
      {laid.map((one) => (
        <span key={one.pieceId}>
          {words.printedPages(
            one.name,
            pages.filter(({ pieceIds }) => pieceIds.includes(one.pieceId)).map(({ name }) => name),
            one.mends !== undefined,
          )}
        </span>
      ))}
      {squares.map((one) => (
        <span key={one.pieceId}>{words.printedSquares(one.name)}</span>
      ))}
      <Switch label={words.unused} on={unused !== undefined} onChange={set} />
    </>
  );
}
