import * as english from './en/check';
import { inLanguage } from './language';

export const { checkWords } = inLanguage('check', english);
