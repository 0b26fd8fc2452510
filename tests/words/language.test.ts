import { describe, expect, it } from 'vitest';
import { language, spokenAmong } from '../../app/words/language';
import { writeLength, writeMetres, writeNumber } from '../../app/words/written';
import { writeLength as lengthWritten } from '../../core/units/write-length';
import { writeMetres as metresWritten } from '../../core/units/write-yards';

describe('The language spoken', () => {
  it('is the first of hers that is known, whatever its region', () => {
    expect(spokenAmong(['fr-FR', 'de-AT', 'en'])).toBe('de');
    expect(spokenAmong(['en-US', 'de'])).toBe('en');
    expect(spokenAmong(['fr', 'ja'])).toBeUndefined();
  });

  it('is English until another is asked for, with points in its numbers', () => {
    expect(language()).toBe('en');
    expect(writeLength(125, { shownIn: 'cm' })).toBe('12.5\u00a0cm');
    expect(writeMetres(2350)).toBe('2.35\u00a0m');
    expect(writeNumber(12.5, 2)).toBe('12.50');
    expect(writeNumber(12.5, 2, 'trimmed')).toBe('12.5');
    expect(writeNumber(120, 0, 'trimmed')).toBe('120');
  });

  it('has a comma in its numbers where that is the custom, and none in fractions of an inch', () => {
    expect(lengthWritten(125, { shownIn: 'cm', decimal: ',' })).toBe('12,5\u00a0cm');
    expect(lengthWritten(190.5, { shownIn: 'in', decimal: ',' })).toBe('7\u00a01/2\u00a0in');
    expect(metresWritten(2350, ',')).toBe('2,35\u00a0m');
  });
});
