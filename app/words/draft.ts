import * as english from './en/draft';
import { inLanguage } from './language';

export const { draftWords } = inLanguage('draft', english);
