import type { WordsContent } from '../../../core/drawing/drawing';
import type { EdgeRole } from '../../../core/garment/piece';
import type { CheckSheetWords, FirstPageWords, SquaresWords } from '../../../core/paper/paper-words';
import type { ShownIn } from '../../../core/units/inch';
import type * as english from '../en/paper-sheet';
import type { Said } from '../said';
import { roundLength, writeLength, writeNumber } from '../written';
import { measureNames } from './measures';

export const paperSheetWords: typeof english.paperSheetWords = (shownIn, step) => {
  const options = { shownIn, step } as const;
  const length = (mm: number) => writeLength(mm, options);
  return {
    length,
    figure: (mm) => writeLength(mm, { ...options, unit: 'left-off' }),
    date: dateWords,
    content: (content) => contentWords(content, length),
    unnamedPiece: 'Teil ohne Namen',
    unnamedGarment: 'Kleidungsstück ohne Namen',
    pageOf: (page, of) => `Blatt ${page} von ${of}`,
    rowColumn: (row, column) => `Reihe ${row}, Spalte ${column}`,
    garmentLine: (garment, date, version) => `${garment}, ${versionWords(version)}, ${date}`,
    fullSize: '1 : 1, mit 100 % drucken',
    corrected: ({ across, down }) =>
      `berichtigt für einen Drucker, der ${percent(across)} in der Breite und ${percent(down)} in der Höhe druckt`,
    testSquare: '4 in = 10,16 cm, in beiden Richtungen',
    thisWayUp: 'hier oben',
    inch: 'in',
    centimetre: 'cm',
    cutAndLayOver: (label) => `hier abschneiden und über ${label} legen`,
    goesUnder: (label) => `kommt bis hierher unter ${label}`,
    cutAndSetTo: (label) => `hier abschneiden und auf Stoß an ${label} setzen`,
    inAll: (piece, across, down, grain) =>
      `${piece === undefined ? 'alles zusammengeklebt' : piece}: ${across} breit, ${down} hoch${grain === undefined ? '' : `, Fadenlauf ${grain}`}`,
    layers: {
      cut: 'Schnittlinie',
      stitch: 'Nahtlinie',
      marks: 'Zeichen und Text',
      squares: 'Feine Quadrate',
      under: (version) => `Älter: ${version}`,
      older: (index, version) => `${olderLineWords[index] ?? ''}: ${version}`,
    },
    first: firstWords(shownIn),
    check: checkWords(shownIn),
    squares: squaresWords(shownIn, length),
  };
};

const percent = (factor: number) => `${writeNumber(factor * 100, 1)} %`;

export const olderLineWords: Said<typeof english.olderLineWords> = [
  'einzelne Punkte',
  'Punkte zu zweien',
  'Punkte zu dreien',
  'Striche und Punkte',
];

export const versionWords: typeof english.versionWords = (version) => {
  const { mark } = version;
  if (version.kind === 'kept') {
    return `Fassung ${version.number}${version.name === '' ? '' : `, ${version.name}`} (${mark})`;
  }
  return version.since === undefined
    ? `Kennzeichen ${mark}`
    : `Kennzeichen ${mark}, geändert seit Fassung ${version.since}`;
};

const papers: Readonly<Record<string, string>> = {
  a4: 'A4',
  a3: 'A3',
  letter: 'Letter',
  legal: 'Legal',
  tabloid: 'Tabloid',
  a0: 'A0',
  roll: 'Rolle',
};

const checkWords = (shownIn: ShownIn): CheckSheetWords => ({
  title: 'Druckt dein Drucker richtig?',
  how: [
    'Drucke dieses Blatt allein mit 100 % oder „Tatsächliche Größe“, ohne Anpassen, Verkleinern und randloses Drucken, auf dem Papier, auf das der Schnitt gedruckt wird.',
    `Lege ein Lineal oder Maßband an jede der beiden Maßlinien, von Endstrich zu Endstrich, und trage im Raum Papier ein, was du abliest. Einen Unterschied von ${roundLength(shownIn, 1 / 32, 0.1)} liest niemand ab.`,
  ],
  rule: (length, way) => `diese Maßlinie ist ${length} ${way === 'down' ? 'hoch' : 'breit'}`,
  marginTitle: 'Was dein Drucker verliert',
  marginHow: [
    'An jeder Kante stehen kurze Linien. Suche an jeder die erste, die ganz gedruckt ist, und lies die Zahl daneben. Die größte der vier ist, was dein Drucker verliert; oder schreibe alle vier auf.',
  ],
  fitsTitle: 'Wenn die längere Maßlinie so lang ist',
  fit: (cause, share, length) => `${length} (${percent(share)}): ${fittedWords(cause)}`,
});

export const fittedWords: typeof english.fittedWords = (cause) => {
  switch (cause.kind) {
    case 'fitted': {
      const fitted = `${papers[cause.page]}-Blätter wurden an ${papers[cause.to]} angepasst`;
      return cause.loses === undefined ? fitted : `${fitted}, innerhalb der Druckerränder`;
    }
    case 'into-margins':
      return `${papers[cause.page]}-Blätter wurden in die Druckerränder verkleinert („an Druckbereich anpassen“)`;
    case 'uneven':
      return 'der Drucker dehnt in einer Richtung mehr als in der anderen';
    case 'unknown':
      return 'die Blätter wurden in einer anderen Größe als 100 % gedruckt';
  }
};

const firstWords = (shownIn: ShownIn): FirstPageWords => ({
  line: (pages, paper, date) => `Schnitt in Originalgröße vom ${date}: ${pages} Blätter ${paper}, dieses mitgezählt`,
  paper: (size) => papers[size] ?? size,
  wearerLine: (date, wornOver) =>
    wornOver === '' ? `Nach den Maßen vom ${date}` : `Nach den Maßen vom ${date}, gemessen über ${wornOver}`,
  markLine: (version) =>
    `Auf jedem Blatt steht: ${versionWords(version)}. Das Zeichen ändert sich, sobald ein Teil sich ändert, damit alte Blätter von neuen zu unterscheiden sind.`,
  keyTitle: 'Die Linien auf den Blättern',
  key: {
    cut: 'hier schneiden',
    stitch: 'hier nähen',
    fold: 'Stoffbruch: hier anlegen, nicht schneiden',
    grain: 'Fadenlauf',
    notch: 'Passzeichen: trifft auf seinesgleichen',
    opening: 'Ende einer Öffnung: ab hier nähen',
    dart: 'Abnäher: mittig falten, hier nähen',
    'pleat-fold': 'Falte: hier falten',
    'pleat-placement': 'Falte: der Bruch kommt hierher',
    gathers: 'zwischen den Strichen einkräuseln',
    level: 'Höhe am Körper: nicht genäht',
    drill: 'Punkt, auf den Stoff zu übertragen',
    corner: 'Nahtecke zum Nachmessen',
    upright: 'über dem Namen: dieses Ende ist oben',
  },
  scaleTitle: 'Miss zuerst dieses Quadrat',
  scaleLines: [
    'Drucke dieses Blatt allein, mit 100 % oder „Tatsächliche Größe“, ohne Anpassen, Verkleinern und randloses Drucken.',
    'Lege ein Lineal an das Quadrat, in der Breite und in der Höhe. Beide Male müssen es 4 in sein, das sind 10,16 cm. Dann drucke den Rest.',
    `Bei etwa ${roundLength(shownIn, 3 + 7 / 8, 9.9)} wurden Letter-Blätter an A4 angepasst. Bei etwa ${roundLength(shownIn, 3 + 3 / 4, 9.6)} wurden A4-Blätter an Letter angepasst. Wähle das Papier, das du hast, und drucke noch einmal.`,
    'Jedes Blatt hat sein eigenes Quadrat und seine Lineale, denn ein Drucker kann bei jedem rutschen.',
  ],
  joinTitle: 'Die Blätter zusammenkleben',
  joinLines: {
    lapped: [
      'Schneide ein Blatt rechts an der gepunkteten Linie ab, lege es so über seinen Nachbarn, dass Kreuze und Zahlen aufeinandertreffen, und klebe. Sind die Reihen fertig, schneide jede Reihe unten ab und füge die Reihen ebenso aneinander, nach ihren Buchstaben.',
    ],
    butted: [
      'Schneide beide Blätter an den gepunkteten Linien ab und setze sie auf Stoß, sodass Kreuze und Zahlen aufeinandertreffen; klebe von hinten. Sind die Reihen fertig, schneide sie ab und setze sie ebenso aneinander, nach ihren Buchstaben.',
    ],
  },
  mapTitle: 'Welches Blatt wohin kommt',
  mapLine: (piece, pages) => `${piece}: ${pages === 1 ? '1 Blatt' : `${pages} Blätter`}`,
  totalsTitle: 'Zusammengeklebt misst es',
  totals: {
    grain: (length) => `Fadenlauf ${length}`,
    widest: (across, down) => `${across} breit und ${down} hoch`,
    diagonal: (from, to, length) => `Nahtecke ${from} bis ${to}: ${length}`,
  },
  cautionTitle: 'Vor dem Zuschneiden',
  cautions: [
    'Miss den zusammengeklebten Schnitt nach; die Zahlen stehen unter seinem Plan.',
    'Ein Entwurf ist ein Plan: Nähe ein Probeteil aus billigem Stoff und passe es an, ehe du den guten zuschneidest.',
    'Bügeleisen brennen und Klingen schneiden. Schneide von der Hand weg und zähle nach der Anprobe die Nadeln.',
  ],
});

function squaresWords(shownIn: ShownIn, length: (mm: number) => string): SquaresWords {
  return {
    title: (piece) => `${piece}: Rasterblatt`,
    goesOn: (piece) => `${piece}: Rasterblatt, Fortsetzung`,
    how: (square) =>
      `Ein Quadrat ist in Originalgröße ${square}. Zeichne auf großem Papier zwei lange Linien in genau rechtem Winkel; wo sie sich kreuzen, ist die Null. Miss jeden Punkt von der Null aus mit einem langen Lineal ab, erst auf der einen nach rechts, dann nach unten, nie von Punkt zu Punkt. Verbinde die Ecken und ziehe die Kurven glatt durch ihre Punkte.`,
    howByLine: (square, { from, to, side }) =>
      `Ein Quadrat ist in Originalgröße ${square}. Zeichne auf großem Papier eine lange gerade Linie, die Grundlinie, und markiere ${from} darauf; sie läuft durch ${to}. Miss jeden Punkt auf der Linie ab ${from} und von dort im rechten Winkel hinaus, nach ${side === 'left' ? 'links' : 'rechts'}, wenn du von ${from} nach ${to} blickst. Eine Zahl mit − geht andersherum. Miss immer ab ${from}, nie von Punkt zu Punkt. Verbinde die Ecken und ziehe die Kurven glatt durch ihre Punkte.`,
    along: `entlang ${shownIn}`,
    out: `hinaus ${shownIn}`,
    zero: 'Null',
    line: (drawn, content) => `${drawn === 'cut' ? 'Die Schnittlinie' : 'Die Nahtlinie'}. ${content}.`,
    point: 'Punkt',
    across: `rechts ${shownIn}`,
    down: `unten ${shownIn}`,
    edges: 'Entlang der Kanten',
    proofs: 'Zum Prüfen',
    marks: 'Zeichen',
    straight: (from, to) => `${from} gerade nach ${to}`,
    proveTitle: 'Prüfe zuerst den rechten Winkel',
    proof: ({ corner, frame }, byLine) =>
      byLine
        ? [
            `Der rechte Winkel: Markiere ${length(corner.down)} auf der Grundlinie und ${length(corner.across)} von ihrem Anfang hinaus. Von Marke zu Marke müssen es ${length(corner.apart)} sein (Seiten von 3, 4 und 5).`,
          ]
        : [
            `Der rechte Winkel: Markiere ${length(corner.across)} auf der Linie nach rechts und ${length(corner.down)} auf der Linie nach unten. Von Marke zu Marke müssen es ${length(corner.apart)} sein (Seiten von 3, 4 und 5).`,
            `Das Ganze: Ein Rechteck von ${length(frame.across)} mal ${length(frame.down)} umschließt alle Quadrate. Beide Diagonalen müssen ${length(frame.diagonal)} sein.`,
          ],
    mark: (mark, text) => {
      switch (mark) {
        case 'dart-start':
        case 'dart-end':
          return `Abnäher ${text} Seite`;
        case 'dart-point':
          return `Abnäher ${text} Spitze`;
        case 'notch':
          return 'Knips';
        case 'grain-start':
          return 'Fadenlauf Anfang';
        case 'grain-end':
          return 'Fadenlauf Ende';
        case 'label':
          return text;
      }
    },
  };
}

const months = 'Januar Februar März April Mai Juni Juli August September Oktober November Dezember'.split(' ');

export const dateWords: typeof english.dateWords = (date) => {
  const [year, month, day] = date.split('-').map(Number);
  const name = month === undefined ? undefined : months[month - 1];
  return name === undefined ? date : `${day}. ${name} ${year}`;
};

function contentWords(content: WordsContent, length: (mm: number) => string): string {
  switch (content.kind) {
    case 'piece-name':
      return content.name === '' ? 'Teil ohne Namen' : content.name;
    case 'cut':
      return cutWords(content);
    case 'edge':
      return edgeWords(content, length);
    case 'opening':
      return openingWords[content.marks](length(content.length));
    case 'level':
      return content.name ?? measureNames[content.girth];
    case 'corner':
      return String(content.number);
    case 'upright':
      return 'oben';
    case 'fold':
      return 'an den Stoffbruch legen';
    case 'grain':
      return 'Fadenlauf';
    case 'label':
      return content.text;
    case 'gathers':
      return `${length(content.length)} auf ${length(content.into)} einkräuseln`;
    case 'right-side-up':
      return 'rechte Stoffseite oben';
    case 'allowance':
      return allowanceWords(content.widths, length);
  }
}

const roleNames: Readonly<Record<EdgeRole, string>> = {
  seam: 'Naht',
  fold: 'Stoffbruch',
  waist: 'Taille',
  hem: 'Saum',
  opening: 'Öffnung',
  finished: 'fertige Kante',
};

function edgeWords(
  { name, role, width }: Extract<WordsContent, { kind: 'edge' }>,
  length: (mm: number) => string,
): string {
  const said = name.trim() || roleNames[role];
  if (width === undefined) return said;
  return width === 0 ? `${said}, ohne Zugabe` : `${said}, ${length(width)} Zugabe`;
}

const openingWords = {
  0: (length: string) => `bleibt offen, ${length}`,
  1: (length: string) => `bis zum Zeichen offen lassen, ${length}`,
  2: (length: string) => `zwischen den Zeichen offen lassen, ${length}`,
} as const;

export const cutWords: typeof english.cutWords = ({ how, count }) => {
  if (how === 'fold') return `${count}-mal im Stoffbruch zuschneiden`;
  if (how === 'pair') return `${count}-mal zuschneiden, gegengleich`;
  return `${count}-mal zuschneiden`;
};

function allowanceWords(
  widths: Extract<WordsContent, { kind: 'allowance' }>['widths'],
  length: (mm: number) => string,
): string {
  if (widths === 'none') return 'OHNE NAHTZUGABE: beim Zuschneiden zugeben';
  if (widths === 'not-said') return 'NAHTZUGABE NICHT GEKLÄRT: noch nicht zuschneiden';
  if (widths === 'in-drawing') return 'Zugaben sind in der Zeichnung: auf der Linie schneiden';
  if (widths.length === 1) return `${length(widths[0] ?? 0)} Zugabe ringsum`;
  return `Zugaben: ${widths.map(length).join(', ')}`;
}
