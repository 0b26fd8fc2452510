import { readFileSync } from 'node:fs';
import { lindenGarment } from '../../app/demo/linden-garment';
import type { Project } from '../../app/storage/project-file';
import { longHistory } from '../../bench/long-history';
import { sampleGarment } from '../../bench/sample-garment';
import { readStoredGarment } from '../../core/garment/migrate';
import type { PaperFonts } from '../../core/paper/pdf-document';

/** Sound projects to be spoilt: the demo, the frozen samples of every schema, gores of many points, a long history. */
export function soundProjects(): readonly Project[] {
  let last = 0;
  const newId = () => `id-${++last}`;
  const photo = {
    id: 'plate',
    type: 'image/jpeg',
    name: 'plate.jpg',
    widthPx: 360,
    heightPx: 480,
    bytes: Uint8Array.from({ length: 300 }, (_, i) => i & 255).buffer,
  };
  const history = longHistory(5, 300);
  return [
    { garment: lindenGarment({ newId, today: '2026-03-04', photoId: photo.id }), versions: [], photos: [photo] },
    ...['schema-1', 'schema-2'].map((name) => ({ garment: sampleOf(name), versions: [], photos: [] })),
    { garment: sampleGarment(3), versions: [], photos: [] },
    history,
  ];
}

function sampleOf(name: string) {
  const file = new URL(`../../tests/garment/samples/${name}.json`, import.meta.url);
  const read = readStoredGarment(JSON.parse(readFileSync(file, 'utf8')));
  if (read.kind !== 'garment') throw new Error(`${name} reads as ${read.kind}`);
  return read.garment;
}

/** The fonts that the program prints with. */
export function paperFonts(): PaperFonts {
  const bytes = (name: string) => new Uint8Array(readFileSync(new URL(`../../public/fonts/${name}`, import.meta.url)));
  return { plain: bytes('dejavu-sans.ttf'), bold: bytes('dejavu-sans-bold.ttf') };
}
