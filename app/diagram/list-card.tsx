import { takeOff } from '../../core/diagram/take-off';
import type { Diagram } from '../../core/garment/diagram';
import { addDiagram, withDiagram } from '../../core/garment/diagram-edits';
import type { Pictures } from '../photo/picture-store';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { diagramWords as words } from '../words/diagram';
import { bringBack, bringIn, useBringingIn } from './bring-in';
import { ChoosePicture } from './choose-picture';
import { ComingIn } from './coming-in';
import { useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { otherPage } from './new-diagram';
import { troubleSentence } from './trouble-sentence';

interface ListCardProps {
  readonly diagram: Diagram;
  readonly diagrams: readonly Diagram[];
  readonly pictures: Pictures;
}

/** Which diagram is on the table, its name, and one more beside it. */
export function ListCard({ diagram, diagrams, pictures }: ListCardProps) {
  const edit = useGarment((state) => state.edit);
  const { busy, refusal } = useBringingIn();
  const { trouble } = pictures;

  function remove() {
    edit(words.labels.remove, (garment) => takeOff(garment, diagram.id, newId));
    say(words.removed);
  }

  function copy() {
    const { garment } = useGarment.getState();
    if (!garment) return;
    const page = otherPage(garment, diagram);
    edit(words.labels.otherPage, (now) => addDiagram(now, page));
    useTable.getState().setView('photo', undefined);
    useTable.getState().choose({ kind: 'diagram', diagramId: page.id });
  }

  return (
    <Card title={words.list} about="diagrams" aside={diagrams.length > 1 ? diagrams.length : undefined}>
      {diagrams.length > 1 && (
        <Pick
          label={words.pickDiagram}
          value={diagram.id}
          options={diagrams.map(({ id, name }) => ({ value: id, words: name || words.unnamed }))}
          onChange={(diagramId) => {
            useDesk.setState({ matching: undefined });
            useTable.getState().setView('photo', undefined);
            useTable.getState().choose({ kind: 'diagram', diagramId });
          }}
        />
      )}
      <TextField
        key={diagram.id}
        label={words.name}
        value={diagram.name}
        onCommit={(name) =>
          edit(words.labels.name, (garment) => withDiagram(garment, diagram.id, (now) => ({ ...now, name })))
        }
      />
      {trouble && (
        <>
          <Note tone="stop">{troubleSentence(trouble)}</Note>
          <ChoosePicture
            words={words.chooseAgain}
            tone="chalk"
            disabled={busy}
            onFile={(file) => void bringBack(diagram, file)}
          />
        </>
      )}
      {refusal !== undefined && <Note tone="stop">{refusal}</Note>}
      <ComingIn />
      <div className={styles.actions}>
        <ChoosePicture words={words.addAnother} disabled={busy} onFile={(file) => void bringIn(file)} />
        <Button icon="copy" onPress={copy}>
          {words.otherPage}
        </Button>
        <Button icon="bin" tone="quiet" onPress={remove}>
          {words.remove}
        </Button>
      </div>
    </Card>
  );
}
