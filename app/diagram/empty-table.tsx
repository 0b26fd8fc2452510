import { EmptySheet } from '../ui/empty-sheet';
import { Note } from '../ui/note';
import { diagramWords as words } from '../words/diagram';
import { bringIn, useBringingIn } from './bring-in';
import { ChoosePicture } from './choose-picture';
import { ComingIn } from './coming-in';
import styles from './diagram-room.module.css';

/** The table before there is a picture: what to do next. */
export function EmptyTable() {
  const { busy, refusal } = useBringingIn();
  return (
    <EmptySheet title={words.empty.title} step="picture">
      <p>{words.empty.ask}</p>
      <ChoosePicture words={words.choose} tone="chalk" disabled={busy} onFile={(file) => void bringIn(file)} />
      <ComingIn />
      {refusal !== undefined && <Note tone="stop">{refusal}</Note>}
      <p className={styles.hint}>{words.empty.tips}</p>
    </EmptySheet>
  );
}
