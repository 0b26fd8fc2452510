import { MM_PER_CENTIMETRE, MM_PER_INCH, type ShownIn } from './inch';

/** The finest step a length is written to. Inches take the binary steps, centimetres the millimetre steps. */
export type WrittenStep = 'eighth' | 'sixteenth' | 'thirtysecond' | 'millimetre' | 'tenth-millimetre';

/** The finest step there is: for what must be found with a ruler, and for differences, which are small. */
export function finestStep(shownIn: ShownIn): WrittenStep {
  return shownIn === 'in' ? 'thirtysecond' : 'tenth-millimetre';
}

export interface WriteOptions {
  readonly shownIn: ShownIn;
  /** A sixteenth of an inch or a millimetre unless said; a step of the other system falls back to that. */
  readonly step?: WrittenStep;
  /** Leave the unit off, for a column of figures under a heading that has it. */
  readonly unit?: 'shown' | 'left-off';
  /** `kept` holds a length together on one line by spaces that do not break; `typed` has the spaces of a keyboard. */
  readonly spaces?: 'kept' | 'typed';
  /** The sign between whole and parts of centimetres; a point unless said. Either can be typed again. */
  readonly decimal?: '.' | ',';
}

const parts: Readonly<Partial<Record<WrittenStep, number>>> = { eighth: 8, sixteenth: 16, thirtysecond: 32 };

/** A space at which no line breaks: `1 1/4 in` cut in two reads as one inch. */
const KEPT_SPACE = '\u00a0';

/**
 * A length (mm) as a dressmaker writes it, to the nearest step: `7 1/2 in`, `19.1 cm`, `−3/16 in`, `0 in`. It is never
 * broken over two lines.
 */
export function writeLength(length: number, options: WriteOptions): string {
  const number = options.shownIn === 'in' ? inInches(length, options) : inCentimetres(length, options);
  const written = options.unit === 'left-off' ? number : `${number} ${options.shownIn}`;
  return options.spaces === 'typed' ? written : written.replaceAll(' ', KEPT_SPACE);
}

function inInches(length: number, { step = 'sixteenth' }: WriteOptions): string {
  const under = parts[step] ?? 16;
  const steps = Math.round((Math.abs(length) / MM_PER_INCH) * under);
  const whole = Math.floor(steps / under);
  const fraction = reduced(steps % under, under);
  const sign = length < 0 && steps > 0 ? '−' : '';
  if (fraction === '') return `${sign}${whole}`;
  return `${sign}${whole === 0 ? '' : `${whole} `}${fraction}`;
}

/** A fraction with nothing common above and below; nothing at all for none. */
function reduced(over: number, under: number): string {
  if (over === 0) return '';
  let [a, b] = [over, under];
  while (a % 2 === 0) [a, b] = [a / 2, b / 2];
  return `${a}/${b}`;
}

function inCentimetres(length: number, { step = 'millimetre', decimal = '.' }: WriteOptions): string {
  const decimals = step === 'tenth-millimetre' ? 2 : 1;
  const text = (Math.abs(length) / MM_PER_CENTIMETRE)
    .toFixed(decimals)
    .replace(/\.?0+$/, '')
    .replace('.', decimal);
  return length < 0 && text !== '0' ? `−${text}` : text;
}
