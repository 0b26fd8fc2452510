import { useCallback, useMemo } from 'react';
import { type DiagramFinding, diagramFindings } from '../../core/diagram/diagram-findings';
import type { Diagram } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import { currentSet } from '../../core/garment/measure-value';
import { CleanUpChoice } from '../photo/clean-up-choice';
import { useDiagramPictures } from '../photo/use-pictures';
import { useGarment } from '../state/garment-store';
import { diagramInHand, useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Choice } from '../ui/choice';
import { RoomLayout } from '../ui/room-layout';
import tableStyles from '../ui/room-table.module.css';
import { hushNow } from '../ui/say';
import { useEscape } from '../ui/use-escape';
import { diagramWords as words } from '../words/diagram';
import { bringIn, useBringingIn } from './bring-in';
import { CheckCard } from './check-card';
import { useDesk } from './desk-store';
import { DiagramCanvas, OtherCanvas } from './diagram-canvas';
import styles from './diagram-room.module.css';
import { EmptyTable } from './empty-table';
import { Findings } from './findings-list';
import { KnownCard } from './known-card';
import { ListCard } from './list-card';
import { leaveMatching } from './matching';
import { PageChoice } from './page-choice';
import { SourceCard } from './source-card';
import { SquareCard } from './square-card';
import { TogetherCard } from './together-card';
import { usePictureInput } from './use-picture-input';

/** The Diagram room: a picture comes in, is laid flat and gets its scale. */
export function DiagramRoom() {
  const garment = useGarment((state) => state.garment);
  const inHand = useTable((table) => table.diagramInHand);
  const onFile = useCallback((file: File) => void bringIn(file), []);
  const { over, handlers } = usePictureInput(onFile);
  const book = useBringingIn((state) => state.book);
  if (!garment) return null;
  const diagram = diagramInHand(garment.diagrams, inHand);
  return (
    <div className={styles.room} {...handlers}>
      {book ? (
        <PageChoice {...book} shownIn={garment.shownIn} />
      ) : diagram ? (
        <DiagramDesk garment={garment} diagram={diagram} />
      ) : (
        <RoomLayout table={<EmptyTable />} notebook={<SourceCard source={garment.source} openAtFirst />} />
      )}
      {over && <p className={styles.dropHere}>{words.dropHere}</p>}
    </div>
  );
}

interface DiagramDeskProps {
  readonly garment: Garment;
  readonly diagram: Diagram;
}

function DiagramDesk({ garment, diagram }: DiagramDeskProps) {
  const set = currentSet(garment);
  const { diagrams } = garment;
  const pictures = useDiagramPictures(diagram, set, diagrams);
  const findings = useMemo(() => diagramFindings(diagram, set, diagrams), [diagram, set, diagrams]);
  const { map } = pictures;
  const { trouble } = pictures.pictures;
  const matching = useDesk((desk) => desk.matching);
  const other = matching?.here && diagrams.find(({ id }) => id === matching.otherId);
  const asksLength = useDesk(({ fresh, drawing, held }) => fresh?.diagramId === diagram.id && !drawing && !held);
  const list = <ListCard key="list" diagram={diagram} diagrams={diagrams} pictures={pictures.pictures} />;
  return (
    <RoomLayout
      tableFirst
      asks={asksLength}
      table={
        <div className={tableStyles.table}>
          <OverTable diagramId={diagram.id} findings={findings} />
          <div className={tableStyles.canvas}>
            {other ? (
              <OtherCanvas diagram={other} garment={garment} />
            ) : (
              <DiagramCanvas diagram={diagram} pictures={pictures} />
            )}
          </div>
        </div>
      }
      notebook={
        <>
          {trouble && list}
          <SquareCard {...{ diagram, pictures, findings }} shownIn={garment.shownIn} />
          <KnownCard {...{ garment, diagram, map, findings }} photo={pictures.pictures.photo} />
          <TogetherCard {...{ diagram, diagrams, map }} shownIn={garment.shownIn} />
          <CheckCard {...{ diagram, map, findings }} photo={pictures.pictures.photo} shownIn={garment.shownIn} />
          <SourceCard source={garment.source} />
          {!trouble && list}
        </>
      }
    />
  );
}

/** Nothing is drawn after all. */
function leaveDrawing(): void {
  useDesk.setState({ drawing: undefined, fresh: undefined });
}

interface OverTableProps {
  readonly diagramId: string;
  readonly findings: readonly DiagramFinding[];
}

/** The same picture as the camera saw it, or laid flat, cleaned up or not; while a line is drawn, how to draw it. */
function OverTable({ diagramId, findings }: OverTableProps) {
  const { showing, drawing, matching } = useDesk();
  const wrong = findings.filter(({ kind }) => kind === 'not-squared-up');
  const garment = useGarment((state) => state.garment);
  useEscape(drawing !== undefined, leaveDrawing);
  useEscape(matching !== undefined, leaveMatching);
  if (matching) {
    const other = garment?.diagrams.find(({ id }) => id === matching.otherId);
    const ask = matching.here
      ? words.together.askThere(words.together.nameOf(other?.name ?? ''))
      : words.together.askHere;
    return (
      <div className={styles.over}>
        <p>{ask}</p>
        <Button onPress={leaveMatching}>{words.known.giveUp}</Button>
      </div>
    );
  }
  if (drawing) {
    return (
      <div className={styles.over}>
        <p>{drawing.from ? words.known.drawingSecond : words.known.drawing}</p>
        <Button onPress={leaveDrawing}>{words.known.giveUp}</Button>
      </div>
    );
  }
  return (
    <div className={styles.over}>
      <Choice
        label={words.showing}
        labelHidden
        value={showing}
        options={[
          { value: 'photo', words: words.photoView },
          { value: 'squared', words: words.squaredView },
        ]}
        onChange={(next) => {
          hushNow();
          useDesk.setState({ showing: next });
        }}
      />
      <CleanUpChoice diagramId={diagramId} />
      {showing === 'squared' && wrong.length > 0 && (
        <div className={styles.cannot}>
          <p>{words.cannotSquare}</p>
          <Findings findings={wrong} />
        </div>
      )}
    </div>
  );
}
