import type { DrawingStep } from '../../../core/paper/drawing-steps';
import type { PaperWords } from '../../../core/paper/paper-words';

/** Words of the screen that tells one point after another to someone on her knees on brown paper. */
export const byPointsWords = {
  label: (piece: string) => `${piece || 'Piece without a name'}, point by point`,
  close: 'Close',
  back: 'Back',
  done: 'Drawn, next',
  doneLast: 'Drawn, that is all',
  checked: 'It measures so, next',
  next: 'Pass over',
  nextDone: 'Next',
  undo: 'Not drawn yet',
  isDone: 'drawn',
  of: (step: number, all: number, done: number) => `${step} of ${all} · ${done} done`,
  ahead: 'To the first not drawn',
  anew: 'Begin anew',
  all: 'All points',
  one: 'One point',
  changed: (count: number) =>
    `The piece was changed after ${count === 1 ? '1 step was' : `${count} steps were`} done. Those ticks are gone: look over what is on the paper.`,
  finished: 'Everything is drawn. Join the corners, and draw the curves smoothly through their points.',
  keys: 'Keys: Enter or Space for drawn, → next, ← back.',
  map: (piece: string) => `${piece || 'Piece without a name'} on its squares; the point in hand is ringed`,
  awake: {
    asking: '',
    kept: 'The screen stays awake.',
    refused: 'The browser does not keep the screen awake (low battery does that): set a longer rest time.',
    cannot: 'This browser cannot keep the screen awake: set a longer rest time on the device.',
  },
  rightAngle: 'The right angle',
  frame: 'The whole square',
  measure: 'Check',
} as const;

/** What is done in a step: its name, two figures with what they are, and a line more where it needs one. */
export interface StepSaid {
  readonly name: string;
  readonly figures: readonly { readonly label: string; readonly figure: string }[];
  readonly more?: string;
}

/** The step in words. `unit` is said once, beside the figures. */
export function stepSaid(step: DrawingStep, paper: PaperWords, byLine: boolean, unit: string): StepSaid {
  const { squares, length } = paper;
  const figure = (label: string, mm: number) => ({ label, figure: `${paper.figure(mm)} ${unit}` });
  switch (step.kind) {
    case 'right-angle': {
      const { across, down, apart } = step.proof.corner;
      return {
        name: byPointsWords.rightAngle,
        figures: byLine
          ? [figure('along', down), figure('out', across), figure('mark to mark', apart)]
          : [figure('across', across), figure('down', down), figure('mark to mark', apart)],
        more: byLine
          ? 'Mark the first two from the start of the base line; then the marks must lie so far apart.'
          : 'Mark the first two from the zero, one along each line; then the marks must lie so far apart.',
      };
    }
    case 'frame': {
      const { across, down, diagonal } = step.proof.frame;
      return {
        name: byPointsWords.frame,
        figures: [figure('across', across), figure('down', down), figure('both diagonals', diagonal)],
        more: 'The rectangle round all squares; its diagonals must be alike.',
      };
    }
    case 'point':
    case 'mark': {
      const { across, down, off } = step.kind === 'point' ? step.point : step.mark;
      return {
        name: step.kind === 'point' ? step.point.name : squares.mark(step.mark.kind, step.mark.text),
        figures: byLine
          ? [figure('along', off.along), figure('out', off.out)]
          : [figure('across', across), figure('down', down)],
      };
    }
    case 'measure':
      return {
        name: byPointsWords.measure,
        figures: [{ label: squares.straight(step.length.from, step.length.to), figure: length(step.length.length) }],
      };
  }
}
