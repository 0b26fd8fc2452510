import type { VersionHead } from '../../../core/garment/version';
import type * as english from '../en/versions';
import { locale } from '../language';
import type { Said } from '../said';
import { dateWords } from './paper-sheet';

export const pieceName: typeof english.pieceName = (id, { pieces, traced = [] }) => {
  const named = [...pieces, ...traced].find((piece) => piece.id === id);
  if (!named) return 'ein Teil, das es nicht mehr gibt';
  return named.name || 'ein Teil ohne Namen';
};

const date = { day: 'numeric', month: 'long', year: 'numeric' } as const;
const when = (time: number) =>
  new Intl.DateTimeFormat(locale(), { ...date, hour: '2-digit', minute: '2-digit' }).format(time);
const day = (time: number) => new Intl.DateTimeFormat(locale(), date).format(time);

const numbered = ({ number, name }: Pick<VersionHead, 'number' | 'name'>) =>
  name === '' ? `Fassung ${number}` : `Fassung ${number}, ${name}`;

export const versionsWords: Said<typeof english.versionsWords> = {
  now: 'Der Entwurf jetzt',
  said: (said) => {
    if (said.kind === 'kept') return `Der Entwurf ist ${numbered(said)}.`;
    return said.since === undefined
      ? 'Der Entwurf ist noch nicht als Fassung aufbewahrt.'
      : `Der Entwurf wurde seit Fassung ${said.since} geändert.`;
  },
  name: 'Name',
  nameHint: 'Etwa „wie entworfen“ oder „nach der zweiten Anprobe“.',
  note: 'Notiz',
  keep: 'Als Fassung aufbewahren',
  kept: (version) => `Aufbewahrt: ${numbered(version)}.`,
  notKept:
    'Die Fassung konnte nicht aufbewahrt werden. Sichere das Kleidungsstück als Datei und schaffe dann Platz auf diesem Gerät.',
  notRead:
    'Die Fassungen dieses Kleidungsstücks ließen sich nicht lesen. Lade die Seite neu und versuche es noch einmal.',
  damaged:
    'Was von dieser Fassung aufbewahrt ist, lässt sich nicht mehr lesen. Die anderen Fassungen berührt das nicht.',
  list: 'Fassungen',
  none: 'Noch ist keine Fassung aufbewahrt. Bewahre eine vor jeder Anprobe und vor dem Zuschneiden auf.',
  numbered,
  date: dateWords,
  look: (version) => `${numbered(version)} ansehen`,
  isNow: 'der Entwurf jetzt',
  traced: 'Wie nachgezeichnet',
  tracedHelp: 'Jedes Teil, wie es zuerst gezeichnet wurde. Es ändert sich nie.',
  tracedNone: 'Noch ist kein Teil gezeichnet.',
  tracedLate: (names, since) =>
    `Wie ${names.join(', ')} zuerst gezeichnet wurde, ist nicht bekannt. Hier ist der früheste aufbewahrte Stand, vom ${day(since)}.`,
  beneath: 'Wie nachgezeichnet, darunter',
  lookingAt: (what) => `Auf dem Tisch: ${what}. Der Entwurf von jetzt liegt gestrichelt darüber.`,
  stop: 'Zurück zum Entwurf',
  bringBack: 'Zurückholen',
  bringBackHelp:
    'Die Teile werden, wie sie waren. Was du jetzt hast, wird vorher als Fassung aufbewahrt, und „Rückgängig“ nimmt es zurück.',
  bringBackLabel: (number) => `Fassung ${number} zurückgeholt`,
  broughtBack: (number) => `Fassung ${number} liegt wieder auf dem Tisch.`,
  keptFirst: (number, back) =>
    `Was du hattest, ist als Fassung ${number} aufbewahrt; Fassung ${back} liegt wieder auf dem Tisch.`,
  keptBefore: (number) => `bevor Fassung ${number} zurückgeholt wurde`,
  changedMeanwhile: 'Der Entwurf wurde inzwischen geändert. Nichts wurde zurückgeholt; versuche es noch einmal.',
  differs: 'Was jetzt anders ist',
  same: 'Nichts: Die Teile sind genau wie jetzt.',
  pieceAdded: 'seither gezeichnet',
  pieceRemoved: 'seither weggenommen',
  pieceMoved: 'liegt nur woanders',
  pieceOther: 'andere Zeichen oder Texte',
  edgeNew: 'neue Kante',
  edgesGone: (count) => (count === 1 ? '1 Kante ist weg' : `${count} Kanten sind weg`),
  edgeReshaped: (length) => `andere Form, ${length} wie vorher`,
  cutting: 'Daraus zugeschnitten',
  cutFrom: 'Was zugeschnitten wurde',
  from: { 'mock-up': 'ein Probeteil', cloth: 'der Stoff' },
  cutOn: 'Zugeschnitten am',
  noteCut: 'Zuschneiden vermerken',
  cutLabel: (number) => `aus Fassung ${number} zugeschnitten`,
  forget: 'Herausnehmen',
  forgetLabel: 'herausgenommen: was zugeschnitten wurde',
  cutSaid: ({ from, date: on }) =>
    `${from === 'cloth' ? 'Der Stoff' : 'Ein Probeteil'} wurde daraus am ${dateWords(on)} zugeschnitten.`,
  cutCurrent: 'Der Entwurf ist noch, wie er zugeschnitten wurde.',
  cutChanged: (names) => `Seither geändert: ${names.join(', ')}.`,
  steps: 'Schritt für Schritt',
  stepsHelp:
    'Was mit den Teilen geschehen ist, der Reihe nach. Ein rückgängig gemachter Schritt verschwindet von hier.',
  noSteps: 'Mit den Teilen ist noch nichts geschehen.',
  earlier: (count) => (count === 1 ? '1 früheren Schritt zeigen' : `${count} frühere Schritte zeigen`),
  when,
  table: 'Die Teile und eine Fassung davon',
  noPiecesTitle: 'Noch nichts aufzubewahren',
  noPieces: 'Hier werden die Fassungen deines Entwurfs aufbewahrt. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  toDraft: 'Zum Raum Entwurf',
};
