import * as english from './en/cloth-names';
import { inLanguage } from './language';

export const { clothNames } = inLanguage('cloth-names', english);
