import { useRef, useState } from 'react';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { versionMark } from '../../core/garment/version-mark';
import { mockupFindings } from '../../core/mockup/mockup-findings';
import { planPages } from '../../core/paper/page-plan';
import type { PatternPdfOptions } from '../../core/paper/pattern-pdf';
import { useFindings } from '../state/findings-store';
import { useTable } from '../state/table-store';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { Switch } from '../ui/switch';
import { paperWords as words } from '../words/paper';
import { pdfWork } from '../workers/pdf-calls';
import { Outstanding } from './outstanding-card';
import styles from './paper-room.module.css';

interface MakeCardProps {
  readonly garment: Garment;
  readonly chosen: readonly Piece[];
  readonly onToggle: (pieceId: string, on: boolean) => void;
}

/** What is printed, how many pages that is, and the buttons that make it. */
export function MakeCard({ garment, chosen, onToggle }: MakeCardProps) {
  const stops = useFindings((state) => state.open.filter((finding) => finding.weight === 'stop').length);
  const goTo = useTable((table) => table.goTo);
  const { share, trouble, make, stop } = useMaking(garment, chosen);
  const [asked, setAsked] = useState<PatternPdfOptions['what']>();
  const hasOutstanding = mockupFindings(garment).length > 0;
  const ask = (what: PatternPdfOptions['what']) => (hasOutstanding ? setAsked(what) : make(what));
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
      <p className={styles.small}>{words.version(versionMark(garment))}</p>
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

/** One PDF at a time, with its progress and a way to stop it. */
function useMaking(garment: Garment, chosen: readonly Piece[]) {
  const [share, setShare] = useState<number>();
  const [trouble, setTrouble] = useState<string>();
  const stopper = useRef<AbortController>(undefined);

  async function make(what: PatternPdfOptions['what']) {
    stopper.current = new AbortController();
    setTrouble(undefined);
    setShare(0);
    const address = (name: string) => new URL(`fonts/${name}`, document.baseURI).href;
    const answer = await pdfWork.call(
      'pattern',
      {
        garment,
        pieceIds: chosen.map((piece) => piece.id),
        what,
        today: today(),
        fonts: { plain: address('dejavu-sans.ttf'), bold: address('dejavu-sans-bold.ttf') },
      },
      { signal: stopper.current.signal, onProgress: setShare },
    );
    setShare(undefined);
    if (answer.kind === 'pdf') {
      const name = `${fileName(garment.name)}-${what}-${garment.paper.size}.pdf`;
      download(new Uint8Array(answer.bytes), name, 'application/pdf');
      say(words.made(answer.pages));
    } else if (answer.kind === 'nothing-to-print') setTrouble(words.nothing[answer.why]);
    else if (answer.kind === 'broken') setTrouble(words.failed);
  }

  return {
    share,
    trouble,
    make: (what: PatternPdfOptions['what']) => void make(what),
    stop: () => stopper.current?.abort(),
  };
}
