import { useState } from 'react';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import type { VersionSaid } from '../../core/garment/version-said';
import { mockupFindings } from '../../core/mockup/mockup-findings';
import { firstPagesCount } from '../../core/paper/first-page';
import type { PatternPdfOptions } from '../../core/paper/pattern-pdf';
import type { ChosenPages } from '../../core/paper/printing-of';
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
import type { Laid } from './use-taped-sheets';

interface MakeCardProps {
  readonly garment: Garment;
  readonly chosen: readonly Piece[];
  readonly version: VersionSaid;
  readonly making: Making;
  readonly laid: Laid;
  /** The pages that are made instead of all. */
  readonly pages: ChosenPages;
  readonly under: PatternPdfOptions['under'];
  readonly onAllPages: () => void;
  readonly onToggle: (pieceId: string, on: boolean) => void;
}

/** What is printed, how many pages that is, and the buttons that make it. */
export function MakeCard(props: MakeCardProps) {
  const { garment, chosen, version, making, laid, pages, under, onAllPages, onToggle } = props;
  const stops = useFindings((state) => state.open.filter((finding) => finding.weight === 'stop').length);
  const goTo = useTable((table) => table.goTo);
  const { share, trouble, make, stop } = making;
  const [asked, setAsked] = useState<'pages' | 'squares'>();
  const hasOutstanding = mockupFindings(garment).length > 0;
  const sheets = laid.state === 'found' ? laid.found?.sheets : undefined;
  const leftOut = laid.state === 'found' ? (laid.found?.leftOut ?? []) : [];
  const begin = (what: 'pages' | 'squares') => {
    if (what === 'squares') make({ what });
    else if (sheets) make({ what, sheets, under, ...(pages.length > 0 && { chosen: pages }) });
  };
  const ask = (what: 'pages' | 'squares') => (hasOutstanding ? setAsked(what) : begin(what));
  return (
    <Card title={words.what} about="pages">
      {stops > 0 && (
        <Note tone="stop" action={{ words: words.toCheck, onPress: () => goTo('check') }}>
          {words.openCount(stops)}
        </Note>
      )}
      <div>
        {cutPieces(garment).map((piece) => {
          const sheet = sheets?.find(({ placed }) => placed.some((one) => one.piece.id === piece.id));
          return (
            <div key={piece.id} className={styles.piece}>
              <Switch
                label={piece.name || words.unnamed}
                on={chosen.includes(piece)}
                onChange={(on) => onToggle(piece.id, on)}
              />
              {sheet && <span>{words.pagesOf(piece.id, sheet)}</span>}
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
            begin(asked);
          }}
        />
      ) : share === undefined ? (
        <>
          <PagesCount garment={garment} laid={laid} />
          <Button
            tone="chalk"
            icon="page"
            step="pages"
            disabled={!sheets || sheets.length === 0}
            onPress={() => ask('pages')}
          >
            {pages.length > 0 ? words.makeChosen(pages.length) : words.makePages}
          </Button>
          {pages.length > 0 && <Button onPress={onAllPages}>{words.allPages}</Button>}
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
      {leftOut.length > 0 && sheets && sheets.length > 0 && (
        <Note tone="stop">{words.leftOut(leftOut.map(({ name }) => name || words.unnamed))}</Note>
      )}
      {trouble && <Note tone="stop">{trouble}</Note>}
    </Card>
  );
}

/** How many pages there will be, beside what they might be. */
function PagesCount({ garment, laid: { found, state } }: { readonly garment: Garment; readonly laid: Laid }) {
  if (state === 'failed') return <Note tone="stop">{words.layingFailed}</Note>;
  if (state !== 'found' || !found) return <p className={styles.small}>{words.laying}</p>;
  const { sheets, counted } = found;
  if (sheets.length === 0) return null;
  const first = firstPagesCount(garment, sheets.length);
  return (
    <p className={styles.small}>
      {words.printHelp} {words.total(counted.pages + first, first)} {words.counted(counted, sheets, garment.shownIn)}
    </p>
  );
}
