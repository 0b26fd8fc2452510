import type * as english from '../en/demo';
import type { Said } from '../said';

export const demoWords: Said<typeof english.demoWords> = {
  garment: 'Lindenunterrock',
  book: 'Unser eigenes Heft',
  sourceRemarks:
    'Für diese Vorführung gezeichnet. Das halbe Vorderteil im Bruch; das Rückenteil wird gleich zugeschnitten.',
  wornOver: 'Hemd',
  plate: 'Tafel 14',
  panel: 'Bahn',
  waist: 'Taille',
  side: 'Seitennaht',
  hem: 'Saum',
  fold: 'Bruch der Mitte',
  ring: 'Rock',
  cloth: 'Geblümter Batist',
  placket: 'Schlitzleiste',
};
