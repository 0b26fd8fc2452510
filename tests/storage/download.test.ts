import { describe, expect, it } from 'vitest';
import { fileName } from '../../app/storage/download';

describe('fileName', () => {
  it('keeps letters of every script, with their marks', () => {
    expect(fileName('Walking skirt, 1897 (“IV”)')).toBe('walking-skirt-1897-iv');
    expect(fileName('Jupe à godets')).toBe('jupe-à-godets');
    // An accent that comes apart from its letter is put to it.
    expect(fileName('Jupe a\u0300 godets')).toBe('jupe-à-godets');
    expect(fileName('हिन्दी घाघरा')).toBe('हिन्दी-घाघरा');
    expect(fileName('袴 プリーツ')).toBe('袴-プリーツ');
    expect(fileName('חצאית')).toBe('חצאית');
  });

  it('lets through nothing that a file system or a path could take amiss', () => {
    expect(fileName('../../etc/passwd')).toBe('etc-passwd');
    expect(fileName('a\u0000b\\c:d*?"<>|e')).toBe('a-b-c-d-e');
    expect(fileName('\u202egnp.exe')).toBe('gnp-exe');
    expect(fileName('…')).toBe('garment');
  });

  it('cuts a name that no file system would hold, between letters', () => {
    for (const name of ['skirt '.repeat(90), '裙'.repeat(300), '𠮷'.repeat(300)]) {
      const cut = fileName(name);
      expect(new TextEncoder().encode(cut).length).toBeLessThanOrEqual(180);
      expect(cut).not.toContain('\ufffd');
      expect(cut.isWellFormed()).toBe(true);
    }
  });
});
