import * as english from './en/shell';
import { inLanguage } from './language';

export const { shellWords } = inLanguage('shell', english);
