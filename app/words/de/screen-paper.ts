import type * as english from '../en/screen-paper';
import type { Said } from '../said';
import { writeNumber } from '../written';
import { dateWords } from './paper-sheet';

const corners = ['Ecke oben links', 'Ecke oben rechts', 'Ecke unten rechts', 'Ecke unten links'];

export const screenPaperWords: Said<typeof english.screenPaperWords> = {
  card: 'Auf Bildschirm oder mit Beamer',
  help: 'Ein Teil in Originalgröße ohne Papier: zum Nachzeichnen von einem flach liegenden Bildschirm oder mit dem Beamer auf dem Zuschneidetisch. Zuerst wird es mit dem Lineal gemessen.',
  onScreen: 'Auf diesem Bildschirm',
  byBeam: 'Mit Beamer auf dem Tisch',
  label: 'Originalgröße',
  unnamed: 'Teil ohne Namen',
  drawing: (piece) => `${piece || 'Das Teil'} in Originalgröße. Die Pfeiltasten rücken es um ganze Quadrate weiter.`,
  close: 'Schließen',
  use: 'So lang sind sie',
  barsTitle: 'Wie lang sind die beiden Balken?',
  barsHelp:
    'Lege ein Lineal auf den Bildschirm und miss jeden weißen Balken von Strich zu Strich, auf 1/32 in oder einen halben Millimeter genau. Ihre Längen sagen, wie groß dieser Bildschirm ist.',
  barAcross: 'Der liegende Balken misst',
  barDown: 'Der stehende Balken misst',
  cornersTitle: 'Bring die vier Ecken auf ein Rechteck',
  cornersHelp:
    'Lege ein genaues Rechteck auf den Tisch, so groß das Licht es erlaubt: eine Schneidematte oder ein Rechteck aus Klebeband, dessen zwei Diagonalen gleich lang sind. Ziehe jeden Ring, bis seine Ecke des weißen Rahmens auf ihrer Ecke liegt, oder gehe mit den Pfeiltasten hin (mit Umschalt zehnfach). Dann sage, wie lang seine Seiten sind.',
  corner: corners,
  cornerSaid: (index, x, y) => `${corners[index]}, ${Math.round(x)} nach rechts, ${Math.round(y)} nach unten`,
  sideAcross: 'Seine obere Seite misst',
  sideDown: 'Seine linke Seite misst',
  noMap: {
    corners:
      'Diese Ecken überkreuzen sich oder liegen auf einer Linie. Ziehe sie auseinander, in der Reihenfolge ihrer Zahlen.',
    lengths: 'Diese Seiten sind zu kurz, um danach zu messen. Nimm ein größeres Rechteck.',
  },
  changed:
    'Bildschirm, Vergrößerung oder Fenster sind nicht mehr, wie sie gemessen wurden. Miss hier neu, oder stelle es wieder so ein wie vorher.',
  pinched: 'Die Seite ist mit zwei Fingern vergrößert: So stimmt kein Maß. Bring sie auf ihre eigene Größe zurück.',
  buttons: 'Was gezeigt wird',
  caution: 'Miss das Quadrat vor dem Zuschneiden.',
  inSight: (across, down) =>
    `Zu sehen: ${across[0]} bis ${across[1]} nach rechts, ${down[0]} bis ${down[1]} nach unten. Bewege das Papier um so viele Quadrate, wie du weitergehst.`,
  step: {
    left: 'Weiter nach links',
    right: 'Weiter nach rechts',
    up: 'Weiter nach oben',
    down: 'Weiter nach unten',
  },
  turn: 'Viertel drehen',
  home: 'Zurück zum ersten Stück',
  check: 'Quadrat misst …',
  more: 'Linien, Farben, neu messen',
  lock: 'Sperren',
  locked: 'Gesperrt. Drücken zum Entsperren',
  unlock: 'Drücke auch hier',
  piece: 'Teil',
  ground: 'Farben',
  whiteOnBlack: 'weiß auf schwarz',
  blackOnWhite: 'schwarz auf weiß',
  line: 'Linien',
  lines: ['dünn', 'dick', 'sehr dick'],
  grid: 'Nummerierte Quadrate',
  square: 'Prüfquadrat',
  fill: 'Bildschirm füllen',
  anew: { screen: 'Bildschirm neu messen', beam: 'Ecken neu setzen' },
  measuredOn: (date) => `Gemessen am ${dateWords(date)}.`,
  pixel: (across, down) =>
    `Ein Bildpunkt ist ${writeNumber(across, 2)} mm breit und ${writeNumber(down, 2)} mm hoch; genauer kann nichts sein.`,
  unlike: (share) =>
    `Breite und Höhe weichen um ${writeNumber(share * 100, 0)} % voneinander ab; das tun Bildschirme nicht. Miss das Quadrat in beiden Richtungen.`,
  awake: {
    asking: '',
    kept: 'Der Bildschirm bleibt wach.',
    refused: 'Der Browser hält den Bildschirm nicht wach: Stelle eine längere Ruhezeit ein.',
    cannot: 'Dieser Browser kann den Bildschirm nicht wach halten: Stelle eine längere Ruhezeit ein.',
  },
  squareTitle: (side) => `Das Quadrat soll ${side} sein`,
  squareHelp: 'Miss das Quadrat mit dem Lineal. Was abweicht, wird berichtigt, Breite und Höhe für sich.',
  squareAcross: 'Seine Breite misst',
  squareDown: 'Seine Höhe misst',
  mend: 'So berichtigen',
  leave: 'So lassen',
};
