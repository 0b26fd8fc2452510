import type { EdgeRole } from '../../../core/garment/piece';
import type * as english from '../en/seams';
import type { Said } from '../said';

export const seamsWords: Said<typeof english.seamsWords> = {
  tableLabel:
    'Die Schnittteile. Drücke auf eine Kante und dann auf die, an die sie genäht wird; ist eine Naht gewählt, ziehe an ihr entlang, um das zweite Teil am ersten abzugehen.',
  noPiecesTitle: 'Noch nichts zu nähen',
  noPieces:
    'Hier werden Kanten gepaart, wie sie genäht werden, und eine wird an der anderen abgegangen. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  toDraft: 'Zum Raum Entwurf',
  noEdges:
    'Noch heißt keine Kante Naht oder Taille. Gib im Raum Entwurf an, was jede Kante ist, dann werden hier Paare vorgeschlagen. Unten lassen sich trotzdem zwei beliebige Kanten paaren.',
  goneEdge: 'eine Kante, die es nicht mehr gibt',
  times: (times) => ` (${times}-mal)`,
  andMore: (first, more) => `${first} und ${more} weitere`,
  both: (one, other) => `${one} an ${other}`,
  mirrored: (edge) => `${edge} an ihr Spiegelbild`,
  toNextCopy: (edge) => `${edge} an die des nächsten gleichen Teils`,

  seams: 'Nähte',
  noSeams: 'Noch ist keine Naht gepaart.',
  worstFirst: 'Was am meisten vom Gemeinten abweicht, steht zuerst.',
  lengths: (one, other) => `${one} und ${other}`,
  differs: {
    agree: 'stimmen überein',
    agreeWithin: (by) => `stimmen auf ${by} überein`,
    agreeEased: (longer, by) => `stimmen überein, ${longer} um ${by} eingehalten`,
    agreeLap: (by) => `stimmen überein, mit ${by} Übertritt`,
    besideLap: (said, by) => `${said}, neben ${by} Übertritt`,
    longerThan: (longer, by, shorter) => `${longer} ist ${by} länger als ${shorter}`,
    equal: 'sind gleich lang',
    beyond: (said, by, what) => `${said}, ${by} über ${what === 'lap' ? 'den Übertritt' : 'die Mehrweite'} hinaus`,
    short: (said, by, what) =>
      `${said}, ${by} weniger als ${what === 'lap' ? 'der gemeinte Übertritt' : 'die gemeinte Mehrweite'}`,
    mirror: 'stimmt mit seinem Spiegelbild überein',
    gone: 'eine ihrer Kanten gibt es nicht mehr',
    notchesOff: (count) => (count === 1 ? '1 Knips trifft nicht' : `${count} Knipse treffen nicht`),
  },

  proposed: 'Vorgeschlagene Paare',
  by: {
    name: 'nach dem Namen',
    length: 'nach der Länge',
    band: 'eine Taille und ihr Bund',
    'own-mirror': 'gegengleich zugeschnitten',
    'next-copy': 'mehrmals im Bruch zugeschnitten, jedes ans nächste genäht',
  },
  pairIt: 'Paaren',
  pairThis: (seam) => `${seam} paaren`,
  pairWithLap: (by) => `Paaren, mit ${by} Übertritt`,
  pairWithEase: (by) => `Paaren, ${by} einhalten`,
  pairAll: (count) => `Alle ${count} paaren`,

  pair: 'Zwei Kanten paaren',
  pairHelp: 'Drücke auf dem Tisch auf eine Kante und dann auf die, an die sie genäht wird, oder wähle sie hier.',
  firstEdge: 'Diese Kante',
  secondEdge: 'wird genäht an',
  notChosen: 'noch nicht gewählt',
  pairThem: 'Die beiden paaren',
  inSeam: (edge) => `${edge} ist schon in einer Naht.`,
  nowSecond: (edge) =>
    `${edge}. Drücke jetzt auf die Kante, an die sie genäht wird, oder noch einmal dieselbe, wenn sie an ihr eigenes Spiegelbild kommt.`,
  bothPicked: (one, other) => `${one} und ${other}. Paare sie im Notizbuch.`,
  loose: 'Noch an nichts genäht',
  pickLoose: (edge) => `${edge} paaren`,
  first: '1.',
  second: '2.',

  allSeams: 'Alle Nähte',
  name: 'Name der Naht',
  nameHint: 'Leer: die Namen ihrer Kanten.',
  side: { one: 'Erste Seite', other: 'Zweite Seite' },
  drop: (edge) => `${edge} aus dieser Seite nehmen`,
  addEdge: { one: 'Kante zur ersten Seite hinzufügen', other: 'Kante zur zweiten Seite hinzufügen' },
  addNone: 'keine weitere',
  comesTimes: (edge) => `Wie oft ${edge} vorkommt`,
  easedInBy: (side) => `${side}: eingehalten um`,
  lapOf: 'Übertritt des Bundes',
  lapHint:
    'Was vom Bund über die Taille hinausreicht und an nichts genäht wird. Es ist keine Mehrweite und geht um keinen Körper.',
  lapAt: 'Der Übertritt liegt',
  way: 'Sie laufen um ihre Teile',
  ways: { opposite: 'in Gegenrichtung', same: 'in gleicher Richtung' },
  unpair: 'Paar lösen',
  theSeam: 'Diese Naht',

  walk: (seam) => `Abgehen: ${seam}`,
  stripLabel: (one, other) => `${one} und ${other} gerade gezogen, übereinander, maßstäblich`,
  slider: 'Wie weit das Abgehen ist',
  contact: (one, at, other, there) => `${at} an ${one}, ${there} an ${other}`,
  contactShort: (at, there) => `${at} trifft ${there}`,
  back: (step) => `${step} zurück`,
  on: (step) => `${step} weiter`,
  start: 'Anfang',
  end: 'Ende',
  walked: 'Was das Abgehen zeigt',
  whole: 'Längen der ganzen Naht',
  noPartings: 'Sie liegen den ganzen Weg aufeinander.',
  parts: (from, to, longer, by) => `Von ${from} bis ${to} gehen sie auseinander: ${longer} ist dort ${by} zu lang.`,
  partsShort: (by, way) => `${by} zu ${way === 'long' ? 'lang' : 'kurz'}`,
  notchOff: (number, by, way, other) =>
    `Knips ${number} liegt ${by} ${way === 'beyond' ? 'hinter' : 'vor'} seinem Gegenstück auf ${other}.`,
  notchAlone: (edge, at) => `Ein Knips von ${edge} bei ${at} hat kein Gegenstück.`,
  allNotches: (count) => (count === 1 ? 'Der Knips trifft sein Gegenstück.' : `Alle ${count} Knipse treffen sich.`),
  noNotches: 'Es sind keine Knipse darauf.',
  notchTag: (number, off) =>
    number === undefined ? 'allein' : off === undefined ? `${number}` : `${number}: ${off} daneben`,
  ownMirror: 'Beide Seiten sind eine Kante und ihr Spiegelbild, sie stimmen also immer überein.',
  ownCopy: 'Beide Seiten sind dieselbe Kante zweier gleicher Teile, sie stimmen also immer überein.',

  agree: 'Angleichen',
  trials: { lengths: 'Längen ausgleichen', notches: 'Knipse abstimmen', corners: 'Ecken ausgleichen' },
  trialHelp: {
    lengths: 'Eine Kante gibt nach oder beide, bis nur die gemeinte Mehrweite bleibt.',
    notches: 'Die Knipse der einen Seite werden dorthin gesetzt, wo sie die andere treffen.',
    corners: 'Die Linien neben der Naht werden nahe bei ihr gebogen, damit sie über sie weiterlaufen.',
  },
  move: 'Was nachgibt',
  moves: { both: 'beide, je zur Hälfte' },
  where: 'Wo',
  wheres: {
    'at-start': (by) => `am Anfang${by}`,
    'at-end': (by) => `am Ende${by}`,
    spread: 'über die ganze Länge verteilt',
  },
  beside: (role) => {
    const said = role && besideWords[role];
    return said ? ` (${said})` : '';
  },
  from: 'Nimm die Knipse von',
  whichEnd: 'Welches Ende',
  ends: {
    'at-start': (by) => `Anfang${by}`,
    'at-end': (by) => `Ende${by}`,
  },
  how: 'Wie',
  hows: { square: 'beide rechtwinklig zur Naht', blend: 'glatt weiterlaufend' },
  angles: (one, other, sum) => `${one} + ${other} = ${sum}`,
  anglesNow: 'Die Ecken jetzt',
  anglesThen: 'und danach',
  straightOn: '180° zusammen ist eine Linie, die glatt weiterläuft.',
  changesNothing: 'Es ist schon so; nichts würde sich ändern.',
  refused: {
    'no-seam': 'Eine ihrer Kanten gibt es nicht mehr. Löse das Paar, und paare, was da ist.',
    'own-mirror': 'Beide Seiten sind eine Kante und ihr Spiegelbild, sie stimmen also immer überein.',
    'no-edge': 'Eine ihrer Kanten gibt es nicht mehr. Löse das Paar, und paare, was da ist.',
    'nothing-left': 'So wenig bliebe von der Kante, dass sie sich nicht nähen ließe. Lass die andere Seite nachgeben.',
    'marks-in-the-way':
      'Ein Abnäher, ein Knips, Falten oder Kräusel liegen auf dem, was wegfiele. Wähle das andere Ende, oder verteile es.',
    'on-a-fold': 'Die Ecke dort liegt am Bruch und muss bleiben. Wähle das andere Ende, oder verteile es.',
    'not-met': 'So ist es nicht zu erreichen. Versuche ein anderes Ende, oder verteile es.',
    crosses: 'Der Umriss würde sich selbst kreuzen. Versuche es anders.',
    ruled:
      'Die Naht selbst ist rechtwinklig zur Linie daneben oder in einer Flucht mit ihr gezeichnet. Löse zuerst ihr Ende im Raum Entwurf.',
    'too-short': 'Die Linie neben der Naht ist zu kurz zum Biegen.',
  },
  steps: {
    pair: 'Kanten paaren',
    pairAll: 'alle vorgeschlagenen paaren',
    unpair: 'Paar lösen',
    name: 'Name einer Naht',
    ease: 'Mehrweite einer Naht',
    lap: 'Übertritt einer Naht',
    way: 'Richtung einer Naht',
    side: 'Kanten einer Naht',
    lengths: 'Naht ausgleichen',
    notches: 'Knipse abstimmen',
    corners: 'Ecken einer Naht ausgleichen',
  },
  paired: (seam) => `Gepaart: ${seam}.`,
  pairedAll: (count) => (count === 1 ? '1 Naht gepaart.' : `${count} Nähte gepaart.`),
  unpaired: (seam) => `${seam} ist keine Naht mehr; ihre Kanten bleiben.`,
};

/** How an end of a seam is told from the other by what is drawn beside it. */
const besideWords: Readonly<Partial<Record<EdgeRole, string>>> = {
  waist: 'an der Taille',
  hem: 'am Saum',
  opening: 'an der Öffnung',
  fold: 'am Bruch',
  finished: 'an der fertigen Kante',
};
