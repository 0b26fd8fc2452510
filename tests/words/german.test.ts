import { expect, test } from 'vitest';
import { german } from '../../app/words/de/catalogue';

const englishFiles = import.meta.glob<Record<string, unknown>>('../../app/words/en/**/*.ts', { eager: true });

/** Strings of more than one word that are the same in both: names and units. */
const ALIKE = /^(Inchsquare|1 in|1 cm)$/;

/** Every place where two values of the same name are not of the same kind, or an English sentence stands untranslated. */
function differences(ours: unknown, theirs: unknown, path: string): string[] {
  if (typeof ours === 'string') {
    if (typeof theirs !== 'string') return [`${path}: no German`];
    return ours === theirs && ours.includes(' ') && !ALIKE.test(ours) ? [`${path}: left in English: ${ours}`] : [];
  }
  if (typeof ours === 'function') {
    if (typeof theirs !== 'function') return [`${path}: no German`];
    return ours.length === theirs.length ? [] : [`${path}: takes ${theirs.length} where English takes ${ours.length}`];
  }
  if (Array.isArray(ours)) return Array.isArray(theirs) ? [] : [`${path}: no German`];
  if (typeof ours === 'object' && ours !== null) {
    if (typeof theirs !== 'object' || theirs === null) return [`${path}: no German`];
    return Object.entries(ours).flatMap(([name, value]) =>
      differences(value, (theirs as Record<string, unknown>)[name], `${path}.${name}`),
    );
  }
  return [];
}

const files = Object.entries(englishFiles).map(([path, words]) => ({
  name: path.replace(/^.*\/([^/]+)\.ts$/, '$1'),
  words,
}));

test('every file of English words is found', () => {
  expect(files.length).toBeGreaterThan(30);
  expect(Object.keys(german).sort()).toEqual(files.map(({ name }) => name).sort());
});

test.each(files)('$name has a German of the same kind for each of its words', ({ name, words }) => {
  const translated = (german as unknown as Record<string, unknown>)[name];
  expect(differences({ ...words }, translated, name)).toEqual([]);
});

test('a word left out or left in English is told', () => {
  expect(differences({ say: 'Put it down' }, {}, 'x')).toEqual(['x.say: no German']);
  expect(differences({ say: 'Put it down' }, { say: 'Put it down' }, 'x')).toHaveLength(1);
  expect(differences({ say: (one: string) => one }, { say: 'Lege es hin' }, 'x')).toEqual(['x.say: no German']);
});
