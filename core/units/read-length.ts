import {
  MM_PER_CENTIMETRE,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM_PER_METRE,
  MM_PER_NAIL,
  MM_PER_YARD,
  type ShownIn,
} from './inch';

/** Why a text is no length. */
export type LengthRefusal = 'empty' | 'not-a-length' | 'division-by-zero' | 'too-large';

export type ReadLength =
  | { readonly kind: 'length'; readonly length: number }
  | { readonly kind: 'refused'; readonly why: LengthRefusal };

/** Longer than this is a slip of the pen: a kilometre. */
const LONGEST = 1e6;

/** Printed fractions and what they stand for. */
const printedFractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** The millimetres of one of each unit, by every way it is written. */
const units: Readonly<Record<string, number>> = {
  '"': MM_PER_INCH,
  in: MM_PER_INCH,
  ins: MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  "'": MM_PER_FOOT,
  ft: MM_PER_FOOT,
  foot: MM_PER_FOOT,
  feet: MM_PER_FOOT,
  yd: MM_PER_YARD,
  yds: MM_PER_YARD,
  yard: MM_PER_YARD,
  yards: MM_PER_YARD,
  nail: MM_PER_NAIL,
  nails: MM_PER_NAIL,
  mm: 1,
  cm: MM_PER_CENTIMETRE,
  m: MM_PER_METRE,
};

const NUMBER = String.raw`(?:(\d+)(?:\s+|\s*-\s*|\s*\+\s*)(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d*)?|\.\d+))`;
const UNIT = String.raw`("|''|'|in(?:ches|ch|s)?|ft|foot|feet|yds?|yards?|nails?|mm|cm|m)?\.?`;
const part = new RegExp(`^\\s*${NUMBER}\\s*${UNIT}`, 'i');

/**
 * The length a person wrote, in millimetres: `7 1/2`, `7½`, `7-1/2`, `7.5`, `7,5` (a comma is a decimal point),
 * `3' 2"`, `1 yd 9 in`, `19 cm`, `2 nails`, with a minus sign for less than nothing. A number without a unit is in inches
 * or centimetres as `bare` says, and after feet or yards in inches.
 */
export function readLength(text: string, options: { readonly bare: ShownIn }): ReadLength {
  const plain = plainSigns(text);
  if (plain === '') return { kind: 'refused', why: 'empty' };
  const negative = plain.startsWith('-');
  let rest = negative ? plain.slice(1) : plain;
  let total = 0;
  let smallest = Number.POSITIVE_INFINITY;
  while (rest.trim() !== '') {
    const found = part.exec(rest);
    if (!found) return { kind: 'refused', why: 'not-a-length' };
    const number = numberOf(found);
    if (number === undefined) return { kind: 'refused', why: 'division-by-zero' };
    const written = found[7]?.toLowerCase();
    const size = written === undefined ? bareUnit(smallest, options.bare) : units[written === "''" ? '"' : written];
    // Each part must be in a smaller unit than the one before: feet then inches, never two bare numbers.
    if (size === undefined || size >= smallest) return { kind: 'refused', why: 'not-a-length' };
    smallest = size;
    total += number * size;
    rest = rest.slice(found[0].length);
  }
  if (!(total <= LONGEST)) return { kind: 'refused', why: 'too-large' };
  return { kind: 'length', length: negative && total !== 0 ? -total : total };
}

/** One way of writing for signs that come in several. */
function plainSigns(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (glyph) => ` ${printedFractions[glyph]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[″“”„]/g, '"')
    .replace(/[′’‘`]/g, "'")
    .replace(/[−–]/g, '-')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\s+/g, ' ')
    .replace(/^- /, '-')
    .trim();
}

function bareUnit(before: number, bare: ShownIn): number {
  if (before === Number.POSITIVE_INFINITY) return bare === 'in' ? MM_PER_INCH : MM_PER_CENTIMETRE;
  return before === MM_PER_METRE ? MM_PER_CENTIMETRE : MM_PER_INCH;
}

/** The number of one part; `undefined` when a fraction has nothing under its line. */
function numberOf(found: RegExpExecArray): number | undefined {
  const [, whole, over, under, loneOver, loneUnder, decimal] = found;
  if (decimal !== undefined) return Number(decimal);
  const below = Number(under ?? loneUnder);
  if (below === 0) return undefined;
  return Number(whole ?? 0) + Number(over ?? loneOver) / below;
}
