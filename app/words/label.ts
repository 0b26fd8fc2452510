import * as english from './en/label';
import { inLanguage } from './language';

export const { labelCardWords, labelWords } = inLanguage('label', english);
