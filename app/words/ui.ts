import * as english from './en/ui';
import { inLanguage } from './language';

export const { uiWords } = inLanguage('ui', english);
