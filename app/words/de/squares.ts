import type * as english from '../en/squares';
import type { Said } from '../said';

const named = (piece: string) => piece || 'Teil ohne Namen';

export const squaresWords: Said<typeof english.squaresWords> = {
  title: 'Auf Packpapier',
  label: 'Rasterblatt',
  help: 'Wie die Rasterblätter gezeichnet und angesagt werden. Zeichne danach auf großem Papier mit langem Lineal und rechtem Winkel.',
  square: 'Ein Quadrat in Originalgröße',
  asFine: 'so fein, wie es lesbar ist',
  from: 'Punkte werden angesagt',
  fromZero: 'von einem Nullpunkt nach rechts und nach unten',
  fromLine: 'entlang einer Grundlinie und im rechten Winkel davon weg',
  baseOf: (piece) => `Grundlinie: ${named(piece)}`,
  ownBase: (from, to) => `${from} bis ${to}, die längste Gerade`,
  base: (from, to, edge) => `${from} bis ${to}${edge === '' ? '' : `, ${edge}`}`,
  print: 'Schrift',
  usual: 'üblich',
  large: 'groß, für den Boden',
  onScreenHelp:
    'Oder lege diesen Bildschirm auf den Boden: ein Punkt nach dem anderen, in großen Zahlen, beim Zeichnen abgehakt.',
  onScreen: (piece) => `${named(piece)} Punkt für Punkt`,
};
