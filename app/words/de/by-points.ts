import type { DrawingStep } from '../../../core/paper/drawing-steps';
import type { PaperWords } from '../../../core/paper/paper-words';
import type * as english from '../en/by-points';
import type { Said } from '../said';

/** Words of the screen that tells one point after another to someone on her knees on brown paper. */
export const byPointsWords: Said<typeof english.byPointsWords> = {
  label: (piece: string) => `${piece || 'Teil ohne Namen'}, Punkt für Punkt`,
  close: 'Schließen',
  back: 'Zurück',
  done: 'Gezeichnet, weiter',
  doneLast: 'Gezeichnet, das war alles',
  checked: 'Es misst so, weiter',
  next: 'Übergehen',
  nextDone: 'Weiter',
  undo: 'Doch nicht gezeichnet',
  isDone: 'gezeichnet',
  of: (step: number, all: number, done: number) => `${step} von ${all} · ${done} getan`,
  ahead: 'Zum ersten nicht gezeichneten',
  anew: 'Neu beginnen',
  all: 'Alle Punkte',
  one: 'Ein Punkt',
  changed: (count: number) =>
    `Das Teil wurde geändert, nachdem ${count === 1 ? '1 Schritt getan war. Sein Haken ist' : `${count} Schritte getan waren. Ihre Haken sind`} weg: Sieh durch, was auf dem Papier steht.`,
  finished: 'Alles ist gezeichnet. Verbinde die Ecken und zeichne die Kurven glatt durch ihre Punkte.',
  keys: 'Tasten: Eingabe oder Leertaste für gezeichnet, → weiter, ← zurück.',
  map: (piece: string) => `${piece || 'Teil ohne Namen'} auf seinen Quadraten; um den Punkt in Arbeit liegt ein Ring`,
  awake: {
    asking: '',
    kept: 'Der Bildschirm bleibt wach.',
    refused: 'Der Browser hält den Bildschirm nicht wach (etwa bei schwachem Akku): Stelle eine längere Ruhezeit ein.',
    cannot: 'Dieser Browser kann den Bildschirm nicht wach halten: Stelle am Gerät eine längere Ruhezeit ein.',
  },
  rightAngle: 'Der rechte Winkel',
  frame: 'Das ganze Rechteck',
  measure: 'Prüfung',
};

/** The step in words. `unit` is said once, beside the figures. */
export function stepSaid(step: DrawingStep, paper: PaperWords, byLine: boolean, unit: string): english.StepSaid {
  const { squares, length } = paper;
  const figure = (label: string, mm: number) => ({ label, figure: `${paper.figure(mm)} ${unit}` });
  switch (step.kind) {
    case 'right-angle': {
      const { across, down, apart } = step.proof.corner;
      return {
        name: byPointsWords.rightAngle,
        figures: byLine
          ? [figure('entlang', down), figure('hinaus', across), figure('Zeichen zu Zeichen', apart)]
          : [figure('quer', across), figure('abwärts', down), figure('Zeichen zu Zeichen', apart)],
        more: byLine
          ? 'Zeichne die ersten zwei vom Anfang der Grundlinie aus an; dann müssen die Zeichen so weit auseinander liegen.'
          : 'Zeichne die ersten zwei von null aus an, eins auf jeder Linie; dann müssen die Zeichen so weit auseinander liegen.',
      };
    }
    case 'frame': {
      const { across, down, diagonal } = step.proof.frame;
      return {
        name: byPointsWords.frame,
        figures: [figure('quer', across), figure('abwärts', down), figure('beide Diagonalen', diagonal)],
        more: 'Das Rechteck um alle Quadrate; seine Diagonalen müssen gleich sein.',
      };
    }
    case 'point':
    case 'mark': {
      const { across, down, off } = step.kind === 'point' ? step.point : step.mark;
      return {
        name: step.kind === 'point' ? step.point.name : squares.mark(step.mark.kind, step.mark.text),
        figures: byLine
          ? [figure('entlang', off.along), figure('hinaus', off.out)]
          : [figure('quer', across), figure('abwärts', down)],
      };
    }
    case 'measure':
      return {
        name: byPointsWords.measure,
        figures: [{ label: squares.straight(step.length.from, step.length.to), figure: length(step.length.length) }],
      };
  }
}
