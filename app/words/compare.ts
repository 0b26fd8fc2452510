import * as english from './en/compare';
import { inLanguage } from './language';

export const { compareWords } = inLanguage('compare', english);
