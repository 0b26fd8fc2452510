import * as english from './en/seams';
import { inLanguage } from './language';

export const { seamsWords } = inLanguage('seams', english);
