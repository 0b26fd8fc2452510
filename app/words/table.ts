import * as english from './en/table';
import { inLanguage } from './language';

export const { tableWords } = inLanguage('table', english);
