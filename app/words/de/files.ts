import type { FileRefusal } from '../../../core/files/file-reading';
import type { FileWords } from '../../../core/files/file-words';
import type * as english from '../en/files';
import { locale } from '../language';
import type { Said } from '../said';
import { writeLength } from '../written';
import { paperSheetWords } from './paper-sheet';

export const fileWords: typeof english.fileWords = ({ shownIn, paper }) => {
  const { content, unnamedPiece, unnamedGarment, garmentLine } = paperSheetWords(shownIn, paper.step);
  return {
    content,
    unnamedPiece,
    unnamedGarment,
    garmentLine: (garment, date, mark) => garmentLine(garment, date, { kind: 'changed', mark }),
    layer: (layer) => layers[layer],
  };
};

const layers: Readonly<Record<Parameters<FileWords['layer']>[0], string>> = {
  outline: 'Umriss',
  stitch: 'Nahtlinie',
  cut: 'Schnittlinie',
  fold: 'Stoffbruch',
  grain: 'Fadenlauf',
  notches: 'Knipse',
  marks: 'Abnäher und Zeichen',
  words: 'Text',
};

const whole = (count: number) => new Intl.NumberFormat(locale(), { maximumFractionDigits: 0 }).format(count);

export const filesWords: Said<typeof english.filesWords> = {
  out: {
    title: 'Zeichnungsdateien',
    help: 'Für ein Zeichenprogramm, eine Schneidemaschine oder eine Druckerei: alle Teile in Originalgröße, wo sie auf dem Tisch liegen. Hilfslinien bleiben weg.',
    svg: 'Als SVG sichern',
    svgHelp: 'in Millimetern, je Teil eine Gruppe, je Linienart eine benannte Ebene',
    dxf: 'Als DXF sichern',
    dxfHelp: 'je Teil ein Block, auf den nummerierten Ebenen für Bekleidungsdateien',
    dxfUnit: 'Das DXF ist in',
    png: 'Bild sichern (PNG)',
    pngHelp: 'zum Ansehen oder Verschicken; nicht zum Zuschneiden',
    failed: 'Die Datei konnte nicht gemacht werden. Sichere das Kleidungsstück als Datei und versuche es noch einmal.',
    made: (name) => `${name} liegt bei deinen Downloads.`,
    units: { mm: 'Millimetern', in: 'Zoll' },
  },
  bringIn: {
    button: 'Umrisse hereinholen (SVG, DXF)',
    reading: 'Die Umrisse werden gelesen …',
    stop: 'Anhalten',
    label: 'Umrisse hereinholen',
    done: (count) =>
      count === 1
        ? '1 Teil ist da. Sage als Nächstes, was seine Linie enthält.'
        : `${count} Teile sind da. Sage als Nächstes, was ihre Linien enthalten.`,
    none: 'In dieser Datei ist kein geschlossener Umriss. Verbinde die Enden der Linien dort, wo sie gezeichnet wurde, speichere sie neu und hole sie herein.',
    stopped: 'Angehalten. Nichts wurde hereingeholt.',
    tooLong:
      'Diese Datei zu lesen dauert zu lange: Nichts wurde hereingeholt. Speichere sie dort, wo sie gezeichnet wurde, mit weniger Punkten oder Linien.',
    broken: 'Diese Datei ließ sich nicht lesen; nichts wurde hereingeholt.',
    unitTitle: 'Wie groß ist es?',
    unitHelp: (across, down) =>
      `Die Datei sagt nicht, wie lang ihre Einheit ist. Alle Umrisse zusammen sind ${whole(across)} mal ${whole(down)} Einheiten groß.`,
    unit: 'Eine Einheit ist',
    units: {
      mm: 'ein Millimeter',
      cm: 'ein Zentimeter',
      in: 'ein Zoll',
      px: 'ein Bildpunkt, 96 auf den Zoll',
    },
    comesTo: (across, down) => `Dann sind sie ${across} mal ${down} groß.`,
    take: 'So hereinholen',
    leave: 'Lassen',
  },
};

export const fileFindingSentence: typeof english.fileFindingSentence = (finding, shownIn) => {
  const length = (mm: number) => writeLength(mm, { shownIn });
  const named = (name: string) => (name === '' ? 'Eine Linie' : `Die Linie ${name}`);
  switch (finding.kind) {
    case 'open-line':
      return `${named(finding.name)} auf Ebene ${finding.layer} schließt sich nicht, die Lücke misst ${length(finding.gap)}. Sie wurde weggelassen.`;
    case 'encloses-nothing':
      return `${named(finding.name)} auf Ebene ${finding.layer} umschließt nichts. Sie wurde weggelassen.`;
    case 'not-followed':
      return `Eine Kante liegt bis zu ${length(finding.off)} neben der Linie der Datei. Sieh sie im Entwurf durch.`;
    case 'too-much-for-a-piece':
      return `${named(finding.name)} hat mehr Ecken oder Knipse, als ein Teil haben darf. Sie wurde weggelassen.`;
    case 'notch-astray':
      return 'Ein Knips liegt an keiner Kante. Er wurde weggelassen.';
    case 'not-read':
      return finding.count === 1
        ? `1 Stück der Art ${finding.what} wird nicht gelesen.`
        : `${finding.count} Stücke der Art ${finding.what} werden nicht gelesen.`;
    case 'broken-line':
      return `${named(finding.name)} bricht ab. Was davor kam, wurde gelesen.`;
  }
};

/** What there is too much of in a file. */
const tooMany: Readonly<Record<Extract<FileRefusal, { kind: 'too-many' }>['what'], string>> = {
  elements: 'Elemente',
  entities: 'Objekte',
  points: 'Punkte',
  outlines: 'Umrisse',
};

export const fileRefusalSentence: typeof english.fileRefusalSentence = (refusal) => {
  switch (refusal.kind) {
    case 'not-this-kind':
      return 'Das ist weder eine SVG- noch eine DXF-Datei, wie immer sie heißt. Speichere die Zeichnung als eine von beiden, und hole diese herein.';
    case 'binary-dxf':
      return 'Dieses DXF ist binär. Speichere es als DXF in reinem Text (ASCII), und hole das herein.';
    case 'broken-xml':
      return `Dieses SVG ist in Zeile ${refusal.line} beschädigt. Öffne es in einem Zeichenprogramm und speichere es neu.`;
    case 'broken-number':
      return `Eine Zahl in Zeile ${refusal.line} ist nicht lesbar. Speichere die Zeichnung dort neu, wo sie entstand.`;
    case 'broken-off':
      return `Die Datei hört in Zeile ${refusal.line} vor ihrem Ende auf. Kopiere oder lade sie noch einmal.`;
    case 'too-large':
      return `Die Datei ist länger als ${whole(refusal.limit / 1e6)} Millionen Zeichen; mehr wird nicht gelesen. Speichere sie mit weniger Punkten.`;
    case 'too-many':
      return `Die Datei hat mehr als ${whole(refusal.limit)} ${tooMany[refusal.what]}; mehr werden nicht gelesen. Speichere sie in Stücken.`;
    case 'too-deep':
      return `Ihre Gruppen liegen mehr als ${refusal.limit} tief ineinander. Löse die Gruppen dort auf, wo sie gezeichnet wurde, und speichere sie neu.`;
    case 'document-type':
      return 'Dieses SVG legt eigene Zeichen fest (einen Dokumenttyp), womit sich Schaden anrichten lässt; es wird nicht gelesen. Speichere es als einfaches SVG.';
    case 'script':
      return 'In diesem SVG steckt ein Programm; das wird hier nicht ausgeführt und die Datei nicht gelesen. Speichere es als einfaches SVG.';
    case 'outside-link':
      return `Dieses SVG will etwas von anderswo (${refusal.link.slice(0, 60)}), und hier wird nichts geholt. Setze es in die Datei, oder lass es weg.`;
  }
};
