import type * as english from '../en/shelf';
import type { Said } from '../said';

export const shelfWords: Said<typeof english.shelfWords> = {
  title: 'Inchsquare',
  promise: 'Von der kleinen gedruckten Vorlage zum Schnitt in Originalgröße, der einem Körper passt.',
  private: 'Alles bleibt auf diesem Gerät: kein Konto, kein Server, nichts wird irgendwohin geschickt.',
  startPicture: 'Mit einem Bild beginnen',
  startPictureHelp: 'Ein Foto, Scan oder Bildschirmfoto einer gedruckten Vorlage.',
  startDemo: 'Das Beispiel ausprobieren',
  startDemoHelp: 'Ein Unterrock, von uns gezeichnet, gemessen und nachgezeichnet, bereit zum Anpassen.',
  openFile: 'Datei öffnen',
  openFileHelp: 'Ein früher gesichertes Kleidungsstück, mehrere auf einmal oder ein ganzes Regal.',
  unnamed: 'Neues Kleidungsstück',
  nothingKept:
    'Im Regal liegt noch nichts. Beginne mit einem Bild deiner Vorlage, oder sieh dich mit dem Beispiel um; was du machst, wird hier von selbst aufbewahrt.',
  onTheShelf: 'Im Regal',
  onTheTable: 'Jetzt auf dem Tisch',
  changed: (when) => `geändert ${when}`,
  pieces: (count) => (count === 1 ? '1 Schnittteil' : `${count} Schnittteile`),
  open: (name) => `${name} öffnen`,
  save: 'Als Datei sichern',
  saveLabel: (name) => `${name} als Datei sichern`,
  copyLabel: (name) => `${name} kopieren`,
  copyName: (name) => `${name}, Kopie`,
  remove: 'Aus dem Regal nehmen',
  removeLabel: (name) => `${name} aus dem Regal nehmen`,
  removeSure: (name) =>
    `${name} für immer aus dem Regal nehmen? Ohne gesicherte Datei lässt es sich nicht zurückholen.`,
  removeYes: 'Für immer herausnehmen',
  removeNo: 'Behalten',
  removed: (name) => `${name} ist aus dem Regal genommen.`,
  name: 'Name des Kleidungsstücks auf dem Tisch',
  nameHint: 'Er steht auf jedem Blatt und gibt den Dateien ihren Namen.',
  rename: 'Kleidungsstück umbenannt',
  missing: 'Dieses Kleidungsstück ist nicht mehr auf diesem Gerät.',
  damaged:
    'Was von diesem Kleidungsstück gespeichert ist, ist beschädigt und ließ sich nicht öffnen. Wenn du eine Datei davon hast, öffne die.',
  newer:
    'Dieses Kleidungsstück wurde zuletzt mit einem neueren Inchsquare geändert. Lade die Seite neu, um dieses auf den neuesten Stand zu bringen.',
  unopened: (name, why) => `Zuletzt lag ${name} auf dem Tisch. ${why}`,
  lost: (count) =>
    count === 1
      ? 'Die allerletzte Änderung war nicht lesbar und wurde ausgelassen.'
      : `Die letzten ${count} Änderungen waren nicht lesbar und wurden ausgelassen.`,
  madeOf: 'Woraus Inchsquare gemacht ist',
  madeOfHelp: 'Die Arbeit anderer, die darin steckt, jeweils mit Stand und Lizenz.',
  madeOfFailed: 'Die Liste war nicht lesbar. Lade die Seite neu und versuche es noch einmal.',
  licensed: (name, version, licence) => `${name} ${version}, ${licence}`,
  noStorage:
    'Dieser Browser lässt die Seite nichts aufbewahren. Du kannst arbeiten, aber sichere alles als Datei, bevor du schließt.',
  theGarment: 'Das Kleidungsstück auf dem Tisch',
  aboutIt: 'Notizen, Stoff, Zutaten und sein Bild',
  notes: 'Notizen',
  notesHint:
    'Wie das Nähen ging, was nächstes Mal anders werden soll. Notizen zu einem Schnittteil stehen bei ihm, im Raum Entwurf.',
  cloth: 'Verwendeter Stoff',
  notions: 'Verwendete Zutaten',
  steps: { notes: 'Notizen zum Kleidungsstück', cloth: 'verwendeter Stoff', notions: 'verwendete Zutaten' },
  search: 'Suchen nach',
  searchHint: 'Ein Name, ein Buch, eine Trägerin, ein Stoff, ein Schnittteil oder ein Wort aus deinen Notizen.',
  order: 'Geordnet nach',
  orders: { changed: 'letzter Änderung', name: 'Namen', made: 'Beginn' },
  noneFound: (sought) => `Nichts im Regal oder im Weggelegten spricht von „${sought}“.`,
  putAwayTitle: (count) => `Weggelegt (${count})`,
  putAwayLabel: (name) => `${name} weglegen`,
  bringOutLabel: (name) => `${name} wieder hervorholen`,
  putAwayFailed: (name) =>
    `${name} bleibt, wo es ist: Der Browser wollte nicht schreiben. Lade die Seite neu und versuche es noch einmal.`,
  copyFailed: (name) =>
    `${name} ließ sich nicht kopieren: Der Browser wollte nicht schreiben. Lade die Seite neu und versuche es noch einmal.`,
  removeElsewhere: (name) =>
    `${name} ist in einem anderen Fenster offen, und dort wird daran gearbeitet. Schließe es dort zuerst; nichts wurde aus dem Regal genommen.`,
  removeFailed: (name) =>
    `${name} liegt noch im Regal: Der Browser wollte nicht schreiben. Lade die Seite neu und versuche es noch einmal.`,
  saveFailed: (name) =>
    `${name} konnte nicht als Datei gesichert werden. Lade die Seite neu und versuche es noch einmal.`,
  openFailed: (name) =>
    `${name} ließ sich nicht öffnen: Der Browser wollte das Gespeicherte nicht lesen. Lade die Seite neu und versuche es noch einmal.`,
  bringOutDone: (name) => `${name} liegt wieder im Regal.`,
  putAwayDone: (name) => `${name} ist weggelegt. Weiter unten bleibt es aufbewahrt.`,
  takeUpLabel: (name) => `${name} für eine andere Trägerin aufgreifen`,
};

export const takeUpWords: Said<typeof english.takeUpWords> = {
  title: (name) => `${name}, für eine andere Trägerin`,
  intro:
    'Ein neues Kleidungsstück wird neben dieses gelegt, mit dem Schnitt, wie er ist. Probeteile, gedruckte Blätter, Fassungen und was du bewusst so gelassen hast, bleiben beim ersten.',
  wearer: 'Ihr Name',
  measures: 'Ihre Maße',
  notYet: 'Noch nicht genommen',
  asIn: (name) => `Wie in ${name}`,
  whichSet: 'Welche seiner Maße',
  setOf: (date, wornOver) => (wornOver === '' ? `genommen ${date}` : `genommen ${date}, über ${wornOver}`),
  inUse: (set) => `${set}, dort in Gebrauch`,
  levels: 'Höhe für Höhe, an ihr',
  level: 'Höhe',
  pieces: 'Schnittteile',
  body: 'Ihr Körper',
  wanted: 'Mit Mehrweite',
  overShort: 'Zu viel oder zu wenig',
  unknown: '–',
  notTaped: (field) => `${field} nicht gemessen`,
  notReached: 'Teile enden darüber',
  onFirst: (verdict) => `${verdict} an der ersten`,
  newlyShort: 'neu bei ihr',
  failed:
    'Es ließ sich nicht aufgreifen: Der Browser wollte es nicht aufbewahren. Das erste Kleidungsstück ist, wie es war; lade die Seite neu und versuche es noch einmal.',
  measureFirst: 'Stehen ihre Maße im Raum Maße, sagt der Raum Passform, was nicht mehr passt.',
  noMeasures: 'Die Maße dieses Kleidungsstücks sind nicht lesbar.',
  noLonger: 'Was ihr nicht passt',
  didFit: 'Das ist neu mit ihren Maßen.',
  neverFitted: 'Das war schon bei der ersten Trägerin offen.',
  allFits: 'Nach ihren Maßen passt alles, was sich rings um den Körper prüfen lässt.',
  noRings: 'Noch lässt sich nichts prüfen: Gib im Raum Passform an, welche Teile um den Körper gehen.',
  garmentName: (garment, wearer) => `${garment}, für ${wearer}`,
  toMeasures: 'Aufgreifen, weiter zu ihren Maßen',
  toFit: 'Aufgreifen, weiter zur Passform',
  toReshape: 'Aufgreifen und umformen',
  leave: 'Lassen',
};

export const coverWords: Said<typeof english.coverWords> = {
  cover: 'Sein Bild im Regal',
  pieces: 'Die Schnittteile, gezeichnet',
  diagram: (name) => `Die Vorlage ${name}`,
  fitting: (number) => `Bild der Anprobe ${number}`,
  own: 'Ein eigenes Bild',
  choose: 'Anderes Bild, aus einer Datei oder der Kamera',
  step: 'Bild im Regal',
  taken: 'Das ist jetzt sein Bild im Regal.',
  notStored:
    'Der Browser wollte dieses Bild nicht aufbewahren; vielleicht hat das Gerät keinen Platz mehr. Nichts wurde geändert.',
  refused: {
    'too-large':
      'Dieses Bild hat mehr Pixel, als dieses Gerät öffnen kann. Verkleinere es oder fotografiere noch einmal.',
    unreadable: 'Diese Datei ließ sich nicht als Bild öffnen. Wähle ein JPEG, PNG oder WebP.',
  },
};
