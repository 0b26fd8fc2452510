import { useEffect, useRef, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { markOf } from '../../core/garment/version-mark';
import { type DrawingStep, drawingSteps } from '../../core/paper/drawing-steps';
import { printedSquaresOf } from '../../core/paper/printed-squares';
import { squaresSheet } from '../../core/paper/squares-sheet';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { useAwake } from '../ui/use-awake';
import { byPointsWords as words } from '../words/by-points';
import { paperSheetWords } from '../words/paper-sheet';
import { AllPoints } from './all-points';
import styles from './by-points.module.css';
import { OnePoint } from './one-point';
import { PointsMap } from './points-map';
import { useTicks } from './use-ticks';

/** So many squares can be told apart on the map of any screen. */
const ON_MAP = { across: 30, down: 40 };

interface ByPointsProps {
  readonly garment: Garment;
  readonly piece: Piece;
  readonly onClose: () => void;
}

/** A piece told point by point over the whole screen, in letters to be read from where one stands. */
export function ByPoints({ garment, piece, onClose }: ByPointsProps) {
  const { paper, shownIn } = garment;
  const byLine = paper.squares?.from === 'base-line';
  const sheet = squaresSheet(piece, { shownIn, step: paper.step, most: ON_MAP, choice: paper.squares });
  const steps = drawingSteps(sheet, byLine);
  const paperWords = paperSheetWords(shownIn, paper.step);
  const ticks = useTicks(garment.id, piece.id, markOf(printedSquaresOf(piece).mark));
  const firstOpen = steps.findIndex(({ key }) => !ticks.has(key));
  const [at, setAt] = useState(Math.max(0, firstOpen));
  const [list, setList] = useState(false);
  const awake = useAwake();
  const screen = useRef<HTMLDialogElement>(null);
  useEffect(() => screen.current?.showModal(), []);
  const step = steps[at] as DrawingStep;
  const go = (to: number) => setAt(Math.min(steps.length - 1, Math.max(0, to)));
  const isAll = firstOpen < 0;

  function drawn() {
    ticks.set(step.key, true);
    go(at + 1);
  }

  return (
    <dialog
      ref={screen}
      className={styles.screen}
      aria-label={words.label(piece.name)}
      onClose={onClose}
      onKeyDown={(event) => {
        if (event.key === 'ArrowRight') go(at + 1);
        else if (event.key === 'ArrowLeft') go(at - 1);
      }}
    >
      <header className={styles.head}>
        <strong>{words.label(piece.name)}</strong>
        <span>{words.of(at + 1, steps.length, steps.filter(({ key }) => ticks.has(key)).length)}</span>
        <Button icon={list ? 'square' : 'more'} pressed={list} onPress={() => setList(!list)}>
          {list ? words.one : words.all}
        </Button>
        <Button icon="close" onPress={() => screen.current?.close()}>
          {words.close}
        </Button>
      </header>
      {ticks.lost > 0 && <Note tone="warn">{words.changed(ticks.lost)}</Note>}
      {isAll && <Note tone="good">{words.finished}</Note>}
      {list ? (
        <AllPoints
          {...{ steps, paperWords, byLine, shownIn, ticks, at }}
          onChoose={(index) => {
            go(index);
            setList(false);
          }}
        />
      ) : (
        <div className={styles.middle}>
          <PointsMap piece={piece} sheet={sheet} step={step} byLine={byLine} has={ticks.has} />
          <OnePoint {...{ step, paperWords, byLine, shownIn }} isDone={ticks.has(step.key)} />
        </div>
      )}
      <footer className={styles.foot}>
        <Button icon="left" disabled={at === 0} onPress={() => go(at - 1)}>
          {words.back}
        </Button>
        {ticks.has(step.key) ? (
          <>
            <Button onPress={() => ticks.set(step.key, false)}>{words.undo}</Button>
            <Button tone="chalk" icon="right" disabled={at === steps.length - 1} onPress={() => go(at + 1)}>
              {words.nextDone}
            </Button>
          </>
        ) : (
          <>
            <Button disabled={at === steps.length - 1} onPress={() => go(at + 1)}>
              {words.next}
            </Button>
            <Button tone="chalk" icon="done" onPress={drawn}>
              {doneWords(step, at === steps.length - 1)}
            </Button>
          </>
        )}
      </footer>
      <p className={styles.small}>
        <span className={styles.keys}>{words.keys}</span> {words.awake[awake]}
        {!isAll && firstOpen !== at && (
          <Button tone="quiet" onPress={() => go(firstOpen)}>
            {words.ahead}
          </Button>
        )}
        {ticks.count > 0 && (
          <Button
            tone="quiet"
            onPress={() => {
              ticks.clear();
              go(0);
            }}
          >
            {words.anew}
          </Button>
        )}
      </p>
    </dialog>
  );
}

function doneWords({ kind }: DrawingStep, isLast: boolean): string {
  if (isLast) return words.doneLast;
  return kind === 'point' || kind === 'mark' ? words.done : words.checked;
}
