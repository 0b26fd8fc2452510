import type { DraftQuestion } from '../../../core/blocks/draft-question';
import type { DraftName } from '../../../core/blocks/draft-names';
import type * as english from '../en/blocks';
import type { Said } from '../said';

const names: Readonly<Record<DraftName, string>> = {
  front: 'Vorderteil',
  back: 'Rückenteil',
  'side-gore': 'Seitenbahn',
  gore: 'Bahn',
  skirt: 'Rock',
  flounce: 'Volant',
  band: 'Bund',
  'band-with-lap': 'Bund mit Übertritt',
  leg: 'Bein',
  'bodice-front': 'Oberteil vorn',
  'bodice-back': 'Oberteil hinten',
  'upper-square': 'Quadrat',
  'lower-piece': 'Unteres Teil',
  'side-seam': 'Seitennaht',
  'shoulder-seam': 'Schulternaht',
  'waist-seam': 'Taillennaht',
  'gore-seam': 'Bahnennaht',
  'end-seam': 'Endnaht',
  'inner-leg-seam': 'innere Beinnaht',
  'centre-back-seam': 'hintere Mittelnaht',
  'front-seam': 'vordere Naht',
  'back-seam': 'hintere Naht',
};

const PRINTED = 'mit den gedruckten Zahlen';

const missingWords: Readonly<Record<Extract<DraftQuestion, { kind: 'figure-missing' }>['what'], string>> = {
  direction: 'eine Richtung, die nur die Tafel zeigt',
  'waist-curve': 'die Kurve der Taille',
  fractions: 'Brüche, die in der Abschrift verloren sind',
  'one-figure-of-a-range': 'eine Spanne statt einer Zahl',
  axes: 'die Richtungen seiner Linien',
  'side-gores': 'die Seitenbahnen',
};

export const blockWords: Said<typeof english.blockWords> = {
  nameOf: (name, number) => (number === undefined ? names[name] : `${names[name]} ${number}`),
  kinds: {
    'plain-skirt': 'Einfacher Rock mit Abnähern',
    'two-dart-skirt': 'Rock mit zwei Abnähern, metrisches Lehrblatt',
    'gored-skirt': 'Ausgestellter Rock aus gleichen Bahnen',
    'shared-gores': 'Bahnenrock nach alter Regel',
    'five-gored-underskirt': 'Unterrock aus fünf Bahnen, 1911',
    'circle-skirt': 'Kreis oder Teil eines Kreises',
    flounce: 'Runder Volant',
    'shaped-band': 'Formbund',
    'yoke-drawers': 'Unterhose an einer Passe, 1911',
    'school-drawers': 'Unterhose im Bruch, 1910er',
    'childs-drawers': 'Kinderunterhose, 1890er',
    'small-drawers': 'Unterhose nach kleinem Modell, 1910',
    'small-underwaist': 'Leibchen nach kleinem Modell, 1910',
    bloomers: 'Pumphose, 1918',
    bodice: 'Einfaches Oberteil mit Abnähern',
    slip: 'Unterkleid: Oberteil und Rock',
    'bias-slip': 'Schräges Unterkleid, Heft der 1930er',
  },
  sources: {
    'plain-skirt': 'Abnäher verteilt wie allgemein üblich; die Taille aus dem Kegel des Körpers.',
    'two-dart-skirt':
      'WikiEducator, Handout for drafting skirt block. Die Mehrweite ist darin: 2,4 cm an der Taille, 5 cm an der Hüfte.',
    'gored-skirt': 'Zwei Kegel, Taille bis Hüfte und Hüfte bis Saum.',
    'shared-gores': 'Regeln, gedruckt 1911 bis 1916; welche, steht unten.',
    'five-gored-underskirt':
      'Carrie Crane Ingalls, Text-Book on Domestic Art, 1911. Der gedruckte Entwurf bricht in der hinteren Bahn ab.',
    'circle-skirt': 'Einfache Geometrie. Die Schnittkante liegt innerhalb der Nahtlinie.',
    flounce: 'Laura I. Baldt, Clothing for Women, 1916: Radius = oben × Tiefe ÷ (unten − oben).',
    'shaped-band': 'Der Kegel des Körpers zwischen Taille und Hüfte.',
    'yoke-drawers': `Carrie Crane Ingalls, 1911, ${PRINTED}.`,
    'school-drawers': `Ida R. und Myron G. Burton, School Sewing, ${PRINTED}.`,
    'childs-drawers': `Olive C. Hapgood, School Needlework, 1890er, ${PRINTED}; nur das Bein wird gemessen.`,
    'small-drawers': 'Idabelle McGlauflin, Handicraft for Girls, 1910: ein kleines Modell in ganzen Vielfachen.',
    'small-underwaist': 'Idabelle McGlauflin, 1910: ein kleines Modell in ganzen Vielfachen.',
    bloomers: 'I. Rosenfeld, The Practical Designer, 1918, Lektion 411. Die Nahtzugaben sind darin.',
    bodice: 'Einfache Geometrie aus den Maßen, wie allgemein üblich.',
    slip: 'Das einfache Oberteil und ein Bahnenrock, an der Taille oder unter der Brust verbunden.',
    'bias-slip':
      'Ein Nähheft der 1930er, in einer Größe: vier Teile von 27 in und vier Quadrate von 15 in.',
  },
  rules: {
    'five-equal': 'fünf gleiche Bahnen, 1914',
    'five-proportional': 'fünf Bahnen im Verhältnis, 1911',
    nine: 'neun Bahnen, 1911',
    'four-panels': 'vier Bahnen, 1916',
    'six-panels': 'sechs Bahnen, 1916',
  },
  refusal: ({ why }) =>
    ({
      'not-positive': 'Jede Länge muss größer als null sein. Sieh nach den Maßen und den Zahlen hier.',
      'rise-below-hem': 'Das Bein muss länger sein als die Leibhöhe.',
      'waist-over-hip':
        'Dieser Entwurf ist nicht für eine Taille gemacht, die weiter ist als die Hüfte. Nimm den einfachen Rock oder Bahnen.',
      'across-too-wide':
        'Rückenbreite oder Brustbreite ist zu groß für diese Oberweite. Miss beide noch einmal.',
      'bust-below-waist':
        'Die Brust kann nicht unter der Taille liegen. Sieh nach Brusttiefe und Taillenlängen.',
      'armhole-too-shallow':
        'Zwischen Schulter und Achsel bleibt kein Armloch. Sieh nach den Taillenlängen und der Oberweite.',
      'dart-too-wide':
        'In die Abnäher müsste so viel, dass sie sich berühren. Gib an der Taille mehr Mehrweite.',
      'waist-too-wide': 'Die Taille ist zu weit für das Bein dieses Entwurfs.',
      'side-too-short': 'Die Seite ist zu kurz für diesen Entwurf.',
      'hip-below-hem': 'Der Saum muss unter der Hüfte liegen.',
      'hip-too-narrow': 'Die Hüfte ist zu schmal für die Bahnen dieses Entwurfs.',
      'hem-too-wide': 'So ein weiter Saum kommt bei diesem Entwurf nicht heraus.',
      'share-left-over': 'Die festen Teile dieser Regel nehmen mehr, als da ist. Nimm eine andere Regel.',
      'overlaps-itself': 'Ein Teil ginge mehr als einmal herum. Schneide es in mehr Teilen.',
      crosses: 'Mit diesen Maßen würde ein Umriss sich selbst kreuzen. Sieh noch einmal nach den Maßen.',
      'too-small': 'Das ist weniger als das kleine Modell selbst.',
    })[why],
  question: (question, length) => {
    switch (question.kind) {
      case 'sum-clash':
        return `Verlangt war ein Saum von ${length(question.asked)}, die gedruckten Bahnen ergeben ${length(question.sum)}. Was soll gelten?`;
      case 'length-clash':
        return `Von ${question.from} bis ${question.to} sagt die Quelle ${length(question.stated)}; ihre eigenen Punkte liegen ${length(question.drawn)} auseinander. Was ist richtig?`;
      case 'place-clash':
        return `Die Quelle setzt ${question.one} und ${question.other} an zwei Stellen, ${length(question.apart)} auseinander. Was ist richtig?`;
      case 'edges-differ':
        return `Die Kanten „${names[question.name]}“ dieses Entwurfs ergeben ${question.lengths.map(length).join(' und ')}. Welcher soll gefolgt werden?`;
      case 'source-ends':
        return `Die Quelle bricht ab, im Teil „${names[question.piece]}“, nach ${question.last}. Wie es weitergeht, sagst du.`;
      case 'figure-missing':
        return `In der Quelle fehlt eine Zahl (${missingWords[question.what]}). Sieh die Kante vor dem Zuschneiden an.`;
      case 'size-stepped':
        return `Verlangt waren ${length(question.asked)}. Diesen Entwurf gibt es in ganzen Stufen; die nächste ist ${length(question.made)}.`;
      case 'no-bust-dart':
        return `Vorn, ${length(question.front)}, ist kaum länger als hinten, ${length(question.back)}, also gibt es keinen Brustabnäher. Sind beide über die Brust gemessen?`;
      case 'bust-dart-off':
        return `Die Brust liegt zu nah an Achsel oder Taille: ihr Abnäher liegt ${length(question.by)} daneben.`;
    }
  },
  block: 'Welcher Entwurf',
  as: 'Hinlegen als',
  ases: { pieces: 'Teile zum Bearbeiten', guide: 'Hilfslinie unter einem Entwurf' },
  label: 'Grundschnitt entwerfen',
  missing: (fields) =>
    `Dieser Entwurf braucht Maße, die noch nicht genommen sind: ${fields}. Sie werden im Raum Person genommen.`,
  length: 'Länge, Taille bis Saum',
  hem: 'Saum, rundherum',
  gores: 'Wie viele Bahnen',
  easeWaist: 'Mehrweite an der Taille',
  easeHip: 'Mehrweite an der Hüfte',
  easeBust: 'Mehrweite an der Oberweite',
  rule: 'Regel',
  hemTaken: 'Der Saum der gedruckten Bahnen',
  hemTakens: { 'as-asked': 'wie verlangt', 'as-printed': 'wie gedruckt' },
  offFloor: 'Saum über dem Boden',
  share: 'Wie viel vom Kreis',
  shares: { '1': 'ganz', '0.75': 'drei Viertel', '0.5': 'halb', '0.25': 'ein Viertel' },
  sections: 'In wie vielen Teilen',
  top: 'Obere Kante, rundherum',
  bottom: 'Untere Kante, rundherum',
  depth: 'Tiefe',
  side: 'Seite, Taille bis Beinsaum',
  leg: 'Bein',
  underarm: 'Seitennaht unter dem Arm',
  outside: 'Äußere Länge',
  opens: 'Öffnet sich',
  openings: { back: 'hinten', front: 'vorn' },
  joined: 'Oberteil und Rock treffen sich',
  joins: { waist: 'an der Taille', underbust: 'unter der Brust' },
};
