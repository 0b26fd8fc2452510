import * as english from './en/paper-sheet';
import { inLanguage } from './language';

export const { paperSheetWords, olderLineWords, versionWords, fittedWords, dateWords, cutWords } = inLanguage(
  'paper-sheet',
  english,
);
