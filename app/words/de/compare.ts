import type * as english from '../en/compare';
import type { Said } from '../said';
import { writeNumber } from '../written';
import { draftWords } from './draft';
import { fitWords } from './fit';

const sideOf = (side: 'out' | 'in') => (side === 'out' ? 'außerhalb' : 'innerhalb');

export const compareWords: Said<typeof english.compareWords> = {
  tableLabel:
    'Zwei Teile, eines über dem anderen. Die Pfeiltasten bewegen das andere Teil ein wenig, mit Umschalt mehr; Bild auf und Bild ab drehen es; Escape legt es zurück.',
  noPiecesTitle: 'Noch nichts zu vergleichen',
  noPieces:
    'Hier wird ein Teil über ein anderes gelegt: eine frühere Fassung, ein Teil, wie es nachgezeichnet wurde, ein anderes Kleidungsstück, oder ein Entwurf nach Maßen. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  toDraft: 'Zum Raum Entwurf',
  what: 'Was verglichen wird',
  whatHelp: 'Nichts hier verändert eines der Teile.',
  mine: 'Teil dieses Kleidungsstücks',
  source: 'Mit einem Teil aus',
  sources: {
    piece: 'diesem Kleidungsstück, anderes Teil',
    traced: 'diesem Kleidungsstück, wie nachgezeichnet',
    draft: 'einem Entwurf nach ihren Maßen',
  },
  version: (number, name) => (name === '' ? `Fassung ${number}` : `Fassung ${number}, ${name}`),
  shelf: (name) => `${name || 'ein Kleidungsstück ohne Namen'}, im Regal`,
  fetching: 'Auf diesem Gerät wird gesucht …',
  nothingKept:
    'Von diesem Kleidungsstück ist noch keine Fassung aufbewahrt, und im Regal liegt kein anderes.',
  otherPiece: 'Das andere Teil',
  unnamed: 'Teil ohne Namen',
  versionDamaged: (number) =>
    `Was von Fassung ${number} gespeichert ist, ist beschädigt und lässt sich nicht zeigen. Die anderen Fassungen berührt das nicht.`,
  shelfDamaged:
    'Was von jenem Kleidungsstück gespeichert ist, ist beschädigt und lässt sich nicht vergleichen. Hast du eine Datei davon, öffne zuerst diese.',
  shelfNewer:
    'Jenes Kleidungsstück wurde zuletzt mit einem neueren Inchsquare geändert. Lade die Seite neu, um dieses auf den Stand zu bringen, und vergleiche dann.',
  nothingTraced:
    'Dieses Kleidungsstück hat keine Teile bewahrt, wie sie nachgezeichnet wurden. Vergleiche stattdessen mit einer Fassung oder einer Kopie.',
  noOtherPiece: 'Dort gibt es kein anderes Teil zum Vergleichen.',
  how: 'Wie es aufliegt',
  hows: {
    'as-they-lie': 'wo beide liegen',
    corner: 'Ecke auf Ecke',
    edge: 'Kante auf Kante',
    best: 'möglichst genau',
  },
  howHelp: {
    'as-they-lie': 'Jedes Teil an seinem Platz auf seinem Tisch.',
    corner: 'Eine Ecke auf einer anderen, ohne Drehen.',
    edge: 'Die Enden einer Kante entlang einer anderen.',
    best: 'Bewegt und gedreht, bis die Umrisse so nah wie möglich liegen, nie gedehnt.',
  },
  corner: (piece) => `Ecke von ${piece}`,
  edge: (piece) => `Kante von ${piece}`,
  cornerOf: (before, after) => `${before} und ${after}`,
  way: 'Läuft',
  ways: { same: 'in gleicher Richtung', opposite: 'in Gegenrichtung' },
  mirrored: 'Beim genauen Auflegen wenden dürfen',
  turned: 'Wenden',
  seeking: 'Die genaueste Lage wird gesucht …',
  stop: 'Suche anhalten',
  stopped: 'Angehalten, ehe die genaueste Lage gefunden war.',
  failed:
    'Die genaueste Lage ließ sich nicht errechnen. Versuche es noch einmal, oder lege die Teile an einer Kante an.',
  again: 'Noch einmal suchen',
  byHand: 'Von Hand bewegt',
  byHandHelp:
    'Ziehe das andere Teil, oder schreibe, wie weit. Ist der Tisch gewählt, bewegen es die Pfeiltasten, Bild auf und Bild ab drehen es.',
  right: 'Nach rechts',
  down: 'Nach unten',
  turn: 'Gedreht, Grad',
  layBack: 'Zurücklegen',
  swap: 'Plätze tauschen',
  swapped: (under) => `Jetzt liegt ${under} unten; die Unterschiede gelten für das andere.`,
  key: 'Was die Linien sind',
  lines: { under: 'unten', over: 'oben' },
  more: 'mehr als unten',
  less: 'weniger als unten',
  now: 'jetzt',
  traced: 'wie nachgezeichnet',
  draft: 'Entwurf',
  figures: 'Die Unterschiede',
  figuresLabel: 'Längen, Umfänge und Fläche von beiden, mit ihrem Unterschied',
  headings: { what: 'Was', difference: 'Unterschied' },
  edges: 'Kante für Kante, wie genäht',
  girths: 'Rundherum',
  widths: 'Ein Teil, quer',
  area: 'Fläche',
  level: (level) => fitWords.levelOf(level),
  atDepth: (depth) => `${depth} unter der Taille`,
  atWaist: 'an der Taille',
  noEdge: 'keine',
  notReached: 'endet darüber',
  signed: (difference, written) => (difference > 0 && /[1-9]/.test(written) ? `+${written}` : written),
  areaIn: (squareMm, shownIn) =>
    (shownIn === 'in'
      ? `${writeNumber(squareMm / 645.16, 1)} in²`
      : `${writeNumber(squareMm / 100, 1)} cm²`
    ).replace('-', '−'),
  largest: 'Größter Abstand',
  out: 'Am weitesten außen',
  in: 'Am weitesten innen',
  nowhere: 'nirgends',
  gapsOf: (out, into) => [out && `außen ${out}`, into && `innen ${into}`].filter(Boolean).join(', '),
  place: (edge, along, from) => `auf ${edge}, ${along} ab ${from}`,
  atCorner: (edge, from) => `wo ${edge} auf ${from} trifft`,
  inWords: 'In Worten',
  lies: (over, under) => `Oben: ${over}. Unten: ${under}.`,
  same: (least) => `Sie liegen aufeinander: kein Abstand erreicht ${least}.`,
  largestAt: (gap, place, side) =>
    `Der größte Abstand ist ${gap}, ${place}; dort liegt das obere Teil ${sideOf(side)} des unteren.`,
  otherSide: (gap, place, side) =>
    `Auf der anderen Seite liegt es höchstens ${gap} ${sideOf(side)}, ${place}.`,
  noOtherSide: (side) => `Es liegt nirgends ${sideOf(side)}.`,
  edgesDiffer: (list) => `Kanten, die sich unterscheiden: ${list}.`,
  edgesAgree: 'Alle Kanten sind gleich lang.',
  girthsDiffer: (list) => `Rundherum: ${list}.`,
  said: (gap) => `Größter Abstand ${gap}.`,
  guide: 'Als Hilfslinie hinlegen',
  guideHelp: 'Eine Hilfslinie liegt in jedem Raum unter dem Entwurf und wird weder zugeschnitten noch gedruckt.',
  guideLabel: 'Hilfslinie unter den Entwurf gelegt',
  guideName: (piece, from) => `${piece}, ${from}`,
  guideDone: 'Als Hilfslinie auf den Tisch gelegt. Rückgängig nimmt sie weg.',
  edgeOr: draftWords.edgeOr,
  roles: { fold: 'Stoffbruch', waist: 'Taille', hem: 'Saum' },
};
