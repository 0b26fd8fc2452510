import type { CopyAge } from '../../state/copy-age';
import type * as english from '../en/shell';
import type { Said } from '../said';

function copiedAgo(days: number): string {
  if (days === 0) return 'Seit der Kopie viel geändert';
  return days === 1 ? 'Letzte Kopie 1 Tag alt' : `Letzte Kopie ${days} Tage alt`;
}

export const shellWords: Said<typeof english.shellWords> = {
  product: 'Inchsquare',
  rooms: {
    shelf: 'Regal',
    wearer: 'Maße',
    diagram: 'Vorlage',
    draft: 'Entwurf',
    reshape: 'Umformen',
    seams: 'Nähte',
    fit: 'Passform',
    mockup: 'Probe',
    versions: 'Fassungen',
    compare: 'Vergleich',
    cloth: 'Stoff',
    paper: 'Papier',
    check: 'Vor dem Zuschneiden',
  },
  roomsInOrder: 'Die Arbeit, vom Körper bis zum Papier',
  leftOnTape: (count) => `${count} offen`,
  leftKnowingly: (count) => (count === 1 ? '1 Hinweis bewusst so gelassen' : `${count} Hinweise bewusst so gelassen`),
  unsettled: (count) => (count === 1 ? '1 Hinweis zu klären' : `${count} Hinweise zu klären`),
  settled: 'nichts zu klären',
  undo: (what) => (what ? `Rückgängig: ${what}` : 'Nichts rückgängig zu machen'),
  redo: (what) => (what ? `Wiederholen: ${what}` : 'Nichts zu wiederholen'),
  units: { in: 'in', cm: 'cm' },
  writeIn: { in: 'Längen in Zoll schreiben', cm: 'Längen in Zentimetern schreiben' },
  unitsChanged: 'Zoll oder Zentimeter',
  saving: {
    saved: 'Hier gesichert',
    waiting: 'Wird gesichert …',
    failed: 'Nicht gesichert',
    looking: 'Nur zum Ansehen',
  },
  copyOld: (age: CopyAge) => (age.kind === 'none' ? 'Noch keine Kopie als Datei' : copiedAgo(age.days)),
  notKept: (why) => `Deine letzten Änderungen stehen auf dem Bildschirm, sind aber noch nicht gesichert: ${why}`,
  saveToFile: 'Jetzt als Datei sichern',
  cleared:
    'Was dieser Browser aufbewahrt hat, wurde während der Arbeit gelöscht. Das Kleidungsstück auf dem Tisch ist neu gesichert; seine Bilder, seine Fassungen und andere Kleidungsstücke können verloren sein. Sichere es jetzt als Datei und hole die anderen aus ihren Dateien herein.',
  laidBeside: (name) =>
    `Das Kleidungsstück wurde inzwischen in einem anderen Fenster geändert. Was du in diesem gemacht hast, ist daneben gesichert, als „${name}“; damit machst du hier weiter. Beide liegen im Regal.`,
  blocked:
    'Ein älteres Inchsquare, in einem anderen Fenster dieses Browsers geöffnet, hält fest, was hier aufbewahrt ist. Schließe seine anderen Fenster; dieses macht dann von selbst weiter.',
  newerFile:
    'Dieses Kleidungsstück wurde mit einem neueren Inchsquare gemacht. Was dieses hier davon kennt, wird gezeigt, nur zum Ansehen: Hier wird nichts geändert oder gesichert. Lade die Seite neu, um dieses auf den neuesten Stand zu bringen; die Datei lässt sich sichern, wie sie kam.',
  saveAsItCame: 'Datei sichern, wie sie kam',
  newerStore:
    'Ein neueres Inchsquare hat in diesem Browser Kleidungsstücke aufbewahrt. Sie lassen sich ansehen und als Datei sichern; hier wird nichts hineingeschrieben. Lade die Seite neu, um dieses auf den neuesten Stand zu bringen.',
  notNow: 'Nicht jetzt',
  refused: (what) =>
    `Das wurde nicht gemacht (${what}): Ein Schnittteil läge mehr als einen Kilometer entfernt, oder ein Zeichen verlöre seine Kante.`,
  elsewhere:
    'Dieses Kleidungsstück ist in einem anderen Fenster geöffnet, und nur ein Fenster kann es zur selben Zeit ändern.',
  editHere: 'Hier weitermachen',
  broken: (room) =>
    `Etwas im Raum ${room} konnte nicht gezeigt werden. Dein Kleidungsstück ist sicher; die anderen Räume gehen weiter.`,
  brokenAll:
    'Die Werkbank konnte nicht gezeigt werden. Dein Kleidungsstück ist auf diesem Gerät gesichert, soweit es so angezeigt war.',
  knows: (name, pieces) => `Auf dem Tisch: ${name}, ${pieces === 1 ? '1 Schnittteil' : `${pieces} Schnittteile`}.`,
  report: 'Was schiefging, für die, die es beheben',
  reportHelp:
    'Es bleibt auf diesem Gerät, solange du es nicht weitergibst. Kein Bild, kein Name und kein Maß steht darin; Zahlen sind gestrichen.',
  reportYours: 'Was du gerade getan hast, wenn du magst',
  reportSave: 'Diesen Bericht sichern',
  tryAgain: 'Noch einmal versuchen',
  stray:
    'Eben ging etwas schief, und vielleicht wurde nicht getan, was du wolltest. Deine Arbeit ist gesichert. Versuch es noch einmal; geht es wieder schief, lade die Seite neu.',
  strayClose: 'Weglegen',
  loading: 'Einen Moment …',
  newer: 'Ein neueres Inchsquare liegt bereit. Deine Arbeit ist gesichert; die Seite lädt neu.',
  newerTake: 'Jetzt wechseln',
  newerLater: 'Später',
  newerOthers:
    'Inchsquare ist noch in einem anderen Fenster dieses Browsers geöffnet. Schließe es dort zuerst: Kein Fenster wird mitten in der Arbeit gewechselt.',
  newerElsewhere:
    'In einem anderen Fenster wurde zu einem neueren Inchsquare gewechselt. Räume, die hier noch nicht offen waren, kommen vielleicht erst, wenn diese Seite neu geladen ist; deine Arbeit ist gesichert.',
  newerReload: 'Neu laden',
};
