import { useEffect, useRef, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { PdfBook, PdfPage } from '../photo/pdf-book';
import { Button } from '../ui/button';
import { EmptySheet } from '../ui/empty-sheet';
import { Note } from '../ui/note';
import { NumberField } from '../ui/number-field';
import { diagramWords } from '../words/diagram';
import { writeLength } from '../words/written';
import { bringInPage, leaveBook, useBringingIn } from './bring-in';
import styles from './diagram-room.module.css';

const words = diagramWords.pdf;

interface PageChoiceProps {
  readonly name: string;
  readonly pdf: PdfBook;
  readonly shownIn: Garment['shownIn'];
}

/** The pixels of the small page. */
const PREVIEW_PX = 0.4e6;

/** Leafs through a PDF for the page with the diagram. */
export function PageChoice({ name, pdf, shownIn }: PageChoiceProps) {
  const [number, setNumber] = useState(1);
  const { busy, refusal } = useBringingIn();
  const canvas = useRef<HTMLCanvasElement>(null);
  const page = useDrawnPage(pdf, number, canvas);
  return (
    <EmptySheet title={words.title}>
      <p>{words.help(name, pdf.pages)}</p>
      <NumberField label={words.page(pdf.pages)} value={number} least={1} most={pdf.pages} whole onCommit={setNumber} />
      <div className={styles.actions}>
        <Button disabled={number <= 1} onPress={() => setNumber(number - 1)}>
          {words.before}
        </Button>
        <Button disabled={number >= pdf.pages} onPress={() => setNumber(number + 1)}>
          {words.after}
        </Button>
      </div>
      <canvas ref={canvas} className={styles.leafPage} role="img" aria-label={words.preview(number)} />
      {page && (
        <p>
          {words.onPaper(writeLength(page.onPaper.across, { shownIn }), writeLength(page.onPaper.down, { shownIn }))}
        </p>
      )}
      {refusal !== undefined && <Note tone="stop">{refusal}</Note>}
      {busy && <p>{diagramWords.opening}</p>}
      <div className={styles.actions}>
        <Button tone="chalk" disabled={busy || !page} onPress={() => void bringInPage(number)}>
          {words.take}
        </Button>
        <Button onPress={leaveBook}>{words.leave}</Button>
      </div>
    </EmptySheet>
  );
}

/** The page drawn small into the canvas; a page left before it was done is never drawn over the next. */
function useDrawnPage(pdf: PdfBook, number: number, canvas: React.RefObject<HTMLCanvasElement | null>) {
  const [page, setPage] = useState<PdfPage>();
  useEffect(() => {
    let isLeft = false;
    setPage(undefined);
    const draw = async () => {
      const opened = await pdf.page(number);
      const drawn = document.createElement('canvas');
      await opened.drawInto(drawn, PREVIEW_PX);
      const shown = canvas.current;
      if (isLeft || !shown) return;
      shown.width = drawn.width;
      shown.height = drawn.height;
      shown.getContext('2d')?.drawImage(drawn, 0, 0);
      setPage(opened);
    };
    draw().catch(() => isLeft || useBringingIn.setState({ refusal: words.pageRefused(number) }));
    return () => {
      isLeft = true;
    };
  }, [pdf, number, canvas]);
  return page;
}
