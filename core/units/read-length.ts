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
export type LengthRefusal = 'empty' | 'not-a-length' | 'two-points' | 'division-by-zero' | 'too-large';

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
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};
const printedFraction = new RegExp(`[${Object.keys(printedFractions).join('')}]`, 'g');

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
  millimetre: 1,
  millimetres: 1,
  millimeter: 1,
  millimeters: 1,
  cm: MM_PER_CENTIMETRE,
  cms: MM_PER_CENTIMETRE,
  centimetre: MM_PER_CENTIMETRE,
  centimetres: MM_PER_CENTIMETRE,
  centimeter: MM_PER_CENTIMETRE,
  centimeters: MM_PER_CENTIMETRE,
  m: MM_PER_METRE,
  metre: MM_PER_METRE,
  metres: MM_PER_METRE,
  meter: MM_PER_METRE,
  meters: MM_PER_METRE,
};

const NUMBER = String.raw`(?:(\d+)(?:\s+|\s*-\s*|\s*\+\s*)(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d*)?|\.\d+))`;
const UNIT = String.raw`("|''|'|in(?:ches|ch|s)?|ft|foot|feet|yds?|yards?|nails?|(?:milli|centi)?met(?:re|er)s?|mm|cms?|m)?\.?`;
const part = new RegExp(`^\\s*${NUMBER}\\s*${UNIT}`, 'i');

/** Two decimal points in one number. */
const twoPoints = /[.,]\d*[.,]/;

/**
 * The length a person wrote, in millimetres: `7 1/2`, `7½`, `7-1/2`, `7.5`, `7,5` (a comma is a decimal point),
 * `3' 2"`, `1 yd 9 in`, `19 cm`, `2 nails`, with a minus sign for less than nothing. A number without a unit is in inches
 * or centimetres as `bare` says, and after feet or yards in inches; it comes last, so that `1 200 mm` is refused and never
 * read as an inch and 200 mm.
 */
export function readLength(text: string, options: { readonly bare: ShownIn }): ReadLength {
  const plain = plainSigns(text);
  if (plain === '') return { kind: 'refused', why: 'empty' };
  const unread: ReadLength = { kind: 'refused', why: twoPoints.test(plain) ? 'two-points' : 'not-a-length' };
  const negative = plain.startsWith('-');
  let rest = negative ? plain.slice(1) : plain;
  if (rest === '') return unread;
  let total = 0;
  let smallest = Number.POSITIVE_INFINITY;
  while (rest.trim() !== '') {
    const found = part.exec(rest);
    if (!found) return unread;
    const number = numberOf(found);
    if (number === undefined) return { kind: 'refused', why: 'division-by-zero' };
    const written = found[7]?.toLowerCase();
    const size = written === undefined ? bareUnit(smallest, options.bare) : units[written === "''" ? '"' : written];
    rest = rest.slice(found[0].length);
    // Each part must be in a smaller unit than the one before, feet then inches, and a number without a unit the last.
    if (size === undefined || size >= smallest || (written === undefined && rest !== '')) return unread;
    smallest = size;
    total += number * size;
  }
  if (!(total <= LONGEST)) return { kind: 'refused', why: 'too-large' };
  return { kind: 'length', length: negative && total !== 0 ? -total : total };
}

/** One way of writing for signs that come in several. */
function plainSigns(text: string): string {
  return text
    .replace(printedFraction, (glyph) => ` ${printedFractions[glyph]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[″“”„]/g, '"')
    .replace(/[′’‘`´]/g, "'")
    .replace(/[−–]/g, '-')
    .replace(/,(?=\d)/g, '.')
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
