import { strToU8, zipSync } from 'fflate';
import { expect, it } from 'vitest';
import { crc32, zipSums } from '../../app/storage/zip-check';

it('crc32 of "123456789" is CBF43926, the check value of CRC-32 in the RevEng catalogue of parametrised CRC algorithms', () => {
  expect(crc32(strToU8('123456789')).toString(16)).toBe('cbf43926');
  expect(crc32(new Uint8Array(0))).toBe(0);
});

it('zipSums reads the sum of every entry', () => {
  const zip = zipSync({ 'a.txt': strToU8('seven'), 'für/b.txt': strToU8('eleven') });
  expect(zipSums(zip)).toEqual(
    new Map([
      ['a.txt', crc32(strToU8('seven'))],
      ['für/b.txt', crc32(strToU8('eleven'))],
    ]),
  );
});

it('zipSums throws where there is no directory', () => {
  expect(() => zipSums(new Uint8Array(3))).toThrow(RangeError);
  expect(() => zipSums(new Uint8Array(4000))).toThrow(RangeError);
});
