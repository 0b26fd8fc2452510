import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Printing } from '../../core/garment/printed';
import { printedFindings } from '../../core/paper/pages-out-of-date';
import { setUnused } from '../../core/paper/printing-of';
import { piecesOnPaper } from '../../core/paper/sheets-now';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
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
    <Card title={words.printed} about="printed" aside={String(printings.length)}>
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
          onPress={() => making.make({ what: 'out-of-date' })}
        >
          {words.makeStale}
        </Button>
      )}
      <PageAgain garment={garment} making={making} />
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

/** One page that is on paper made once more, when it was spoilt or lost. */
function PageAgain({ garment, making }: PrintedCardProps) {
  const pages = piecesOnPaper(garment).flatMap(({ piece, sheets }) =>
    sheets.filter(({ state }) => state !== 'gone').map(({ name }) => ({ piece, name })),
  );
  const [picked, setPicked] = useState('');
  const value = ({ piece, name }: (typeof pages)[0]) => `${piece.id} ${name}`;
  const page = pages.find((one) => value(one) === picked);
  if (pages.length === 0) return null;
  return (
    <>
      <Pick
        label={words.again}
        value={page ? picked : ''}
        options={[
          { value: '', words: words.noPageAgain },
          ...pages.map((one) => ({
            value: value(one),
            words: words.pageNamed(one.name, one.piece.name || words.unnamed),
          })),
        ]}
        onChange={setPicked}
      />
      {page && (
        <Button
          icon="page"
          disabled={making.share !== undefined}
          onPress={() => making.make({ what: 'out-of-date', again: { pieceId: page.piece.id, names: [page.name] } })}
        >
          {words.makeAgain(page.name)}
        </Button>
      )}
    </>
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
