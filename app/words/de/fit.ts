import type { EasedGarment } from '../../../core/fit/ease';
import type { GirthName } from '../../../core/garment/measure';
import type * as english from '../en/fit';
import type { Said } from '../said';

const girth = {
  waist: 'Taille',
  highHip: 'Hohe Hüfte',
  hip: 'Hüfte',
  bust: 'Brust',
  chest: 'Oberbrust',
  underbust: 'Unterbrust',
  neck: 'Hals',
  upperArm: 'Oberarm',
  thigh: 'Oberschenkel',
  knee: 'Knie',
} satisfies Record<GirthName, string>;

const washington = 'Central Washington University, Lehrtext Kostüm, Kapitel 16, „Ease in clothing“';

const easeSources: Readonly<Record<EasedGarment, string>> = {
  skirt: `Taille und Hüfte: ${washington}. Hohe Hüfte: allgemein üblich, die Hälfte der Hüfte.`,
  'period-skirt':
    'Burton, School Sewing Based on Home Problems; The Perfect Dressmaking System (1914); Butterick, The New Dressmaker (1921): an der Taille keine, und die Hüfte wird schon locker gemessen.',
  underskirt: 'Allgemein üblich. Eine gekräuselte Taille oder eine mit Tunnelzug braucht keine.',
  slip: 'Allgemein üblich.',
  bodice: `Brust, Taille und Hüfte: ${washington}. Oberbrust: allgemein üblich.`,
  dress: `Brust, Taille und Hüfte: ${washington}. Oberbrust und hohe Hüfte: allgemein üblich.`,
};

export const fitWords: Said<typeof english.fitWords> = {
  roundTheBody: 'Um den Körper',
  noRing: 'Sage, welche Teile zusammen einmal um den Körper gehen; dann werden sie auf jeder Höhe mit ihm verglichen.',
  propose: 'Alle Teile mit Taille nehmen',
  ringName: 'Um den Körper',
  ringLabel: 'Teile um den Körper',
  easeLabel: 'Mehrweite',
  unnamedPiece: 'Teil ohne Namen',
  tableLabel: 'Die Teile, mit den Höhen des Körpers darauf eingezeichnet',
  notMeasured: (level, field) => `${level}: Das Feld „${field}“ im Raum Maße ist noch leer.`,
  roundHelp:
    'Setze ein Häkchen bei den Teilen, die zusammen einmal um den Körper gehen, und sage, wie viele gezeichnete Breiten von jedem das sind. Ein Teil im Stoffbruch zählt doppelt.',
  times: 'Gezeichnete Breiten',
  timesFor: (piece) => `Gezeichnete Breiten von ${piece}`,
  hangsFrom: 'Von einer anderen Kante als der Taille gemessen',
  hangsFromOf: (piece) => `Von einer anderen Kante als der Taille gemessen: ${piece}`,
  hangsFromHelp:
    'Für alles, was unter oder über der Taille beginnt: ein Rock unter seinem Bund, ein Volant, ein Unterkleid, das von seiner oberen Kante hängt.',
  hangsEdge: 'Seine Höhen zählen ab',
  theWaist: 'seiner Taille, wie sie am Körper liegt',
  edgeNumber: (number) => `Kante ${number}`,
  hangsWhere: 'Diese Kante liegt',
  hangsDepth: 'Wie weit diese Kante von der Taille liegt',
  hangsLabel: 'wovon ein Teil gemessen wird',
  noPiecesTitle: 'Noch nichts zu prüfen',
  noPieces:
    'Hier werden die Teile Höhe für Höhe mit dem Körper verglichen. Zeichne zuerst im Raum Entwurf eines nach, und miss die Trägerin.',
  toDraft: 'Zum Raum Entwurf',
  levels: 'Höhe für Höhe',
  girth,
  levelOf: (level) => level.name ?? girth[level.girth],
  atDepth: (depth) => `${depth} tiefer`,
  atHeight: (height) => `${height} über der Taille`,
  bodyTaped: 'Körper, auf dieser Höhe gemessen',
  side: { left: 'Ihre linke Hälfte', right: 'Ihre rechte Hälfte' },
  sideIs: (pieces, body) => `${pieces} für ${body},`,
  sidesTogether: (left, right) =>
    `Ihre linke Hälfte ist ${left}, ihre rechte ${right}. Kein Teil ist nur für eine Seite gezeichnet, also werden beide zusammen betrachtet.`,
  noneHere: 'Keines dieser Teile erreicht diese Höhe.',
  lapLeftOut: (lap) => `Ein Übertritt von ${lap} liegt doppelt und zählt nicht mit.`,
  noLevels: 'Noch gibt es keine Höhe, auf der die Teile mit dem Körper verglichen werden. Füge eine hinzu.',
  addLevel: 'Höhe hinzufügen',
  addThisLevel: 'Diese Höhe hinzufügen',
  levelAddedLabel: 'Höhe hinzugefügt',
  changeLevel: (level) => `${level}: wo und wie gemessen`,
  levelName: 'Name der Höhe',
  levelNameHint: 'Leer gelassen, heißt sie nach ihrem Umfang.',
  levelLabel: 'Höhe',
  levelRemovedLabel: 'Höhe entfernt',
  removeLevel: 'Diese Höhe entfernen',
  removeLevelOf: (level) => `Diese Höhe entfernen: ${level}`,
  levelRemoved: (level) => `Die Höhe ${level} ist entfernt. „Rückgängig“ holt sie zurück.`,
  standsFor: 'Der Umfang, für den sie steht',
  bodyHere: 'Körper genau auf dieser Höhe',
  bodyHereHint: 'Was das Maßband genau hier ergab. Leer gelassen, gilt der Umfang, für den sie steht.',
  place: 'Wo sie liegt',
  sides: { below: 'so weit unter der Taille', above: 'so weit über der Taille' },
  asFarAs: (measure) => `nach dem Maß: ${measure}`,
  depth: 'Wie weit von der Taille',
  depthFirst: 'Schreibe, wie weit die Höhe von der Taille liegt.',
  easeCard: 'Übliche Mehrweite',
  easeHelp:
    'Bequemlichkeitszugabe: Platz über den Körper hinaus, ringsum, für Stoff, der sich nicht dehnt. Was du bei einer Höhe schreibst, geht vor.',
  easedKind: 'Das Kleidungsstück',
  easedKinds: {
    skirt: 'Rock',
    'period-skirt': 'Rock der 1910er oder 1920er',
    underskirt: 'Unterrock',
    slip: 'Unterkleid',
    bodice: 'Oberteil',
    dress: 'Kleid',
  },
  easedCloth: 'Sein Stoff liegt',
  easedCloths: { straight: 'im geraden Fadenlauf', bias: 'im Schrägfadenlauf' },
  easeRange: (low, high, usual) => `${low} bis ${high}, üblich ${usual}`,
  easeSource: (kind, cloth) =>
    cloth === 'bias' && kind !== 'period-skirt'
      ? 'Allgemein üblich: Schräger Stoff gibt von selbst nach, also wird er enger zugeschnitten, ehe er gehangen hat.'
      : easeSources[kind],
  nothingUsual: 'nichts üblich; deine bleibt',
  takeEases: 'Diese nehmen',
  easesLabel: 'übliche Mehrweite',
  easesTaken: (at, others) =>
    others === ''
      ? 'Die übliche Mehrweite steht jetzt bei jeder Höhe.'
      : `Die übliche Mehrweite steht jetzt bei: ${at}. Für ${others} gibt es keine: Was dort steht, bleibt.`,
  easesWritten: (at, others) =>
    others === ''
      ? 'Die gewünschte Mehrweite ist auf jeder Höhe die übliche.'
      : `Die übliche Mehrweite steht bei: ${at}; für ${others} gibt es keine.`,
  wearing: 'Anziehen und gehen',
  narrowest: 'Engste Stelle, ringsum',
  shoulders: 'Ihre Schultern, etwa',
  hipToPass: 'Ihre Hüfte',
  casing: 'Taille mit Tunnelzug, weit geöffnet',
  opening: 'Öffnung',
  openingOf: (piece, edge) => `Öffnung: ${edge ? `${piece}, ${edge}` : piece}`,
  noOpening: 'noch keine',
  openingNeeded: 'So lang muss sie sein, damit die Hüfte durchgeht',
  whichSeam: 'Welche Naht',
  openTo: 'Von der Taille an offen, so tief',
  leaveOpen: 'Offen lassen',
  leaveOpenHelp:
    'Sie steht auf jedem Teil, das nach dieser Zeichnung zugeschnitten wird. Eine offene Naht genügt; nähe die anderen ganz zu.',
  leaveOpenLabel: 'Öffnung',
  leftOpen: (depth) => `Die obersten ${depth} der Naht bleiben offen, auf beiden Seiten.`,
  hemRound: 'Saum, ringsum',
  beyondHip: 'Saum weiter als Hüfte',
  walkingHelp: (least, easy) =>
    `Um leicht zu gehen, soll ein geschlossener Saum ${least} bis ${easy} weiter sein als die Hüfte, oder er braucht Schlitz oder Falte (allgemein üblich).`,
  outerCard: 'Darüber getragen',
  outerHelp: 'Längen des Kleidungsstücks darüber, von der Taille bis zu seinem Saum. Lass leer, was du nicht weißt.',
  outerAt: { front: 'Seine Länge vorn', side: 'Seine Länge an der Seite', back: 'Seine Länge hinten' },
  outerLabel: 'Kleidungsstück darüber',
  ownLength: (own) => `Dieses ist dort ${own} lang.`,
  ownAgainst: (own, most) => `Dieses ist dort ${own} lang und darf ${most} sein.`,
  shorterBy: 'Dieses bleibt kürzer um',
  shorterHint: (shownIn) =>
    shownIn === 'in' ? 'Ein bis zwei Zoll sind allgemein üblich.' : 'Drei bis fünf Zentimeter sind allgemein üblich.',
  removeOuter: 'Nichts wird darüber getragen',
  outerRemoved: 'Das Kleidungsstück darüber ist entfernt. „Rückgängig“ holt es zurück.',
  noHem: 'Noch ist keine Kante als Saum benannt, also lassen sich die Längen nicht vergleichen.',
  whichRing: 'Welche Teile betrachtet werden',
  ringNamed: 'Diese Teile heißen zusammen',
  unnamedRing: 'Ohne Namen',
  ringNames: { below: 'Unter der Taille', above: 'Über der Taille' },
  ringAddedLabel: 'weitere Teile um den Körper',
  ringRenamedLabel: 'Name dessen, was herumgeht',
  ringRemovedLabel: 'Teile um den Körper entfernt',
  ringRemoved: (name) => `„${name}“ wird nicht mehr betrachtet; die Teile bleiben. „Rückgängig“ holt es zurück.`,
  removeRing: 'Entfernen',
  moreRings:
    'Daneben können andere Teile um den Körper gehen, etwa ein Oberteil über seinem Rock. Jede Gruppe liegt auf einer Seite der Taille.',
  addBelow: 'Weitere unter der Taille',
  addAbove: 'Weitere über der Taille',
  proposeAbove: 'Über der Taille nehmen, als Oberteil',
  noWaistNamed:
    'Noch ist keine Kante als Taille benannt, also wurde kein Teil genommen. Benenne sie im Raum Entwurf, oder hake die Teile hier an.',
  bustLeftOut:
    'Vordere Taillenlänge und Brusttiefe sagen, wo die Brust liegt. Miss sie, oder füge die Höhe von Hand hinzu.',
  otherWays: 'Andere Wege, sie zu biegen',
  otherWaysOf: (piece) => `Andere Wege, sie zu biegen: ${piece}`,
  pieces: 'Die Teile messen ringsum',
  body: 'Körper',
  ease: 'Gewünschte Mehrweite',
  over: (by) => `${by} zu viel`,
  short: (by) => `${by} zu wenig`,
  exact: 'genau richtig',
  letOut: (edge, by, level, of) =>
    `${edge} auslassen, ${by} (${level})${of === 'seam' ? ', aus beiden Kanten ihrer Naht' : ''}`,
  toWearer: 'Zum Raum Maße',
  curvedWaist: 'Die Taille, die der Körper braucht',
  curvedHelp:
    'An einem runden Körper bildet eine gerade Taille an jeder Naht eine Spitze. Die blaue Linie ist die Kurve, die rechtwinklig auf Bruch und Naht trifft und so lang ist, wie dein Körper es braucht.',
  straight: 'Taille wie gezeichnet',
  curved: 'Gebogene Taille',
  rise: 'Steigt an der Seite',
  dip: 'Senkt sich zwischen den Nähten',
  ofWhole: (length) => `${length} für das ganze Kleidungsstück`,
  take: 'Gebogene Taille nehmen',
  taken: (piece) => `Die Taille von ${piece} ist jetzt gebogen.`,
  takeLabel: 'gebogene Taille',
  noCurve: {
    'no-hip-point': 'Es reicht nicht bis zur Hüfte, also lässt sich die Kurve nicht errechnen.',
    'no-waist-edge': 'Keine seiner Kanten ist als Taille benannt.',
    'not-positive': 'Taille und Hüfttiefe müssen größer als null sein.',
    crosses: 'Die Kurve würde eine andere Kante des Teils kreuzen. Sieh nach den Maßen und der Form seiner Seiten.',
    'measure-missing': 'Taille, Hüfte und Hüfttiefe sind nötig, um die Kurve zu errechnen.',
  },
  isCurved: 'Diese Taille ist schon die, die der Körper braucht.',
  findings: 'Worauf zu achten ist',
  nothingCompared: 'Noch ist nichts verglichen: Miss zuerst die Trägerin.',
  allWell: 'Die Teile gehen um den Körper, wie du es willst.',
};
