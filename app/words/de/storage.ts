import type { CopyAge } from '../../state/copy-age';
import type * as english from '../en/storage';
import type { Said } from '../said';
import { writeNumber } from '../written';

const changes = (count: number) => (count === 1 ? '1 Änderung' : `${count} Änderungen`);

export const storageWords: Said<typeof english.storageWords> = {
  full: 'Dieses Gerät hat keinen Platz mehr. Sichere das Kleidungsstück als Datei und schaffe dann Platz.',
  cannotWrite:
    'Der Browser wollte nicht schreiben. Ich versuche es weiter; sichere das Kleidungsstück zur Vorsicht als Datei.',
  keepsNothing:
    'Dieser Browser lässt die Seite nichts aufbewahren, wie in manchen privaten Fenstern. Sichere das Kleidungsstück als Datei, bevor du schließt.',
  changedElsewhere:
    'Dieses Kleidungsstück wurde in einem anderen Fenster geändert, seit es in diesem geöffnet ist. Sichere es als Datei, um beides zu behalten.',
  newerElsewhere:
    'In einem anderen Fenster wurde ein neueres Inchsquare geöffnet. Sichere das Kleidungsstück als Datei und lade dann diese Seite neu.',
  blocked:
    'Ein älteres Inchsquare, in einem anderen Fenster dieses Browsers geöffnet, hält fest, was aufbewahrt ist. Schließe seine anderen Fenster, dann geht es von selbst weiter; sichere das Kleidungsstück bis dahin zur Vorsicht als Datei.',
  newerStore:
    'Ein neueres Inchsquare hat in diesem Browser Kleidungsstücke aufbewahrt, und in das, was es gemacht hat, wird nichts hineingeschrieben. Lade die Seite neu, um dieses auf den neuesten Stand zu bringen; sichere das Kleidungsstück bis dahin als Datei.',
  openElsewhere:
    'Dieses Kleidungsstück ist in einem anderen Fenster geöffnet, und nur ein Fenster kann es zur selben Zeit ändern.',
  beside: 'daneben gesichert',
  besideName: (name) => `${name}, daneben gesichert`,
  unnamedFile: 'kleidungsstück',
  bytes: (bytes) => {
    const megabytes = bytes / 1024 / 1024;
    if (megabytes < 1) return 'weniger als 1 MB';
    if (megabytes < 1000) return `${Math.round(megabytes)} MB`;
    return `${writeNumber(megabytes / 1024, megabytes < 10_000 ? 1 : 0)} GB`;
  },
  used: (used, left) => `${used} in diesem Browser belegt. Er erlaubt bis zu ${left} mehr, soweit das Gerät Platz hat.`,
  usedUnknown: 'Dieser Browser sagt nicht, wie viel Platz noch ist.',
  stays: 'Der Browser hat zugesagt, das hier nicht von selbst zu löschen. Eine Datei ist trotzdem die sicherste Kopie.',
  mayGo: 'Der Browser darf das hier löschen, wenn dem Gerät der Platz ausgeht: Bewahre Kopien als Dateien auf.',
  needsNetwork:
    'Das Programm selbst behält dieser Browser nicht: So, wie es hier bereitsteht, braucht es bei jedem Öffnen das Netz. Über https, oder nur auf diesem Rechner, geht es ohne.',
  copies: 'Kopien als Dateien',
  copyAge: (age: CopyAge) => {
    if (age.kind === 'none')
      return age.changes === 0 ? 'keine Kopie als Datei' : `keine Kopie als Datei, ${changes(age.changes)}`;
    if (age.changes === 0) return 'als Datei gesichert, wie es ist';
    const when = age.days === 0 ? 'heute' : age.days === 1 ? 'vor 1 Tag' : `vor ${age.days} Tagen`;
    return `${when} als Datei gesichert, seitdem ${changes(age.changes)}`;
  },
  toDownloads: 'Dateien gehen dorthin, wo der Browser seine Downloads ablegt.',
  toFolder: (folder) =>
    `Dateien gehen in den Ordner „${folder}“. Eine Datei, die jemand anders geändert hat, wird nie überschrieben.`,
  chooseFolder: 'Ordner dafür wählen',
  otherFolder: 'Anderen Ordner wählen',
  noFolder: 'Wieder zu den Downloads',
  folderChosen: (folder) =>
    `Von jetzt an gehen Dateien in den Ordner „${folder}“. Der Browser fragt dich vielleicht noch einmal.`,
  folderFailed: 'Der Browser wollte diesen Ordner nicht nehmen. Wähle einen anderen oder sichere wie bisher.',
  savedIn: (folder, name) => `Im Ordner „${folder}“ gesichert als ${name}.`,
  savedDownload: 'Als Datei gesichert, bei den Downloads dieses Browsers.',
  savedInstead:
    'In den Ordner ließ sich nicht schreiben, die Datei liegt deshalb bei den Downloads. Wähle den Ordner im Regal neu.',
  notSaved: (name) =>
    `${name} konnte nicht als Datei gesichert werden. Lade die Seite neu und versuche es noch einmal.`,
  fileAlone:
    'Die Datei enthält den Entwurf. Seine früheren Fassungen oder seine Bilder konnten aus diesem Browser nicht gelesen werden und sind nicht darin.',
  reserveSpent:
    'Dieses Gerät ist voll oder fast voll. Deine Arbeit liegt vorerst in einer kleinen Reserve, aber weitere Bilder passen vielleicht nicht mehr hinein. Sichere deine Kleidungsstücke als Dateien, nimm dann einige aus dem Regal oder schaffe Platz auf dem Gerät.',
  short: (left) =>
    `Auf diesem Gerät ist nur noch wenig Platz: ${left}. Sichere deine Kleidungsstücke als Dateien, nimm dann einige aus dem Regal oder schaffe Platz auf dem Gerät, bevor etwas nicht mehr gesichert werden kann.`,
};
