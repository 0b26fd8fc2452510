import * as english from './en/screen-paper';
import { inLanguage } from './language';

export const { screenPaperWords } = inLanguage('screen-paper', english);
