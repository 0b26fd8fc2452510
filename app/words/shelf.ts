import * as english from './en/shelf';
import { inLanguage } from './language';

export const { shelfWords, takeUpWords, coverWords } = inLanguage('shelf', english);
