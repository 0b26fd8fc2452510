import type * as english from '../en/by-points';
import type { Said } from '../said';

const named = (piece: string) => piece || 'Teil ohne Namen';

export const byPointsWords: Said<typeof english.byPointsWords> = {
  label: (piece) => `${named(piece)}, Punkt für Punkt`,
  close: 'Schließen',
  back: 'Zurück',
  done: 'Gezeichnet, weiter',
  doneLast: 'Gezeichnet, das war alles',
  checked: 'Stimmt, weiter',
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
    `Das Teil wurde geändert, nachdem ${count === 1 ? '1 Schritt fertig war' : `${count} Schritte fertig waren`}. Diese Häkchen sind weg: Sieh durch, was auf dem Papier steht.`,
  finished: 'Alles ist gezeichnet. Verbinde die Ecken und ziehe die Kurven glatt durch ihre Punkte.',
  keys: 'Tasten: Eingabe oder Leertaste für gezeichnet, → weiter, ← zurück.',
  map: (piece) => `${named(piece)} auf seinen Quadraten; der Punkt in Arbeit ist eingekreist`,
  awake: {
    asking: '',
    kept: 'Der Bildschirm bleibt wach.',
    refused:
      'Der Browser hält den Bildschirm nicht wach (das kommt bei schwachem Akku vor): Stelle eine längere Ruhezeit ein.',
    cannot: 'Dieser Browser kann den Bildschirm nicht wach halten: Stelle am Gerät eine längere Ruhezeit ein.',
  },
  rightAngle: 'Der rechte Winkel',
  frame: 'Das ganze Rechteck',
  measure: 'Prüfen',
  along: 'entlang',
  out: 'hinaus',
  across: 'rechts',
  down: 'unten',
  apart: 'Marke zu Marke',
  diagonals: 'beide Diagonalen',
  angleFromLine:
    'Markiere die ersten beiden vom Anfang der Grundlinie aus; dann müssen die Marken so weit auseinanderliegen.',
  angleFromZero:
    'Markiere die ersten beiden von der Null aus, eine auf jeder Linie; dann müssen die Marken so weit auseinanderliegen.',
  frameHelp: 'Das Rechteck um alle Quadrate; seine Diagonalen müssen gleich sein.',
};
