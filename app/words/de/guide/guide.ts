import type * as english from '../../en/guide/guide';
import type { Said } from '../../said';

export const guideWords: Said<typeof english.guideWords> = {
  open: 'Anleitung',
  openLabel: 'Wie es gemacht wird',
  title: 'Wie es gemacht wird',
  close: 'Das Buch schließen',
  pages: 'Seiten',
  backToList: 'Alle Seiten',
  words: 'Wörter der Schneiderei',
  wordsHelp: 'Was jedes Wort hier bedeutet.',
  seekWord: 'Ein Wort suchen',
  noWord: (sought) =>
    `Kein Wort hier hat „${sought}“ in sich oder in seiner Bedeutung. Versuche ein kürzeres Stück davon.`,
  care: 'Vorsicht',
  about: (card) => `Über: ${card}`,
  readMore: (page) => `Mehr: ${page}`,
  step: (number) => `Schritt ${number}`,
  startWalk: 'Rundgang machen',
  startWalkHelp: 'Das Beispiel, von den Maßen bis zu den Blättern, eins nach dem anderen. Höre auf, wann du willst.',
  walk: 'Die Arbeit, eins nach dem anderen',
  walkStep: (number, of) => `${number} von ${of}`,
  walkDone: 'Fertig',
  walkNext: 'Weiter',
  walkBack: 'Zurück',
  walkLeave: 'Aufhören',
  walkEnd: 'Das war die ganze Arbeit',
  walkGoThere: (room) => `Zum Raum ${room}`,
  walkLeft: 'Du hast den Rundgang verlassen. Er beginnt im Regal neu, wann immer du willst.',
  steps: {
    measures: {
      title: 'Die Trägerin',
      say: (shownIn) =>
        `Ein Schnitt ist für einen Körper. Hier stehen seine Maße, und bei jedem, wie man es nimmt; versuche ${shownIn === 'in' ? 29 : 74} für die Taille und sieh, was die anderen Räume sagen. Bei einem wahrscheinlichen Versehen wird nachgefragt.`,
    },
    squared: {
      title: 'Das Bild, entzerrt',
      say: 'Ein schräges Foto eines Hefts. Die vier Ecken liegen auf dem gedruckten Rahmen, und zwei bekannte Längen sagen, wie groß es ist. Unten steht das Bild wie gerade von oben gesehen.',
    },
    traced: {
      title: 'Das Teil, nachgezeichnet',
      say: (shownIn) =>
        `Die halbe Bahn auf Quadraten von ${shownIn === 'in' ? 'einem Zoll' : 'zwei Zentimetern'}. Drücke auf eine Ecke oder Kante, und ihre Längen stehen im Notizbuch; ziehe einen Punkt, und alles andere folgt. „Rückgängig“ ist oben rechts.`,
    },
    waist: {
      title: 'Eine Taille für einen Körper',
      say: 'Das Heft zeichnet die Taille gerade. Der Raum Passform zeichnet die darüber, die dieser Körper braucht: Drücke „Gebogene Taille nehmen“.',
    },
    opening: {
      title: 'Kommt man hinein?',
      say: 'Die Taille kommt nicht über die Hüfte, also bleibt eine Naht oben offen. Der Raum Passform sagt, wie tief mindestens: Drücke „Offen lassen“.',
    },
    seams: {
      title: 'Was woran genäht wird',
      say: 'Vorder- und Rückenteil treffen sich an der Seite. Paare die Seitennaht mit ihrem Spiegelbild, wie vorgeschlagen, und die beiden werden aneinander abgegangen.',
    },
    cloth: {
      title: 'Auf dem Stoff',
      say: (shownIn) =>
        `${shownIn === 'in' ? 'Zweieinhalb Yard' : 'Zweieinviertel Meter'} davon sind vorhanden. Drücke „Teile auflegen“ und sieh, was sie brauchen; ziehe dann eines, oder lege alles im Schrägfadenlauf.`,
    },
    pages: {
      title: 'Auf Papier',
      say: 'Drücke „Druckblätter machen“. Auf jedem Blatt steht ein Prüfquadrat zum Nachmessen; die Punktetabelle ist für Packpapier.',
    },
    proof: {
      title: 'Druckt der Drucker genau?',
      say: (shownIn) =>
        `Drucke das erste Blatt, miss sein Quadrat in beiden Richtungen und schreibe auf, was du abliest. Um ohne Drucker weiterzugehen, schreibe ${shownIn === 'in' ? '4 und 4' : '10,16 und 10,16'}.`,
    },
    check: {
      title: 'Vor dem Zuschneiden',
      say: 'Alles, worüber du sicher sein solltest, mit seinen Zahlen, und jedes führt dorthin, wo es sich beheben lässt. Ist nichts mehr offen, schneide zu.',
    },
  },
};
