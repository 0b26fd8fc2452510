import type * as english from '../en/whole-shelf';
import type { Said } from '../said';
import { projectFileWords } from './project-file';

export const wholeShelfWords: Said<typeof english.wholeShelfWords> = {
  readMe: [
    'Das ist ein ganzes Regal mit Kleidungsstücken, gezeichnet mit Inchsquare.',
    'Öffne es mit Inchsquare: Wähle im Regal „Datei öffnen“.',
    '',
    'Jede .inchsquare.zip darin ist ein Kleidungsstück und lässt sich herausnehmen und allein öffnen.',
    'put-away/  die weggelegten Kleidungsstücke',
    '',
  ].join('\r\n'),
  fileName: 'regal',
  save: 'Das ganze Regal in einer Datei sichern',
  saveHelp: 'Jedes Kleidungsstück mit seinen Fassungen und Bildern, auch die weggelegten.',
  saving: 'Die Kleidungsstücke werden gesammelt …',
  saved: (count) =>
    count === 1 ? '1 Kleidungsstück ist in der Datei.' : `${count} Kleidungsstücke sind in der Datei.`,
  leftOut: (names) => `Nicht in der Datei, weil das Gespeicherte beschädigt ist: ${names}.`,
  cannotSave: 'Das Regal ließ sich nicht als Datei sichern. Sichere die Kleidungsstücke einzeln.',
  tooLarge:
    'Das Regal ist mehr, als eine Datei fassen darf: 1 GB oder 1000 Kleidungsstücke. Sichere die Kleidungsstücke einzeln.',
  noneSaved: 'Nichts im Regal ist lesbar, deshalb wurde keine Datei gemacht.',
  bringing: (done, count) => `${done + 1} von ${count} wird hereingeholt …`,
  areIn: (count) => (count === 1 ? '1 ist da.' : `${count} sind da.`),
  alreadyHere: (count) =>
    count === 1
      ? '1 liegt schon genau so hier wie in der Datei.'
      : `${count} liegen schon genau so hier wie in der Datei.`,
  besides: (count) =>
    count === 1
      ? 'Von 1 lag hier ein anderer Stand; der aus der Datei liegt daneben.'
      : `Von ${count} lag hier ein anderer Stand; die aus der Datei liegen daneben.`,
  picturesLacking: (count) =>
    count === 1
      ? '1 Bild fehlte in den Dateien oder ließ sich nicht aufbewahren. Die Entwürfe selbst sind vollständig.'
      : `${count} Bilder fehlten in den Dateien oder ließen sich nicht aufbewahren. Die Entwürfe selbst sind vollständig.`,
  report: 'Was hereingeholt wurde',
  close: 'Diesen Bericht weglegen',
  notIn: (count) => (count === 1 ? '1 ließ sich nicht hereinholen:' : `${count} ließen sich nicht hereinholen:`),
  because: (name, why) => `${name}: ${why}`,
  refused: {
    ...projectFileWords.refused,
    'too-large-shelf':
      'Sie enthält mehr als 1 GB oder mehr als 1000 Kleidungsstücke. Nimm sie heraus und öffne einige auf einmal.',
    'not-kept': 'Der Browser wollte es nicht aufbewahren; vielleicht hat das Gerät keinen Platz mehr.',
    'not-readable': 'Der Browser konnte die Datei nicht lesen.',
  },
};
