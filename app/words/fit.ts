import * as english from './en/fit';
import { inLanguage } from './language';

export const { fitWords } = inLanguage('fit', english);
