import * as english from './en/whole-shelf';
import { inLanguage } from './language';

export const { wholeShelfWords } = inLanguage('whole-shelf', english);
