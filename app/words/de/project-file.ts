import type * as english from '../en/project-file';
import type { Said } from '../said';

export const projectFileWords: Said<typeof english.projectFileWords> = {
  readMe: [
    'Das ist ein Kleidungsstück, gezeichnet mit Inchsquare, mit den Bildern, nach denen es gezeichnet wurde.',
    'Öffne es mit Inchsquare: Wähle im Regal „Datei öffnen“.',
    '',
    'garment.json  der Entwurf: Maße, Schnittteile, Kanten; jede Länge in Millimetern',
    'photos/       die Bilder, Byte für Byte, wie sie kamen',
    'photos.json   ihre Namen und Arten',
    '',
  ].join('\r\n'),
  refused: {
    'not-a-project':
      'Diese Datei ist kein Kleidungsstück von Inchsquare. Wähle eine, deren Name auf .inchsquare.zip endet.',
    broken:
      'Diese Datei ist beschädigt oder abgeschnitten und lässt sich nicht öffnen. Nichts wurde geändert; versuche es mit einer anderen Kopie.',
    'too-large':
      'Diese Datei ist ausgepackt größer als 300 MB, mehr als dieses Programm öffnet. Nichts wurde geändert.',
    newer:
      'Dieses Kleidungsstück wurde mit einem neueren Inchsquare gemacht. Bringe dieses auf den neuesten Stand und öffne es dann; nichts wurde geändert.',
    'unknown-field':
      'Dieses Kleidungsstück enthält etwas, das dieses Inchsquare nicht kennt, wie es ein neueres gemacht haben kann. Bringe dieses auf den neuesten Stand und öffne es dann; nichts wurde geändert.',
    'not-a-garment':
      'Der Entwurf in dieser Datei ist in sich nicht stimmig und wurde deshalb nicht geöffnet. Nichts wurde geändert.',
  },
  missingPhotos: (count) =>
    count === 1
      ? 'Ein Bild fehlte in der Datei. Der Entwurf selbst ist vollständig.'
      : `${count} Bilder fehlten in der Datei. Der Entwurf selbst ist vollständig.`,
};
