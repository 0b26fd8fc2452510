import * as english from './en/files';
import { inLanguage } from './language';

export const { fileWords, filesWords, fileFindingSentence, fileRefusalSentence } = inLanguage('files', english);
