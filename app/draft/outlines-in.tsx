import { useRef, useState } from 'react';
import { laidBeside } from '../../core/blocks/lay-beside';
import type { FileReading, UnitsNotKnown } from '../../core/files/file-reading';
import { FILE_UNITS, type FileUnit, mmPerUnit } from '../../core/files/svg-units';
import { withNewPieces } from '../../core/garment/with-new-pieces';
import { useGarment } from '../state/garment-store';
import { useShownIn } from '../state/shown-in';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { ChooseFile } from '../ui/choose-file';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { fileFindingSentence, fileRefusalSentence, filesWords } from '../words/files';
import { writeLength } from '../words/written';
import { filesWork } from '../workers/files-calls';
import styles from './draft.module.css';

const words = filesWords.bringIn;

/** Nobody waits longer for a file (ms). */
const LONGEST = 20_000;

/** Outlines of an SVG or DXF file as pieces; the unit is asked for where the file does not say it. */
export function OutlinesIn() {
  const { state, read, take, stop, leave } = useOutlines();
  const shownIn = useShownIn();
  return (
    <>
      <ChooseFile words={words.button} accept=".svg,.dxf,image/svg+xml" onFile={read} />
      {state.kind === 'reading' && (
        <Note tone="plain" action={{ words: words.stop, onPress: stop }}>
          {words.reading}
        </Note>
      )}
      {state.kind === 'asking' && <UnitQuestion asked={state.asked} onTake={take} onLeave={leave} />}
      {state.kind === 'said' && <Note tone={state.tone}>{state.sentence}</Note>}
      {state.kind === 'read' &&
        state.findings.map((finding) => (
          <Note key={JSON.stringify(finding)} tone="warn">
            {fileFindingSentence(finding, shownIn)}
          </Note>
        ))}
    </>
  );
}

type State =
  | { readonly kind: 'idle' | 'reading' }
  | { readonly kind: 'asking'; readonly asked: UnitsNotKnown; readonly file: File }
  | { readonly kind: 'said'; readonly sentence: string; readonly tone: 'stop' | 'plain' }
  | { readonly kind: 'read'; readonly findings: Extract<FileReading, { kind: 'read' }>['findings'] };

function useOutlines() {
  const [state, setState] = useState<State>({ kind: 'idle' });
  const stopper = useRef<AbortController>(undefined);

  async function read(file: File, unit?: FileUnit) {
    const abort = new AbortController();
    stopper.current = abort;
    setState({ kind: 'reading' });
    let isLate = false;
    const clock = setTimeout(() => {
      isLate = true;
      abort.abort();
    }, LONGEST);
    const answer = await filesWork.call('read', { file, ...(unit ? { unit } : {}) }, { signal: abort.signal });
    clearTimeout(clock);
    if (answer.kind === 'units-not-known') setState({ kind: 'asking', asked: answer, file });
    else if (answer.kind === 'stopped') tell(isLate ? words.tooLong : words.stopped, isLate ? 'stop' : 'plain');
    else if (answer.kind === 'broken') tell(words.broken, 'stop');
    else if (answer.kind !== 'read') tell(fileRefusalSentence(answer), 'stop');
    else if (answer.pieces.length === 0 && answer.findings.length === 0) tell(words.none, 'stop');
    else add(answer);
  }

  function tell(sentence: string, tone: 'stop' | 'plain') {
    setState({ kind: 'said', sentence, tone });
    say(sentence);
  }

  function add({ pieces, findings }: Extract<FileReading, { kind: 'read' }>) {
    const laid = laidBeside(pieces.map(({ piece }) => piece));
    if (laid[0]) {
      useGarment.getState().edit(words.label, (garment) => withNewPieces(garment, laid));
      useTable.getState().choose({ kind: 'piece', pieceId: laid[0].id });
      say(words.done(laid.length));
    } else say(words.none);
    setState({ kind: 'read', findings });
  }

  return {
    state,
    read: (file: File) => void read(file),
    take: (unit: FileUnit) => state.kind === 'asking' && void read(state.file, unit),
    stop: () => stopper.current?.abort(),
    leave: () => setState({ kind: 'idle' }),
  };
}

interface UnitQuestionProps {
  readonly asked: UnitsNotKnown;
  readonly onTake: (unit: FileUnit) => void;
  readonly onLeave: () => void;
}

function UnitQuestion({ asked, onTake, onLeave }: UnitQuestionProps) {
  const shownIn = useShownIn();
  const [unit, setUnit] = useState<FileUnit>('mm');
  const write = (units: number) => writeLength(units * mmPerUnit[unit], { shownIn });
  return (
    <fieldset className={styles.group}>
      <legend>{words.unitTitle}</legend>
      <p className={styles.help}>{words.unitHelp(asked.across, asked.down)}</p>
      <Pick
        label={words.unit}
        value={unit}
        options={FILE_UNITS.map((value) => ({ value, words: words.units[value] }))}
        onChange={setUnit}
      />
      <p>{words.comesTo(write(asked.across), write(asked.down))}</p>
      <div className={styles.row}>
        <Button tone="chalk" onPress={() => onTake(unit)}>
          {words.take}
        </Button>
        <Button onPress={onLeave}>{words.leave}</Button>
      </div>
    </fieldset>
  );
}
