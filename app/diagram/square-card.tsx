import type { DiagramFinding } from '../../core/diagram/diagram-findings';
import type { Diagram, RectangleSides } from '../../core/garment/diagram';
import { stopFlattening } from '../photo/flatten-photo';
import type { DiagramPictures } from '../photo/use-pictures';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { ShareDone } from '../ui/share-done';
import { diagramWords } from '../words/diagram';
import { editDiagram, startingCorners } from './change-diagram';
import { CornerFields } from './corner-fields';
import styles from './diagram-room.module.css';
import { FindCorners } from './find-corners';
import { Findings } from './findings-list';
import { FlatPreview } from './flat-preview';
import { SidesFields } from './sides-fields';

const words = diagramWords.square;

interface SquareCardProps {
  readonly diagram: Diagram;
  readonly pictures: DiagramPictures;
  readonly findings: readonly DiagramFinding[];
}

/** The first step: how the picture is laid flat. */
export function SquareCard({ diagram, pictures, findings }: SquareCardProps) {
  const { squareUp } = diagram;
  const { map } = pictures;

  function setHow(how: 'flat' | 'rectangle') {
    editDiagram(diagramWords.labels.flat, diagram.id, (now) => ({
      ...now,
      squareUp: how === 'flat' ? { kind: 'flat' } : startingCorners(now),
    }));
  }

  function setSides(sides: RectangleSides) {
    editDiagram(diagramWords.labels.sides, diagram.id, (now) =>
      now.squareUp.kind === 'rectangle' ? { ...now, squareUp: { ...now.squareUp, sides } } : now,
    );
  }

  function turn() {
    editDiagram(diagramWords.labels.turn, diagram.id, (now) => ({
      ...now,
      quarterTurns: ((now.quarterTurns + 1) % 4) as Diagram['quarterTurns'],
    }));
  }

  return (
    <Card title={words.title}>
      <p>{words.help}</p>
      <Choice
        label={words.how}
        labelHidden
        value={squareUp.kind}
        options={[
          { value: 'rectangle', words: words.corners },
          { value: 'flat', words: words.flat },
        ]}
        onChange={setHow}
      />
      {map.kind === 'not-squared' && <Findings findings={findings} />}
      {squareUp.kind === 'rectangle' && (
        <>
          <FindCorners diagram={diagram} corners={squareUp.corners} pictures={pictures.pictures} />
          <CornerFields diagramId={diagram.id} corners={squareUp.corners} />
          <SidesFields key={diagram.id} sides={squareUp.sides} onChange={setSides} />
        </>
      )}
      <div className={styles.outcome}>
        <FlatPreview pictures={pictures} />
        <div className={styles.stack}>
          <Button icon="turn" onPress={turn}>
            {words.turn}
          </Button>
          {squareUp.kind === 'rectangle' && (
            <Button icon="square" onPress={() => setHow('rectangle')}>
              {words.reset}
            </Button>
          )}
        </div>
      </div>
      <Progress diagramId={diagram.id} pictures={pictures} />
    </Card>
  );
}

function Progress({ diagramId, pictures }: { readonly diagramId: string; readonly pictures: DiagramPictures }) {
  const { flattening, stopped } = pictures.pictures;
  if (flattening !== undefined) {
    return <ShareDone label={words.squaring} share={flattening} onStop={() => stopFlattening(diagramId)} />;
  }
  if (!stopped) return null;
  return (
    <Note tone="plain" action={{ words: words.again, onPress: pictures.flattenAgain }}>
      {words.stopped}
    </Note>
  );
}
