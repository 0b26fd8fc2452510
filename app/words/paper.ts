import * as english from './en/paper';
import { inLanguage } from './language';

export const { paperWords, sheetWords } = inLanguage('paper', english);
