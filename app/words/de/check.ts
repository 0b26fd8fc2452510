import type * as english from '../en/check';
import type { Said } from '../said';

export const checkWords: Said<typeof english.checkWords> = {
  title: 'Vor dem Zuschneiden',
  intro:
    'Worüber du sicher sein solltest, aus jedem Raum, mit den Zahlen dahinter. Jede Zeile führt dorthin, wo es sich beheben lässt.',
  counts: (stops, warns, left) => {
    const said = [
      ...(stops === 0
        ? []
        : [stops === 1 ? '1 Hinweis muss zuerst geklärt werden' : `${stops} Hinweise müssen zuerst geklärt werden`]),
      ...(warns === 0
        ? []
        : [
            `${warns}${stops === 0 ? (warns === 1 ? ' Hinweis' : ' Hinweise') : ''} ${warns === 1 ? 'ist' : 'sind'} einen Blick wert`,
          ]),
      ...(left === 0 ? [] : [`${left} bewusst so gelassen`]),
    ];
    return `${said.join(', ')}.`;
  },
  clear: 'Nichts ist offen. Miss das gedruckte Prüfquadrat, nähe das Probeteil, dann schneide zu.',
  points: 'Worüber du sicher sein solltest',
  point: {
    measures: 'Die Maße sind sicher',
    'scale-known': 'Der Maßstab der Vorlage ist bekannt',
    outlines: 'Die Umrisse und gedruckten Zahlen stimmen',
    'goes-round': 'Die Bahnen gehen um den Körper',
    'waist-curved': 'Die Taille ist gebogen oder bewusst gerade',
    'seams-true': 'Die Nähte sind gepaart und ausgeglichen',
    'pinned-settled': 'Das Gesteckte ist geklärt',
    allowances: 'Jedes Schnittteil hat seine Nahtzugaben',
    grain: 'Jedes Schnittteil hat seinen Fadenlauf',
    'cut-counts': 'Wie oft jedes Schnittteil zugeschnitten wird',
    'scale-proved': 'Der Maßstab ist auf Papier geprüft',
    'lay-made': 'Der Zuschneideplan steht und der Stoff reicht',
    'print-current': 'Gedruckt ist der Schnitt, wie er ist',
  },
  state: {
    settled: 'geklärt',
    open: 'offen',
    left: 'bewusst so gelassen',
    'not-looked-at': 'noch nicht angesehen',
  },
  goSee: (room) => `Zum Raum ${room}`,
  seen: (point, room) => `${point}: zum Raum ${room}`,
  leave: 'So lassen, wie es ist',
  why: 'Warum es so bleibt',
  whyHint: 'Es meldet sich von selbst wieder, wenn seine Zahlen sich ändern.',
  whyNeeded: 'Schreibe zuerst einen Grund hin, damit du ihn später weißt.',
  leaveNow: 'So lassen',
  notAfterAll: 'Doch nicht',
  leaveLabel: 'so lassen, wie es ist',
  leftSince: (date, why) => `So gelassen am ${date}: ${why}`,
  takeUp: 'Wieder aufgreifen',
  takeUpLabel: 'wieder aufgreifen',
  print: 'Diese Liste drucken (PDF)',
  file: 'vor dem zuschneiden',
  printing: 'Das Blatt wird gemacht …',
  printed: (pages) => (pages === 1 ? 'Fertig: 1 Blatt.' : `Fertig: ${pages} Blätter.`),
  printFailed: 'Das Blatt ließ sich nicht machen. Versuche es noch einmal.',
  mend: (room) => `Beheben: ${room}`,
  cautions: 'Vorsicht',
  cautionLines: [
    'Ein Entwurf ist ein Plan: Miss vor dem Zuschneiden das gedruckte Prüfquadrat nach und nähe zuerst ein Probeteil aus billigem Stoff.',
    'Heiße Bügeleisen verbrennen und versengen; probiere die Hitze an einem Stoffrest. Schneide von der Hand weg, schließe Klingen und zähle nach der Anprobe die Nadeln.',
    'Für ein Kind: Für Nachtwäsche und für Kordeln an Kinderkleidung gelten Sicherheitsregeln zu Brennbarkeit und Kordeln. Sieh nach, welche bei dir gelten, und halte sie ein.',
  ],
};
