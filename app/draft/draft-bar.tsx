import { useId, useState } from 'react';
import { halvesOf } from '../../core/diagram/halves';
import type { Diagram } from '../../core/garment/diagram';
import { inches, type ShownIn } from '../../core/units/inch';
import { finestStep } from '../../core/units/write-length';
import { CleanUpChoice } from '../photo/clean-up-choice';
import { useGarment } from '../state/garment-store';
import { useShownIn } from '../state/shown-in';
import { diagramInHand, useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Choice } from '../ui/choice';
import { Pick } from '../ui/pick';
import { Switch } from '../ui/switch';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import styles from './draft.module.css';
import { type MarkKind, type Mode, useDraft } from './draft-store';
import { canClose, type Trace } from './trace';
import { finishTrace, giveUpTrace, takeBackPoint } from './trace-tool';

const MODES: readonly Mode[] = ['adjust', 'trace', 'mark'];
const MARKS: readonly MarkKind[] = ['notch', 'dart', 'grain', 'label'];

/** What the pointer does now, and what it holds to. */
export function DraftBar() {
  const mode = useDraft((draft) => draft.mode);
  const [more, setMore] = useState(false);
  return (
    <div className={styles.bar} data-more={more || undefined} data-mode={mode}>
      <div className={styles.modes}>
        <Choice
          label={words.modes}
          labelHidden
          value={mode}
          options={MODES.map((value) => ({ value, words: words.mode[value] }))}
          onChange={(next) => {
            setMore(false);
            changeMode(next);
          }}
        />
      </div>
      <div className={styles.moreButton}>
        <Button icon="more" title={words.more} pressed={more} onPress={() => setMore(!more)} />
      </div>
      <div className={styles.settings}>
        <Snapping />
        <PictureSettings />
      </div>
      <div className={styles.toolRow} data-mode={mode}>
        {mode === 'trace' && <TraceRow />}
        {mode === 'mark' && <MarkRow />}
        {mode === 'adjust' && <p className={styles.help}>{words.modeHelp.adjust}</p>}
      </div>
    </div>
  );
}

function changeMode(mode: Mode): void {
  // What is traced so far waits; going back to tracing goes on with it.
  useDraft.setState({ mode, pointer: undefined, way: undefined, stroke: undefined });
}

function TraceRow() {
  const nextPoint = useDraft((draft) => draft.nextPoint);
  const trace = useDraft((draft) => draft.trace);
  const following = useDraft((draft) => draft.following);
  return (
    <>
      <Choice
        label={words.nextPoint}
        labelHidden
        value={nextPoint}
        options={[
          { value: 'corner', words: words.next.corner },
          { value: 'curve', words: words.next.curve },
        ]}
        onChange={(next) => useDraft.setState({ nextPoint: next })}
      />
      <Switch label={words.following} on={following} onChange={followLines} />
      <Button tone="chalk" icon="done" disabled={!mayClose(trace, following)} onPress={finishTrace}>
        <span className={styles.wideOnly}>{words.done}</span>
      </Button>
      <Button icon="undo" disabled={trace.length === 0} onPress={takeBackPoint}>
        <span className={styles.wideOnly}>{words.takeBack}</span>
      </Button>
      <div className={styles.cancel}>
        <Button icon="close" onPress={giveUpTrace}>
          {words.cancel}
        </Button>
      </div>
    </>
  );
}

function followLines(following: boolean): void {
  useDraft.setState({ following, way: undefined });
}

/** A line that is followed back to the first corner may bring the corners that are wanting. */
function mayClose(trace: Trace, following: boolean): boolean {
  return canClose(trace) || (following && trace.length >= 2);
}

function MarkRow() {
  const marking = useDraft((draft) => draft.marking);
  return (
    <>
      <Choice
        label={words.marking}
        labelHidden
        value={marking}
        options={MARKS.map((value) => ({ value, words: words.mark[value], icon: value }))}
        onChange={(next) => useDraft.setState({ marking: next })}
      />
      <p className={styles.help}>{words.markHelp[marking]}</p>
    </>
  );
}

const STEPS: Readonly<Record<ShownIn, readonly number[]>> = {
  in: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1].map(inches),
  cm: [1, 2, 5, 10, 20],
};

function Snapping() {
  const shownIn = useShownIn();
  const { snapping, setSnapping, snapStep, setSnapStep } = useTable();
  // A step of the other system stays in the list for as long as it is the one in use.
  const steps = STEPS[shownIn].includes(snapStep) ? STEPS[shownIn] : [snapStep, ...STEPS[shownIn]];
  return (
    <>
      <Switch label={words.snapping} on={snapping} onChange={setSnapping} />
      <Pick
        label={words.snapStep}
        labelHidden
        value={String(snapStep)}
        options={steps.map((step) => ({ value: String(step), words: words.everyStep(writeStep(step, shownIn)) }))}
        onChange={(value) => setSnapStep(Number(value))}
      />
    </>
  );
}

function writeStep(step: number, shownIn: ShownIn): string {
  return writeLength(step, { shownIn, step: finestStep(shownIn) });
}

const none: readonly Diagram[] = [];

/** Takes another picture in hand; the table comes to it unless it lies there already, as a half of what is seen. */
function takePicture(diagramId: string): void {
  const { diagramInHand: before, setView } = useTable.getState();
  const { diagrams = [] } = useGarment.getState().garment ?? {};
  const seen = diagramInHand(diagrams, before);
  const isSeen = seen && halvesOf(diagrams, seen.id).some(({ id }) => id === diagramId);
  useTable.setState({ diagramInHand: diagramId });
  if (!isSeen) setView('table', undefined);
}

function PictureSettings() {
  const id = useId();
  const diagrams = useGarment((state) => state.garment?.diagrams ?? none);
  const inHand = useTable((table) => diagramInHand(diagrams, table.diagramInHand)?.id);
  const { photoShown, setPhotoShown, photoStrength, setPhotoStrength, tracedShown, setTracedShown } = useTable();
  return (
    <div className={styles.picture}>
      <Switch label={words.photo} on={photoShown} onChange={setPhotoShown} />
      <label htmlFor={id} className="only-heard">
        {words.photoStrength}
      </label>
      <input
        id={id}
        className={styles.strength}
        type="range"
        min={10}
        max={100}
        step={5}
        value={Math.round(photoStrength * 100)}
        disabled={!photoShown}
        onChange={(event) => setPhotoStrength(Number(event.target.value) / 100)}
      />
      {photoShown && inHand !== undefined && diagrams.length > 1 && (
        <Pick
          label={words.whichPicture}
          labelHidden
          value={inHand}
          options={diagrams.map(({ id, name }, index) => ({ value: id, words: words.pictureOf(index + 1, name) }))}
          onChange={takePicture}
        />
      )}
      {photoShown && inHand !== undefined && <CleanUpChoice diagramId={inHand} />}
      <Switch label={words.asTraced} on={tracedShown} onChange={setTracedShown} />
    </div>
  );
}
