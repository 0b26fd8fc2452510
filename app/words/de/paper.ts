import { SAFE_MARGIN } from '../../../core/paper/page-sizes';
import type * as english from '../en/paper';
import type { Said } from '../said';
import { roundLength, writeLength, writeNumber } from '../written';
import { dateWords, olderLineWords, versionWords } from './paper-sheet';

const unnamed = 'Teil ohne Namen';
const sheetCount = (count: number) => (count === 1 ? '1 Blatt' : `${count} Blätter`);
const percent = (factor: number) => `${writeNumber(factor * 100, 1)} %`;
const tooLarge =
  'In Originalgröße bräuchte es mehr als tausend Blätter, oder die Ränder lassen keinen Platz. Suche nach einem verirrten Punkt, nimm größeres Papier oder nimm das Häkchen weg.';

export const paperWords: Said<typeof english.paperWords> = {
  what: 'Was gedruckt wird',
  printHelp: 'Blätter für deinen eigenen Drucker, zusammengeklebt.',
  squaresHelp:
    'Eine kleine Zeichnung auf nummerierten Quadraten und eine Punkttabelle, um das Teil mit einem langen Lineal auf Packpapier zu zeichnen.',
  makePages: 'Druckblätter machen (PDF)',
  makeSquares: 'Rasterblätter machen (PDF)',
  making: (share) => `Die Blätter werden gemacht … ${Math.round(share * 100)} %`,
  stop: 'Anhalten',
  made: (pages) => `Fertig: ${sheetCount(pages)}. Die Datei liegt bei den Downloads dieses Browsers.`,
  failed:
    'Die Blätter konnten nicht gemacht werden. Versuche es noch einmal; geht es wieder nicht, drucke weniger Teile auf einmal.',
  version: (version) =>
    `Auf jedem Blatt wird stehen: ${versionWords(version)}. Das Kennzeichen ändert sich, sobald ein Teil sich ändert, damit alte Blätter von neuen zu unterscheiden sind.`,
  fileVersion: (version) =>
    version.kind === 'kept'
      ? `Fassung ${version.number} ${version.name.slice(0, 40)}`
      : version.since === undefined
        ? version.mark
        : `${version.mark} geändert seit Fassung ${version.since}`,
  fileWhat: {
    pages: 'Druckblätter',
    squares: 'Rasterblätter',
    'out-of-date': 'veraltete Blätter',
    again: 'Blatt noch einmal',
  },
  printed: 'Auf Papier',
  printedLabel: { pages: 'Blätter gemacht', squares: 'Rasterblätter gemacht', 'out-of-date': 'Blätter gemacht' },
  allCurrent:
    'Die neuesten Blätter jedes Teils sind so, wie der Entwurf jetzt ist. Ältere, mit einem anderen Kennzeichen, sind nicht mehr zu nehmen.',
  makeStale: 'Nur die veralteten Blätter machen (PDF)',
  printingOf: ({ date, version, mark }) =>
    `${dateWords(date)}: ${version === undefined ? `Kennzeichen ${mark}` : `Fassung ${version} (${mark})`}`,
  printedPages: (piece, names, mends) =>
    `${piece || unnamed}: ${mends ? 'nur ' : ''}${names.length === 1 ? 'Blatt' : 'Blätter'} ${names.join(', ')}`,
  printedSquares: (piece) => `${piece || unnamed}: Rasterblatt`,
  unused: 'Nicht mehr in Gebrauch',
  unusedLabel: 'Blätter nicht mehr in Gebrauch',
  nothing: {
    'no-piece': 'Setze bei mindestens einem Teil ein Häkchen.',
    'no-room':
      'Diese Teile passen nicht auf dieses Papier: Die Ränder lassen keinen Platz, oder ein Teil bräuchte mehr als tausend Blätter. Mach die Ränder kleiner, wähle größeres Papier oder suche nach einem verirrten Punkt.',
  },
  paper: 'Papier',
  size: 'Größe',
  sizes: {
    a4: 'A4',
    letter: 'Letter',
    legal: 'Legal',
    a3: 'A3',
    tabloid: 'Tabloid',
    a0: 'A0',
    roll: 'Rolle',
  },
  turned: 'Blatt',
  upright: 'Hochformat',
  sideways: 'Querformat',
  margin: 'Freier Rand',
  more: 'Mehr zu den Blättern',
  placed: 'Teile',
  fewest: 'Auf möglichst wenigen Blättern',
  asDrawn: 'Jedes für sich, wie gezeichnet',
  joins: 'Zusammengefügt wird',
  lapped: 'Überlappend',
  butted: 'Auf Stoß',
  loses: 'Mein Drucker verliert',
  losesHint: (shownIn) =>
    `An der Kante, wo er am meisten verliert: ${roundLength(shownIn, 1 / 4, 0.6)} ist üblich. Das Prüfblatt zeigt es.`,
  losesBySide: 'Jede Seite für sich',
  losesAt: { top: 'Oben', right: 'Rechts', bottom: 'Unten', left: 'Links' },
  keepsClear: (loses, shownIn) =>
    loses === undefined
      ? `Alles Gedruckte bleibt ${writeLength(SAFE_MARGIN, { shownIn })} vom Rand, bis du sagst, was dein Drucker verliert.`
      : `Alles Gedruckte bleibt ${writeLength(loses, { shownIn })} vom Rand; so viel verliert dein Drucker.`,
  squaresOver: 'Feine Quadrate über den Blättern',
  noSquares: 'Keine',
  inchSquares: '1 in',
  centimetreSquares: '1 cm',
  under: 'Eine ältere Fassung gepunktet darunter',
  noUnder: 'Keine',
  anotherUnder: 'Weitere wählen',
  olderLine: (index, version) => `${olderLineWords[index] ?? ''}: ${version}`,
  withoutOlder: (version) => `Ohne ${version}`,
  leftOut: (names) => `Nicht auf diesen Blättern: ${names.join(', ')}. ${tooLarge}`,
  tooLarge,
  versionNamed: ({ number, name, made }) => `Fassung ${number}${name === '' ? '' : `, ${name}`}, ${dateWords(made)}`,
  rollWidth: 'Breite der Rolle',
  rollHint: (longest) => `Ein Blatt ist so lang, wie es sein muss, bis ${longest}.`,
  overlap: 'Blätter überlappen um',
  step: 'Zahlen des Rasterblatts',
  toStep: (step) => `auf ${step}`,
  paperLabel: 'Papier',
  pages: sheetCount,
  total: (pages, first) =>
    first === 1
      ? `${sheetCount(pages)} mit dem ersten, an dem du den Maßstab prüfst.`
      : `${sheetCount(pages)} mit den ersten ${first}, an denen du den Maßstab prüfst und siehst, welches wohin kommt.`,
  pagesOf: (pieceId, { placed, plan }) => {
    const first = placed[0]?.piece;
    return first === undefined || first.id === pieceId
      ? sheetCount(plan.pages.length)
      : `bei ${first.name || 'dem ersten'}`;
  },
  counted: ({ pages, plain, least }, sheets, shownIn) => {
    const [sheet] = sheets;
    if (sheet?.plan.paper.size === 'roll') {
      const all = sheets.reduce((sum, { plan }) => sum + (plan.paper.rollLength ?? 0) * plan.pages.length, 0);
      return `Von der Rolle werden ${writeLength(all, { shownIn, step: 'eighth' })} gebraucht.`;
    }
    const saved = pages < plain ? `Einfache Reihen und Spalten bräuchten ${plain}. ` : '';
    return `${saved}${pages === least ? 'Weniger Blätter geht nicht.' : `Weniger als ${least === 1 ? '1 Blatt' : `${least} Blätter`} geht nicht.`}`;
  },
  laying: 'Die wenigsten Blätter werden gesucht …',
  layingFailed:
    'Die Blätter konnten nicht eingeteilt werden. Ändere das Papier, oder setze bei weniger Teilen ein Häkchen.',
  choosePages: 'Nur einige dieser Blätter',
  pageNamed: (name, piece) => `${name} von ${piece}`,
  makeChosen: (count) => (count === 1 ? 'Gewähltes Blatt machen (PDF)' : `Die ${count} gewählten Blätter machen (PDF)`),
  allPages: 'Doch alle Blätter',
  again: 'Ein Blatt noch einmal',
  noPageAgain: 'Keines',
  makeAgain: (name) => `Blatt ${name} noch einmal machen (PDF)`,
  proof: 'Maßstab prüfen',
  proofHelp:
    'Drucke das Prüfblatt einmal für deinen Drucker und dein Papier, miss die beiden Maßlinien und schreibe auf, was du abliest. Das Prüfquadrat auf jedem Blatt zeigt, ob dieses Blatt stimmt.',
  makeCheck: 'Prüfblatt machen (PDF)',
  checkFile: 'prüfblatt',
  measured: 'Was gemessen wurde',
  measuredRules: 'Das Prüfblatt',
  measuredSquare: 'Das Prüfquadrat',
  ruleAcross: (length, shownIn) => `Die ${writeLength(length, { shownIn })} breite Maßlinie misst`,
  ruleDown: (length, shownIn) => `Die ${writeLength(length, { shownIn })} hohe Maßlinie misst`,
  across: 'Das Quadrat misst in der Breite',
  down: 'Das Quadrat misst in der Höhe',
  proofLabel: 'Maßstab geprüft',
  proved: (date) => `Geprüft am ${date}: Dein Drucker druckt richtig.`,
  notThePrinter:
    'So weit daneben liegt kein Drucker: Die Anzeige oder das Druckfenster hat die Blätter an das Papier angepasst. Drucke noch einmal mit 100 % oder „Tatsächliche Größe“, auf dem hier gewählten Papier, und miss erneut.',
  printerOff: ({ across, down }) =>
    `Dein Drucker druckt ${percent(across)} in der Breite und ${percent(down)} in der Höhe. Die Blätter können um ebenso viel andersherum gezeichnet werden, damit sie auf ihm stimmen.`,
  correct: 'Blätter für diesen Drucker berichtigen',
  correctLabel: 'Berichtigung für den Drucker',
  corrected: ({ across, down }) =>
    `Die Blätter sind für einen Drucker berichtigt, der ${percent(across)} in der Breite und ${percent(down)} in der Höhe druckt. Jedes Blatt sagt es, und sein Quadrat stimmt nur auf diesem Drucker.`,
  otherPrinter: 'Anderer Drucker: neu beginnen',
  otherPrinterLabel: 'anderer Drucker',
  noPiecesTitle: 'Noch nichts zu drucken',
  noPieces: 'Hier werden die Blätter deines Schnitts liegen. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  noneChosenTitle: 'Kein Teil hat ein Häkchen',
  toDraft: 'Zum Raum Entwurf',
  preview: (piece, pages) => `${piece} auf ${pages === 1 ? '1 Blatt' : `${pages} Blättern`}`,
  unnamed,
  openCount: (count) =>
    count === 1
      ? '1 Hinweis ist vor dem Zuschneiden zu klären.'
      : `${count} Hinweise sind vor dem Zuschneiden zu klären.`,
  toCheck: 'Zur Liste',
};

export const sheetWords: typeof english.sheetWords = ({ placed }) =>
  placed.map(({ piece }) => piece.name || unnamed).join(' + ');
