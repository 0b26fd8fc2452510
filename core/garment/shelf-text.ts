import type { Garment } from './garment';

/** How much of a garment's text is looked through from the shelf (characters). */
const MOST = 4000;

/** All by which a garment may be sought on the shelf: name, source, wearer, notes, cloth, notions and its pieces. */
export function shelfText(garment: Garment): string {
  const { name, source, wearer, pieces, cloth = '', notions = '', remarks } = garment;
  const first = [name, wearer.name, source.book, source.page, source.plate, source.year, cloth, notions];
  const then = [...pieces.map((piece) => piece.name), remarks, source.remarks, ...pieces.map((piece) => piece.remarks)];
  return folded([...first, ...then].filter((part) => part !== '').join('\n')).slice(0, MOST);
}

/** Whether every word that is sought stands somewhere in a text of `shelfText`; accents and case make no difference. */
export function isFound(text: string, sought: string): boolean {
  return folded(sought)
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** Without accents and in small letters, letters that are two in one written out. */
function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/æ/g, 'ae')
    .replace(/œ/g, 'oe')
    .replace(/ø/g, 'o');
}
