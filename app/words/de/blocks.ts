import type { DraftName } from '../../../core/blocks/draft-names';
import type { DraftQuestion } from '../../../core/blocks/draft-question';
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
  'inner-leg-seam': 'Innenbein',
  'centre-back-seam': 'hintere Mittelnaht',
  'front-seam': 'vordere Naht',
  'back-seam': 'hintere Naht',
};

const PRINTED = 'mit den Zahlen wie gedruckt';

export const blockWords: Said<typeof english.blockWords> = {
  nameOf: (name, number) => (number === undefined ? names[name] : `${names[name]} ${number}`),
  kinds: {
    'plain-skirt': 'Einfacher Rock mit Abnähern',
    'two-dart-skirt': 'Rock mit zwei Abnähern, metrisches Lehrblatt',
    'gored-skirt': 'Ausgestellter Rock aus gleichen Bahnen',
    'shared-gores': 'Bahnenrock nach alter Regel',
    'five-gored-underskirt': 'Unterrock aus fünf Bahnen, 1911',
    'circle-skirt': 'Teller oder Teil davon',
    flounce: 'Tellervolant',
    'shaped-band': 'Formbund',
    'yoke-drawers': 'Unterhose mit Passe, 1911',
    'school-drawers': 'Unterhose im Bruch, 1910er',
    'childs-drawers': 'Kinderunterhose, 1890er',
    'small-drawers': 'Unterhose nach kleinem Modell, 1910',
    'small-underwaist': 'Leibchen nach kleinem Modell, 1910',
    bloomers: 'Pumphose, 1918',
    bodice: 'Einfaches Oberteil mit Abnähern',
    slip: 'Unterkleid: Oberteil und Rock',
    'bias-slip': 'Schräg geschnittenes Unterkleid, Heft der 1930er',
  },
  sources: {
    'plain-skirt': 'Abnäher verteilt, wie es üblich ist; die Taille nach dem Kegel des Körpers.',
    'two-dart-skirt':
      'WikiEducator, Handout for drafting skirt block. Ihre Mehrweite steckt darin: 2,4 cm (1 in) an der Taille, 5 cm (2 in) an der Hüfte.',
    'gored-skirt': 'Zwei Kegel, Taille bis Hüfte und Hüfte bis Saum.',
    'shared-gores': 'Regeln, gedruckt 1911 bis 1916; welche, steht unten.',
    'five-gored-underskirt':
      'Carrie Crane Ingalls, Text-Book on Domestic Art, 1911. Der gedruckte Entwurf bricht in der hinteren Bahn ab.',
    'circle-skirt': 'Einfache Geometrie. Die Schnittlinie liegt innerhalb der Nahtlinie.',
    flounce: 'Laura I. Baldt, Clothing for Women, 1916: Radius = oben × Tiefe ÷ (unten − oben).',
    'shaped-band': 'Der Kegel des Körpers zwischen Taille und Hüfte.',
    'yoke-drawers': `Carrie Crane Ingalls, 1911, ${PRINTED}.`,
    'school-drawers': `Ida R. und Myron G. Burton, School Sewing, ${PRINTED}.`,
    'childs-drawers': `Olive C. Hapgood, School Needlework, 1890er, ${PRINTED}; nur das Bein wird gemessen.`,
    'small-drawers': 'Idabelle McGlauflin, Handicraft for Girls, 1910: ein kleines Modell in ganzen Vielfachen.',
    'small-underwaist': 'Idabelle McGlauflin, 1910: ein kleines Modell in ganzen Vielfachen.',
    bloomers: 'I. Rosenfeld, The Practical Designer, 1918, Lektion 411. Nahtzugaben sind enthalten.',
    bodice: 'Einfache Geometrie aus den Maßen, wie es üblich ist.',
    slip: 'Das einfache Oberteil und ein Rock aus Bahnen, verbunden an der Taille oder unter der Brust.',
    'bias-slip':
      'Ein Heft zum Selbstschneidern aus den 1930ern, in einer Größe: vier Teile von 27 in (69 cm) und vier Quadrate von 15 in (38 cm).',
  },
  rules: {
    'five-equal': 'fünf gleiche Bahnen, 1914',
    'five-proportional': 'fünf Bahnen im Verhältnis, 1911',
    nine: 'neun Bahnen, 1911',
    'four-panels': 'vier Bahnen, 1916',
    'six-panels': 'sechs Bahnen, 1916',
  },
  refusal: (refusal) =>
    ({
      'not-positive': 'Jede Länge muss größer als null sein. Sieh die Maße und die Zahlen hier an.',
      'rise-below-hem': 'Das Bein muss länger sein als die Sitzhöhe.',
      'waist-over-hip':
        'Dieser Entwurf ist nicht für eine Taille gemacht, die weiter ist als die Hüfte. Nimm den einfachen Rock oder Bahnen.',
      'across-too-wide': 'Rücken- oder vordere Breite ist zu groß für diese Brust. Miss beides noch einmal.',
      'bust-below-waist': 'Die Brust kann nicht unter der Taille liegen. Sieh Brusttiefe und Taillenlängen an.',
      'armhole-too-shallow': 'Zwischen Schulter und Achsel bleibt kein Armloch. Sieh Taillenlängen und Brust an.',
      'dart-too-wide': 'Es müsste so viel in die Abnäher, dass sie sich treffen. Gib der Taille mehr Weite.',
      'waist-too-wide': 'Die Taille ist zu weit für das Bein dieses Entwurfs.',
      'side-too-short': 'Die Seite ist zu kurz für diesen Entwurf.',
      'hip-below-hem': 'Der Saum muss unter der Hüfte liegen.',
      'hip-too-narrow': 'Die Hüfte ist zu eng für die Bahnen dieses Entwurfs.',
      'hem-too-wide': 'Ein so weiter Saum kommt bei diesem Entwurf nicht heraus.',
      'share-left-over': 'Die festen Teile dieser Regel nehmen mehr, als da ist. Nimm eine andere Regel.',
      'overlaps-itself': 'Ein Teil ginge mehr als einmal herum. Schneide es in mehr Teilen zu.',
      crosses: 'Mit diesen Maßen würde ein Umriss sich selbst kreuzen. Sieh die Maße noch einmal an.',
      'too-small': 'Das ist weniger als das kleine Modell selbst.',
    })[refusal.why],
  question: (question, length): string => {
    switch (question.kind) {
      case 'sum-clash':
        return `${length(question.asked)} Saum war gewünscht, die gedruckten Bahnen ergeben ${length(question.sum)}. Was soll gelten?`;
      case 'length-clash':
        return `Von ${question.from} bis ${question.to} nennt die Quelle ${length(question.stated)}; ihre eigenen Punkte liegen ${length(question.drawn)} auseinander. Was stimmt?`;
      case 'place-clash':
        return `Die Quelle setzt ${question.one} und ${question.other} an zwei Stellen, ${length(question.apart)} auseinander. Was stimmt?`;
      case 'edges-differ':
        return `${names[question.name]}: Dieser Entwurf ergibt dafür ${question.lengths.map(length).join(' und ')}. Welche Länge soll gelten?`;
      case 'source-ends':
        return `Die Quelle bricht ab (${names[question.piece]}), nach ${question.last}. Wie es weitergeht, gibst du an.`;
      case 'figure-missing':
        return `In der Quelle fehlt eine Zahl (${missingWords[question.what]}). Sieh dir die Kante vor dem Zuschneiden an.`;
      case 'size-stepped':
        return `${length(question.asked)} war gewünscht. Dieser Entwurf geht in ganzen Schritten; der nächste ist ${length(question.made)}.`;
      case 'no-bust-dart':
        return `Vorn sind es ${length(question.front)}, kaum mehr als hinten mit ${length(question.back)}, deshalb gibt es keinen Brustabnäher. Ist beides über die Brust gemessen?`;
      case 'bust-dart-off':
        return `Die Brust liegt zu nah an Achsel oder Taille: Ihr Abnäher liegt ${length(question.by)} daneben.`;
    }
  },
  block: 'Welcher Grundschnitt',
  as: 'Hinlegen als',
  ases: { pieces: 'Schnittteile zum Weiterarbeiten', guide: 'Hilfslinien unter einem Entwurf' },
  label: 'Grundschnitt zeichnen',
  missing: (fields) =>
    `Dieser Grundschnitt braucht Maße, die noch nicht genommen sind: ${fields}. Sie kommen in den Raum Maße.`,
  length: 'Länge, Taille bis Saum',
  hem: 'Saum, ringsum',
  gores: 'Wie viele Bahnen',
  easeWaist: 'Mehrweite an der Taille',
  easeHip: 'Mehrweite an der Hüfte',
  easeBust: 'Mehrweite an der Brust',
  rule: 'Regel',
  hemTaken: 'Der Saum der gedruckten Bahnen',
  hemTakens: { 'as-asked': 'wie gewünscht', 'as-printed': 'wie gedruckt' },
  offFloor: 'Saum über dem Boden',
  share: 'Wie viel von einem Kreis',
  shares: { '1': 'ganz', '0.75': 'drei Viertel', '0.5': 'halb', '0.25': 'ein Viertel' },
  sections: 'In wie vielen Teilen zugeschnitten',
  top: 'Oberkante, ringsum',
  bottom: 'Unterkante, ringsum',
  depth: 'Tiefe',
  side: 'Seite, Taille bis Beinsaum',
  leg: 'Bein',
  underarm: 'Naht unter dem Arm',
  outside: 'Außenlänge',
  opens: 'Öffnet sich',
  openings: { back: 'hinten', front: 'vorn' },
  joined: 'Oberteil und Rock treffen sich',
  joins: { waist: 'an der Taille', underbust: 'unter der Brust' },
};

const missingWords: Readonly<Record<Extract<DraftQuestion, { kind: 'figure-missing' }>['what'], string>> = {
  direction: 'eine Richtung, die nur die Tafel zeigt',
  'waist-curve': 'der Bogen der Taille',
  fractions: 'Brüche, die in der Kopie verloren sind',
  'one-figure-of-a-range': 'eine Spanne statt einer Zahl',
  axes: 'die Richtungen seiner Linien',
  'side-gores': 'die Seitenbahnen',
};
