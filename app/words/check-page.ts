import * as english from './en/check-page';
import { inLanguage } from './language';

export const { pointFigures, listedWords } = inLanguage('check-page', english);
