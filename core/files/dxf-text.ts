/** Words in an R12 DXF file, which is plain ASCII. */

/**
 * Text on one line of ASCII: signs beyond it as `\U+` and four hexadecimal figures, as DXF writes them since release 13
 * (from memory), so that accents and any script come back whole.
 */
export function dxfText(text: string): string {
  return [...text.replace(/[\p{Cc}\s]+/gu, ' ').trim()]
    .map((sign) => (/[ -~]/.test(sign) ? sign : [...Array(sign.length).keys()].map((i) => coded(sign, i)).join('')))
    .join('');
}

function coded(sign: string, index: number): string {
  return `\\U+${sign.charCodeAt(index).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** Text as it was before {@link dxfText}. */
export function plainText(text: string): string {
  return text.replace(/\\U\+([\da-fA-F]{4})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));
}

/** Names of blocks are at most 31 signs in R12; some are kept for a number. */
const LONGEST = 24;

/** A name for a block: capitals, figures and `_`, accents left off; different for every `number`. */
export function blockName(name: string, number: number): string {
  const plain = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^A-Z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '')
    .slice(0, LONGEST);
  return `${plain === '' ? 'PIECE' : plain}_${number}`;
}
