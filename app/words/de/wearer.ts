import type * as english from '../en/wearer';
import type { Said } from '../said';
import { depthOf } from './measures';

export const wearerWords: Said<typeof english.wearerWords> = {
  figure: 'Wo jedes Maß verläuft, von vorn und von hinten gesehen',
  front: 'Vorn',
  back: 'Hinten',
  how: {
    waist: 'Binde ein Gummiband um und beuge dich zur Seite: Es legt sich in die Taille. Miss dort, anliegend.',
    highHip: 'Um den oberen Rand der Hüftknochen, etwa halb zwischen Taille und Hüfte. Halte das Maßband waagerecht.',
    hip: 'Um die stärkste Stelle des Gesäßes, Füße geschlossen, Maßband ringsum waagerecht.',
    bust: 'Um die stärkste Stelle der Brust und waagerecht über den Rücken.',
    chest: 'Hoch unter den Armen, über der Brust, waagerecht über den Rücken.',
    underbust: 'Um die Rippen dicht unter der Brust.',
    neck: 'Um den Halsansatz, vorn über die Halsgrube und hinten über den Halswirbel.',
    upperArm: 'Um die stärkste Stelle des Arms, der locker hängt.',
    thigh: 'Um die stärkste Stelle eines Beins, im Stehen.',
    knee: 'Um das Knie, das Bein leicht gebeugt.',
    waistToHighHip: 'Vom Gummiband an der Seite hinunter bis dahin, wo du die hohe Hüfte gemessen hast.',
    waistToHip: 'Vom Gummiband an der Seite über die Rundung bis dahin, wo du die Hüfte gemessen hast.',
    waistToKnee: 'Vom Gummiband an der Seite bis zur Mitte des Knies.',
    waistToFloorFront:
      'Vom Gummiband in der vorderen Mitte über den Bauch bis zum Boden, in den Schuhen, die du tragen wirst.',
    waistToFloorSide: 'Vom Gummiband an der Seite über die Hüfte bis zum Boden, in denselben Schuhen.',
    waistToFloorBack: 'Vom Gummiband in der hinteren Mitte über das Gesäß bis zum Boden, in denselben Schuhen.',
    bodyRise: 'Setze dich auf einen harten Stuhl: vom Gummiband an der Seite bis zur Sitzfläche.',
    frontWaistLength: 'Von der Schulter am Hals über die Brust bis zum Gummiband.',
    backWaistLength: 'Vom Halswirbel am Halsansatz hinunter bis zum Gummiband.',
    shoulder: 'Von der Seite des Halses bis zum Ende des Schulterknochens.',
    acrossFront: 'Von Arm zu Arm quer über vorn, auf halber Höhe des Armlochs.',
    acrossBack: 'Von Arm zu Arm quer über die Schulterblätter, auf halber Höhe des Armlochs.',
    bustDepth: 'Von der Schulter am Hals bis zur Brustspitze.',
    bustSpan: 'Von einer Brustspitze zur anderen.',
    armLength: 'Vom Ende des Schulterknochens über den gebeugten Ellbogen bis zum Handgelenk.',
  },

  essential: 'Die Maße für den Anfang',
  more: {
    round: 'Weitere, um den Körper',
    along: 'Weitere, am Körper entlang',
    bodice: 'Weitere, für ein Oberteil',
  },
  filled: (count, of) => `${count}\u00a0von\u00a0${of}`,
  depthOf,
  right: (measure) => `${measure}, rechts an ihr`,
  left: (measure) => `${measure}, links an ihr`,
  rightDiffers: 'Rechts ist anders',
  rightSame: 'Beide Seiten gleich',
  halvesApart: 'Links und rechts getrennt',
  halvesApartOf: (measure) => `Links und rechts getrennt: ${measure}`,
  halvesHelp:
    'Für einen Körper, dessen Seiten verschieden sind: von der vorderen Mitte um die Seite bis zur hinteren Mitte. Schreibst du eine Hälfte, bleibt der anderen der Rest vom Ganzen.',
  half: {
    left: (measure) => `${measure}, ihre linke Hälfte`,
    right: (measure) => `${measure}, ihre rechte Hälfte`,
  },
  halvesAlike: 'Beide Hälften gleich',
  sidesLabel: (what, measure) => `${what}: ${measure}`,
  guess: 'Schätzen',
  guessLabel: (measure) => `Schätzen: ${measure}`,
  guessOf: (measure) => `${measure} aus den anderen Maßen schätzen`,
  guessed: 'Geschätzt, nicht gemessen. Schreibe das wirkliche Maß darüber, sobald du kannst.',
  guessMade: (measure, length) => `${measure} auf ${length} geschätzt.`,
  keepGuess: 'Ich habe gemessen: Es stimmt',
  noGuess: 'Noch gibt es nichts, woraus sich das schätzen ließe. Miss es mit dem Maßband.',

  who: 'Für wen es ist',
  name: 'Name oder Spitzname',
  shownIn: 'Längen in',
  inches: 'Zoll',
  centimetres: 'Zentimeter',

  sets: 'Maßsatz in Gebrauch',
  setName: (date, wornOver) => (wornOver ? `${date}, über ${wornOver}` : date || 'noch kein Datum'),
  date: 'Genommen am',
  wornOver: 'Unter dem Maßband getragen',
  wornOverHint: 'Was du unter dem Kleidungsstück tragen wirst: Hemd, Korsett und einen Unterrock.',
  copySet: 'Neu messen, als neuer Satz',
  copied: 'Ein neuer Satz mit denselben Zahlen, mit heutigem Datum. Der alte bleibt.',

  whence:
    'Wahrscheinliche Bereiche stammen aus ANSUR II (2012): 1.986 Frauen der US-Armee von 17 bis 58 Jahren. Ihre Taille wurde am Nabel gemessen, tiefer und weiter als die einer Schneiderin. Du kannst gut außerhalb liegen; nichts hier hält dich auf.',

  labels: {
    measure: (measure) => measure,
    guess: (measure) => `${measure} schätzen`,
    name: 'für wen es ist',
    newSet: 'neuer Maßsatz',
    chooseSet: 'anderer Maßsatz',
    date: 'Datum der Maße',
    wornOver: 'worüber das Maßband lag',
  },
};
