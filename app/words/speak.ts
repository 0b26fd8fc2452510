import { LANGUAGES, type Language, spokenAmong, takeUp } from './language';

/** Where the choice is remembered on this device. */
const KEY = 'language';

/**
 * Fetches the words of a language and speaks it from here on. Awaited once, before anything that has words is loaded:
 * words are taken up as their file is read, so that another language needs the page loaded anew. Where they cannot be
 * fetched it stays English.
 */
export async function speak(wanted: Language): Promise<void> {
  if (wanted === 'en') return;
  try {
    const { german } = await import('./de/catalogue');
    takeUp(wanted, { ...german });
  } catch {
    // English is always here.
  }
}

/** The language chosen on this device, or else the first of the browser's own that is spoken here, or else English. */
export function languageWanted(): Language {
  return languageChosen() ?? spokenAmong(navigator.languages) ?? 'en';
}

function languageChosen(): Language | undefined {
  try {
    return LANGUAGES.find((known) => known === localStorage.getItem(KEY));
  } catch {
    return undefined;
  }
}

/** Remembers a language for the next time the page is loaded; whether it could be remembered. */
export function keepLanguage(chosen: Language): boolean {
  try {
    localStorage.setItem(KEY, chosen);
    return true;
  } catch {
    return false;
  }
}
