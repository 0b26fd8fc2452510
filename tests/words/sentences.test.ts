import { beforeAll, expect, test } from 'vitest';
import { takeUp } from '../../app/words/language';
import { allSaid, type Said } from './all-said';

const englishFiles = import.meta.glob<object>('../../app/words/en/**/*.ts');
let said: readonly Said[] = [];

beforeAll(async () => {
  takeUp('en', {});
  const english: Record<string, object> = {};
  for (const [path, load] of Object.entries(englishFiles)) {
    english[path.replace(/^.*\/words\/en\/|\.ts$/g, '')] = await load();
  }
  takeUp('de', {});
  const { german } = await import('../../app/words/de/catalogue');
  const byFile: Readonly<Record<string, object>> = { ...german };
  const ofFile = (path: string) => byFile[path.replace(/^.*\//, '')] ?? {};
  said = allSaid(english, Object.fromEntries(Object.keys(english).map((path) => [path, ofFile(path)])));
}, 180_000);

/** What is said amiss, with where; each function once. */
function amiss(isWrong: (text: Said) => boolean, excepted?: RegExp): string[] {
  const found = new Map<string, string>();
  for (const one of said) {
    const name = one.where.replace(/\(.*?\)(?=\.|$)/g, '');
    if (!found.has(name) && !excepted?.test(name) && isWrong(one))
      found.set(name, `${one.where}: ${one.en} | ${one.de}`);
  }
  return [...found.values()];
}

const inEither = (wrong: RegExp) => (one: Said) => wrong.test(one.en) || wrong.test(one.de);
const times = (text: string, sign: string) => text.split(sign).length;

test('every function of every file is called', () => {
  expect(said.length).toBeGreaterThan(8000);
  for (const path of Object.keys(englishFiles)) {
    const name = path.replace(/^.*\/words\/en\/|\.ts$/g, '');
    expect(said.some(({ where }) => where.startsWith(`${name}.`))).toBe(true);
  }
});

test('no value shows through where a word should stand', () => {
  expect(amiss(inEither(/\bundefined\b|\bNaN\b|\[object|\bInfinity\b/))).toEqual([]);
  expect(amiss(({ en }) => /\bnull\b/.test(en))).toEqual([]);
});

test('spaces, signs and brackets stand as they should', () => {
  // Set behind something else, and the letter that lies beside the files of a garment.
  const excepted = /seamsWords\.(times|beside)$|readMe$/;
  expect(amiss(inEither(/ {2}|^\s|\s$| [,.;!?](?!\w)|\(\s|\s\)/), excepted)).toEqual([]);
  expect(amiss(inEither(/\.\.|,,|\(\)|“”|„“|: :|[,;:]\.|\.[,;]/))).toEqual([]);
  expect(amiss(({ en, de }) => [en, de].some((text) => times(text, '(') !== times(text, ')')))).toEqual([]);
  expect(amiss(({ en, de }) => times(en, '“') !== times(en, '”') || times(de, '„') !== times(de, '“'))).toEqual([]);
});

/** Each noun that is counted, for 1 and for more. */
const COUNTED: readonly (readonly [one: string, more: string])[] = [
  ...'Teil Schnittteil Stoffteil Kleidungsstück Hinweis Schritt Punkt Tag Knips Abschnitt Stück Einschnitt'
    .split(' ')
    .map((one) => [one, `${one}e`] as const),
  ...'Ecke Kante Seite Stelle Kopie Falte Linie Lage Sache Ebene'.split(' ').map((one) => [one, `${one}n`] as const),
  ...'Änderung Bahn Fassung Kreuzung Frau'.split(' ').map((one) => [one, `${one}en`] as const),
  ['Blatt', 'Blätter'],
  ['Bild', 'Bilder'],
  ['Naht', 'Nähte'],
  ['Ansatznaht', 'Ansatznähte'],
  ['Nadel', 'Nadeln'],
  ['Quadrat', 'Quadrate'],
];

/** Said of no single one: sizes in pixels, limits, corners of a piece, intervals of a scale, lengths a strip is cut in. */
const NEVER_ONE =
  /[pP]ixels?$|wrongPicture|\.taken$|unitHelp|fileRefusal|cornerCount|\.closed$|read\.piece|bar\.|squareTaken|wayLengths|inWhole|seamsWords\.times|first\.line|paperWords\.total/;

test('one is one and more are more', () => {
  const ends = '(?<![\\d/.,])';
  const [one, more] = [COUNTED.map(([word]) => word).join('|'), COUNTED.map(([, word]) => word).join('|')];
  expect(amiss(({ de }) => new RegExp(`${ends}1 (${more})n?\\b`).test(de), NEVER_ONE)).toEqual([]);
  expect(amiss(({ de }) => new RegExp(`${ends}\\b(0|2|127) (${one})\\b`).test(de))).toEqual([]);
  expect(amiss(({ de }) => /^1 [A-ZÄÖÜ]\w+ (sind|haben|werden|liegen|kommen)\b/.test(de), NEVER_ONE)).toEqual([]);
  // Other words after 1 end in s as well: `1 is`, `1 across`.
  expect(amiss(({ en }) => new RegExp(`${ends}1 (?!is|has|was|lies|as|across)[a-z]+s\\b`).test(en), NEVER_ONE)).toEqual(
    [],
  );
  expect(amiss(({ en }) => new RegExp(`${ends}1 \\w+ (are|have|were)\\b`).test(en), NEVER_ONE)).toEqual([]);
  const english = 'piece|page|notch|corner|change|edge|thing|picture|garment|step|join|strip|fault|place|day|part|line';
  expect(amiss(({ en }) => new RegExp(`${ends}(?<!\\d )\\b(0|2|127) (${english})\\b`).test(en))).toEqual([]);
});

test('German has commas in its numbers, English points, and both say the same numbers', () => {
  expect(amiss(({ de }) => /\d\.\d(?!\d\d)/.test(de))).toEqual([]);
  expect(amiss(({ en }) => /\d,\d(?!\d\d)/.test(en))).toEqual([]);
  expect(said.some(({ de }) => /\d,\d+\u00a0cm/.test(de))).toBe(true);
  const numbers = (text: string) => {
    const plain = text.replace(/(?<=\d)[.,](?=\d{3}\b)/g, '').replace(/(?<=\d),(?=\d)/g, '.');
    return [...new Set(plain.match(/\d+(?:\.\d+)?/g))].sort().join(' ');
  };
  // The words of the trade stand in the order of each alphabet; German pages say "1 : 1"; "a yard" is "1 Yard".
  const excepted = /glossary|fullSize|clothWords\.per$|tableWords\.keys/;
  expect(amiss(({ en, de }) => numbers(en) !== numbers(de), excepted)).toEqual([]);
});

test('what is given to a function is said in both languages or in neither', () => {
  const given = (text: string) => [...new Set(text.toLowerCase().match(/xq[a-z]+/g))].sort().join(' ');
  expect(amiss(({ en, de }) => given(en) !== given(de))).toEqual([]);
  expect(said.filter(({ en }) => given(en) !== '').length).toBeGreaterThan(1000);
});

/** Books are called by their own names. */
const TITLES =
  /Handout for drafting skirt block|School Sewing Based on Home Problems|Text-Book on Domestic Art|Handicraft for Girls|Clothing for Women|The (Practical Designer|Perfect Dressmaking System|New Dressmaker|Times)/g;
const ENGLISH =
  /\b(the|of|and|is|are|with|from|this|that|by|to|on|for|not|no|it|be|has|have|its|your|or|at|but|which|cloth|edge|edges|piece|pieces|page|pages|seam|side|left|right|up|down|across|front|back|elements|points)\b/i;

test('no English is left in German, nor German in English', () => {
  expect(amiss(({ de }) => ENGLISH.test(de.replace(TITLES, '')))).toEqual([]);
  expect(amiss(({ en }) => /\b(der|das|und|ist|nicht|mit|von|eine?|auf|für|Teil|Kante)\b/.test(en))).toEqual([]);
});
