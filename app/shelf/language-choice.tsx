import { flushJournal } from '../storage/journal';
import { Choice } from '../ui/choice';
import { LANGUAGES, type Language, language } from '../words/language';
import { keepLanguage } from '../words/speak';
import { uiWords as words } from '../words/ui';

/** The language of everything shown and printed; remembered here. What is in hand is kept before the page changes. */
export function LanguageChoice() {
  const speakFromNow = (chosen: Language) => {
    if (keepLanguage(chosen)) void flushJournal().then(() => location.reload());
  };
  return (
    <Choice
      label={words.language}
      value={language()}
      options={LANGUAGES.map((value) => ({ value, words: words.languages[value] }))}
      onChange={speakFromNow}
    />
  );
}
