import { EIGHTH_OF_YARD, TWENTIETH_OF_METRE, toBuy } from '../../../core/cloth/cloth-sums';
import type { LaidGrain } from '../../../core/cloth/piece-to-lay';
import type { ClothStrip } from '../../../core/garment/garment-cloth';
import { inches, type ShownIn } from '../../../core/units/inch';
import { writeYards } from '../../../core/units/write-yards';
import type * as english from '../en/cloth';
import type { Said } from '../said';
import { roundLength, writeLength, writeMetres, writeNumber } from '../written';
import { clothNames } from './cloth-names';

const grains: Readonly<Record<LaidGrain, string>> = { straight: 'gerade', cross: 'quer', bias: 'schräg' };
const onGrain: Readonly<Record<LaidGrain, string>> = {
  straight: 'im geraden Fadenlauf',
  cross: 'im Querfadenlauf',
  bias: 'im Schrägfadenlauf',
};
const stripCuts: Readonly<Record<ClothStrip['cut'], string>> = {
  along: 'längs der Webkante, gerissen',
  across: 'quer, von Webkante zu Webkante',
  bias: 'im echten Schrägfadenlauf',
};
const shapeWrong =
  'Diese Ecken ergeben keine Form: Ihre Seiten kreuzen sich, oder sie hat keine Breite. Bewege eine Ecke.';

const lettered = (names: readonly string[]) =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;
const verb = (names: readonly string[], one: string, more: string) => (names.length === 1 ? one : more);
const eighths = (mm: number, shownIn: ShownIn) => writeLength(mm, { shownIn, step: 'eighth' });
const degreesOf = (degrees: number) => writeNumber(degrees, 1, 'trimmed');

function bought(length: number, shownIn: ShownIn): string {
  const yards = writeYards(toBuy(length, EIGHTH_OF_YARD));
  const metres = writeMetres(toBuy(length, TWENTIETH_OF_METRE));
  return shownIn === 'in' ? `${yards}, ${metres}` : `${metres}, ${yards}`;
}

export const clothWords: Said<typeof english.clothWords> = {
  noPiecesTitle: 'Noch nichts aufzulegen',
  noPieces:
    'Hier werden die Teile auf den Stoff gelegt, um zu wissen, wie viel davon das Kleidungsstück braucht, gerade oder schräg. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  toDraft: 'Zum Raum Entwurf',
  tableLabel:
    'Der Stoff mit den aufgelegten Teilen. Bild auf und Bild ab wählen ein Teil; die Pfeiltasten bewegen es, mit Umschalt weiter; T dreht es, P steckt es fest; Esc legt es hin.',
  labels: {
    lay: 'Teile auflegen',
    move: 'Teil auf dem Stoff bewegen',
    turn: 'Teil auf dem Stoff drehen',
    pin: 'Teil auf dem Stoff feststecken',
    unpin: 'Nadel aus einem Teil nehmen',
    unpinAll: 'alle Nadeln herausnehmen',
    add: 'Stoff hinzufügen',
    change: 'Stoff ändern',
    remove: 'Stoff wegnehmen',
    strip: 'Streifen ändern',
    join: 'Teil anstücken',
    unjoin: 'Teil wieder ganz zuschneiden',
    allowances: 'übliche Zugaben geben',
    grain: 'in anderem Fadenlauf auflegen',
    width: 'auf andere Breite auflegen',
    price: 'Preis des Stoffs ändern',
  },

  whichTitle: 'Woraus wird zugeschnitten?',
  which: 'Wähle, wie breit der Stoff ist, mit den Webkanten. Alles lässt sich danach noch ändern.',
  remnant: 'Ein Rest oder ein zertrenntes Kleidungsstück',
  firstName: 'Stoff',
  liningName: 'Futter',
  interfacingName: 'Einlage',
  remnantName: 'Rest',

  strip: 'Der Zuschneideplan',
  layIt: 'Teile auflegen',
  layAgain: 'Neu auflegen',
  layRest: 'Rest um die Nadeln auflegen',
  stop: 'Anhalten',
  laying: (share) => `Auflegen, ${Math.round(100 * share)} % der Zeit vorbei`,
  takes: 'Braucht',
  bought,
  toBuyOf: (bought) => `: zu kaufen ${bought}`,
  exactly: eighths,
  notLaid: 'Noch nicht aufgelegt',
  fits: (over, atHand, shownIn) =>
    `Reicht das Vorhandene (${said(atHand, shownIn)}): ja, ${eighths(over, shownIn)} übrig.`,
  short: (by, atHand, shownIn) =>
    `Reicht das Vorhandene (${said(atHand, shownIn)}): nein, ${eighths(by, shownIn)} zu wenig.`,
  onRemnant: 'Alles passt auf den Rest.',
  offRemnant: (by, shownIn) => `Es passt nicht alles auf den Rest: ${eighths(by, shownIn)} liegen hinter seinem Ende.`,
  used: (share) => `${writeNumber(100 * share, 1)} % genutzt`,
  faults: (count) => `${count} Fehler im Zuschneideplan`,
  noFaults: 'Nichts überlappt',
  stale: (what) => `Seit dem Auflegen geändert: ${what}. Lege neu auf, ehe du dich danach richtest.`,
  staleCloth: 'der Stoff',
  lettered,
  laid: (length, shownIn, shortest) =>
    `Aufgelegt auf ${eighths(length, shownIn)}${shortest ? ', kürzer geht es nicht' : ''}.`,
  broken: 'Das Auflegen ist misslungen. Der letzte Zuschneideplan bleibt; versuche es noch einmal.',
  refusedIn: {
    'not-across': (names) =>
      `${lettered(names)} ${verb(names, 'passt', 'passen')} nicht quer auf den Stoff, wenn die Streifen treffen müssen. Gib einen kleineren Rapport quer an oder nimm breiteren Stoff.`,
    'no-room-on-fold': (names) =>
      `Am Stoffbruch ist kein Platz für ${lettered(names)}. Klappe die Bruchteile auf, oder lege den Stoff der Länge nach doppelt.`,
  },

  inHand: 'In der Hand',
  turn: 'Drehen',
  pin: 'Hier feststecken',
  unpin: 'Nadel herausnehmen',
  unpinAll: 'Alle Nadeln herausnehmen',
  putDown: 'Hinlegen',
  way: (degrees, over) =>
    `${over ? 'gewendet, ' : ''}${degrees === 0 ? 'wie gezeichnet' : `um ${degreesOf(degrees)}° gedreht`}`,
  pieces: 'Teile auf dem Stoff',
  pinned: 'festgesteckt',
  onFold: 'im Bruch',
  copyOf: (copy, of) => (of > 1 ? `${copy + 1} von ${of}` : ''),
  place: (x, y, edge) => `${x} vom Anfang des Stoffs, ${y} ${edge === 'fold' ? 'vom Stoffbruch' : 'von der Webkante'}`,

  cloth: 'Der Stoff',
  cloths: 'Welcher Stoff',
  another: 'Weiterer Stoff',
  addLining: 'Futter',
  addInterfacing: 'Einlage',
  addRemnant: 'Rest',
  addCloth: 'Stoff',
  name: 'Name',
  width: 'Breite, mit Webkanten',
  usual: 'Übliche Breiten',
  usualNone: 'aus der Liste wählen',
  usualWidth: ({ width }) => `${writeLength(width, { shownIn: 'in' })}, ${writeLength(width, { shownIn: 'cm' })}`,
  usualWhen: {
    'linen-1770': 'Leinen der 1770er',
    'before-1915': 'oft vor 1915',
    'flannel-1910': 'Unterrockflanell, 1910er',
    'cotton-1910': 'Haushaltsbaumwolle, 1910er',
    'wool-1910': 'Wolle und Tweed, 1910er',
    '1920': 'Kleiderstoffe der 1920er, 24 bis 32 in (61 bis 81 cm)',
    '1930': '1930er bis 1950er',
    '1960': 'ab Anfang der 1960er',
    today: 'heute',
  },
  selvedge: 'Webkante ab, je Seite',
  atHand: 'Vorhandene Länge',
  atHandHint: (mm, shownIn) => (mm === undefined ? 'Leer lassen, um es zu erfahren.' : said(mm, shownIn)),
  folded: 'Er liegt',
  foldedWays: { lengthwise: 'längs gefaltet', open: 'offen', crosswise: 'quer gefaltet' },
  foldedHelp: {
    lengthwise: 'Webkante auf Webkante: Jedes Teil wird doppelt zugeschnitten, Bruchteile liegen am Stoffbruch.',
    open: 'Eine Lage: von Paaren werden beide Teile gelegt, Bruchteile werden aufgeklappt.',
    crosswise: 'Anfang auf Ende, für breite Teile. Nicht für Stoff mit Strich.',
  },
  nap: 'Strich oder Muster mit Richtung',
  napHelp: 'Alle oberen Kanten in eine Richtung.',
  more: 'Streifen, Fehler, Einlaufen, andere Formen',
  repeatAlong: 'Rapport längs',
  repeatAcross: 'Rapport quer',
  repeatHint:
    'Leer lassen bei einfarbigem Stoff. Sonst liegt jedes Teil mit dem fernen Ende seines Fadenlaufs an derselben Stelle des Rapports.',
  shrinksAlong: 'Läuft in der Länge ein, in %',
  shrinksAcross: 'Läuft in der Breite ein, in %',
  shrinkHint: (shownIn) =>
    `Der Zuschneideplan gilt für den gewaschenen Stoff, der Einkauf wird für den ungewaschenen gerechnet. Wasche und miss ein Quadrat von ${roundLength(shownIn, 20, 50)}, um es zu wissen.`,
  flaws: 'Fehler im Stoff',
  flaw: (i) => `Fehler ${i + 1}`,
  addFlaw: 'Fehler nach Größe eingeben',
  drawFlaw: 'Fehler auf dem Stoff zeichnen',
  fromEnd: 'Vom Anfang des Stoffs',
  fromSelvedge: 'Von der Webkante',
  long: 'Seine Länge',
  wide: 'Seine Breite',
  takeAway: (what) => `${what} wegnehmen`,
  shape: 'Eine andere Form',
  shapeHelp: 'Ein Rest oder ein zertrenntes Kleidungsstück, in einer Lage. Der Fadenlauf geht von links nach rechts.',
  shapeStart: 'Ecken eingeben',
  shapeDraw: 'Auf dem Stoff zeichnen',
  shapeStraight: 'Wieder gerader Stoff',
  corner: (i) => `Ecke ${i + 1}`,
  along: 'Längs',
  across: 'Quer',
  addCorner: 'Noch eine Ecke',
  shapeWrong,
  drawingHelp: {
    flaw: 'Drücke auf dem Stoff für jede Ecke des Fehlers, dann Fertig.',
    shape: 'Drücke auf dem Tisch der Reihe nach für jede Ecke der Form, dann Fertig.',
  },
  corners: (count) => (count === 1 ? '1 Ecke' : `${count} Ecken`),
  done: 'Fertig',
  notAfterAll: 'Doch nicht',
  lastBack: 'Letzte zurücknehmen',
  remove: 'Diesen Stoff wegnehmen',
  removeAsk: 'Der Stoff und sein Zuschneideplan gehen weg. „Rückgängig“ holt beide zurück.',
  removeYes: 'Wegnehmen',
  keep: 'Behalten',

  what: 'Was daraus geschnitten wird',
  count: ({ how, count }) =>
    ({
      fold: `${count} im Stoffbruch`,
      pair: count === 2 ? 'ein Paar' : `${count}, paarweise`,
      single: `${count} wie gezeichnet`,
    })[how],
  nothingCut: 'Aus diesem Stoff wird noch kein Teil geschnitten. Wähle unten welche.',
  unnamed: 'Teil ohne Namen',
  aStrip: 'dieser Streifen',
  strips: 'Streifen',
  stripsHelp: 'Bunde, Schlitzleisten, Belege und Einfassungen, die Nahtzugaben mitgerechnet.',
  stripName: 'Was er ist',
  stripNew: { placket: 'Schlitzleiste', facing: 'Beleg', binding: 'Schrägstreifen', band: 'Bund' },
  stripLength: 'Länge',
  stripWidth: 'Zugeschnittene Breite',
  stripCount: 'Wie viele',
  stripCut: 'Zuschneiden',
  stripCuts,
  stripSaid: ({ length, width, count, cut }, shownIn) =>
    `${count} zu ${writeLength(length, { shownIn })} mal ${writeLength(width, { shownIn })}, ${stripCuts[cut]}`,
  addStrip: 'Streifen hinzufügen',

  how: 'Wie aufgelegt wird',
  grain: 'Fadenlauf im Stoff',
  grains,
  grainsLong: {
    straight: 'gerade: Fadenlauf an der Webkante',
    cross: 'quer: Fadenlauf quer zum Stoff',
    bias: 'echt schräg: 45°',
  },
  grainHelp: {
    straight: 'Der Fadenlauf jedes Teils liegt wie die Webkante.',
    cross: 'Der Fadenlauf geht von Webkante zu Webkante.',
    bias: 'Der Fadenlauf liegt in 45°, gleich in welcher Richtung. Bruchteile werden aufgeklappt.',
  },
  tilt: 'Erlaubte Schrägstellung, Grad je Seite',
  tiltNone: 'Gar keine: Jedes Teil liegt genau im Fadenlauf.',
  tiltWarning: (degrees) =>
    `Bis zu ${degreesOf(degrees)}° neben dem Fadenlauf, nach beiden Seiten. Eine Bahn, die nicht gerade zugeschnitten ist, verdreht sich beim Hängen um den Körper, und zwei verschieden schräg gestellte Hälften hängen ungleich. Nimm es nur für kleine Teile, Belege und Futter (allgemein üblich).`,
  openedOut: 'Bruchteile aufklappen und einzeln zuschneiden',
  time: 'Wie lange gesucht wird',
  times: { '10': '10 Sekunden', '60': '1 Minute', '300': '5 Minuten' },
  spare: (names) => `Doppelter Stoff ergibt mehr als gebraucht: ${names} übrig.`,
  spareOf: (count, name) => `${count}-mal ${name}`,
  joined: (name) => `${name} ist geteilt und wird angestückt.`,
  unjoin: 'Ganz zuschneiden',

  refused: 'Diese lassen sich nicht auflegen',
  refusal(reason, name, shownIn) {
    switch (reason.kind) {
      case 'nap-against-itself':
        return 'Quer gefaltet läuft der Strich der einen Lage gegen den der anderen. Falte den Stoff längs, lege ihn offen oder schneide die Lagen auseinander und drehe eine.';
      case 'no-width':
        return 'Ohne die Webkanten bleibt von der Breite nichts übrig. Sieh nach Breite und Webkante.';
      case 'unsure-shape':
        return shapeWrong;
      case 'no-cut-line':
        return `${name} hat noch keine Schnittlinie: Seine Nahtzugaben laufen ineinander, oder einer Kante fehlt eine. Sieh im Raum Entwurf nach.`;
      case 'no-grain':
        return `${name} hat keinen Fadenlauf, also weiß niemand, wie es liegen muss. Gib ihm einen im Raum Entwurf.`;
      case 'no-fold-edge':
        return `${name} wird im Stoffbruch zugeschnitten, aber keine seiner geraden Kanten ist ein Bruch. Sage im Raum Entwurf, welche es ist.`;
      case 'cannot-open-out':
        return `${name} lässt sich an seinem Bruch nicht aufklappen. Sieh im Raum Entwurf nach der Bruchkante.`;
      case 'too-wide':
        return `${name} braucht quer ${eighths(reason.needs, shownIn)}, und der Stoff hat, wie er liegt, ${eighths(reason.across, shownIn)}.`;
    }
  },
  wayAllowances: (seam, hem) => `Gib jeder Kante ohne Nahtzugabe ${seam}, Säumen ${hem}`,
  wayLeaveOut: 'Diese weglassen, den Rest auflegen',
  wayOpened: 'Stoff offen legen',
  wayGrain: (grain) => `Auflegen ${onGrain[grain]}`,
  wayWidth: (width, shownIn) => `Stoff von ${writeLength(width, { shownIn })} Breite nehmen`,
  wayJoin: (name, at) => `${name} ${at} von der Kante im Fadenlauf teilen und anstücken`,
  wayLengths: (name, count) => `${name} in ${count} Längen zuschneiden`,
  noWay: ({ openedOut, grains: others, width }) =>
    !openedOut && others.length === 0 && width === undefined
      ? 'Mit keiner einzelnen Änderung lässt sich alles auflegen: Ein Teil muss geteilt werden, oder der Stoff muss viel breiter sein.'
      : '',

  sums: 'Was herauskommt',
  needs: 'Stofflänge',
  toBuy: 'Zu kaufen',
  usedOf: 'Vom Stoff genutzt',
  bound: 'Mindestens nötig, nach Fläche',
  beyond: 'Länger als das um',
  percentBeyond: (share) => `${writeNumber(100 * share, 0)} %`,
  leftOver: 'Vom Vorhandenen übrig',
  lacking: 'Es fehlen',
  version: (number) => `Gemacht aus Fassung ${number}.`,
  washed: (length) => `Nach dem Waschen braucht der Zuschneideplan ${length}; die Länge oben gilt davor.`,
  seekHelp: 'Was würde es passend machen?',
  seeking: 'Anstücken im Fadenlauf und offener Stoff werden versucht …',
  helpNone:
    'Weder ein einzelnes Anstücken im Fadenlauf noch der offene Stoff macht es passend. Nimm einen anderen Fadenlauf, breiteren Stoff oder ein wenig mehr davon.',
  helpOpened: (length) => `Offen gelegt passt alles ohne Anstücken auf ${length}.`,
  helpJoin: (found) =>
    `${found.opened ? 'Auf dem offenen Stoff: ' : ''}${found.name} im Fadenlauf teilen, ${found.at} ${found.from === 'fold' ? 'vom Bruch' : 'von der äußersten Kante'}. Das angestückte Stück ist ${found.wide} breit und ${found.long} lang, mit ${found.allowance} Nahtzugabe an beiden. Dann passt alles auf ${found.length}.`,
  takeHelp: (isJoin) => (isJoin ? 'Dort anstücken' : 'Offen legen'),

  besideGrains: 'Gerade, quer und schräg',
  besideGrainsHelp: 'Jedes ein paar Sekunden auf diesen Stoff gelegt, wie er liegt, oder offen, wo es sein muss.',
  besideWidths: 'Andere Breiten',
  besideWidthsHelp:
    'Dieselben Teile und derselbe Fadenlauf auf üblichen Breiten, Webkanten wie hier, Fehler weggelassen.',
  setBeside: 'Jedes auflegen und vergleichen',
  besideRuns: (share) => `Auflegen, ${Math.round(100 * share)} %`,
  grainHead: 'Fadenlauf',
  widthHead: 'Breite',
  lengthHead: 'Braucht',
  leftHead: 'Übrig',
  costHead: 'Kostet',
  tooWide: (by) => `um ${by} zu schmal`,
  cannot: 'lässt sich nicht auflegen',
  lacks: (by) => `${by} zu wenig`,
  byChart: (mm) => `eine gedruckte Tabelle sagt ${writeYards(mm)}`,
  layed: 'wie aufgelegt',
  take: (what) => `${what} nehmen`.trim(),
  takeIt: 'Nehmen',
  ratio: (share) => `Schräg braucht ${writeNumber(share, 2)}-mal so viel wie gerade.`,

  budget: 'Kosten',
  priceEach: 'Preis',
  priceIn: 'Gezählt in',
  priceInHint: 'Geld, Marken, Punkte: wie du es nennst.',
  per: 'Für 1',
  pers: { yard: 'Yard', metre: 'Meter' },
  cost: (count, of) => `${writeNumber(count, 2).replace(/,00$/, '')} ${of}`.trim(),
  costs: 'Dieser Zuschneideplan kostet',
  costAs: (bought) => `für ${bought}`,
  ration: 'Kleiderkarte, Großbritannien, 1941',
  rationHelp:
    'Punkte für ein Yard nach seiner Breite, frei zu ändern. Wollstoff von 36 in (91 cm) Breite kostete 3 (The Times, 3. Juni 1941); anderer Stoff dieser Breite 2 und von 44 in (112 cm) Breite 2 1/2 (aus dem Gedächtnis und einem Heft der Zeit); andere Breiten sind daraus errechnet.',
  rationNames: { woollen: 'Wollstoff', other: 'Anderer Stoff' },
  rationEach: (each, known) =>
    `${half(each)} je Yard${{ printed: '', remembered: ' (aus dem Gedächtnis)', estimate: ' (geschätzt)' }[known]}`,
  coupons: 'Punkte',
  readyMade: 'Fertig gekauft kostete es',
  readyMadeNames: {
    slip: 'Unterrock oder Unterkleid',
    undergarment: 'andere Unterwäsche',
    skirt: 'Rock',
    'dress-wool': 'Wollkleid',
    'dress-other': 'anderes Kleid',
    nightdress: 'Nachthemd',
    blouse: 'Bluse',
    apron: 'Schürze',
  },
  readyMadeSaid: (woman, girl) => `${woman}; für Mädchen ${girl}`,

  bias: 'Schrägstreifen',
  biasHelp:
    'Für Einfassungen: in einem Stück aus einem Quadrat geschnitten, oder in Streifen quer über den Stoff und aneinandergenäht.',
  biasLength: 'Gewünschter Streifen',
  biasWidth: 'Zugeschnittene Breite',
  biasSquare: 'Ein Quadrat von',
  biasSquareFor: (side) => `genügt; schneide ${side}`,
  biasFrom: (side, length) => `Ein Quadrat von ${side} ergibt ${length} davon.`,
  biasAcross: (strips, joins, each, cloth) =>
    `Quer über diesen Stoff: ${strips} Streifen zu ${each}, ${joins} ${joins === 1 ? 'Ansatznaht' : 'Ansatznähte'}, aus ${cloth} Stoff.`,
  biasNone: 'Auf diesem Stoff wäre ein Streifen kürzer als seine eigenen Ansatznähte.',
  biasSide: 'Seite eines vorhandenen Quadrats',
  biasAdd: 'Diesen Streifen mit auflegen',
  biasExtra: 'Nimm 10 bis 20 % mehr für Ecken und Ansatznähte (allgemein üblich).',

  print: 'Zuschneideplan drucken',
  printHelp: 'Ein Plan auf einem Blatt und ein Blatt im Maßstab, das sich mit dem Lineal messen lässt.',
  printPlan: 'Plan machen (PDF)',
  printScale: (scale) => `Blatt im Maßstab ${scale} machen (PDF)`,
  printFirst: 'Lege zuerst die Teile auf.',
  printMaking: 'Das PDF wird gemacht …',
  printFailed: 'Das PDF konnte nicht gemacht werden. Versuche es noch einmal.',
  printed: (pages) => (pages === 1 ? 'Fertig: 1 Blatt.' : `Fertig: ${pages} Blätter.`),
  scaleOf: (scale) => `1 : ${scale}`,
  paperTitle: (garment, cloth, scale) =>
    `${garment}: Zuschneideplan, ${cloth}${scale === undefined ? '' : `, ${scale}`}`,
  paperTakes: (length, buy, width, grain) =>
    `Braucht ${length} (${buy}) Stoff von ${width} Breite. Fadenlauf: ${grain}.`,
  paperFoot: (garment, cloth) => `${garment}, ${cloth}`,
  ruleAt: (count, shownIn, isFirst) => (isFirst ? `${count} ${shownIn}` : String(count)),
  scaleCheck: (full) =>
    `Diese Linie ist auf dem Papier 4 in (10,16 cm) lang und steht für ${full} Stoff. Miss sie zuerst.`,
  filePlan: 'Zuschneideplan',
  fileScale: 'Zuschneideplan im Maßstab',

  fault(fault, name, shownIn) {
    const length = (mm: number) => writeLength(mm, { shownIn });
    switch (fault.kind) {
      case 'overlap':
        return `${name(fault.ids[0])} liegt über ${name(fault.ids[1])}.`;
      case 'on-kept':
        return `${name(fault.id)} liegt auf einem Fehler oder über den Rand der Form hinaus.`;
      case 'off-cloth':
        return `${name(fault.id)} liegt ${length(fault.by)} neben dem Stoff.`;
      case 'off-fold':
        return `${name(fault.id)} liegt ${length(fault.by)} neben dem Stoffbruch.`;
      case 'unmatched':
        return `${name(fault.id)} liegt ${length(fault.by)} neben dem Rapport.`;
      case 'no-such-stance':
        return `${name(fault.id)} liegt, wie es nicht darf.`;
      case 'count':
        return `${name(fault.id)}: ${fault.laid} von ${fault.wanted} aufgelegt.`;
    }
  },
  canvas: {
    fold: 'Stoffbruch',
    selvedge: 'Webkante',
    cutEnd: 'Anfang',
    endOfCloth: (length) => `Ende der ${length}`,
    layEnds: (length) => length,
  },
  clothName: ({ name }) => clothNames.cloth(name),
};

/** A length of cloth as it lies at hand: in yards where she thinks in inches, and it is a whole eighth. */
function said(mm: number, shownIn: ShownIn): string {
  if (shownIn === 'cm') return writeMetres(mm);
  const count = mm / EIGHTH_OF_YARD;
  const isEven = mm >= inches(18) && Math.abs(count - Math.round(count)) < 0.01;
  return isEven ? writeYards(mm) : eighths(mm, shownIn);
}

function half(count: number): string {
  const whole = Math.floor(count);
  return count === whole ? String(whole) : `${whole === 0 ? '' : `${whole} `}1/2`;
}
