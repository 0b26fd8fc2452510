import { useCallback, useEffect, useRef, useState } from 'react';
import type { DiagramFinding } from '../../core/diagram/diagram-findings';
import type { DiagramMap } from '../../core/diagram/diagram-map';
import type { NotSquared } from '../../core/diagram/squared-plane';
import type { Diagram, StatedLength } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import { MEASURES } from '../../core/garment/measure';
import { currentSet, measureOf } from '../../core/garment/measure-value';
import type { ReadyPicture } from '../photo/picture-store';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { diagramWords } from '../words/diagram';
import { BarFields, type BarSaid } from './bar-fields';
import { putLength, sayWhoFollowed } from './change-diagram';
import { type FreshLine, useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { KnownLengthEntry } from './known-length-entry';
import { middleLine } from './middle-line';
import { firstShare, SaysFields } from './says-fields';
import { ScannedSize } from './scanned-size';
import { TickSwitch } from './tick-switch';

const words = diagramWords.known;

interface KnownCardProps {
  readonly garment: Garment;
  readonly diagram: Diagram;
  readonly map: DiagramMap | NotSquared;
  readonly photo: ReadyPicture | undefined;
  readonly findings: readonly DiagramFinding[];
}

/** The second step: what is known of sizes. */
export function KnownCard({ garment, diagram, map, photo, findings }: KnownCardProps) {
  const { drawing, fresh } = useDesk();
  const freshHere = fresh?.diagramId === diagram.id && !drawing ? fresh : undefined;
  const set = currentSet(garment);
  const taken = MEASURES.filter((name) => measureOf(set, name) !== undefined);
  return (
    <Card title={words.title} about="known-lengths" aside={diagram.knownLengths.length || undefined}>
      <p>{words.help}</p>
      {drawing?.what === 'length' && (
        <Note
          tone="plain"
          action={{
            words: words.byNumbers,
            onPress: () => useDesk.setState({ drawing: undefined, fresh: middleLine(diagram) }),
          }}
        >
          {drawing.from ? words.drawingSecond : words.drawing}
        </Note>
      )}
      {!drawing && !freshHere && (
        <Button
          icon="ruler"
          step="known-length second-length"
          tone={diagram.knownLengths.length === 0 ? 'chalk' : 'plain'}
          onPress={() =>
            useDesk.setState({ drawing: { what: 'length', from: undefined }, fresh: undefined, corner: undefined })
          }
        >
          {words.draw}
        </Button>
      )}
      {photo && <TickSwitch photo={photo} />}
      {!drawing && !freshHere && diagram.onPaper && diagram.knownLengths.length === 0 && (
        <ScannedSize diagram={diagram} onPaper={diagram.onPaper} shownIn={garment.shownIn} />
      )}
      {freshHere && <FreshLength line={freshHere} shownIn={garment.shownIn} taken={taken} photo={photo} />}
      <ol className={styles.lengths}>
        {diagram.knownLengths.map((known, index) => (
          <KnownLengthEntry
            key={known.id}
            {...{ known, index, garment, diagram, map, taken, photo }}
            findings={findings.filter(({ place }) => place.kind === 'diagram' && place.knownLengthId === known.id)}
          />
        ))}
      </ol>
    </Card>
  );
}

/** Shows the line just drawn divided into so many intervals, or undivided. */
function showIntervals(intervals: number | undefined): void {
  const { fresh } = useDesk.getState();
  if (!fresh) return;
  const { intervals: _, ...line } = fresh;
  useDesk.setState({ fresh: intervals === undefined ? line : { ...line, intervals } });
}

interface FreshLengthProps {
  readonly line: FreshLine;
  readonly shownIn: Garment['shownIn'];
  readonly taken: Parameters<typeof firstShare>[0];
  readonly photo: ReadyPicture | undefined;
}

/** The line just drawn asks how long it is; nothing is in the garment before that is said. */
function FreshLength({ line, shownIn, taken, photo }: FreshLengthProps) {
  const [kind, setKind] = useState<StatedLength['kind']>('length');
  const [share, setShare] = useState(() => firstShare(taken));
  const [bar, setBar] = useState<BarSaid>({ intervals: undefined, each: undefined });
  const asks = useRef<HTMLDivElement>(null);

  useEffect(() => {
    asks.current?.scrollIntoView({ block: 'nearest' });
    asks.current?.querySelector<HTMLInputElement>('input:not([type=radio])')?.focus();
  }, []);

  const sayBar = useCallback((said: BarSaid) => {
    setBar(said);
    showIntervals(said.intervals);
  }, []);

  function take(says: StatedLength) {
    const id = newId();
    const { garment, edit } = useGarment.getState();
    const { diagramId, from, to } = line;
    edit(diagramWords.labels.addLength, putLength(diagramId, { id, from, to, says }));
    sayWhoFollowed(garment);
    useDesk.setState({ fresh: undefined });
    useTable.getState().choose({ kind: 'known-length', diagramId, knownLengthId: id });
  }

  /** A length is taken as its field is left, which not every browser does for a press on a button. */
  function leaveField() {
    const field = asks.current?.querySelector<HTMLInputElement>('input:not([type=radio])');
    field?.focus();
    if (field?.value.trim() !== '') field?.blur();
  }

  return (
    <div ref={asks} className={styles.fresh}>
      <h3>{words.fresh}</h3>
      <SaysFields
        says={kind === 'share' ? share : undefined}
        {...{ shownIn, taken, kind }}
        onKind={(next) => {
          setKind(next);
          showIntervals(next === 'bar' ? bar.intervals : undefined);
        }}
        onChange={(says) => (says.kind === 'length' ? take(says) : says.kind === 'share' && setShare(says))}
        bar={
          <BarFields
            {...{ photo, line, shownIn }}
            said={bar}
            countsAtOnce
            onSaid={sayBar}
            onEnds={(ends) => useDesk.setState({ fresh: { ...line, ...ends } })}
          />
        }
      />
      <div className={styles.actions}>
        {kind === 'length' && (
          <Button tone="chalk" onPress={leaveField}>
            {words.take}
          </Button>
        )}
        {kind === 'share' && (
          <Button tone="chalk" onPress={() => take(share)}>
            {words.take}
          </Button>
        )}
        {kind === 'bar' && (
          <Button
            tone="chalk"
            disabled={bar.each === undefined}
            onPress={() =>
              bar.each !== undefined && take({ kind: 'bar', intervals: bar.intervals ?? 1, each: bar.each })
            }
          >
            {words.take}
          </Button>
        )}
        <Button onPress={() => useDesk.setState({ fresh: undefined })}>{words.giveUp}</Button>
      </div>
    </div>
  );
}
