import * as english from './en/clean-up';
import { inLanguage } from './language';

export const { cleanUpWords } = inLanguage('clean-up', english);
