import { centimetres, inches, type ShownIn } from '../../core/units/inch';
import { writeLength as lengthWritten, type WriteOptions } from '../../core/units/write-length';
import { writeMetres as metresWritten } from '../../core/units/write-yards';
import { language } from './language';

/** The sign between whole and parts, as the language spoken has it. */
const decimalSign = () => (language() === 'de' ? ',' : '.');

/** A length as the language spoken writes it; see `core/units/write-length.ts`. */
export function writeLength(length: number, options: WriteOptions): string {
  return lengthWritten(length, { decimal: decimalSign(), ...options });
}

/**
 * A length that is only about so large, as a sentence names it: round in inches and round in centimetres, and so not quite
 * the same in both. `roundLength('in', 20, 50)` is `20 in`.
 */
export function roundLength(shownIn: ShownIn, inInches: number, inCentimetres: number): string {
  const length = shownIn === 'in' ? inches(inInches) : centimetres(inCentimetres);
  return writeLength(length, { shownIn, step: shownIn === 'in' ? 'thirtysecond' : 'millimetre' });
}

/** A sentence, or one that has lengths in it and waits to be told how they are written. */
export type Sentence = string | ((shownIn: ShownIn) => string);

/** The sentence with its lengths. */
export function inFull(sentence: Sentence, shownIn: ShownIn): string {
  return typeof sentence === 'string' ? sentence : sentence(shownIn);
}

/** A length in metres as the language spoken writes it. */
export function writeMetres(length: number): string {
  return metresWritten(length, decimalSign());
}

/** A number to so many places after the sign, `trimmed` of noughts that say nothing. */
export function writeNumber(value: number, places: number, noughts: 'kept' | 'trimmed' = 'kept'): string {
  const written = value.toFixed(places);
  return (noughts === 'trimmed' && places > 0 ? written.replace(/\.?0+$/, '') : written).replace('.', decimalSign());
}

/** A word as it stands within a sentence: English lowers its capital, German keeps that of its nouns. */
export function midSentence(word: string): string {
  return language() === 'de' ? word : word.toLowerCase();
}
