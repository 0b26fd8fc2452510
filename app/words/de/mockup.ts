import type { Garment } from '../../../core/garment/garment';
import type { PinnedChange } from '../../../core/garment/mockup';
import type { EdgeRole } from '../../../core/garment/piece';
import type { EdgeRef } from '../../../core/garment/seam';
import { pieceOf } from '../../../core/garment/with-piece';
import type { CarryNote, NotCarried } from '../../../core/mockup/carried-over';
import { type PinnedSaying, pinnedSaying, type SaidPlace } from '../../../core/mockup/pinned-saying';
import type * as english from '../en/mockup';
import type { Said } from '../said';
import { writeLength } from '../written';
import { trialWords } from './trial';

/** Where an edge ends, after "at" and after "from". */
const at: Readonly<Record<EdgeRole, string>> = {
  waist: 'an der Taille',
  hem: 'am Saum',
  fold: 'am Bruch',
  seam: 'an der nächsten Naht',
  opening: 'an der Öffnung',
  finished: 'an der fertigen Kante',
};
const from: Readonly<Record<EdgeRole, string>> = {
  waist: 'von der Taille',
  hem: 'vom Saum',
  fold: 'vom Bruch',
  seam: 'von der nächsten Naht',
  opening: 'von der Öffnung',
  finished: 'von der fertigen Kante',
};

/** A pinned change as a dressmaker says it, by the version it was pinned on or else by the draft. */
export function pinnedSentence(garment: Garment, change: PinnedChange): string {
  const said = saidOf(garment, pinnedSaying(garment, change));
  return `${said}; ${{ both: 'beide Seiten des Körpers', left: 'nur ihre linke Seite', right: 'nur ihre rechte Seite' }[change.side]}.`;
}

function saidOf(garment: Garment, saying: PinnedSaying): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (saying.kind) {
    case 'edge-gone':
      return 'Gesteckt an einer Kante, die es nicht mehr gibt';
    case 'length': {
      const where = saying.at.kind === 'hem' ? 'am Saum' : `${length(saying.at.depth)} unter der Taille`;
      const names = saying.pieceIds.map((id) => pieceName(garment, id)).join(', ');
      return `${length(Math.abs(saying.by))} ${saying.by < 0 ? 'kürzer' : 'länger'} ${where}: ${names}`;
    }
    case 'point': {
      const { right, down } = saying;
      const ways = [
        ...(right === 0 ? [] : [`${length(Math.abs(right))} nach ${right > 0 ? 'rechts' : 'links'}`]),
        ...(down === 0 ? [] : [`${length(Math.abs(down))} nach ${down > 0 ? 'unten' : 'oben'}`]),
      ];
      const corner = saying.corner === undefined ? 'eine Ecke, die es nicht mehr gibt,' : `Ecke ${saying.corner}`;
      return `${pieceName(garment, saying.pieceId)}, ${corner} ${ways.length === 0 ? 'noch nicht versetzt' : `${ways.join(' und ')} versetzt`}`;
    }
    case 'edge': {
      const place = (where: SaidPlace) =>
        where.kind === 'end'
          ? at[where.beyond]
          : `${length(where.far)} ${saying.from === 'waist' ? 'unter der Taille' : from[saying.from]}`;
      const pins = saying.pins.map(({ by, at: where }, i) => {
        const before = saying.pins[i - 1];
        const isSame = before !== undefined && before.by < 0 === by < 0;
        const way = by < 0 ? 'ausgelassen um' : 'eingenommen um';
        return `${isSame ? 'um' : way} ${length(Math.abs(by))} ${place(where)}`;
      });
      const fades = saying.fades.filter((where) => where !== undefined).map(place);
      const fading = fades.length > 0 ? `, auf null auslaufend ${fades.join(' und ')}` : '';
      const given = shareSaid(garment, saying);
      return `${seamSaid(garment, saying)}: ${pins.join(', ') || 'noch nichts'}${pins.length > 0 ? fading : ''}${given}`;
    }
  }
}

type EdgeSaying = Extract<PinnedSaying, { readonly kind: 'edge' }>;

/** The seam by its name, or the edge with what it is sewn to. */
function seamSaid(garment: Garment, { edge, seam }: EdgeSaying): string {
  const own = edgeSaid(garment, edge);
  if (seam?.name) return `${own} (${seam.name})`;
  const partner = partnerOf({ seam, edge });
  return partner ? `${own} an ${edgeSaid(garment, partner)}` : own;
}

function shareSaid(garment: Garment, saying: EdgeSaying): string {
  const partner = partnerOf(saying);
  if (!partner || saying.share === 0.5) return '';
  const own = edgeSaid(garment, saying.edge);
  if (saying.share === 1) return `, alles davon an ${own}`;
  if (saying.share === 0) return `, alles davon an ${edgeSaid(garment, partner)}`;
  return `, ${Math.round(saying.share * 100)} % davon an ${own}`;
}

/** The edge an edge is sewn to; none where it is sewn to its own mirror image or to nothing. */
function partnerOf({ seam, edge }: Pick<EdgeSaying, 'seam' | 'edge'>): EdgeRef | undefined {
  return seam?.other.find(({ pieceId, edgeId }) => pieceId !== edge.pieceId || edgeId !== edge.edgeId);
}

function edgeSaid(garment: Garment, { pieceId, edgeId }: EdgeRef): string {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId);
  return piece && edge ? trialWords.edgeOf(piece, edge).replace(': ', ', ') : 'eine Kante, die es nicht mehr gibt';
}

function pieceName(garment: Garment, pieceId: string): string {
  return pieceOf(garment, pieceId)?.name || 'ein Teil';
}

/** Why a pinned change cannot be carried over, and what to do. */
export function notCarriedSentence(garment: Garment, refusal: NotCarried): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (refusal.why) {
    case 'sides-together':
      return `Sie ist für eine Seite des Körpers gedacht, für beide zugeschnitten wird aber: ${refusal.pieceIds.map((id) => pieceName(garment, id)).join(', ')}. Zeichne zuerst die Seiten getrennt: Umformen, „Links und rechts getrennt“.`;
    case 'edge-changed':
      return `${edgeSaid(garment, refusal.edge)} sollte nach der Fassung, auf der gesteckt wurde, ${length(refusal.was)} lang sein und ist jetzt ${length(refusal.is)}. Das ist eine andere Kante: Stecke neu an einem Probeteil des jetzigen Entwurfs, oder lehne die Änderung ab.`;
    default: {
      const name = 'pieceId' in refusal && refusal.pieceId !== undefined ? pieceName(garment, refusal.pieceId) : '';
      return `${name ? `${name}: ` : ''}${refused[refusal.why]}`;
    }
  }
}

const refused: Readonly<Record<Exclude<NotCarried['why'], 'sides-together' | 'edge-changed'>, string>> = {
  'not-noted': 'Sie ist schon übertragen oder abgelehnt.',
  'no-piece': 'Für diese Seite des Körpers gibt es kein Schnittteil mehr.',
  'edge-gone':
    'Die Kante, an der gesteckt wurde, ist nicht mehr im Entwurf. Stecke neu an einem Probeteil des jetzigen Entwurfs, oder lehne die Änderung ab.',
  'corner-gone':
    'Die Ecke gibt es nicht mehr. Stecke neu an einem Probeteil des jetzigen Entwurfs, oder lehne die Änderung ab.',
  'on-a-fold': 'Sie liegt am Bruch, der gerade bleiben muss. Zeichne zuerst die Seiten getrennt, im Raum Umformen.',
  'fades-inside': 'Sie soll auf null auslaufen, wo noch gesteckt ist. Ändere, wo sie ausläuft.',
  'no-seam': 'Ihre Naht hat eine Kante, die es nicht mehr gibt. Paare sie im Raum Nähte neu.',
  'no-pins': 'Keine Nadel sagt, wie viel.',
  'along-the-neighbour':
    'Die Ecke kann sich nicht bewegen, weil die Kante daneben fast in gleicher Richtung weiterläuft. Stecke etwas vor dem Ende.',
  crosses: 'Mit so viel würde der Umriss sich selbst kreuzen.',
  'no-piece-met': 'Kein Teil reicht von einer Taille bis zu dieser Linie. Benenne die Taillenkante im Raum Entwurf.',
  'no-line': 'Die Linie geht nicht hindurch.',
  'in-the-way':
    'Eine Ecke oder ein Punkt liegt in dem, was weggefaltet würde. Nimm eine andere Tiefe, oder kürze am Saum.',
  'no-hem': 'Keine Kante ist als Saum benannt. Benenne sie im Raum Entwurf.',
};

/** Something to know before a change is taken. */
export function carryNoteSentence(garment: Garment, note: CarryNote): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (note.kind) {
    case 'places-scaled':
      return `${edgeSaid(garment, note.edge)} war beim Stecken ${length(note.was)} lang und ist jetzt ${length(note.is)}, deshalb sind die Stellen im Verhältnis versetzt. Sieh nach, ob sie stimmen.`;
    case 'version-gone':
      return 'Die Fassung, auf der gesteckt wurde, ist nicht auf diesem Gerät; die Stellen werden deshalb an der Kante gezählt, wie sie jetzt ist.';
    case 'half-as-drawn':
      return `${pieceName(garment, note.pieceId)}: seitdem zu einem ganzen Teil geöffnet. Geändert wird die Hälfte, die damals gezeichnet war. Wurde an der anderen Hälfte gesteckt, wähle zuerst deren Kante.`;
    case 'seam-left-off':
      return `Die beiden Kanten der Naht (${edgeSaid(garment, note.edge)}) weichen ${length(Math.abs(note.by))} mehr voneinander ab als vorher. Gleiche die Naht danach aus.`;
  }
}

export const mockupWords: Said<typeof english.mockupWords> = {
  tableLabel:
    'Die Schnittteile, wie das Probeteil zugeschnitten wurde, mit dem Gesteckten. Drücke auf eine Kante, um dort eine Änderung zu notieren; drücke an ihr entlang, um Nadeln zu setzen.',
  noPiecesTitle: 'Nichts da für ein Probeteil',
  noPieces: 'Was bei der Anprobe gesteckt wird, wird hier notiert. Zeichne zuerst im Raum Entwurf ein Teil nach.',
  toDraft: 'Zum Raum Entwurf',
  mockups: 'Probeteile',
  none: 'Schneide den Entwurf aus billigem Stoff zu, probiere ihn an und notiere hier, was du gesteckt hast. Nichts Notiertes gerät in Vergessenheit: Bevor Blätter gemacht werden, wird danach gefragt.',
  cut: 'Probeteil zuschneiden',
  cutHelp:
    'Der Entwurf, wie er jetzt ist, wird als nummerierte Fassung aufbewahrt, damit Gestecktes immer von ihm zu unterscheiden ist.',
  cutting: 'Die Fassung wird aufbewahrt …',
  cutFailed:
    'Die Fassung ließ sich auf diesem Gerät nicht aufbewahren, deshalb wurde kein Probeteil begonnen. Schaffe Platz und versuche es noch einmal.',
  cutDone: (name, version) => `${name} ist nach Fassung ${version} zugeschnitten.`,
  newName: (number) => `Probeteil ${number}`,
  versionName: (mockup) => `Zugeschnitten für ${mockup}`,
  fromVersion: (version, mark, date) => `Fassung ${version} (${mark}), ${date}`,
  open: (noted, pinned) => (pinned === 0 ? 'noch nichts notiert' : noted === 0 ? 'alles geklärt' : `${noted} notiert`),
  all: 'Alle Probeteile',
  name: 'Name',
  note: 'Notiz',
  noteHint: 'Sein Stoff, wie es hing, was darunter getragen wurde.',
  moved:
    'Der Entwurf hat sich geändert, seit dieses Probeteil zugeschnitten wurde. Der Tisch zeigt es, wie es zugeschnitten wurde.',
  versionGone:
    'Die Fassung, nach der es zugeschnitten wurde, ist nicht auf diesem Gerät; der Tisch zeigt deshalb den Entwurf, wie er jetzt ist.',
  remove: 'Dieses Probeteil entfernen',
  removeAsk: 'Mit allem entfernen, was dazu notiert ist? „Rückgängig“ holt es zurück.',
  removeYes: 'Entfernen',
  keep: 'Behalten',
  details: 'Name, Notiz, Fassung',
  pinned: 'Was gesteckt wurde',
  nothingPinned: 'Noch ist nichts notiert. Drücke auf dem Tisch auf eine Kante, oder wähle, was gesteckt wurde:',
  add: 'Weiteres notieren',
  kinds: { edge: 'Enger oder weiter an einer Kante', length: 'Länger oder kürzer', point: 'Ein Punkt versetzt' },
  number: (number) => `Änderung ${number}`,
  state: {
    noted: () => 'Notiert, noch nicht im Entwurf',
    carried: (date) => `Übertragen am ${date}`,
    declined: (date, reason) => `Abgelehnt am ${date}: ${reason}`,
  },
  carry: 'Übertragen',
  carryOf: (what) => `Übertragen: ${what}`,
  carryAll: (count) => (count === 1 ? 'Sie übertragen' : `Alle ${count} übertragen`),
  carryEach: 'Einzeln',
  change: 'Ändern',
  changeOf: (what) => `Ändern: ${what}`,
  decline: 'Ablehnen',
  declineOf: (what) => `Ablehnen: ${what}`,
  reason: 'Warum sie nicht übertragen wird',
  declineIt: 'Ablehnen',
  reasonFirst: 'Schreibe auf, warum, damit du es später weißt.',
  again: 'Wieder aufgreifen',
  againOf: (what) => `Wieder aufgreifen: ${what}`,
  notAfterAll: 'Sie ist doch nicht im Entwurf',
  notAfterAllHelp: 'Nur der Vermerk wird zurückgenommen. Um die Änderung aus dem Entwurf zu nehmen, nimm „Rückgängig“.',
  removeChange: 'Entfernen',
  removeChangeOf: (what) => `Entfernen: ${what}`,
  noting: { edge: 'An einer Kante gesteckt', length: 'Länger oder kürzer', point: 'Ein Punkt versetzt' },
  chooseEdge: 'Drücke auf dem Tisch auf die Kante, oder wähle sie hier.',
  edge: 'Welche Kante',
  noEdge: 'noch nicht gewählt',
  pins: 'Nadeln',
  pin: (number) => `Nadel ${number}`,
  anotherPin: 'Weitere Nadel',
  dropPin: 'Diese Nadel wegnehmen',
  pressAlong: 'Drücke auf dem Tisch an der Kante entlang, um eine Nadel zu setzen; ziehe eine, um sie zu versetzen.',
  way: 'In welche Richtung',
  ways: { in: 'eingenommen', out: 'ausgelassen' },
  by: 'Wie viel, an der Naht insgesamt',
  place: { waist: 'Unter der Taille', other: (role: EdgeRole) => `Entfernung ${from[role]}` },
  fades: 'Wo sie auf null ausläuft',
  fadeEnd: (role: EdgeRole) => `Leer: ${at[role]}.`,
  fadeBefore: 'Vor den Nadeln, bei',
  fadeAfter: 'Nach den Nadeln, bei',
  share: 'Genommen von',
  shares: {
    half: 'beiden Kanten gleich',
    own: (name) => `nur ${name}`,
    partner: (name) => `nur ${name}`,
    other: (share) => `${Math.round(share * 100)} % von dieser Kante`,
  },
  side: 'Für welche Seite des Körpers',
  sides: { both: 'beide', left: 'ihre linke', right: 'ihre rechte' },
  photo: 'Foto',
  takePhoto: 'Foto aufnehmen',
  choosePhoto: 'Foto wählen',
  dropPhoto: 'Das Foto wegnehmen',
  photoAlt: (what) => `Foto der Anprobe: ${what}`,
  photoFailed: 'Dieses Bild ließ sich nicht öffnen oder aufbewahren. Nimm ein anderes auf, oder mache ohne weiter.',
  photoGone: 'Das Foto dazu ist nicht auf diesem Gerät.',
  lengthWay: 'In welche Richtung',
  lengthWays: { longer: 'länger', shorter: 'kürzer' },
  lengthBy: 'Um',
  at: 'Wo',
  ats: { hem: 'am Saum', depth: 'quer, unter der Taille' },
  depth: 'Unter der Taille',
  pieces: 'Welche Teile',
  point: 'Welche Ecke',
  corner: (piece, number) => `${piece}: Ecke ${number}`,
  across: 'Seitwärts',
  acrossWays: { right: 'nach rechts', left: 'nach links' },
  acrossBy: 'Seitwärts um',
  downWay: 'Auf oder ab',
  downWays: { down: 'nach unten', up: 'nach oben' },
  downBy: 'Auf oder ab um',
  noteIt: 'Notieren',
  leaveIt: 'Lassen',
  notYet: 'Gib zuerst an, wo und wie viel.',
  noted: 'Es ist notiert. Übertrage es, wenn die Anprobe fertig ist.',
  labels: {
    cut: 'Probeteil zuschneiden',
    note: 'gesteckte Änderung notieren',
    change: 'Gestecktes ändern',
    decline: 'gesteckte Änderung ablehnen',
    again: 'gesteckte Änderung wieder aufgreifen',
    removeChange: 'gesteckte Änderung entfernen',
    name: 'Probeteil benennen',
    remark: 'Notiz zum Probeteil',
    remove: 'Probeteil entfernen',
    carry: (count) => (count === 1 ? 'gesteckte Änderung übertragen' : `${count} gesteckte Änderungen übertragen`),
  },
  carrying: (count) => (count === 1 ? 'Übertragen' : `${count} Änderungen übertragen`),
  carryingHelp: 'Gestrichelt, wie es ist; blau, wie es würde.',
  loading: 'Die Fassung, auf der gesteckt wurde, wird geöffnet …',
  toCome: (count) =>
    count === 1
      ? '1 weitere kommt nach dieser, ob du sie nimmst oder lässt.'
      : `${count} weitere kommen nach dieser, ob du sie nimmst oder lässt.`,
  stopHere: 'Hier aufhören',
  without: 'Ohne diese weitermachen',
  cannot: (sentence, why) => `${sentence} So lässt sie sich nicht übertragen. ${why}`,
  outstandingTitle: 'Gesteckt, aber nicht auf diesen Blättern',
  outstanding: (count) =>
    count === 1
      ? 'Eine am Probeteil gesteckte Änderung ist weder übertragen noch abgelehnt:'
      : `${count} an Probeteilen gesteckte Änderungen sind weder übertragen noch abgelehnt:`,
  toMockup: 'Zum Probeteil',
  makeAllTheSame: 'Die Blätter trotzdem machen',
};
