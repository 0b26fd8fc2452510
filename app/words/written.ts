import { writeLength as lengthWritten, type WriteOptions } from '../../core/units/write-length';
import { writeMetres as metresWritten } from '../../core/units/write-yards';
import { language } from './language';

/** The sign between whole and parts, as the language spoken has it. */
const decimalSign = () => (language() === 'de' ? ',' : '.');

/** A length as the language spoken writes it; see `core/units/write-length.ts`. */
export function writeLength(length: number, options: WriteOptions): string {
  return lengthWritten(length, { decimal: decimalSign(), ...options });
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
