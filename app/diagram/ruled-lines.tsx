import { useEffect } from 'react';
import type { DiagramMap } from '../../core/diagram/diagram-map';
import { type RuledTruth, ruledTruths } from '../../core/diagram/ruled-lines';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram, RuledLine } from '../../core/garment/diagram';
import { removeRuledLine } from '../../core/garment/diagram-edits';
import type { ShownIn } from '../../core/units/inch';
import { finestStep } from '../../core/units/write-length';
import type { ReadyPicture } from '../photo/picture-store';
import { useInk } from '../photo/use-ink';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { diagramWords } from '../words/diagram';
import { writeLength } from '../words/written';
import { editRuled, putSquareTo, ruleLine } from './change-ruled';
import { type RuledEnds, useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { EndFields } from './end-fields';
import { middleLine } from './middle-line';

const words = diagramWords.ruled;

/** As many lines as a garment's file may hold for one picture. */
const MOST_LINES = 40;

interface RuledLinesProps {
  readonly diagram: Diagram;
  readonly map: DiagramMap | NotSquared;
  readonly photo: ReadyPicture | undefined;
  readonly shownIn: ShownIn;
}

/** Printed lines that she says are straight, or square to one another, and how far off each lies at full size. */
export function RuledLines({ diagram, map, photo, shownIn }: RuledLinesProps) {
  const { drawing, ruling } = useDesk();
  const { ruled = [] } = diagram;
  const isDrawing = drawing?.what === 'straight';
  const here = ruling?.diagramId === diagram.id ? ruling : undefined;
  useInk(photo, isDrawing || here !== undefined);

  useEffect(() => {
    if (here && photo) void ruleLine(photo, here);
  }, [here, photo]);

  const truths = map.kind === 'map' && map.scale ? ruledTruths(diagram, map) : [];
  return (
    <section className={styles.stack} aria-label={words.title}>
      <h3>{words.title}</h3>
      <p className={styles.hint}>{words.help}</p>
      {isDrawing && (
        <Note
          tone="plain"
          action={{
            words: diagramWords.known.byNumbers,
            onPress: () => useDesk.setState({ drawing: undefined, fresh: undefined, ruling: middleLine(diagram) }),
          }}
        >
          {drawing.from ? diagramWords.known.drawingSecond : diagramWords.known.drawing}
        </Note>
      )}
      {here && <Note tone="plain">{words.following}</Note>}
      {!drawing && !here && ruled.length < MOST_LINES && (
        <Button
          icon="ruler"
          onPress={() =>
            useDesk.setState({ drawing: { what: 'straight', from: undefined }, fresh: undefined, corner: undefined })
          }
        >
          {words.mark}
        </Button>
      )}
      {ruled.length >= MOST_LINES && <Note tone="plain">{words.full}</Note>}
      <ol className={styles.lengths}>
        {ruled.map((line, index) => (
          <li key={line.id} className={styles.length}>
            <div className={styles.lengthHead}>
              <h4>{words.line(words.letter(index))}</h4>
              <Button
                icon="bin"
                tone="quiet"
                title={words.remove(words.letter(index))}
                onPress={() =>
                  editRuled(diagramWords.labels.removeRuled, diagram.id, (now) => removeRuledLine(now, line.id))
                }
              />
            </div>
            <RuledSaid
              {...{ line, ruled, shownIn }}
              truth={truths.find(({ id }) => id === line.id)}
              isScaled={map.kind === 'map' && map.scale !== undefined}
            />
            <SquareTo {...{ line, ruled }} diagramId={diagram.id} />
            <EndFields
              ends={endsOf(line, here)}
              onPut={(which, to) =>
                useDesk.setState({
                  ruling: { diagramId: diagram.id, ...endsOf(line, here), [which]: to, again: line },
                })
              }
            />
          </li>
        ))}
      </ol>
    </section>
  );
}

/** The ends of a line, or those it was just given, while the print between them is followed. */
function endsOf({ id, places }: RuledLine, ruling: RuledEnds | undefined) {
  if (ruling?.again?.id === id) return { from: ruling.from, to: ruling.to };
  const [from, to] = [places[0], places.at(-1)];
  if (!from || !to) throw new Error('a line has two places at least');
  return { from, to };
}

interface RuledSaidProps {
  readonly line: RuledLine;
  readonly ruled: readonly RuledLine[];
  readonly truth: RuledTruth | undefined;
  readonly isScaled: boolean;
  readonly shownIn: ShownIn;
}

/** How straight it lies, and how square to the line it was said to be square to. */
function RuledSaid({ line, ruled, truth, isScaled, shownIn }: RuledSaidProps) {
  if (!isScaled) return <p>{words.noScale}</p>;
  if (!truth) return <p>{words.beyond}</p>;
  const { straight, square, length } = truth;
  const off = (mm: number) => writeLength(mm, { shownIn, step: finestStep(shownIn) });
  const over = (mm: number) => writeLength(mm, { shownIn });
  const other = ruled.findIndex(({ id }) => id === line.squareTo);
  return (
    <>
      {straight && <p>{words.straight(off(straight.off), over(straight.over))}</p>}
      {!straight && <p>{words.endsOnly(over(length))}</p>}
      {square && <p>{words.square(words.letter(other), off(square.off), over(square.over))}</p>}
    </>
  );
}

interface SquareToProps {
  readonly line: RuledLine;
  readonly ruled: readonly RuledLine[];
  readonly diagramId: string;
}

function SquareTo({ line, ruled, diagramId }: SquareToProps) {
  const others = ruled.flatMap(({ id }, index) =>
    id === line.id ? [] : [{ value: id, words: words.line(words.letter(index)) }],
  );
  if (others.length === 0) return null;
  return (
    <Pick
      label={words.squareTo}
      value={line.squareTo ?? ''}
      options={[{ value: '', words: words.none }, ...others]}
      onChange={(id) => putSquareTo(diagramId, line, id)}
    />
  );
}
