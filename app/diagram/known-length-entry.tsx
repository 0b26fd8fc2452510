import { useEffect, useRef } from 'react';
import type { DiagramFinding } from '../../core/diagram/diagram-findings';
import type { DiagramMap } from '../../core/diagram/diagram-map';
import type { NotSquared } from '../../core/diagram/squared-plane';
import { fullSizeLength } from '../../core/diagram/stated-length';
import type { Diagram, KnownLength, StatedLength } from '../../core/garment/diagram';
import { putKnownLength, removeKnownLength } from '../../core/garment/diagram-edits';
import type { Garment } from '../../core/garment/garment';
import type { MeasureName } from '../../core/garment/measure';
import { currentSet } from '../../core/garment/measure-value';
import type { ReadyPicture } from '../photo/picture-store';
import { useGuide } from '../state/guide-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { diagramWords } from '../words/diagram';
import { measureNames } from '../words/measures';
import { writeLength } from '../words/written';
import { BarFields } from './bar-fields';
import { editDiagram } from './change-diagram';
import { useDesk } from './desk-store';
import styles from './diagram-room.module.css';
import { LengthEnds } from './end-fields';
import { Findings } from './findings-list';
import { firstShare, SaysFields } from './says-fields';

const words = diagramWords.known;

interface KnownLengthEntryProps {
  readonly known: KnownLength;
  readonly index: number;
  readonly garment: Garment;
  readonly diagram: Diagram;
  readonly map: DiagramMap | NotSquared;
  readonly findings: readonly DiagramFinding[];
  readonly taken: readonly MeasureName[];
  readonly photo: ReadyPicture | undefined;
}

/** One known length: what it says, what it measures now, and by how much the two disagree. */
export function KnownLengthEntry(props: KnownLengthEntryProps) {
  const { known, index, garment, diagram, map, findings, taken, photo } = props;
  const { shownIn } = garment;
  const chosen = useTable((table) => table.chosen);
  const isChosen = chosen.kind === 'known-length' && chosen.knownLengthId === known.id;
  const number = index + 1;
  const entry = useRef<HTMLLIElement>(null);
  useEffect(() => {
    // Chosen on the picture it comes into sight; chosen by a press on it, it must not move under that press.
    if (isChosen && !entry.current?.contains(document.activeElement))
      entry.current?.scrollIntoView({ block: 'nearest' });
  }, [isChosen]);
  const full = fullSizeLength(known.says, currentSet(garment));

  function put(says: StatedLength) {
    editDiagram(diagramWords.labels.changeLength, diagram.id, (now) => putKnownLength(now, { ...known, says }));
  }

  function remove() {
    editDiagram(diagramWords.labels.removeLength, diagram.id, (now) => removeKnownLength(now, known.id));
  }

  function choose() {
    useDesk.setState({ corner: undefined });
    useTable.getState().choose({ kind: 'known-length', diagramId: diagram.id, knownLengthId: known.id });
  }

  return (
    <li ref={entry} className={styles.length} data-chosen={isChosen || undefined} onFocus={choose}>
      <div className={styles.lengthHead}>
        <h3>{words.card(number)}</h3>
        <Button icon="bin" tone="quiet" title={words.remove(number)} onPress={remove} />
      </div>
      <SaysFields
        says={known.says}
        {...{ shownIn, taken }}
        kind={known.says.kind}
        onKind={(kind) => {
          const length = full.kind === 'full-size' ? full.length : 254;
          if (kind === 'share') put(firstShare(taken));
          else put(kind === 'bar' ? { kind, intervals: 1, each: length } : { kind, length });
        }}
        onChange={put}
        bar={
          known.says.kind === 'bar' && (
            <BarFields
              {...{ photo, shownIn }}
              line={known}
              said={known.says}
              countsAtOnce={false}
              onSaid={({ intervals = 1, each }) => each !== undefined && put({ kind: 'bar', intervals, each })}
              onEnds={({ from, to }) =>
                editDiagram(diagramWords.labels.moveLength, diagram.id, (now) =>
                  putKnownLength(now, { ...known, from, to }),
                )
              }
            />
          )
        }
      />
      {known.says.kind === 'share' && full.kind === 'full-size' && (
        <p>{words.shareComes(writeLength(full.length, { shownIn }))}</p>
      )}
      {full.kind === 'measure-missing' ? (
        <Note tone="stop" action={{ words: words.toWearer, onPress: toMeasures }}>
          {words.notMeasured(measureNames[full.measure].toLowerCase())}
        </Note>
      ) : (
        <Findings findings={findings} />
      )}
      <Measures {...{ known, map, shownIn }} disagrees={findings.length > 0} />
      <LengthEnds diagramId={diagram.id} known={known} />
    </li>
  );
}

/** To the Wearer room, with what is not measured yet in sight. */
function toMeasures(): void {
  useGuide.setState({ pointedAt: 'measures' });
  useTable.getState().goTo('wearer');
}

interface MeasuresProps {
  readonly known: KnownLength;
  readonly map: DiagramMap | NotSquared;
  readonly shownIn: Garment['shownIn'];
  /** A finding says so already. */
  readonly disagrees: boolean;
}

/** What the line measures at the scale that fits all known lengths best. */
function Measures({ known, map, shownIn, disagrees }: MeasuresProps) {
  const scale = map.kind === 'map' ? map.scale : undefined;
  const line = scale?.lines.find(({ id }) => id === known.id);
  if (!scale || !line) return null;
  const write = (length: number) => writeLength(length, { shownIn });
  // No other line runs its way: it measures what it says by the making, and that proves nothing.
  if (line.byOthers === undefined) return <p>{words.byMaking(write(line.measures))}</p>;
  const off = line.measures - line.states;
  const near = write(line.measures) === write(line.states);
  const sentence = near
    ? words.exact(write(line.measures))
    : words.measures(
        write(line.measures),
        off > 0 ? words.over(write(off)) : words.under(write(-off)),
        words.percent(off / line.states),
      );
  return (
    <>
      {!disagrees && <Note tone="good">{sentence}</Note>}
      {map.kind === 'map' && map.scaleBy === 'own' && (
        <p className={styles.hint}>{words.asRead(write(line.byOthers))}</p>
      )}
    </>
  );
}
