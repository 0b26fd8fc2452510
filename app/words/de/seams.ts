import type { EdgeRole } from '../../../core/garment/piece';
import type * as english from '../en/seams';
import type { Said } from '../said';

const besideWords: Readonly<Partial<Record<EdgeRole, string>>> = {
  waist: 'an der Taille',
  hem: 'am Saum',
  opening: 'an der Öffnung',
  fold: 'am Stoffbruch',
  finished: 'an der fertigen Kante',
};

const gone = 'Eine der Kanten gibt es nicht mehr. Löse die Naht, und füge zusammen, was da ist.';
const ownMirror = 'Beide Seiten sind eine Kante und ihr Spiegelbild, also stimmen sie immer überein.';

export const seamsWords: Said<typeof english.seamsWords> = {
  tableLabel:
    'Die Teile. Drücke auf eine Kante und dann auf die, an die sie genäht wird; mit einer Naht in der Hand ziehe an ihr entlang, um das zweite Teil am ersten abzulaufen.',
  noPiecesTitle: 'Noch nichts zu nähen',
  noPieces:
    'Hier werden Kanten zusammengefügt, wie sie genäht werden, und eine an der anderen abgelaufen. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  toDraft: 'Zum Raum Entwurf',
  noEdges:
    'Noch heißt keine Kante Naht oder Taille. Sage im Raum Entwurf, was jede Kante ist, dann werden hier Paare vorgeschlagen. Je zwei Kanten lassen sich unten trotzdem zusammenfügen.',
  goneEdge: 'eine Kante, die es nicht mehr gibt',
  times: (times) => ` (${times}-mal)`,
  andMore: (first, more) => `${first} und ${more} weitere`,
  both: (one, other) => `${one} an ${other}`,
  mirrored: (edge) => `${edge} an ihr Spiegelbild`,
  toNextCopy: (edge) => `${edge} an die des nächsten gleichen Teils`,

  seams: 'Nähte',
  noSeams: 'Noch ist keine Naht zusammengefügt.',
  worstFirst: 'Was am meisten von dem abweicht, was gemeint ist, steht zuerst.',
  lengths: (one, other) => `${one} und ${other}`,
  differs: {
    agree: 'stimmen überein',
    agreeWithin: (by) => `stimmen auf ${by} überein`,
    agreeEased: (longer, by) => `stimmen überein, ${longer} um ${by} eingehalten`,
    agreeLap: (by) => `stimmen überein, mit einem Übertritt von ${by}`,
    besideLap: (said, by) => `${said}, neben einem Übertritt von ${by}`,
    longerThan: (longer, by, shorter) => `${longer} ist ${by} länger als ${shorter}`,
    equal: 'sind gleich lang',
    beyond: (said, by, what) => `${said}, ${by} mehr als ${what === 'lap' ? 'der Übertritt' : 'eingehalten wird'}`,
    short: (said, by, what) =>
      `${said}, ${by} weniger als ${what === 'lap' ? 'der gemeinte Übertritt' : 'eingehalten werden soll'}`,
    mirror: 'stimmt mit sich selbst überein',
    gone: 'eine der Kanten gibt es nicht mehr',
    notchesOff: (count) => (count === 1 ? '1 Knips trifft nicht' : `${count} Knipse treffen nicht`),
  },

  proposed: 'Vorgeschlagene Paare',
  by: {
    name: 'nach ihrem Namen',
    length: 'nach ihrer Länge',
    band: 'eine Taille und ihr Bund',
    'own-mirror': 'gegengleich zugeschnitten',
    'next-copy': 'mehrmals im Stoffbruch zugeschnitten, jedes an das nächste genäht',
  },
  pairIt: 'Zusammenfügen',
  pairThis: (seam) => `Zusammenfügen: ${seam}`,
  pairWithLap: (by) => `Zusammenfügen, mit einem Übertritt von ${by}`,
  pairWithEase: (by) => `Zusammenfügen, ${by} einhalten`,
  pairAll: (count) => `Alle ${count} zusammenfügen`,

  pair: 'Zwei Kanten zusammenfügen',
  pairHelp: 'Drücke auf dem Tisch auf eine Kante und dann auf die, an die sie genäht wird, oder wähle beide hier.',
  firstEdge: 'Diese Kante',
  secondEdge: 'wird genäht an',
  notChosen: 'noch nicht gewählt',
  pairThem: 'Zusammenfügen',
  inSeam: (edge) => `${edge} ist schon in einer Naht.`,
  nowSecond: (edge) => `${edge}. Drücke jetzt auf die Kante, an die sie genäht wird.`,
  bothPicked: (one, other) => `${one} und ${other}. Füge sie im Notizbuch zusammen.`,
  loose: 'Noch an nichts genäht',
  pickLoose: (edge) => `${edge} zusammenfügen`,
  first: '1.',
  second: '2.',

  allSeams: 'Alle Nähte',
  name: 'Name der Naht',
  nameHint: 'Leer: die Namen ihrer Kanten.',
  side: { one: 'Erste Seite', other: 'Zweite Seite' },
  drop: (edge) => `${edge} aus dieser Seite nehmen`,
  addEdge: { one: 'Kante zur ersten Seite hinzufügen', other: 'Kante zur zweiten Seite hinzufügen' },
  addNone: 'keine mehr',
  comesTimes: (edge) => `Wie oft ${edge} vorkommt`,
  easedInBy: (side) => `${side} wird eingehalten um`,
  lapOf: 'Übertritt des Bundes',
  lapHint:
    'Was vom Bund über die Taille hinausgeht und an nichts genäht wird. Es ist keine Mehrweite und geht um keinen Körper.',
  lapAt: 'Der Übertritt liegt',
  way: 'Sie laufen um ihre Teile',
  ways: { opposite: 'in Gegenrichtung', same: 'in gleicher Richtung' },
  unpair: 'Naht lösen',
  theSeam: 'Diese Naht',

  walk: (seam) => `Ablaufen: ${seam}`,
  stripLabel: (one, other) => `${one} und ${other} gerade gezogen, eine über der anderen, im Maßstab`,
  slider: 'Wie weit abgelaufen ist',
  contact: (one, at, other, there) => `${at} auf ${one}, ${there} auf ${other}`,
  contactShort: (at, there) => `${at} trifft ${there}`,
  back: (step) => `${step} zurück`,
  on: (step) => `${step} weiter`,
  start: 'Anfang',
  end: 'Ende',
  walked: 'Was das Ablaufen zeigt',
  whole: 'Längen der ganzen Naht',
  noPartings: 'Sie liegen den ganzen Weg aufeinander.',
  parts: (from, to, longer, by) =>
    `Von ${from} bis ${to} gehen sie auseinander: ${longer} ist dort ${by} zu lang.`,
  partsShort: (by, way) => `${by} zu ${way === 'long' ? 'lang' : 'kurz'}`,
  notchOff: (number, by, way, other) =>
    `Knips ${number} liegt ${by} ${way === 'beyond' ? 'hinter' : 'vor'} seinem Gegenstück auf ${other}.`,
  notchAlone: (edge, at) => `Ein Knips auf ${edge} bei ${at} hat kein Gegenstück.`,
  allNotches: (count) => (count === 1 ? 'Der Knips trifft sein Gegenstück.' : `Alle ${count} Knipse treffen sich.`),
  noNotches: 'Auf ihr sind keine Knipse.',
  notchTag: (number, off) =>
    number === undefined ? 'allein' : off === undefined ? `${number}` : `${number}: ${off} daneben`,
  ownMirror,
  ownCopy:
    'Beide Seiten sind dieselbe Kante zweier gleich zugeschnittener Teile, also stimmen sie immer überein.',

  agree: 'Angleichen',
  trials: { lengths: 'Längen ausgleichen', notches: 'Knipse abstimmen', corners: 'Ecken ausgleichen' },
  trialHelp: {
    lengths: 'Eine Kante gibt nach, oder beide, bis nur noch bleibt, was eingehalten werden soll.',
    notches: 'Die Knipse der einen Seite kommen dorthin, wo sie die andere treffen.',
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
  from: 'Die Knipse nehmen von',
  whichEnd: 'An',
  ends: {
    'at-start': (by) => `ihrem Anfang${by}`,
    'at-end': (by) => `ihrem Ende${by}`,
  },
  how: 'Wie',
  hows: { square: 'beide rechtwinklig zur Naht', blend: 'glatt weiterlaufend' },
  angles: (one, other, sum) => `${one} + ${other} = ${sum}`,
  anglesNow: 'Die Ecken jetzt',
  anglesThen: 'und danach',
  straightOn: 'Zusammen 180° ist eine Linie, die glatt weiterläuft.',
  changesNothing: 'Es ist schon so; nichts würde sich ändern.',
  refused: {
    'no-seam': gone,
    'own-mirror': ownMirror,
    'no-edge': gone,
    'nothing-left':
      'Von der Kante bliebe so wenig übrig, dass sie sich nicht nähen ließe. Lass die andere Seite nachgeben.',
    'marks-in-the-way':
      'Ein Abnäher, ein Knips, Falten oder Kräusel liegen auf dem, was wegfiele. Wähle das andere Ende, oder verteile es.',
    'on-a-fold':
      'Die Ecke dort liegt auf einem Stoffbruch und muss bleiben. Wähle das andere Ende, oder verteile es.',
    'not-met': 'So lässt es sich nicht erreichen. Versuche ein anderes Ende, oder verteile es.',
    crosses: 'Der Umriss würde sich selbst kreuzen. Versuche es anders.',
    ruled:
      'Die Naht selbst steht rechtwinklig zur Linie daneben oder läuft mit ihr in einer Linie. Gib ihr Ende zuerst im Raum Entwurf frei.',
    'too-short': 'Die Linie neben der Naht ist zu kurz, um gebogen zu werden.',
  },
  steps: {
    pair: 'Kanten zusammenfügen',
    pairAll: 'alle vorgeschlagenen zusammenfügen',
    unpair: 'Naht lösen',
    name: 'Name einer Naht',
    ease: 'Einhalten an einer Naht',
    lap: 'Übertritt einer Naht',
    way: 'Richtung einer Naht',
    side: 'Kanten einer Naht',
    lengths: 'Naht ausgleichen',
    notches: 'Knipse abstimmen',
    corners: 'Ecken einer Naht ausgleichen',
  },
  paired: (seam) => `Zusammengefügt: ${seam}.`,
  pairedAll: (count) => (count === 1 ? '1 Naht zusammengefügt.' : `${count} Nähte zusammengefügt.`),
  unpaired: (seam) => `${seam} ist keine Naht mehr; die Kanten bleiben.`,
};
