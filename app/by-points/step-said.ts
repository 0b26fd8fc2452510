import type { DrawingStep } from '../../core/paper/drawing-steps';
import type { PaperWords } from '../../core/paper/paper-words';
import { byPointsWords as words } from '../words/by-points';

/** What is done in a step: its name, two figures with what they are, and a line more where it needs one. */
interface StepSaid {
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
        name: words.rightAngle,
        figures: byLine
          ? [figure(words.along, down), figure(words.out, across), figure(words.apart, apart)]
          : [figure(words.across, across), figure(words.down, down), figure(words.apart, apart)],
        more: byLine ? words.angleFromLine : words.angleFromZero,
      };
    }
    case 'frame': {
      const { across, down, diagonal } = step.proof.frame;
      return {
        name: words.frame,
        figures: [figure(words.across, across), figure(words.down, down), figure(words.diagonals, diagonal)],
        more: words.frameHelp,
      };
    }
    case 'point':
    case 'mark': {
      const { across, down, off } = step.kind === 'point' ? step.point : step.mark;
      return {
        name: step.kind === 'point' ? step.point.name : squares.mark(step.mark.kind, step.mark.text),
        figures: byLine
          ? [figure(words.along, off.along), figure(words.out, off.out)]
          : [figure(words.across, across), figure(words.down, down)],
      };
    }
    case 'measure':
      return {
        name: words.measure,
        figures: [{ label: squares.straight(step.length.from, step.length.to), figure: length(step.length.length) }],
      };
  }
}
