import type * as english from '../en/by-points';
import type { Said } from '../said';

const named = (piece: string) => piece || 'Teil ohne Namen';

export const byPointsWords: Said<typeof english.byPointsWords> = {
  label: (piece) => `${named(piece)}, Punkt für Punkt`,
  close: 'Schließen',
  back: 'Zurück',
  done: 'Gezeichnet, weiter',
  doneLast: 'Gezeichnet, das war alles',
  checked: 'Es stimmt, weiter',
  next: 'Überspringen',
  nextDone: 'Weiter',
  undo: 'Doch nicht gezeichnet',
  isDone: 'gezeichnet',
  of: (step, all, done) => `${step} von ${all} · ${done} fertig`,
  ahead: 'Zum ersten offenen',
  anew: 'Neu beginnen',
  all: 'Alle Punkte',
  one: 'Ein Punkt',
  changed: (count) =>
    `Das Teil wurde geändert, nachdem ${count === 1 ? '1 Schritt fertig war' : `${count} Schritte fertig waren`}. Diese Häkchen sind weg: sieh durch, was auf dem Papier steht.`,
  finished: 'Alles ist gezeichnet. Verbinde die Ecken und ziehe die Kurven glatt durch ihre Punkte.',
  keys: 'Tasten: Eingabe oder Leertaste für gezeichnet, → weiter, ← zurück.',
  map: (piece) => `${named(piece)} auf seinen Quadraten; der Punkt in Arbeit ist eingekreist`,
  awake: {
    asking: '',
    kept: 'Der Bildschirm bleibt wach.',
    refused:
      'Der Browser hält den Bildschirm nicht wach (das kommt bei schwachem Akku vor): stelle eine längere Ruhezeit ein.',
    cannot: 'Dieser Browser kann den Bildschirm nicht wach halten: stelle am Gerät eine längere Ruhezeit ein.',
  },
  rightAngle: 'Der rechte Winkel',
  frame: 'Das ganze Rechteck',
  measure: 'Prüfen',
};

export const stepSaid: typeof english.stepSaid = (step, paper, byLine, unit) => {
  const { squares, length } = paper;
  const figure = (label: string, mm: number) => ({ label, figure: `${paper.figure(mm)} ${unit}` });
  switch (step.kind) {
    case 'right-angle': {
      const { across, down, apart } = step.proof.corner;
      return {
        name: byPointsWords.rightAngle,
        figures: byLine
          ? [figure('entlang', down), figure('hinaus', across), figure('Marke zu Marke', apart)]
          : [figure('quer', across), figure('abwärts', down), figure('Marke zu Marke', apart)],
        more: byLine
          ? 'Markiere die ersten beiden vom Anfang der Grundlinie aus; dann müssen die Marken so weit auseinanderliegen.'
          : 'Markiere die ersten beiden von der Null aus, eine auf jeder Linie; dann müssen die Marken so weit auseinanderliegen.',
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
};
