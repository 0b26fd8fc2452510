import { useLayoutEffect, useRef } from 'react';
import type { DiagramPictures } from '../photo/use-pictures';
import { diagramWords as words } from '../words/diagram';
import styles from './diagram-room.module.css';

/** Across, in pixels of the canvas: twice what the notebook has room for. */
const WIDTH_PX = 640;

/** The picture as it will lie on the table, small, and at once while a corner moves. */
export function FlatPreview({ pictures }: { readonly pictures: DiagramPictures }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { laidFlat } = pictures;
  const smallest = laidFlat?.levels.findLast((level) => level.width >= WIDTH_PX) ?? laidFlat?.levels[0];
  const width = laidFlat ? laidFlat.box.maxX - laidFlat.box.minX : 0;
  const height = laidFlat ? laidFlat.box.maxY - laidFlat.box.minY : 0;
  const heightPx = width > 0 ? Math.min(2 * WIDTH_PX, Math.max(1, Math.round((WIDTH_PX * height) / width))) : 0;

  useLayoutEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen || !smallest || smallest.width === 0) return;
    pen.imageSmoothingQuality = 'high';
    pen.clearRect(0, 0, WIDTH_PX, heightPx);
    pen.drawImage(smallest, 0, 0, WIDTH_PX, heightPx);
  }, [smallest, heightPx]);

  if (!smallest) return null;
  return (
    <figure className={styles.preview}>
      <canvas ref={canvas} width={WIDTH_PX} height={heightPx} />
      <figcaption>{words.square.preview}</figcaption>
    </figure>
  );
}
