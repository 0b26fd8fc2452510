/** The languages the workbench speaks, by the tags of BCP 47. */
export const LANGUAGES = ['en', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

let spoken: Language = 'en';
/** The words of another language, file by file; English needs none. */
let translation: Readonly<Record<string, object | undefined>> = {};

/** The language of everything shown and printed. */
export function language(): Language {
  return spoken;
}

/** The tag by which dates, lists and great numbers are written. */
export function locale(): string {
  return spoken === 'de' ? 'de-DE' : 'en-GB';
}

/** Takes up a language with its words, before anything that has words is loaded: `speak.ts`. */
export function takeUp(wanted: Language, words: typeof translation): void {
  spoken = wanted;
  translation = words;
}

/** The words of one file in the language spoken; English for what another language lacks. */
export function inLanguage<English extends object>(file: string, english: English): English {
  return { ...english, ...translation[file] };
}

/** The first of these languages that is spoken here, whatever its region: `de-AT` is German. */
export function spokenAmong(tags: readonly string[]): Language | undefined {
  for (const tag of tags) {
    const found = LANGUAGES.find((known) => tag.toLowerCase().split('-')[0] === known);
    if (found) return found;
  }
  return undefined;
}
