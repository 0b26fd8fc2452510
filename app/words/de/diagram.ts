import type * as english from '../en/diagram';
import { locale } from '../language';
import type { Said } from '../said';
import { writeNumber } from '../written';

const whole = new Intl.NumberFormat(locale(), { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat(locale(), { maximumFractionDigits: 1 });

export const diagramWords: Said<typeof english.diagramWords> = {
  canvas:
    'Das Bild der Vorlage. Wähle im Notizbuch eine Ecke oder eine bekannte Länge und bewege sie dann mit den Pfeiltasten.',
  photoView: 'Wie fotografiert',
  squaredView: 'Entzerrt',
  showing: 'Das Bild zeigen',

  empty: {
    title: 'Hole die Vorlage herein',
    ask: 'Lege ein Bild davon hier ab, füge es ein oder wähle es aus.',
    tips: 'Ein Foto der Seite, ein Scan oder ein Bildschirmfoto genügt. Halte die Kamera gerade über die Seite, fülle das Bild damit und lass etwas Rechteckiges sichtbar: den Rahmen der Tafel oder die Seite selbst.',
  },
  choose: 'Bild wählen',
  chooseAgain: 'Das Bild neu wählen',
  addAnother: 'Weitere Vorlage hinzufügen',
  otherPage: 'Andere Seite dieses Bildes',
  otherPageName: (name) => `${name}, andere Seite`,
  dropHere: 'Loslassen, um das Bild hereinzuholen',
  opening: 'Das Bild wird geöffnet …',
  taken: (name, across, down) => `${name} ist da: ${whole.format(across)} mal ${whole.format(down)} Pixel.`,
  takenLabel: 'Vorlage hereinholen',
  missing:
    'Das Bild dieser Vorlage ist nicht auf diesem Gerät. Wähle es neu, dann bleibt alles Nachgezeichnete, wie es ist.',
  wrongPicture: (across, down) =>
    `Das ist ein anderes Bild: Das dieser Vorlage hat ${whole.format(across)} mal ${whole.format(down)} Pixel.`,
  notStored:
    'Das Bild ließ sich auf diesem Gerät nicht aufbewahren: Es ist kein Platz mehr. Schaffe Platz und hole es noch einmal herein.',
  linkDropped:
    'Das war ein Link, kein Bild. Speichere das Bild zuerst auf deinem Gerät und hole dann die Datei herein.',
  noPicturePasted: 'Im Eingefügten ist kein Bild. Kopiere das Bild selbst oder wähle die Datei.',
  refused: {
    'empty-file': 'Diese Datei ist leer: Sie enthält 0 Byte. Kopiere oder lade sie noch einmal.',
    'not-a-picture':
      'Das ist kein Bild, das sich hier lesen lässt. Nimm ein JPEG, PNG, WebP, AVIF, HEIC, GIF, TIFF oder BMP oder eine Seite eines PDFs.',
    'cut-short': 'Die Datei endet vor dem Bild, ein Teil fehlt also. Kopiere oder lade sie noch einmal.',
    damaged:
      'Die Datei beginnt wie ein Bild, lässt sich aber nicht öffnen: Sie scheint beschädigt. Mache ein neues Foto oder eine neue Kopie.',
    blank:
      'Das Bild kam leer heraus: Überall hat es eine Farbe. Öffne es anderswo, speichere eine Kopie als JPEG und hole die herein.',
    'no-memory':
      'Dieses Gerät hat zu wenig Speicher für das Bild. Speichere eine kleinere Kopie, etwa 4.000 Pixel an der langen Seite, und hole die herein.',
  },
  otherFormat: {
    pdf: 'Das ist ein PDF, und nur eine seiner Seiten kann das Bild einer Vorlage sein. Hole es als neue Vorlage herein und wähle die Seite.',
    'big-tiff':
      'Dieses TIFF ist von der Art für Dateien über 4 Gigabyte, die sich hier nicht lesen lässt. Speichere es als PNG oder JPEG.',
    'jpeg-xl':
      'Ein Bild in JPEG XL lässt sich hier noch nicht lesen. Speichere es als JPEG oder PNG und hole das herein.',
    svg: 'Eine Zeichnung in SVG lässt sich hier noch nicht lesen. Speichere sie als PNG, mindestens 2.000 Pixel breit, und hole das herein.',
  },
  pdf: {
    title: 'Welche Seite?',
    help: (name, pages) => `${name} hat ${pages === 1 ? '1 Seite' : `${whole.format(pages)} Seiten`}.`,
    page: (pages) => `Seite, 1 bis ${whole.format(pages)}`,
    before: 'Seite davor',
    after: 'Seite danach',
    preview: (number) => `Seite ${number}, klein`,
    onPaper: (across, down) => `Auf Papier ist sie ${across} breit und ${down} hoch.`,
    take: 'Diese Seite hereinholen',
    leave: 'Lassen',
    pageName: (name, number) => `${name}, Seite ${number}.png`,
    refused: {
      locked:
        'Dieses PDF ist mit einem Passwort verschlossen. Öffne es dort, wo du das Passwort weißt, drucke die Seite in ein neues PDF oder mache ein Bildschirmfoto und hole das herein.',
      damaged:
        'Die Datei beginnt wie ein PDF, lässt sich aber nicht öffnen: Sie scheint beschädigt. Kopiere oder lade sie noch einmal.',
    },
    pageRefused: (number) =>
      `Seite ${number} lässt sich nicht zeichnen. Zeige sie anderswo so groß, wie der Bildschirm erlaubt, mache ein Bildschirmfoto und hole das herein.`,
  },
  tooManyPixels: (across, down) =>
    `Dieses Bild hat ${whole.format(across)} mal ${whole.format(down)} Pixel, das sind ${whole.format((across * down) / 1e6)} Megapixel; mehr als 100 lassen sich nicht sicher öffnen. Mache mit einem Bildprogramm eine kleinere Kopie: 5.000 Pixel an der langen Seite reichen gut zum Nachzeichnen.`,

  list: 'Vorlagen',
  name: 'Name dieser Vorlage',
  pickDiagram: 'Vorlage auf dem Tisch',
  remove: 'Diese Vorlage vom Tisch nehmen',
  removed: 'Die Vorlage ist vom Tisch; danach gezeichnete Teile bleiben. „Rückgängig“ holt sie zurück.',
  unnamed: 'Vorlage',

  square: {
    title: '1 Entzerren',
    help: 'Suche etwas wirklich Rechteckiges, den Rahmen der Tafel oder die Seite, und setze auf jede seiner Ecken eine Ecke. Das Bild wird dann gerade gerückt.',
    flat: 'Es liegt schon flach',
    corners: 'Vier Ecken',
    how: 'Wie es liegt',
    curved: 'Gebogene Seiten',
    squares: 'Gedruckte Quadrate',
    side: ['Oben', 'Rechts', 'Unten', 'Links'],
    curvedHelp:
      'Den vier Seiten wird gefolgt, wie sie sich biegen, jeder durch die kleinen Ringe auf ihr. Schiebe einen Ring dahin, wo der Rand der Seite läuft; das Bild wird zwischen den vier Kurven geglättet.',
    placesAsNumbers: 'Die Ringe als Zahlen',
    ring: (side, number) => `Seite ${side.toLowerCase()}, Ring ${number}`,
    followAgain: 'Den Seiten neu folgen',
    squaresHelp: (across, down, left) =>
      `${across} mal ${down} gedruckten Quadraten wird gefolgt, allen Kreuzungen zusammen.${left > 0 ? ` ${left === 1 ? '1 Kreuzung, die nicht dazu passt, ist' : `${left} Kreuzungen, die nicht dazu passen, sind`} ausgelassen.` : ''}`,
    squaresMiss: (usual, worst) => `Die Kreuzungen liegen meist ${usual} daneben, höchstens ${worst}.`,
    squaresPixels: (px) => `${tenth.format(px)} Pixel des Fotos`,
    oneSquare: 'Ein Quadrat ist',
    takeSquare: 'Als bekannte Längen nehmen',
    squareTaken: (count, length) =>
      `Je eine bekannte Länge quer und längs ist dazugekommen, ${count} Quadrate zu ${length} und mehr.`,
    corner: ['Oben links', 'Oben rechts', 'Unten rechts', 'Unten links'],
    across: (corner) => `${corner}, Pixel nach rechts`,
    down: (corner) => `${corner}, Pixel nach unten`,
    asNumbers: 'Die Ecken als Zahlen',
    cornerHead: 'Ecke',
    acrossHead: 'nach rechts',
    downHead: 'nach unten',
    nudge: 'Eine Ecke lässt sich tippen, ziehen oder mit den Pfeiltasten bewegen: 1 Pixel, mit Umschalt 10.',
    reset: 'Neu beginnen',
    search: {
      find: 'Die Ecken suchen',
      another: 'Anderer Vorschlag',
      back: 'Zurück zum Vorschlag',
      refine: 'An die Kanten ziehen',
      running: {
        find: 'Die Ecken werden gesucht …',
        refine: 'Den Kanten wird gefolgt …',
        squares: 'Gedruckte Quadrate werden gesucht …',
      },
      on: (kind, number, all) =>
        `Die Ecken liegen auf ${kind === 'page' ? 'dem Rand des Papiers' : 'einem gedruckten Rahmen'}${all === 1 ? '' : `, Vorschlag ${number} von ${all}`}. Sieh dir jede an, bevor du weitermachst.`,
      'nothing-sure':
        'In diesem Bild ist nichts Rechteckiges sicher genug zu sehen. Die Ecken bleiben, wie sie sind; setze sie selbst.',
      stopped: 'Angehalten. Die Ecken bleiben, wie sie sind.',
      failed:
        'Das Bild ließ sich nicht absuchen, wahrscheinlich fehlt es an Speicher. Die Ecken bleiben, wie sie sind.',
      moved: (by) => {
        const corners = ['oben links', 'oben rechts', 'unten rechts', 'unten links'];
        if (by.every((each) => each < 0.05)) return 'Die Ecken liegen schon auf den Kanten.';
        const each = by.map((moved, corner) => `${corners[corner]} ${tenth.format(moved)}`).join('; ');
        return `So weit ist jede Ecke gerückt, in Pixeln: ${each}.`;
      },
      sideNotSeen: (side) =>
        `${['Oben', 'Rechts', 'Unten', 'Links'][side]} ist keine Kante und keine gedruckte Linie zu sehen. Setze die Ecken näher daran oder lass sie, wie sie sind.`,
      'sides-do-not-meet':
        'Nahe bei diesen Ecken sind keine vier Kanten zu sehen, die sich treffen. Setze sie näher an einen Rahmen oder den Rand der Seite.',
      refineLabel: 'die Ecken an die Kanten ziehen',
      followLabel: 'den gebogenen Seiten folgen',
      squaresLabel: 'den gedruckten Quadraten folgen',
      squaresFound: ({ columns, rows }) => `${columns} mal ${rows} gedruckten Quadraten wird gefolgt.`,
      'no-squares':
        'Zwischen den Ecken sind keine gedruckten Quadrate zu sehen. Setze die Ecken außen an die Quadrate und versuche es noch einmal.',
      'too-few': 'Zwischen den Ecken sind weniger als 2 mal 2 gedruckte Quadrate zu sehen, das sagt zu wenig.',
      'folds-over':
        'Die gefundenen Kreuzungen liegen nicht so, wie Quadrate auf einer Seite liegen können. Setze die Ecken außen an die Quadrate und versuche es noch einmal.',
    },
    sides: 'Was von seinen Seiten bekannt ist',
    sidesKnown: {
      'not-known': 'nicht bekannt',
      a4: 'eine Seite A4',
      letter: 'eine Seite US Letter',
      typed: 'dieses Verhältnis',
    },
    wayUp: 'Es liegt',
    upright: 'hoch',
    sideways: 'quer',
    proportionAcross: 'Breite',
    proportionDown: 'Höhe',
    notKnownHint:
      'Dann gib unten zwei bekannte Längen an, eine quer und eine längs, und das Verhältnis ergibt sich daraus.',
    turn: 'Vierteldrehung',
    preview: 'Wie es liegen wird',
    squaring: 'Wird entzerrt …',
    stopped: 'Angehalten. Das Bild wird wieder entzerrt, sobald sich eine Ecke bewegt.',
    again: 'Jetzt entzerren',
  },

  known: {
    title: '2 Bekannte Längen',
    help: 'Ziehe eine Linie an etwas entlang, dessen Länge in Originalgröße du kennst, so lang wie möglich: ein gedrucktes Maß, einen Maßstabsbalken, ein Viertel der Taille. Eine zweite im rechten Winkel dazu prüft die erste und bestimmt quer und längs getrennt.',
    draw: 'Bekannte Länge zeichnen',
    drawing: 'Ziehe die Linie entlang oder drücke auf ihre beiden Enden.',
    tooNear:
      'Zu nah am ersten Ende, um beide auseinanderzuhalten. Vergrößere das Bild und drücke dann auf das andere Ende.',
    drawingSecond: 'Drücke jetzt auf das andere Ende.',
    byNumbers: 'Mit Zahlen setzen',
    toTicks: 'Enden an gedruckte Striche holen',
    ticksReading: (percent) => `Die gedruckten Linien werden gelesen: ${percent} %.`,
    ticksUnreadable: 'Die Linien dieses Bildes waren nicht lesbar, die Enden bleiben also, wo du sie hinsetzt.',
    giveUp: 'Lassen',
    fresh: 'Wie lang ist diese Linie in Originalgröße?',
    card: (number) => `Bekannte Länge ${number}`,
    kind: 'Es ist',
    length: 'eine Länge',
    share: 'ein Teil eines Maßes',
    scaleBar: 'ein Maßstabsbalken',
    bar: {
      count: 'Im Bild zählen',
      reading: (percent) => `Die gedruckten Linien werden gelesen: ${percent} %.`,
      seen: (intervals) => `${intervals} Abschnitte sind zwischen den Enden zu sehen.`,
      tail: (intervals) =>
        `${intervals} Abschnitte sind zu sehen, und hinter dem letzten Strich läuft die Linie glatt weiter. Dieses Stück zählt nicht mit: Hole die Enden an die Striche.`,
      notCounted:
        'Zwischen diesen Enden sind keine gleichmäßigen Abschnitte zu sehen. Zähle selbst die Zwischenräume, nicht die Striche.',
      bring: 'Die Enden an die Striche holen',
      finer: (intervals) => `Mit jedem kurzen Strich sind es ${intervals}.`,
      coarser: (intervals) => `Nach den langen Strichen allein sind es ${intervals}.`,
      take: (intervals) => `${intervals} nehmen`,
      intervals: 'Abschnitte',
      each: 'Einer ist',
      all: 'Alle zusammen',
      units: 'In jeder Einheit: 1 in, 2 ft 3, 1 nail (2 1/4 in), 5 cm.',
    },
    fullSize: 'In Originalgröße',
    part: 'Dieser Teil',
    ofThe: 'von',
    ease: 'und Mehrweite',
    take: 'Übernehmen',
    shares: {
      '1/1': 'das Ganze',
      '1/2': 'die Hälfte',
      '1/3': 'ein Drittel',
      '1/4': 'ein Viertel',
      '1/6': 'ein Sechstel',
      '1/8': 'ein Achtel',
      '1/12': 'ein Zwölftel',
    },
    notMeasured: (measure) => `Das Maß „${measure}“ fehlt noch, deshalb zählt diese Linie nicht.`,
    toWearer: 'Zum Raum Maße',
    shareComes: (length) => `Das ergibt ${length}.`,
    asRead: (length) => `Nach den anderen misst sie ${length}.`,
    byMaking: (length) => `Sie misst ${length}, weil der Maßstab von ihr kommt.`,
    measures: (length, off, percent) => `Sie misst ${length}: ${off} (${percent}).`,
    exact: (length) => `Sie misst ${length}, wie sie soll.`,
    over: (length) => `${length} zu lang`,
    under: (length) => `${length} zu kurz`,
    percent: (share) => `${tenth.format(Math.abs(share) * 100)} %`,
    ends: 'Ihre Enden als Zahlen',
    from: 'Erstes Ende',
    to: 'Anderes Ende',
    remove: (number) => `Bekannte Länge ${number} entfernen`,
    choose: (number) => `Bekannte Länge ${number} auf dem Bild zeigen`,
    scanned: (across, down) =>
      `Dieses Bild sagt, wie groß es auf Papier ist: ${across} breit und ${down} hoch. Nennt der Druck seinen Maßstab, etwa ein Achtel der Originalgröße, ist auch das eine bekannte Länge.`,
    timesLarger: 'Originalgröße ist so viele Male der Druck',
    takeScanned: 'Die Breite des Papiers als bekannte Länge nehmen',
  },

  together: {
    title: 'Mit den anderen Bildern',
    othersLean: 'Die anderen Bilder richten sich nach diesem.',
    nameOf: (name) => name.trim() || 'das andere Bild',
    scale: 'Sein Maßstab ist',
    ownScale: 'der eigene, aus seinen bekannten Längen',
    sameAs: (name) => `derselbe wie: ${name}`,
    alike: 'Denn',
    because: (why) => `Denn ${why}.`,
    by: {
      paper: 'beide sind in einem Maßstab gedruckt, und jedes nennt seine Größe auf Papier',
      rectangle: 'beide sind nach gleich großen Rechtecken entzerrt, etwa den Seiten eines Buchs',
      pixel: 'beide haben gleich große Pixel, wie Bildschirmfotos in einer Vergrößerung',
    },
    notAlike:
      'Diese beiden sind nicht von einer Art: Das eine liegt flach, das andere ist nach einem Rechteck entzerrt. Entzerre beide nach der Seite oder gib diesem eine eigene bekannte Länge.',
    joined: 'Es setzt fort',
    alone: 'kein anderes Bild',
    help: (name) =>
      `Gib zwei oder mehr Stellen an, die hier und dort (${name}) zu sehen sind, so weit auseinander wie möglich. Oder wähle, welche Kanten sich im Bund des Buchs treffen. Beide sind dann eine Vorlage.`,
    letter: (index) => String.fromCharCode(65 + (index % 26)),
    place: (letter) => `Stelle ${letter}`,
    apart: (length) => `${length} auseinander`,
    removePlace: (letter) => `Stelle ${letter} entfernen`,
    give: 'Gemeinsame Stelle angeben',
    edgesMeet: 'Kanten, die sich treffen',
    chooseSide: 'wählen',
    sides: {
      left: 'seine linke und die rechte des anderen',
      right: 'seine rechte und die linke des anderen',
      top: 'seine obere und die untere des anderen',
      bottom: 'seine untere und die obere des anderen',
    },
    size: 'Seine Größe',
    sizes: { fitted: 'wie die Stellen es verlangen', own: 'nach dem eigenen Maßstab' },
    needsTwo: (given) =>
      given === 0
        ? 'Noch keine gemeinsame Stelle ist angegeben. Zwei sind nötig.'
        : 'Eine weitere gemeinsame Stelle ist nötig.',
    unchecked: 'Nach zwei Stellen zusammengelegt, und nichts prüft sie. Eine dritte täte es.',
    apartAtMost: (length) => `Zusammengelegt: Die Stellen liegen höchstens ${length} auseinander.`,
    askHere: 'Drücke auf eine Stelle, die in beiden Bildern zu sehen ist, etwa wo sich zwei Linien kreuzen.',
    askThere: (name) => `Drücke jetzt auf dieselbe Stelle hier: ${name}.`,
  },

  check: {
    title: '3 Prüfen',
    good: 'Gut genug zum Nachzeichnen.',
    notGood: 'Noch nicht gut genug zum Nachzeichnen.',
    withCare: 'Nachzeichnen geht; beachte, was oben steht.',
    onePixel: (across, down) =>
      across === down
        ? `1 Pixel des Fotos ist ${across} in Originalgröße.`
        : `1 Pixel des Fotos ist in Originalgröße ${across} quer und ${down} längs.`,
    pixelIn: (perInch) => (perInch >= 1.5 ? `1/${whole.format(perInch)} in` : `${tenth.format(1 / perInch)} in`),
    pixelMm: (mm) => `${writeNumber(mm, 2)} mm`,
    slip: (length) => `2 Pixel daneben am Ende einer Linie machen ${length}.`,
    size: (across, down) => `Das ganze Bild ist in Originalgröße ${across} breit und ${down} hoch.`,
    rectangle: (across, down) =>
      `Das Rechteck, nach dem du entzerrt hast, ist in Originalgröße ${across} breit und ${down} hoch.`,
    across: (percent) => `Quer ist ${percent} größer gezeichnet als längs; jede Richtung hat ihren eigenen Maßstab.`,
    down: (percent) => `Längs ist ${percent} größer gezeichnet als quer; jede Richtung hat ihren eigenen Maßstab.`,
    percent: (share) => `${tenth.format(share * 100)} %`,
    alike: 'Quer und längs haben einen Maßstab.',
    truth: (off, over) =>
      `Die Seite stimmt auf ${off} je ${over}: So gerade und rechtwinklig liegen die anderen Linien, die darauf zu sehen sind.`,
    truthUnknown:
      'Im Bild ist nichts weiter Rechteckiges zu sehen, das prüfen könnte, wie genau es liegt. Eine gedruckte Linie, die gerade sein sollte, kann es.',
    toDraft: 'Zum Raum Entwurf',
  },
  ruled: {
    title: 'Linien, die gerade sein sollten',
    help: 'Eine gedruckte Linie, die sicher gerade ist, oder zwei, die sicher rechtwinklig sind, sagen, wie genau das entzerrte Bild liegt. Lange sagen am meisten.',
    mark: 'Gerade Linie kennzeichnen',
    following: 'Der gedruckten Linie wird gefolgt …',
    line: (letter) => `Linie ${letter}`,
    letter: (index) => String.fromCharCode(97 + (index % 26)),
    straight: (off, over) => `Gerade auf ${off} je ${over}.`,
    endsOnly: (length) =>
      `Zwischen ihren Enden, ${length} auseinander, war keine gedruckte Linie zu sehen: Nur ihre Richtung zählt. Gib unten an, zu welcher Linie sie rechtwinklig ist.`,
    square: (letter, off, over) => `Rechtwinklig zu Linie ${letter} auf ${off} je ${over}.`,
    beyond: 'Sie reicht über das hinaus, was sich flach legen lässt. Entferne sie, oder setze die Ecken richtig.',
    noScale: 'Wie weit sie abweicht, lässt sich sagen, sobald es eine bekannte Länge gibt.',
    squareTo: 'Rechtwinklig zu',
    none: 'keiner anderen Linie',
    remove: (letter) => `Linie ${letter} entfernen`,
    full: 'Mehr Linien werden für ein Bild nicht aufbewahrt. Entferne zuerst eine.',
  },
  followed: (count) =>
    count === 1
      ? 'Das nach dieser Vorlage gezeichnete Teil ist mitgegangen.'
      : `Die ${count} nach dieser Vorlage gezeichneten Teile sind mitgegangen.`,

  source: {
    title: 'Woher sie kommt',
    book: 'Buch oder Zeitschrift',
    page: 'Seite',
    plate: 'Tafel oder Abbildung',
    year: 'Jahr',
    remarks: 'Bemerkungen',
    remarksHint: 'Was der Text zum Kleidungsstück sagt, der gedruckte Maßstab, was dir rätselhaft war.',
  },
  heldBack: (across, down) =>
    `Ein Punkt kann höchstens um eine Bildgröße außerhalb des Bildes liegen. Dieser ist jetzt bei ${whole.format(across)} nach rechts und ${whole.format(down)} nach unten.`,
  cannotSquare: 'Es lässt sich noch nicht entzerren, deshalb steht hier das Bild, wie es fotografiert ist.',
  notANumber: 'Das ist keine Zahl; nichts wurde geändert.',

  labels: {
    corner: (corner) => `Ecke ${corner.toLowerCase()} bewegen`,
    corners: 'die Ecken setzen',
    side: (side) => `Seite ${side.toLowerCase()} bewegen`,
    flat: 'wie das Bild liegt',
    sides: 'Seiten des Rechtecks',
    turn: 'Bild drehen',
    scaleFrom: 'wessen Maßstab ein Bild hat',
    join: 'zwei Hälften zusammenlegen',
    otherPage: 'andere Seite eines Bildes',
    addLength: 'bekannte Länge hinzufügen',
    moveLength: 'bekannte Länge bewegen',
    changeLength: 'bekannte Länge ändern',
    removeLength: 'bekannte Länge entfernen',
    rule: 'gerade Linie kennzeichnen',
    squareTo: 'welche Linien rechtwinklig sind',
    moveRuled: 'gerade Linie bewegen',
    removeRuled: 'gerade Linie entfernen',
    name: 'Name der Vorlage',
    source: 'woher sie kommt',
    remove: 'Vorlage vom Tisch nehmen',
  },
};
