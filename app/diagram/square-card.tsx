import type { DiagramFinding } from '../../core/diagram/diagram-findings';
import type { Diagram, Quad, RectangleSides, SquareUp } from '../../core/garment/diagram';
import type { ShownIn } from '../../core/units/inch';
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
import { followSides, followSquares } from './follow-edges';
import { SideFields } from './side-fields';
import { SidesFields } from './sides-fields';
import { SquaresFields } from './squares-fields';

const words = diagramWords.square;

interface SquareCardProps {
  readonly diagram: Diagram;
  readonly pictures: DiagramPictures;
  readonly findings: readonly DiagramFinding[];
  readonly shownIn: ShownIn;
}

type How = 'rectangle' | 'sides' | 'squares' | 'flat';

function howOf(squareUp: SquareUp): How {
  return squareUp.kind === 'flat' ? 'flat' : (squareUp.followed?.kind ?? 'rectangle');
}

const followedWays = [
  { value: 'sides', words: words.curved },
  { value: 'squares', words: words.squares },
] as const;

/** The first step: how the picture is laid flat. */
export function SquareCard({ diagram, pictures, findings, shownIn }: SquareCardProps) {
  const { squareUp } = diagram;
  const { map } = pictures;

  const how = howOf(squareUp);

  function setHow(next: How) {
    const corners = squareUp.kind === 'rectangle' ? squareUp.corners : undefined;
    if (next === 'sides' && corners) void followSides(diagram, corners);
    else if (next === 'squares' && corners) void followSquares(diagram, corners);
    else if (next === 'flat')
      editDiagram(diagramWords.labels.flat, diagram.id, (now) => ({ ...now, squareUp: { kind: 'flat' } }));
    else startAgain(corners);
  }

  /** Straight sides between the corners as they are, or corners to start from. */
  function startAgain(corners: Quad | undefined) {
    editDiagram(diagramWords.labels.flat, diagram.id, (now) => {
      if (!corners || now.squareUp.kind !== 'rectangle') return { ...now, squareUp: startingCorners(now) };
      const { followed: _, ...straight } = now.squareUp;
      return { ...now, squareUp: straight };
    });
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
    <Card title={words.title} about="square-up" step="square-up">
      <p>{words.help}</p>
      <Choice
        label={words.how}
        labelHidden
        value={how}
        options={[
          { value: 'rectangle', words: words.corners },
          ...(squareUp.kind === 'rectangle' ? followedWays : []),
          { value: 'flat', words: words.flat },
        ]}
        onChange={setHow}
      />
      {map.kind === 'not-squared' && <Findings findings={findings} />}
      {squareUp.kind === 'rectangle' && (
        <>
          <FindCorners diagram={diagram} corners={squareUp.corners} pictures={pictures.pictures} />
          {squareUp.followed?.kind === 'sides' && (
            <>
              <p>{words.curvedHelp}</p>
              <Button
                icon="curve"
                disabled={!pictures.pictures.photo}
                onPress={() => void followSides(diagram, squareUp.corners)}
              >
                {words.followAgain}
              </Button>
              <SideFields diagramId={diagram.id} through={squareUp.followed.through} />
            </>
          )}
          {squareUp.followed?.kind === 'squares' && (
            <SquaresFields squares={squareUp.followed.map} {...{ diagram, map, shownIn }} />
          )}
          <CornerFields diagramId={diagram.id} corners={squareUp.corners} />
          {squareUp.followed?.kind !== 'squares' && (
            <SidesFields key={diagram.id} sides={squareUp.sides} onChange={setSides} />
          )}
        </>
      )}
      <div className={styles.outcome}>
        <FlatPreview pictures={pictures} />
        <div className={styles.stack}>
          <Button icon="turn" onPress={turn}>
            {words.turn}
          </Button>
          {squareUp.kind === 'rectangle' && (
            <Button icon="square" onPress={() => startAgain(undefined)}>
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
