import type * as english from '../en/table';
import type { Said } from '../said';

export const tableWords: Said<typeof english.tableWords> = {
  nearer: 'Näher',
  farther: 'Weiter weg',
  fit: 'Alles zeigen',
  fitPiece: 'Das Teil zeigen',
  fitWidth: 'Breite füllen',
  back: 'Dahin zurück, wo ich war',
  moreViews: 'Mehr Ansichten',
  keys: 'Auf jedem Tisch, wo nichts anderes dabeisteht: Bild ab und Bild auf gehen von Punkt zu Punkt, mit Umschalt von Kante zu Kante. Ende und Pos1 gehen von Teil zu Teil. Die Leertaste erzählt alles dazu. Plus und Minus gehen näher heran und weiter weg, 0 zeigt alles, 9 das Teil, 8 füllt die Breite, 7 geht zurück.',
  enterPresses: 'Die Eingabetaste drückt, wo du bist.',
  place: (across, down) => `${across} nach rechts, ${down} nach unten`,
  edgeOr: (name, number) => name || `Kante ${number}`,
  read: {
    corner: (number, place) => `Ecke ${number}, ${place}`,
    between: (corner, before, after) => `${corner}. Davor ${before}, danach ${after}.`,
    through: (edge, place) => `Kurvenpunkt auf ${edge}, ${place}`,
    edgeOf: (edge, length) => `${edge} ${length}`,
    edge: (edge) => `Kante: ${edge}`,
    wholeEdge: (edge, from, to, allowance) =>
      `Kante: ${edge}, von Ecke ${from} bis ${to}. ${allowance === undefined ? 'Noch keine Nahtzugabe angegeben.' : `Nahtzugabe ${allowance}.`}`,
    piece: (name, corners) => `${name}, ${corners} Ecken`,
    round: (piece, edges) => `${piece}. Ringsum: ${edges.join(', ')}.`,
  },
  hand: 'Den Tisch bewegen: Jedes Drücken verschiebt ihn und tut sonst nichts',
  fingersMove: 'Der Stift zeichnet, Finger bewegen den Tisch',
  fingersDraw: 'Auch Finger zeichnen',
  lineNumber: (number) => (number < 0 ? `−${-number}` : String(number)),
  less: (number) => `−${number}`,
};
